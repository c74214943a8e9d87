using UnitsNet;

namespace FlapAero.Charts;

/// <content>What is drawn once a setting rests: each picture on its own, so that a later setting need not wait for all.</content>
internal sealed partial class WhatIf
{
    private static readonly Length SeenFrom = Length.FromMeters(600);
    private static readonly Length FinalDrawn = Length.FromMeters(1200);

    /// <summary>The pictures by their names, in the order of the page.</summary>
    internal static IReadOnlyList<string> PictureNames { get; } = ["nose", "side", "energy", "circuit"];

    /// <summary>One picture of a setting.</summary>
    /// <param name="setting">The setting as JSON.</param>
    /// <param name="name">One of <see cref="PictureNames"/>.</param>
    /// <returns>JSON with <c>html</c>, a figure element, or with <c>why</c> there is none; or <c>faults</c>.</returns>
    public string Picture(string setting, string name) => Answered(setting, (json, read) =>
    {
        try
        {
            json.WriteString("html", name switch
            {
                "nose" => OverTheNose(read).ToHtml(),
                "side" => FromTheSide(read).ToHtml(),
                "energy" => Energy(read),
                _ => FromAbove(read).ToHtml(),
            });
        }
        catch (RefusedInputException refused)
        {
            json.WriteString("why", refused.Message);
        }
    });

    private static string NameOf(WhatIfSetting setting, int side)
    {
        string flaps = $"flaps {setting.Aeroplane.FlapSettings[setting.Flaps[side]].Name}";
        return setting.Flaps[0] != setting.Flaps[1] ? flaps : side == 0 ? flaps : flaps + " again";
    }

    private static Airspeed Approach(WhatIfSetting setting, int side) =>
        Airspeed.FromTrue(setting.Landing(side).Technique.ThresholdSpeed, setting.Air);

    private static Picture OverTheNose(WhatIfSetting setting)
    {
        Length above = setting.Height - LandingPilot.Usual.ThresholdHeight;
        PilotsView[] views = [.. Sides.Select(side => PilotsView
            .InWind(
                NameOf(setting, side), setting.Configuration(side), Approach(setting, side), setting.Path, SeenFrom, setting.Headwind, setting.Crosswind)
            .AbovePath(NameOf(setting, side), above))];
        return Pictures.ViewOverTheNose("Over the nose", setting.Runway, views)
            .LookFor($"Both from {SeenFrom:ft 0} before the threshold, on the path, in the mean wind of the setting.").In(setting.Units);
    }

    private static Picture FromTheSide(WhatIfSetting setting) => Pictures.SideView(
        "The aeroplane on the path", [.. Sides.Select(side => (
            NameOf(setting, side),
            setting.Configuration(side).OnPathOverGround(Approach(setting, side), setting.Path, setting.Headwind)))])
        .In(setting.Units);

    private static string Energy(WhatIfSetting setting)
    {
        var figure = new Figure(
            "Energy down the approach", Axis.Of("distance past the threshold", "x", "ft"), Axis.Of("energy height", "h_e", "ft").Including(0));
        var said = new Words(0, 0);
        foreach (int side in Sides)
        {
            LandingSetup landing = setting.Landing(side);
            Outcome<LandingResult, LandingRefusal> outcome = Landing.Fly(landing, interval: Duration.FromSeconds(1));
            if (!outcome.Happened) continue;
            Length far = EnergyHeight.Of(
                landing.Technique.ThresholdHeight + FinalDrawn * Math.Tan(setting.Path.Radians), landing.Technique.ThresholdSpeed);
            figure = figure.Line(NameOf(setting, side),
                [(-FinalDrawn.Feet, far.Feet), .. outcome.Value.Trajectory.Select(p => (p.Distance.Feet, p.EnergyHeight.Feet)).DistinctBy(p => p.Item1)]);
            if (setting.Flaps[0] != setting.Flaps[1]) figure = figure.As(Palette.For(setting.Configuration(side)));
            LandingPoint over = outcome.Value.Trajectory[0];
            LandingPoint touch = outcome.Value.Trajectory.First(point => point.Stage == LandingStage.RollNoseHigh);
            said.AppendFormatted((Words)$"{Capital(NameOf(setting, side))}: {over.EnergyHeight:ft 0} over the threshold, {touch.EnergyHeight:ft 0} at the touchdown. ");
        }
        if (figure.Lines.Count == 0)
            throw Require.RefusedWhole(nameof(setting), "No landing happens, so there is no energy to be drawn.");
        figure = figure.Mark("threshold", 0, 0)
            .Caption($"Energy height is height and speed in one number, h + V²/2g, with the true airspeed. The steeper the line falls, the faster energy goes.")
            .Finding(said).In(setting.Units);
        return new FigureHtml(figure.Complete(), "", "", "", ReadingsHtml.List(figure.Readings), figure.Numbers).ForPage();
    }

    private static Picture FromAbove(WhatIfSetting setting) => Pictures.CircuitFromAbove(
        "The circuit from above", setting.Runway,
        [.. Sides.Select(side => (NameOf(setting, side), CircuitOf(setting, side)))])
        .LookFor($"Each circuit has the flaps of its landing from where the power is reduced.").In(setting.Units);

    /// <summary>As a briefing's, with the side's flap setting from where power is reduced.</summary>
    private static Circuit CircuitOf(WhatIfSetting setting, int side)
    {
        Configuration flown = setting.Configuration(side);
        Airspeed final = Approach(setting, side);
        Airspeed onBase = BriefingMaker.Faster(flown.ReferenceSpeed(setting.Air, BriefingTechnique.DescentMultiple), final);
        Descent descent = Descent.AtSinkRate(BriefingTechnique.Descent);
        var turn = new TurnLeg(flown, onBase, descent, BriefingTechnique.Bank);
        var legs = new CircuitLegs(new(flown, onBase, descent), turn, new(flown, onBase, descent), turn, new(flown, final, setting.Path));
        Outcome<Circuit, CircuitRefusal> circuit = Circuit.Backwards(new(
            setting.Runway, WindOf(setting), CircuitHand.Left, Length.FromFeet(1000), BriefingTechnique.Spacing, legs,
            BriefingMaker.Thrusts(legs), bankLimit: BriefingTechnique.BankLimit, CircuitFix.RollOutAt(BriefingRules.Usual.RollOut),
            thresholdHeight: setting.Height));
        return circuit.Happened ? circuit.Value
            : throw Require.RefusedWhole(nameof(setting), $"{Capital(NameOf(setting, side))}: {WhatIfWords.Sentences(circuit.Explanation)}");
    }

    /// <summary>The wind in the runway's north: 090 is the runway.</summary>
    private static Wind WindOf(WhatIfSetting setting)
    {
        double along = setting["along"], across = setting["across"];
        double from = 90 + double.RadiansToDegrees(Math.Atan2(across, along));
        return new(Angle.FromDegrees((from + 360) % 360), Speed.FromKnots(Math.Sqrt(along * along + across * across)));
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static int[] Sides => [0, 1];
}
