using UnitsNet;
using static FlapAero.Notebooks.BriefingNumbers;

namespace FlapAero.Notebooks;

/// <summary>The tables of a sheet: speeds, circuits, landings.</summary>
internal static class BriefingTables
{
    public static IEnumerable<SheetPart> Of(Briefing briefing)
    {
        yield return Speeds(briefing);
        yield return Circuit("circuit-up", "Circuit without flaps", briefing, briefing.Flapless.Circuit, withFlaps: false);
        yield return Circuit("circuit-flaps", "Circuit with flaps", briefing, briefing.FullFlaps.Circuit, withFlaps: true);
        yield return Landings(briefing);
    }

    private static TablePart Speeds(Briefing briefing)
    {
        string additive = QuantityText.Of(briefing.GustAdditive, "kt 0.#");
        string caption = briefing.GustAdditive.Knots > 0
            ? $"Speeds at this weight; final has {additive} added for the gusts"
            : "Speeds at this weight; no gusts, nothing added on final";
        return new("speeds", caption,
            ["Flaps", "Stall, needle", "Stall, CAS", "1.3 × stall, CAS", "Final, CAS", "Final, needle", "Highest, needle"],
            [
                .. briefing.Speeds.Select(speeds => (IReadOnlyList<string>)
                [
                    speeds.Configuration.Flaps.Name, Knots(speeds.StallIndicated), Knots(speeds.Stall.Calibrated),
                    Knots(speeds.Reference.Calibrated), Knots(speeds.Approach.Calibrated), Knots(speeds.ApproachIndicated),
                    KnotsAtMost(speeds.Configuration.Flaps.MaximumSpeed),
                ]),
            ]);
    }

    private static TablePart Circuit(string name, string caption, Briefing briefing, BriefedCircuit briefed, bool withFlaps)
    {
        Circuit circuit = briefed.Circuit;
        (string From, BriefedLeg Leg, Length Height)[] points =
        [
            ("Downwind, level", briefed.Level, briefed.Level.Begin),
            ($"Reduce power, {PastAbeam(circuit.PowerReducedPastAbeam)}", briefed.Downwind, briefed.Downwind.Begin),
            ($"Turn base, {QuantityText.Of(circuit.AngleBehindWing, "0")} behind the wing", briefed.Base, circuit.TurnToBase.Begin.Height),
            ("Turn final", briefed.Base, circuit.TurnToFinal.Begin.Height),
            ("Final, lined up", briefed.Final, briefed.Final.Begin),
        ];
        string[] flaps = withFlaps ? ["Flaps"] : [];
        return new(name, caption,
            ["Where", .. flaps, "Needle", "Engine", "Height", "On QNH"],
            [
                .. points.Select(point => (IReadOnlyList<string>)
                [
                    point.From, .. withFlaps ? [point.Leg.Flight.Configuration.Flaps.Name] : Array.Empty<string>(),
                    Knots(point.Leg.Indicated), Engine(point.Leg.EngineSpeed), Height(point.Height),
                    Height(point.Height + briefing.Request.Runway.Elevation),
                ]),
            ]);
    }

    private static TablePart Landings(Briefing briefing)
    {
        BriefingRequest flight = briefing.Request;
        Length available = flight.Runway.LengthAvailable;
        string margin = QuantityText.Of(flight.Margin.Factor, "0.00");
        IReadOnlyList<string> Row(string name, Func<BriefedCase, string> value) => [name, value(briefing.Flapless), value(briefing.FullFlaps)];
        return new("landings", $"Landing from {QuantityText.Of(flight.Runway.ThresholdHeight, "ft 0")} over the threshold; aim {Metres(briefing.AimingPoint)} past it",
            ["Distance", "Without flaps", $"Flaps {flight.Aeroplane.FullFlaps.Name}"],
            [
                Row("To the round-out", c => Distance(c.Landing.ToRoundOut)),
                Row("Float", c => Distance(c.Landing.Float)),
                Row("Wheels down at", c => Distance(c.Landing.Result.TouchdownDistance)),
                Row("Roll", c => Distance(c.Landing.Result.GroundRoll)),
                Row("To the stop", c => Distance(c.Landing.Result.StopDistance)),
                Row($"With the margin, × {margin}", c => Distance(c.Landing.WithMargin)),
                Row("Runway there is", _ => Available(available)),
                Row("Left over", c => Left(c.Landing.WithMargin, available)),
            ]);
    }

    private static string Left(Length used, Length available)
    {
        double left = Math.Floor(available.Meters + 1e-6) - Math.Ceiling(used.Meters - 1e-6);
        return left >= 0 ? QuantityText.Of(Length.FromMeters(left), "m 0") : QuantityText.Of(Length.FromMeters(-left), "m 0") + " short";
    }
}
