using FlapAero.Equations;

namespace FlapAero.Tests.Equations;

public sealed class WindLawsTests
{
    private const double Degree = Math.PI / 180;

    // From 240° on runway 27: 30° off the nose, from the left.
    [Fact]
    public void Headwind_ThirtyDegreesOff_IsItsCosine() =>
        Assert.Equal(8.66025404, WindLaws.Headwind(10, 240 * Degree, 270 * Degree), 1e-8);

    [Fact]
    public void Crosswind_FromTheLeft_IsNegative() =>
        Assert.Equal(-5, WindLaws.Crosswind(10, 240 * Degree, 270 * Degree), 1e-9);

    // 36 · 0.995004165 − 5.
    [Fact]
    public void GroundSpeed_Headwind_TakesItOffTheLevelPart() =>
        Assert.Equal(30.82014995, WindLaws.GroundSpeed(36, -0.1, 5), 1e-8);

    // −3.594002/30.820150 = tan −0.116088.
    [Fact]
    public void AngleOverGround_Headwind_IsSteeper() =>
        Assert.Equal(-0.11608781, WindLaws.AngleOverGround(36, -0.1, 5), 1e-8);

    // Bisection on s/(√(V² − s²) − w) = tan γ.
    [Theory]
    [InlineData(5, 1.62396629)]
    [InlineData(-5, 2.14700763)]
    public void SinkOnPath_Wind_HoldsTheAngleOverTheGround(double headwind, double sink) =>
        Assert.Equal(sink, WindLaws.SinkOnPath(36, 0.0524, headwind), 1e-8);

    // 0.2^(1/7) = 0.794597.
    [Fact]
    public void PowerLaw_TwoMetres_IsFourFifthsOfTenMetres() =>
        Assert.Equal(6.35677924, WindLaws.PowerLaw(8, 10, 1.0 / 7, 2), 1e-8);

    // ln 66.667/ln 333.33 = 0.722947.
    [Fact]
    public void Logarithmic_TwoMetresOverGrass_IsLessThanThreeQuarters() =>
        Assert.Equal(5.78357955, WindLaws.Logarithmic(8, 10, 0.03, 2), 1e-8);

    [Theory]
    [InlineData(0.03)]
    [InlineData(0)]
    public void Logarithmic_AtOrBelowTheRoughness_IsCalm(double height) =>
        Assert.Equal(0, WindLaws.Logarithmic(8, 10, 0.03, height));
}
