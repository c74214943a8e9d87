using UnitsNet;
using static FlapAero.Notebooks.BriefingNumbers;

namespace FlapAero.Notebooks;

/// <summary>The head of a sheet: the flight, whether it fits, and the numbers to have in one's head.</summary>
internal static class BriefingFacts
{
    public static IEnumerable<SheetPart> Of(Briefing briefing)
    {
        Runway runway = briefing.Request.Runway;
        yield return Flight(briefing);
        yield return BriefingVerdict.Of(briefing);
        BriefedCase up = briefing.Flapless;
        BriefedCircuit circuit = up.Circuit;
        string band = $"{Knots(Whole(up.Speeds.ApproachIndicated) - briefing.Request.Rules.SlowBy)} to {Knots(Whole(up.Speeds.ApproachIndicated) + briefing.Request.Rules.FastBy)}";
        (string Label, string Number, string With)[] numbers =
        [
            ("Downwind, level", Knots(circuit.Level.Indicated), Engine(circuit.Level.EngineSpeed)),
            ("Power reduced, to base", Knots(circuit.Downwind.Indicated), Engine(circuit.Downwind.EngineSpeed)),
            ("Final", Knots(up.Speeds.ApproachIndicated), $"{Engine(circuit.Final.EngineSpeed)}; {band}"),
            ("Wheels down by", MetresAvailable(runway.EndOfFirstThird), $"{FeetAvailable(runway.EndOfFirstThird)}, past the threshold"),
        ];
        // Nothing of a landing that must not be flown stands in large type.
        yield return briefing.Fits
            ? new GlancePart("glance", "Without flaps, on the needle", numbers)
            : new FactsPart("glance", "Without flaps, on the needle, for another day",
                [.. numbers.SkipLast(1).Select(number => (number.Label, $"{number.Number}, {number.With}"))]);
    }

    /// <summary>Aeroplane, runway, air and wind.</summary>
    public static FactsPart Flight(Briefing briefing)
    {
        BriefingRequest flight = briefing.Request;
        Runway runway = flight.Runway;
        return new("flight", null,
        [
            ("Aeroplane", $"{flight.Aeroplane.Name}, {QuantityText.Of(flight.Mass, "kg 0")} ({QuantityText.Of(flight.Mass, "lb 0")})"),
            ("Runway", $"{runway.Name}, {Available(runway.LengthAvailable)}, {runway.Surface.Name}, {Slope(runway.Slope)}, {QuantityText.Of(runway.Elevation, "ft 0")} above sea level"),
            ("Air", $"{QuantityText.Of(flight.Air.Temperature)}, pressure altitude {Height(flight.Air.PressureAltitude)}, density altitude {Height(flight.Air.DensityAltitude)}"),
            ("Wind", $"{Reported(flight.Wind)}: {Along(briefing.Headwind)}, {Across(briefing)}; {Limit(briefing)}"),
        ]);
    }

    private static string Reported(BriefingWind wind)
    {
        if (wind.Mean.Speed.Knots == 0 && wind.GustSpeed is null) return "calm";
        string mean = $"{Direction(wind.Mean.From)} {QuantityText.Of(wind.Mean.Speed, "kt 0")}";
        return wind.GustSpeed is { } gust ? $"{mean}, gusts {QuantityText.Of(gust, "kt 0")}" : mean;
    }

    public static string Along(Speed headwind) => Math.Round(headwind.Knots) switch
    {
        0 => "no headwind",
        > 0 => $"headwind {QuantityText.Of(headwind, "kt 0")}",
        _ => $"tailwind {QuantityText.Of(-headwind, "kt 0")}",
    };

    public static string Across(Briefing briefing)
    {
        Speed mean = briefing.Crosswind.Abs(), gusts = briefing.CrosswindInGusts.Abs();
        if (Math.Ceiling(gusts.Knots - 1e-6) == 0) return "no crosswind";
        string side = briefing.CrosswindInGusts.Knots > 0 ? "right" : "left";
        string inGusts = briefing.Request.Wind.GustSpeed is null ? "" : $", {Knots(gusts)} in gusts";
        return $"crosswind {Knots(mean)} from the {side}{inGusts}";
    }

    private static string Limit(Briefing briefing) => briefing.CrosswindLimit is { } limit
        ? $"limit {KnotsAtMost(limit)} ({BriefingVerdict.LimitOrigin(briefing)})"
        : "no limit in the aeroplane's file, the manual's ____ kt";
}
