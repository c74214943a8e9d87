using System.Runtime.CompilerServices;
using UnitsNet;

namespace FlapAero;

/// <summary>Height over the threshold and aiming point are one choice: the path's angle gives each from the other.</summary>
public static class FinalPath
{
    /// <summary>Where a path meets the runway, past the threshold: the point to aim at.</summary>
    /// <remarks>Formula: d = h_t/tan γ_p. Range: h_t 5 m to 60 m, γ_p 1° to 15°. Source: [phak].</remarks>
    /// <param name="thresholdHeight">h_t, wheels over the threshold.</param>
    /// <param name="pathAngle">γ_p, over the ground.</param>
    /// <returns>d.</returns>
    /// <exception cref="RefusedInputException">A height or an angle outside its range.</exception>
    /// <example><code>FinalPath.AimingPoint(Length.FromFeet(50), Angle.FromDegrees(3)).Meters // 290.8</code></example>
    public static Length AimingPoint(Length thresholdHeight, Angle pathAngle) => Over(thresholdHeight) / Slope(pathAngle);

    /// <summary>At which height a path that is aimed at a point crosses the threshold.</summary>
    /// <remarks>Formula: h_t = d tan γ_p. Range: h_t 5 m to 60 m, γ_p 1° to 15°. Source: [phak].</remarks>
    /// <param name="aimingPoint">d, past the threshold.</param>
    /// <param name="pathAngle">γ_p, over the ground.</param>
    /// <returns>h_t.</returns>
    /// <exception cref="RefusedInputException">An angle, or the height that the point asks for, outside its range.</exception>
    /// <example><code>FinalPath.ThresholdHeight(Length.FromMeters(290), Angle.FromDegrees(3)).Feet // 49.9</code></example>
    public static Length ThresholdHeight(Length aimingPoint, Angle pathAngle)
    {
        double slope = Slope(pathAngle);
        Require.In(aimingPoint, UnitsNet.Units.LengthUnit.Meter, "aiming point");
        return Over(aimingPoint * slope, argument: nameof(aimingPoint));
    }

    /// <summary>A height over the threshold that a pilot may choose.</summary>
    internal static Length Over(
        Length height, string what = "height over the threshold",
        [CallerArgumentExpression(nameof(height))] string? argument = null) =>
        Require.Between(
            height, Length.FromMeters(5), Length.FromMeters(60), what,
            "Lower leaves no height to round out from; higher flies past the runway.", argument);

    /// <summary>The path angle of an approach.</summary>
    internal static Angle Approach(Angle pathAngle) => Require.Between(
        pathAngle, Angle.FromDegrees(1), Angle.FromDegrees(15), "path angle", "Light aeroplanes approach inside it.");

    private static double Slope(Angle pathAngle) => Math.Tan(Approach(pathAngle).Radians);
}
