using UnitsNet;

namespace FlapAero;

/// <summary>The runway of a briefing. Immutable.</summary>
public sealed class BriefingRunway
{
    /// <summary>A runway.</summary>
    /// <param name="name">What it is called, for example 24.</param>
    /// <param name="direction">Direction of landing, 0° to 360°, in the same north as the wind's.</param>
    /// <param name="lengthAvailable">Landing distance available, 100 m to 6 000 m, counted from the threshold.</param>
    /// <param name="surface">Its surface.</param>
    /// <param name="slope">Rise over run in the direction of landing, positive uphill, −0.1 to 0.1.</param>
    /// <param name="elevation">Elevation of the aerodrome above mean sea level, −500 m to 5 000 m.</param>
    /// <param name="thresholdHeight">Wheels over the threshold, 5 m to 60 m; 50 ft where none is given.</param>
    /// <exception cref="RefusedInputException">No name or no surface; a value outside its range.</exception>
    public BriefingRunway(
        string name, Angle direction, Length lengthAvailable, RunwaySurface surface, double slope, Length elevation,
        Length? thresholdHeight = null)
    {
        Require.Words(name, "name of the runway");
        ArgumentNullException.ThrowIfNull(surface);
        Name = name;
        Surface = surface;
        Direction = Require.Between(direction, Angle.Zero, Angle.FromDegrees(360), "runway direction", "Directions run from 0° to 360°.");
        LengthAvailable = Require.Between(
            lengthAvailable, Length.FromMeters(100), Longest, "landing distance available",
            "No aeroplane of this kind stops on less, and no runway is longer.");
        Slope = Require.Between(slope, -0.1, 0.1, "runway slope", "Steeper is no runway.");
        Elevation = Require.Between(
            elevation, Length.FromMeters(-500), Length.FromMeters(5000), "elevation", "Aerodromes lie between them.");
        Length height = thresholdHeight ?? LandingPilot.Usual.ThresholdHeight;
        ThresholdHeight = Over(height, nameof(thresholdHeight));
    }

    /// <summary>No runway is longer.</summary>
    internal static Length Longest { get; } = Length.FromMeters(6000);

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Direction of landing.</summary>
    public Angle Direction { get; }

    /// <summary>Landing distance available, from the threshold.</summary>
    public Length LengthAvailable { get; }

    /// <summary>The surface.</summary>
    public RunwaySurface Surface { get; }

    /// <summary>Rise over run, positive uphill.</summary>
    public double Slope { get; }

    /// <summary>Elevation above mean sea level.</summary>
    public Length Elevation { get; }

    /// <summary>h_t, wheels over the threshold.</summary>
    public Length ThresholdHeight { get; }

    /// <summary>Where the first third of the landing distance available ends, from the threshold.</summary>
    public Length EndOfFirstThird => LengthAvailable / 3;

    /// <summary>The canonical landing on this runway, as a briefing plans it before gusts are added.</summary>
    /// <remarks>
    /// Formula: V_t = 1.3 V_S; half of the headwind or one and a half of the tailwind; the surface's rolling coefficient, three quarters of its
    /// braking one and not less than the rolling one. Range: any configuration, wind to 100 kt. Source: [canonical-landing], [cat-pol-a-330] for the wind.
    /// </remarks>
    /// <param name="configuration">Aeroplane, flap and mass.</param>
    /// <param name="air">The air over the runway.</param>
    /// <param name="wind">The mean wind.</param>
    /// <param name="thresholdHeight">Wheels over the threshold; <see cref="ThresholdHeight"/> where none is given.</param>
    /// <returns>The landing, to be flown.</returns>
    /// <exception cref="ArgumentNullException">No configuration, air or wind.</exception>
    /// <exception cref="RefusedInputException">A height outside 5 m to 60 m; otherwise as <see cref="LandingSetup.For"/>.</exception>
    /// <example><code>Quillmere.Runway24.LandingOf(flapsUp, Quillmere.Saturday.Air, Quillmere.Saturday.Wind.Mean).Runway.Headwind.Knots // 3.5</code></example>
    public LandingSetup LandingOf(Configuration configuration, Air air, Wind wind, Length? thresholdHeight = null)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(wind);
        return LandingSetup.For(
            configuration, LandingRunway.On(Surface, air, LandingMargin.PlannedHeadwind(wind.Headwind(Direction)), Slope),
            LandingPilot.Usual with { ThresholdHeight = Over(thresholdHeight ?? ThresholdHeight, nameof(thresholdHeight)) });
    }

    private static Length Over(Length height, string argument) => Require.Between(
        height, Length.FromMeters(5), Length.FromMeters(60), "height over the threshold",
        "Lower leaves no height to round out from; higher flies past the runway.", argument);
}
