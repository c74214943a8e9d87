using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// Lift coefficient against the angle of attack of the wing's reference chord, for one flap setting: a straight line,
/// then a parabola that meets it smoothly and peaks at the stall. Immutable. The curve ends one rounding past the stall,
/// and below at zero lift: the model has no deep and no inverted stall.
/// </summary>
public sealed class LiftCurve
{
    private readonly double _zeroLift;
    private readonly double _rounding;

    /// <summary>A lift curve.</summary>
    /// <param name="slopePerRadian">Slope a of the straight part, 1/rad, 2 to 2π.</param>
    /// <param name="zeroLiftAngle">Angle of attack α₀ without lift, −25° to 5°.</param>
    /// <param name="maximumLiftCoefficient">C_Lmax, 0.5 to 4.</param>
    /// <param name="stallRounding">Δα_r: how long before the stall the line begins to bend, 0.5° to 10°.</param>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    public LiftCurve(double slopePerRadian, Angle zeroLiftAngle, double maximumLiftCoefficient, Angle stallRounding)
    {
        SlopePerRadian = Require.Between(
            slopePerRadian, 2, 2 * Math.PI, "lift-curve slope (per radian)", "2π is a thin aerofoil's; a finite wing has less.");
        MaximumLiftCoefficient = Require.Between(
            maximumLiftCoefficient, 0.5, 4, "maximum lift coefficient", "No light aeroplane's wing lies outside it.");
        ZeroLiftAngle = Require.Between(
            zeroLiftAngle, Angle.FromDegrees(-25), Angle.FromDegrees(5), "zero-lift angle", "Camber and flap reach no further.");
        StallRounding = Require.Between(
            stallRounding, Angle.FromDegrees(0.5), Angle.FromDegrees(10), "stall rounding", "Sharper or softer is no light aeroplane's stall.");
        if (maximumLiftCoefficient < slopePerRadian * stallRounding.Radians / 2)
            throw Require.Refused(
                nameof(stallRounding), "stall rounding", stallRounding,
                "less than 2 C_Lmax/a", "The straight part of the curve would end below zero lift.");
        _zeroLift = zeroLiftAngle.Radians;
        _rounding = stallRounding.Radians;
    }

    /// <summary>Slope a of the straight part, per radian.</summary>
    public double SlopePerRadian { get; }

    /// <summary>Angle of attack α₀ without lift.</summary>
    public Angle ZeroLiftAngle { get; }

    /// <summary>C_Lmax.</summary>
    public double MaximumLiftCoefficient { get; }

    /// <summary>Δα_r.</summary>
    public Angle StallRounding { get; }

    /// <summary>The stalling angle α_s = α₀ + C_Lmax/a + Δα_r/2, of the reference chord.</summary>
    public Angle StallAngle => Degrees(SiStallAngle);

    private double SiStallAngle => LiftLaws.StallAngle(SlopePerRadian, _zeroLift, MaximumLiftCoefficient, _rounding);

    /// <summary>Lift coefficient at an angle of attack.</summary>
    /// <remarks>
    /// Formula: C_L = a(α − α₀) up to α_s − Δα_r; C_L = C_Lmax − a(α − α_s)²/(2Δα_r) from there.
    /// Range: α₀ to α_s + Δα_r. Source: [anderson-fund] for the line; the rounding is this model's own.
    /// </remarks>
    /// <param name="angleOfAttack">α of the reference chord.</param>
    /// <returns>C_L.</returns>
    /// <exception cref="RefusedInputException">
    /// Inverted flight, or further past the stall than the curve goes.
    /// </exception>
    /// <example><code>new LiftCurve(5, Angle.FromDegrees(-2), 1.4, Angle.FromDegrees(4)).LiftCoefficient(Angle.FromDegrees(4)) // 0.5236</code></example>
    public double LiftCoefficient(Angle angleOfAttack)
    {
        Require.Between(
            angleOfAttack, ZeroLiftAngle, Degrees(SiStallAngle + _rounding), "angle of attack",
            "Below it the lift turns over; beyond it a stalled wing is not described.");
        return LiftLaws.Coefficient(angleOfAttack.Radians, SlopePerRadian, _zeroLift, MaximumLiftCoefficient, _rounding);
    }

    /// <summary>Angle of attack that gives a lift coefficient, on the side below the stall.</summary>
    /// <remarks>
    /// Formula: the inverse of <see cref="LiftCoefficient"/>. Range: 0 to C_Lmax. Source: [anderson-fund].
    /// </remarks>
    /// <param name="liftCoefficient">C_L.</param>
    /// <returns>α of the reference chord.</returns>
    /// <exception cref="RefusedInputException">More than C_Lmax, or less than none.</exception>
    /// <example><code>new LiftCurve(5, Angle.FromDegrees(-2), 1.4, Angle.FromDegrees(4)).AngleOfAttack(0.5236).Degrees // 4.000</code></example>
    public Angle AngleOfAttack(double liftCoefficient)
    {
        Require.Between(
            liftCoefficient, 0, MaximumLiftCoefficient, "lift coefficient", "The wing has no more before it stalls.");
        return Degrees(LiftLaws.Angle(liftCoefficient, SlopePerRadian, _zeroLift, MaximumLiftCoefficient, _rounding));
    }

    /// <summary>Lift-curve slope of an elliptic wing.</summary>
    /// <remarks>Formula: a = a₀/(1 + a₀/πA). Range: A above 4 (a lifting line). Source: [anderson-fund].</remarks>
    /// <param name="sectionSlopePerRadian">Section slope a₀, 1/rad.</param>
    /// <param name="aspectRatio">A = b²/S.</param>
    /// <returns>a, 1/rad.</returns>
    /// <exception cref="RefusedInputException">No section slope, or a wing too stubby for a lifting line.</exception>
    /// <example><code>LiftCurve.EllipticWingSlope(6.2832, 8) // 5.0266</code></example>
    public static double EllipticWingSlope(double sectionSlopePerRadian, double aspectRatio)
    {
        Section(sectionSlopePerRadian);
        Require.Between(aspectRatio, 4, 40, "aspect ratio", "A lifting line describes slender wings.");
        return LiftLaws.EllipticSlope(sectionSlopePerRadian, aspectRatio);
    }

    /// <summary>Lift-curve slope of a straight wing, good for low aspect ratios too.</summary>
    /// <remarks>Formula: a = a₀/(√(1 + (a₀/πA)²) + a₀/πA). Range: A from 1. Source: [helmbold].</remarks>
    /// <param name="sectionSlopePerRadian">Section slope a₀, 1/rad.</param>
    /// <param name="aspectRatio">A = b²/S.</param>
    /// <returns>a, 1/rad.</returns>
    /// <exception cref="RefusedInputException">No section slope, or no wing.</exception>
    /// <example><code>LiftCurve.HelmboldSlope(6.2832, 8) // 4.9058</code></example>
    public static double HelmboldSlope(double sectionSlopePerRadian, double aspectRatio)
    {
        Section(sectionSlopePerRadian);
        Require.Between(aspectRatio, 1, 40, "aspect ratio", "The form is made for wings.");
        return LiftLaws.HelmboldSlope(sectionSlopePerRadian, aspectRatio);
    }

    private static void Section(double slope) =>
        Require.Between(slope, 4, 7.5, "section lift slope (per radian)", "Measured sections lie near 2π.");

    private static Angle Degrees(double radians) =>
        Angle.FromRadians(radians).ToUnit(UnitsNet.Units.AngleUnit.Degree);
}
