using UnitsNet;

namespace FlapAero;

/// <summary>Runway, air and wind of a canonical landing. Immutable, thread-safe. Values that make no sense are refused when a landing is flown.</summary>
public sealed record LandingRunway
{
    /// <summary>The air.</summary>
    public required Air Air
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            field = value;
        }
    }

    /// <summary>w, steady and the same at every height; negative from behind.</summary>
    public required Speed Headwind { get; init; }

    /// <summary>μ_r, friction of the rolling wheels.</summary>
    public required double RollingFriction { get; init; }

    /// <summary>μ_b, effective friction under braking on the whole normal force.</summary>
    public required double BrakingFriction { get; init; }

    /// <summary>tan ε, rise over run, positive uphill; it acts on the roll only.</summary>
    public required double Slope { get; init; }

    /// <summary>What a pilot's firm braking takes of a surface's coefficient: 0.3 of the textbooks' 0.4 on dry asphalt.</summary>
    public static double UsualBrakingShare => 0.75;

    /// <summary>A runway by its surface.</summary>
    /// <remarks>
    /// Formula: the surface's rolling coefficient; the share of its braking one, and not less than the rolling one. Range: winds to 100 kt, slopes to
    /// ±0.3, shares from 0 to 1. Source: [anderson-itf], [raymer-ground].
    /// </remarks>
    /// <param name="surface">The surface.</param>
    /// <param name="air">The air; standard sea level where none is given.</param>
    /// <param name="headwind">w, negative from behind; a calm where none is given.</param>
    /// <param name="slope">tan ε, positive uphill.</param>
    /// <param name="brakingShare">What the pilot takes of the surface's braking; <see cref="UsualBrakingShare"/> where none is given.</param>
    /// <returns>The runway.</returns>
    /// <exception cref="RefusedInputException">A wind, slope or share outside its range.</exception>
    /// <example><code>LandingRunway.On(RunwaySurface.DryPaved).BrakingFriction // 0.30</code></example>
    public static LandingRunway On(
        RunwaySurface surface, Air? air = null, Speed? headwind = null, double slope = 0, double? brakingShare = null)
    {
        ArgumentNullException.ThrowIfNull(surface);
        double share = Require.Between(
            brakingShare ?? UsualBrakingShare, 0, 1, "share of the surface's braking", "More than all of it there is not.", nameof(brakingShare));
        Speed wind = headwind ?? Speed.Zero;
        Require.Headwind(wind, argument: nameof(headwind));
        Require.Between(slope, -0.3, 0.3, "runway slope", "Steeper is no runway.");
        return new()
        {
            Air = air ?? Air.StandardSeaLevel,
            Headwind = wind,
            RollingFriction = surface.RollingFriction,
            BrakingFriction = surface.Braking(share),
            Slope = slope,
        };
    }

    /// <summary>Wind and slope.</summary>
    public override string ToString() => string.Create(
        System.Globalization.CultureInfo.InvariantCulture, $"headwind {Headwind.Knots:0.0} kt, slope {100 * Slope:0.0} %");
}
