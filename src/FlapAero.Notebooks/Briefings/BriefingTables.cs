using UnitsNet;
using static FlapAero.Notebooks.BriefingNumbers;

namespace FlapAero.Notebooks;

/// <summary>The tables of a sheet: speeds, circuits, landings, with room for the manual's own number.</summary>
internal static class BriefingTables
{
    private const string Blank = "____";

    public static IEnumerable<SheetPart> Of(Briefing briefing)
    {
        yield return Speeds(briefing);
        yield return Circuit("circuit-up", "Circuit without flaps", briefing, briefing.Flapless.Circuit, withFlaps: false);
        yield return briefing.FullFlaps.Circuit is { } flapped
            ? Circuit("circuit-flaps", "Circuit with flaps" + Against(flapped, briefing.Flapless.Circuit), briefing, flapped, withFlaps: true)
            : new NotePart("circuit-flaps", "No circuit with flaps to compare", string.Join(' ', briefing.FullFlaps.Missing));
        yield return Landings(briefing);
    }

    private static TablePart Speeds(Briefing briefing)
    {
        string additive = QuantityText.Of(briefing.GustAdditive, "kt 0.#");
        string caption = briefing.GustAdditive.Knots > 0
            ? $"Speeds at this weight, kt; final has {additive} added for the gusts"
            : "Speeds at this weight, kt; no gusts, nothing added on final";
        double[] multiples = [.. briefing.Speeds.Select(speeds => speeds.Multiple).Distinct()];
        string multiple = multiples is [var all] ? $"{QuantityText.Of(all, "0.0#")} × stall, CAS" : "Reference, CAS";
        return new("speeds", caption,
            ["Flaps", "Stall, needle", "Stall, CAS", multiple, "Final, needle", "Limit, needle", "Manual, final"],
            [
                .. briefing.Speeds.Select(speeds => (IReadOnlyList<string>)
                [
                    speeds.Configuration.Flaps.Name, Bare(Whole(speeds.StallIndicated).Knots), Bare(Whole(speeds.Stall.Calibrated).Knots),
                    Bare(Whole(speeds.Reference.Calibrated).Knots), Bare(Whole(speeds.ApproachIndicated).Knots),
                    Bare(WholeAtMost(speeds.Configuration.Flaps.MaximumSpeed).Knots), Blank,
                ]),
            ]);
    }

    private static TablePart Circuit(string name, string caption, Briefing briefing, BriefedCircuit briefed, bool withFlaps)
    {
        Circuit circuit = briefed.Circuit;
        (string From, BriefedLeg Leg, Length Height)[] points =
        [
            ("At circuit height", briefed.Level, briefed.Level.Begin),
            ($"Power back, {PastAbeam(circuit.PowerReducedPastAbeam)}", briefed.Downwind, briefed.Downwind.Begin),
            ($"Turn base, {QuantityText.Of(circuit.AngleBehindWing, "0")} behind wing", briefed.Base, circuit.TurnToBase.Begin.Height),
            ("Turn final", briefed.Base, circuit.TurnToFinal.Begin.Height),
            ("Final, lined up", briefed.Final, briefed.Final.Begin),
        ];
        string[] flaps = withFlaps ? ["Flaps"] : [];
        return new(name, caption,
            ["From", .. flaps, "Needle, kt", "Engine, rpm", "Height, ft", "QNH, ft"],
            [
                .. points.Select(point => (IReadOnlyList<string>)
                [
                    point.From, .. withFlaps ? [point.Leg.Flight.Configuration.Flaps.Name] : Array.Empty<string>(),
                    Bare(Whole(point.Leg.Indicated).Knots), Bare(Tens(point.Leg.EngineSpeed).RevolutionsPerMinute), Bare(Tens(point.Height).Feet),
                    Bare(Tens(point.Height + briefing.Request.Runway.Elevation).Feet),
                ]),
            ]);
    }

    /// <summary>What flaps ask of the engine on final, the one leg whose path is the same with them and without.</summary>
    private static string Against(BriefedCircuit flapped, BriefedCircuit flapless)
    {
        double more = Tens(flapped.Final.EngineSpeed).RevolutionsPerMinute - Tens(flapless.Final.EngineSpeed).RevolutionsPerMinute;
        return more == 0 ? "" : $": {Bare(Math.Abs(more))} rpm {(more > 0 ? "more" : "less")} on final";
    }

    private static TablePart Landings(Briefing briefing)
    {
        BriefingRequest flight = briefing.Request;
        BriefedLanding?[] landings = [briefing.Flapless.Landing, briefing.FullFlaps.Landing];
        RunwaySurface surface = flight.Runway.Surface;
        Length available = flight.Runway.LengthAvailable;
        string margin = QuantityText.Of(flight.Margin.Factor, "0.00"), full = flight.Aeroplane.FullFlaps.Name;
        IReadOnlyList<string> Cells(string name, Func<BriefedLanding, string[]> cells) =>
            [name, .. landings.SelectMany(landing => landing is null ? ["–", "–"] : cells(landing)), Blank];
        IReadOnlyList<string> Row(string name, Func<BriefedLanding, Length> used) =>
            Cells(name, landing => [Bare(TensOfMetres(used(landing)).Meters), Bare(TensOfFeet(used(landing)).Feet)]);
        IReadOnlyList<string>[] ruled = flight.Rules.RuleFor(surface) is { } rule
            ? [Row($"By the rule, × {QuantityText.Of(rule.Factor, "0.00")}", landing => landing.Planned.ByRule!.Value)] : [];
        IReadOnlyList<string>[] counted = surface.Better is null ? [] : [Row("Counted: the longer", landing => landing.Planned.Length)];
        Length metresThere = TensOfMetresAvailable(available), feetThere = TensOfFeetAvailable(available);
        string[] there = [Bare(metresThere.Meters), Bare(feetThere.Feet)];
        return new("landings", $"{Over(briefing)} over the threshold, aiming {Metres(briefing.AimingPoint)} past it",
            ["Distance", "Flaps up, m", "Flaps up, ft", $"Flaps {full}, m", $"Flaps {full}, ft", "Manual"],
            [
                Row("To the round-out", landing => landing.ToRoundOut),
                Row("Float", landing => landing.Float),
                Row("Wheels down at", landing => landing.Result.TouchdownDistance),
                Row("Roll", landing => landing.Result.GroundRoll),
                Row("To the stop", landing => landing.Result.StopDistance),
                .. ruled,
                .. counted,
                Row($"Margin, × {margin}", landing => landing.WithMargin),
                ["Runway", .. there, .. there, Blank],
                // Of what is printed, so that it can be subtracted by hand.
                Cells("Left over", landing =>
                [
                    Bare((metresThere - TensOfMetres(landing.WithMargin)).Meters), Bare((feetThere - TensOfFeet(landing.WithMargin)).Feet),
                ]),
            ]);
    }
}
