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
            ? "the aeroplane's file" : "the instructor's own";

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
        BriefingRunway runway = briefing.Request.Runway;
        string margin = Metres(landing.WithMargin), there = MetresAvailable(runway.LengthAvailable);
        string touch = Metres(landing.Result.TouchdownDistance), third = MetresAvailable(runway.EndOfFirstThird);
        return landing.Fit switch
        {
            RunwayFit.DoesNotStop or RunwayFit.NotWithMargin => new("does-not-fit", "Do not land here without flaps.", Length(briefing)),
            RunwayFit.TouchesPastFirstThird => new(
                "does-not-fit", "As briefed, this ends in a go-around.",
                $"The distance fits ({margin} with the margin, the runway has {there}), but the wheels touch at {touch}, past the first third, which ends at {third}. {Needed(landing)}"),
            _ => new(
                "fits", "Fits, by this model.",
                $"It is {margin} with the margin, the runway has {there}; the wheels touch at {touch}, within the first third, which ends at {third}. The manual decides."),
        };
    }

    private static string Length(Briefing briefing)
    {
        BriefedLanding landing = briefing.Flapless.Landing;
        string stop = Metres(landing.Planned.Length), there = MetresAvailable(briefing.Request.Runway.LengthAvailable);
        string from = QuantityText.Of(briefing.Request.Runway.ThresholdHeight, "ft 0");
        return landing.Fit == RunwayFit.DoesNotStop
            ? $"{Basis(landing.Planned)} it stops {stop} after passing {from} over the threshold; the runway has {there}. {Needed(landing)}"
            : $"{Basis(landing.Planned)} it is {stop} from {from} to the stop, {Metres(landing.WithMargin)} with the margin; the runway has {there}. {Needed(landing)}";
    }

    private static string Needed(BriefedLanding landing) => $"It takes a runway of {Distance(landing.RunwayNeeded)}. The manual decides.";

    private static string Across(Briefing briefing)
    {
        string gusts = briefing.Request.Wind.GustSpeed is null ? "" : " in the gusts";
        return $"The crosswind is {Knots(briefing.CrosswindInGusts.Abs())}{gusts}";
    }
}
