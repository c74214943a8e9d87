using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// What a landing meets that the canonical one leaves out, each a stated change and none of them by default. Immutable, thread-safe.
/// </summary>
public sealed record LandingConditions
{
    private static readonly Length HighestWing = Length.FromMeters(500);

    /// <summary>None: the canonical landing.</summary>
    public static LandingConditions Canonical { get; } = new();

    /// <summary>Headwind by height of the wing, in place of the landing's steady one.</summary>
    public WindProfile? Wind { get; init; }

    /// <summary>A gust or lull on top of the wind.</summary>
    public OneCosineGust? Gust { get; init; }

    /// <summary>Nose down and brakes on from the touchdown: no roll with the nose held off.</summary>
    public bool BrakesFromTouchdown { get; init; }

    /// <summary>A landing in these conditions, in plain numbers.</summary>
    internal (LandingInput Input, LandingManner Manner) Apply(LandingSetup setup)
    {
        // A wind that the profile replaces does not count, and must not refuse the landing.
        LandingSetup met = Wind is { } wind ? setup with { Headwind = AtThreshold(wind, setup) } : setup;
        LandingInput input = met.Checked();
        if (Gust is { } gust)
            input = input with { GustChange = gust.Change.MetersPerSecond, GustStart = gust.Start.Seconds, GustLength = gust.Length.Seconds };
        Func<double, double>? profile = Wind is { } law ? height => law.At(Length.FromMeters(height)).MetersPerSecond : null;
        return (input, new(profile, BrakesFromTouchdown));
    }

    private static Speed AtThreshold(WindProfile wind, LandingSetup setup)
    {
        Length wing = setup.Technique.ThresholdHeight + setup.Aeroplane.WingHeight;
        Require.Between(
            wing, Length.FromMillimeters(1), HighestWing, "height of the wing over the threshold",
            "The profiles describe the air next to the ground.", nameof(setup));
        return wind.At(wing);
    }
}
