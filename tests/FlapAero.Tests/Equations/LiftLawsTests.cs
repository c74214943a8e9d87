using FlapAero.Equations;

namespace FlapAero.Tests.Equations;

/// <summary>A curve with a = 5/rad, α₀ = −0.04, C_Lmax = 1.5, Δα_r = 0.08: α_s = −0.04 + 0.3 + 0.04 = 0.3 by hand.</summary>
public sealed class LiftLawsTests
{
    private const double Slope = 5;
    private const double ZeroLift = -0.04;
    private const double Maximum = 1.5;
    private const double Rounding = 0.08;

    // 2π/(1 + 2/8) = 1.6π.
    [Fact]
    public void EllipticSlope_ThinSectionOnAspectRatioEight_IsFourFifthsOfTheSection() =>
        Assert.Equal(1.6 * Math.PI, LiftLaws.EllipticSlope(2 * Math.PI, 8), 1e-12);

    [Theory]
    [InlineData(6.283185307, 8, 4.905762845)]
    [InlineData(6, 3, 3.292963732)]
    public void HelmboldSlope_SectionAndAspectRatio_IsTheForm(double section, double aspectRatio, double slope) =>
        Assert.Equal(slope, LiftLaws.HelmboldSlope(section, aspectRatio), 1e-8);

    [Fact]
    public void StallAngle_Curve_IsHalfARoundingPastTheLine() =>
        Assert.Equal(0.3, LiftLaws.StallAngle(Slope, ZeroLift, Maximum, Rounding), 1e-12);

    [Theory]
    [InlineData(-0.04, 0)]
    [InlineData(0.1, 0.7)]
    [InlineData(0.22, 1.3)]
    [InlineData(0.28, 1.4875)]
    [InlineData(0.3, 1.5)]
    [InlineData(0.32, 1.4875)]
    public void Coefficient_Angle_IsOnTheLineThenOnTheParabola(double angle, double coefficient) =>
        Assert.Equal(coefficient, LiftLaws.Coefficient(angle, Slope, ZeroLift, Maximum, Rounding), 1e-12);

    [Theory]
    [InlineData(0.7, 0.1)]
    [InlineData(1.0, 0.16)]
    [InlineData(1.3, 0.22)]
    [InlineData(1.45, 0.26)]
    [InlineData(1.5, 0.3)]
    public void Angle_Coefficient_IsTheOneBelowTheStall(double coefficient, double angle) =>
        Assert.Equal(angle, LiftLaws.Angle(coefficient, Slope, ZeroLift, Maximum, Rounding), 1e-9);

    // Three degrees down, seven of angle of attack, wing set at one and a half: nose two and a half up.
    [Fact]
    public void PitchAttitude_Approach_IsPathPlusAngleLessIncidence() =>
        Assert.Equal(2.5, LiftLaws.PitchAttitude(-3, 7, 1.5), 1e-12);
}
