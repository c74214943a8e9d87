using CsCheck;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests.Wings;

public sealed class FlapGeometryTests
{
    private static readonly FlapGeometry Slotted = new(FlapKind.Slotted, 0.25, 0.1, 0.6);

    [Fact]
    public void ThinAerofoilLift_Flap_IsTheIntegralOfItsCamberLine()
    {
        // c_l = 2π(α − α₀), α₀ = −(1/π) ∫ (dz/dx)(cos θ − 1) dθ over the flap, where dz/dx = −δ: the textbook's other way to
        // the same thing.
        const double Share = 0.3, Deflection = 0.1, Steps = 200000;
        double hinge = Math.Acos(1 - 2 * (1 - Share));
        double width = (Math.PI - hinge) / Steps;
        double zeroLift = 0;
        for (int i = 0; i < Steps; i++)
            zeroLift += -1 / Math.PI * -Deflection * (Math.Cos(hinge + (i + 0.5) * width) - 1) * width;
        Assert.Equal(2 * Math.PI * (0.05 - zeroLift), FlapLaws.ThinAerofoilLift(0.05, Share, Deflection), 1e-9);
    }

    [Theory, InlineData(FlapKind.Plain), InlineData(FlapKind.Slotted)]
    public void At_MoreDeflection_GivesMoreOfBothAndLessThanTheThinAerofoil(FlapKind kind) =>
        Gen.Select(Gen.Double[0.1, 0.4], Gen.Double[0.01, 1], Gen.Double[0.01, 0.99]).Sample(
            (chord, more, less) =>
            {
                var flap = new FlapGeometry(kind, chord, 0.1, 0.6);
                PartSpanFlap big = flap.At(flap.LargestDeflection * more);
                PartSpanFlap small = flap.At(flap.LargestDeflection * more * less);
                Assert.True(big.ZeroLiftAngleChange < small.ZeroLiftAngleChange);
                Assert.True(big.MaximumLiftIncrement > small.MaximumLiftIncrement);
                double thin = flap.ThinAerofoilEffectiveness() * flap.LargestDeflection.Degrees * more;
                Assert.InRange(-big.ZeroLiftAngleChange.Degrees, 0, thin);
            },
            iter: 2000);

    [Fact]
    public void OnWing_LongerFlap_GivesMore()
    {
        FlapIncrements[] increments = [.. new[] { 0.3, 0.5, 0.7, 1 }.Select(to =>
            new FlapGeometry(FlapKind.Slotted, 0.25, 0, to).OnWing(Planforms.Tapered(7, 0.7), Planforms.Thin, Angle.FromDegrees(30)))];
        Assert.All(increments.Zip(increments.Skip(1)), pair =>
        {
            Assert.True(pair.Second.PartSpanFactor > pair.First.PartSpanFactor);
            Assert.True(pair.Second.MaximumLiftIncrement > pair.First.MaximumLiftIncrement);
        });
        Assert.Equal(1, increments[^1].PartSpanFactor, 1e-9);
    }

    public static TheoryData<string, double> Aeroplanes => new() { { "Trainer H4", 0.7 }, { "Trainer L2", 0.8 } };

    // The aeroplanes' files say that their numbers are estimates and inventions of this kind: a quarter-chord slotted flap
    // on half the span.
    [Theory, MemberData(nameof(Aeroplanes))]
    public void OnWing_DemoAeroplanes_HasTheirSignsAndSizes(string name, double taper)
    {
        Aeroplane aeroplane = DemoAeroplanes.All.Single(each => each.Name == name);
        LiftCurve up = aeroplane.FlapsUp.Lift;
        WingPlanform planform = WingPlanform.Like(aeroplane.Wing, taper);
        WingSection section = new(Planforms.ThinSlope, up.ZeroLiftAngle, 1.5);
        foreach (FlapSetting setting in aeroplane.FlapSettings.Skip(1))
        {
            FlapIncrements estimate = Slotted.OnWing(planform, section, setting.Deflection);
            double zeroLift = (setting.Lift.ZeroLiftAngle - up.ZeroLiftAngle).Degrees;
            double maximum = setting.Lift.MaximumLiftCoefficient - up.MaximumLiftCoefficient;
            Assert.InRange(estimate.ZeroLiftAngleChange.Degrees / zeroLift, 1, 1.3);
            Assert.InRange(estimate.MaximumLiftIncrement / maximum, 0.85, 1.2);
        }
    }

    [Fact]
    public void SlopePerRadian_DemoAeroplanes_IsWithinTwoPerCentOfTheirFiles() =>
        Assert.All(DemoAeroplanes.All, aeroplane => Assert.Equal(
            1, Planforms.Line(WingPlanform.Like(aeroplane.Wing, 0.7)).SlopePerRadian / aeroplane.FlapsUp.Lift.SlopePerRadian, 0.02));
}
