using UnitsNet;
using static FlapAero.Notebooks.BriefingNumbers;

namespace FlapAero.Notebooks;

/// <summary>What a sheet says first: the wind across before the length, and "fits" only where both are known to.</summary>
internal static class BriefingVerdict
{
    public static StatementPart Of(Briefing briefing)
    {
        StatementPart runway = Runway(briefing);
        return briefing.CrosswindFit switch
        {
            CrosswindFit.AboveLimit => new(
                "does-not-fit", "Do not land here in this wind.",
                $"{Across(briefing)}; the limit is {KnotsAtMost(briefing.CrosswindLimit!.Value)} ({LimitOrigin(briefing)}). {Length(briefing)}"),
            CrosswindFit.LimitUnknown when briefing.Flapless.Landing.Fit == RunwayFit.Fits => new(
                "undecided", "No verdict without a crosswind limit.",
                $"{Across(briefing)}; the aeroplane's file gives no limit. It fits only if the manual's limit, or the instructor's own, allows that. {runway.Quiet}"),
            _ => runway,
        };
    }

    /// <summary>Whose the limit is that counts.</summary>
    public static string LimitOrigin(Briefing briefing) =>
        briefing.Request.Aeroplane.CrosswindLimit is { } manual && manual <= briefing.CrosswindLimit!.Value
            ? "the aeroplane's file" : "the instructor's or the school's own";

    /// <summary>What the planned distance rests on.</summary>
    public static string Basis(PlannedDistance planned) => planned.Basis switch
    {
        DistanceBasis.Rule => $"By the rule for {planned.Longest.Name}",
        DistanceBasis.BetterSurface => $"As on {planned.Longest.Name}, not less,",
        _ => "By this model",
    };

    private static StatementPart Runway(Briefing briefing)
    {
        BriefedLanding landing = briefing.Flapless.Landing;
        Runway runway = briefing.Request.Runway;
        string margin = Metres(landing.WithMargin), there = MetresAvailable(runway.LengthAvailable);
        string touch = Metres(landing.Result.TouchdownDistance), third = MetresAvailable(runway.EndOfFirstThird);
        return landing.Fit switch
        {
            RunwayFit.DoesNotStop or RunwayFit.NotWithMargin => new("does-not-fit", "Do not land here without flaps.", Length(briefing)),
            RunwayFit.TouchesPastFirstThird => new(
                "does-not-fit", "As briefed, this ends in a go-around.",
                $"The distance fits ({margin} with the margin, the runway has {there}), but the wheels touch at {touch}, past the first third, which ends at {third}, and aiming as low as {Lowest(briefing)} over the threshold does not help. {Helps(briefing)}"),
            _ => new(
                "fits", "Fits, by this model.",
                $"It is {margin} with the margin, the runway has {there}; the wheels touch at {touch}, within the first third, which ends at {third}. {Aim(briefing)} The manual decides."),
        };
    }

    private static string Length(Briefing briefing)
    {
        BriefedLanding landing = briefing.Flapless.Landing;
        string stop = Metres(landing.Planned.Length), there = MetresAvailable(briefing.Request.Runway.LengthAvailable);
        string from = Over(briefing);
        return landing.Fit == RunwayFit.DoesNotStop
            ? $"{Basis(landing.Planned)} it stops {stop} after passing {from} over the threshold; the runway has {there}. {Helps(briefing)}"
            : $"{Basis(landing.Planned)} it is {stop} from {from} to the stop, {Metres(landing.WithMargin)} with the margin; the runway has {there}. {Helps(briefing)}";
    }

    private static string Aim(Briefing briefing)
    {
        BriefedLanding landing = briefing.Flapless.Landing;
        string point = $"{Metres(landing.AimingPoint)} past the threshold, {Over(briefing)} over it";
        return landing.ThresholdHeight < briefing.Request.ThresholdHeight
            ? $"Aim {point}, not {QuantityText.Of(briefing.Request.ThresholdHeight, "ft 0")}."
            : $"Aim {point}.";
    }

    private static string Lowest(Briefing briefing) => QuantityText.Of(briefing.Request.LowestThresholdHeight, "ft 0");

    private static string Helps(Briefing briefing)
    {
        if (briefing.Remedies is not { } remedies) return "The manual decides.";
        string[] helps =
        [
            .. remedies.Runway is { } runway ? [$"a runway of {Distance(runway)}"] : Array.Empty<string>(),
            .. remedies.Headwind is { } wind ? [$"{QuantityText.Of(wind, "kt 0")} straight down the runway without gusts"] : Array.Empty<string>(),
            .. remedies.Mass is { } mass ? [$"a mass of {QuantityText.Of(mass, "kg 0")}"] : Array.Empty<string>(),
            .. remedies.Flaps is { } flaps ? [$"flaps {flaps.Name}, if they come down after all"] : Array.Empty<string>(),
        ];
        return helps.Length == 0 ? "Nothing that this sheet knows would help. The manual decides." : $"What would help, each alone: {string.Join("; ", helps)}. The manual decides.";
    }

    private static string Across(Briefing briefing)
    {
        string gusts = briefing.Request.Wind.GustSpeed is null ? "" : " in the gusts";
        return $"The crosswind is {Knots(briefing.CrosswindInGusts.Abs())}{gusts}";
    }
}
