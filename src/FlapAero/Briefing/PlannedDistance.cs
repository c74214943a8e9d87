using UnitsNet;

namespace FlapAero;

/// <summary>What a planned landing distance rests on.</summary>
public enum DistanceBasis
{
    /// <summary>The model's landing on this surface: the longest.</summary>
    Model,

    /// <summary>The rule's factor for this surface times the model's landing on dry asphalt.</summary>
    Rule,

    /// <summary>The planned distance on a better surface: on this one it is never shorter.</summary>
    BetterSurface,
}

/// <summary>
/// The distance that a landing is planned with. A surface that rolls harder stops an aeroplane that does not brake sooner; no sheet
/// promises that. So it is the longest of three: the model on the surface, the rule's factor times the model on dry asphalt, and the
/// planned distance on the next better surface. Immutable.
/// </summary>
public sealed class PlannedDistance
{
    private PlannedDistance(Length length, DistanceBasis basis, RunwaySurface longest, Length? byRule) =>
        (Length, Basis, Longest, ByRule) = (length, basis, longest, byRule);

    /// <summary>From the height over the threshold to the stop.</summary>
    public Length Length { get; }

    /// <summary>What it rests on.</summary>
    public DistanceBasis Basis { get; }

    /// <summary>The surface whose model or rule it is.</summary>
    public RunwaySurface Longest { get; }

    /// <summary>The rule's factor times the model's landing on dry asphalt; none where no rule is known.</summary>
    public Length? ByRule { get; }

    /// <summary>The planned distance, or the explanation of the landing that cannot happen.</summary>
    /// <param name="setup">The landing; the surface of its runway does not matter.</param>
    /// <param name="surface">The surface.</param>
    /// <param name="rules">The rules, whose factors count.</param>
    internal static Outcome<PlannedDistance> Of(LandingSetup setup, RunwaySurface surface, BriefingRules rules)
    {
        PlannedDistance? better = null;
        if (surface.Better is { } other)
        {
            Outcome<PlannedDistance> there = Of(setup, other, rules);
            if (!there.Happened) return there;
            better = there.Value;
        }

        Outcome<LandingResult, LandingRefusal> landing = FlapAero.Landing.Fly(On(setup, surface));
        if (!landing.Happened) return new($"on {surface.Name}: {landing.Explanation}");
        Length? byRule = rules.RuleFor(surface) is { } rule
            ? FlapAero.Landing.Fly(On(setup, Best(surface))).Value.StopDistance * rule.Factor : null;
        PlannedDistance planned = new(landing.Value.StopDistance, DistanceBasis.Model, surface, byRule);
        if (byRule is { } ruled && ruled > planned.Length) planned = new(ruled, DistanceBasis.Rule, surface, byRule);
        if (better is not null && better.Length > planned.Length)
            planned = new(better.Length, DistanceBasis.BetterSurface, better.Longest, byRule);
        return new(planned);
    }

    /// <summary>The same landing on a surface.</summary>
    internal static LandingSetup On(LandingSetup setup, RunwaySurface surface) =>
        setup with { Runway = setup.Runway with { Surface = surface } };

    private static RunwaySurface Best(RunwaySurface surface) => surface.Better is { } better ? Best(better) : surface;
}
