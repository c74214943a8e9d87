using CsCheck;
using UnitsNet;

namespace FlapAero.Tests.Properties;

public sealed class LiftProperties
{
    private const double Step = 1e-6;

    [Fact]
    public void LiftCurve_AtTheJoin_IsContinuousWithItsSlope() =>
        Generators.LiftCurves.Sample(
            curve =>
            {
                double join = curve.StallAngle.Radians - curve.StallRounding.Radians;
                double onLine = curve.SlopePerRadian * (join - curve.ZeroLiftAngle.Radians);
                Assert.Equal(onLine, At(curve, join), 1e-12);
                Assert.Equal(curve.SlopePerRadian, (At(curve, join) - At(curve, join - Step)) / Step, 1e-6);
                // The parabola's slope has lost a Step/Δα_r of itself by the middle of the step.
                double bend = curve.SlopePerRadian * Step / curve.StallRounding.Radians;
                Assert.Equal(curve.SlopePerRadian, (At(curve, join + Step) - At(curve, join)) / Step, bend + 1e-6);
            },
            iter: Generators.Many);

    [Fact]
    public void LiftCurve_AtTheStallAngle_IsHighest() =>
        Gen.Select(Generators.LiftCurves, Gen.Double[0, 1]).Sample(
            (curve, share) =>
            {
                double low = curve.ZeroLiftAngle.Radians;
                double high = curve.StallAngle.Radians + curve.StallRounding.Radians;
                Assert.Equal(curve.MaximumLiftCoefficient, At(curve, curve.StallAngle.Radians), 1e-12);
                double lift = At(curve, Math.Clamp(low + share * (high - low), low + 1e-12, high - 1e-12));
                Assert.True(lift <= curve.MaximumLiftCoefficient);
            },
            iter: Generators.Many);

    [Fact]
    public void LiftCurve_BelowTheStall_Rises() =>
        Gen.Select(Generators.LiftCurves, Gen.Double[0, 0.999]).Sample(
            (curve, share) =>
            {
                double low = curve.ZeroLiftAngle.Radians + 1e-9;
                double high = curve.StallAngle.Radians;
                double angle = low + share * (high - low);
                Assert.True(At(curve, angle + (high - angle) / 2) > At(curve, angle));
            },
            iter: Generators.Many);

    [Fact]
    public void AngleOfAttack_OfTheLiftThere_IsTheAngle() =>
        Gen.Select(Generators.LiftCurves, Gen.Double[0.001, 0.999]).Sample(
            (curve, share) =>
            {
                double angle = curve.ZeroLiftAngle.Radians + share * (curve.StallAngle - curve.ZeroLiftAngle).Radians;
                Assert.Equal(angle, curve.AngleOfAttack(At(curve, angle)).Radians, 1e-9);
            },
            iter: Generators.Many);

    [Fact]
    public void LiftCoefficient_OfTheAngleThere_IsTheCoefficient() =>
        Gen.Select(Generators.LiftCurves, Gen.Double[0.001, 1]).Sample(
            (curve, share) =>
            {
                double lift = share * curve.MaximumLiftCoefficient;
                Assert.Equal(lift, curve.LiftCoefficient(curve.AngleOfAttack(lift)), 1e-12);
            },
            iter: Generators.Many);

    [Fact]
    public void HelmboldSlope_AnyWing_IsBelowTheEllipticWings() =>
        Gen.Select(Gen.Double[4, 7.5], Gen.Double[4, 40]).Sample(
            (section, aspectRatio) =>
                Assert.True(LiftCurve.HelmboldSlope(section, aspectRatio) < LiftCurve.EllipticWingSlope(section, aspectRatio)),
            iter: Generators.Many);

    [Fact]
    public void HelmboldSlope_WingsOfLightAeroplanes_IsWithinFourPerCentOfTheEllipticWings() =>
        Gen.Double[6, 12].Sample(
            aspectRatio => Assert.InRange(
                LiftCurve.HelmboldSlope(2 * Math.PI, aspectRatio) / LiftCurve.EllipticWingSlope(2 * Math.PI, aspectRatio), 0.96, 1),
            iter: Generators.Many);

    [Fact]
    public void WingSlopes_MoreSlender_AreSteeperAndBelowTheSections() =>
        Gen.Select(Gen.Double[4, 7.5], Gen.Double[4, 39], Gen.Double[0.1, 1]).Sample(
            (section, aspectRatio, more) =>
            {
                Assert.InRange(LiftCurve.HelmboldSlope(section, aspectRatio + more), LiftCurve.HelmboldSlope(section, aspectRatio), section);
                Assert.InRange(
                    LiftCurve.EllipticWingSlope(section, aspectRatio + more), LiftCurve.EllipticWingSlope(section, aspectRatio), section);
            },
            iter: Generators.Many);

    [Fact]
    public void InducedDragFactor_Higher_RisesBetweenZeroAndOne() =>
        Gen.Select(Gen.Double[0.001, 3], Gen.Double[1.0001, 2], Gen.Double[5, 25]).Sample(
            (share, higher, span) =>
            {
                double low = GroundEffect.InducedDragFactor(Length.FromMeters(share * span), Length.FromMeters(span));
                double high = GroundEffect.InducedDragFactor(Length.FromMeters(share * higher * span), Length.FromMeters(span));
                Assert.True(low > 0 && low < high && high < 1);
            },
            iter: Generators.Many);

    private static double At(LiftCurve curve, double radians) => curve.LiftCoefficient(Angle.FromRadians(radians));
}
