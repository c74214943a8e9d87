using FlapAero.Equations;

namespace FlapAero.Tests.Equations;

/// <summary>An aeroplane of 10 kN on 16 m²; expected values by bisection on the balance of forces.</summary>
public sealed class GlideLawsTests
{
    private const double Parasite = 0.035;
    private const double Induced = 0.058946275219220495;

    [Fact]
    public void Speed_LiftAndDragCoefficient_CarriesTheWeight() =>
        Assert.Equal(37.595280285, GlideLaws.Speed(0.8, 0.08, 10000, 1.1, 16), 1e-8);

    [Fact]
    public void SinPathAngle_SomeThrust_BalancesTheForces() =>
        Assert.Equal(-0.0417389132, GlideLaws.SinPathAngle(700, 16, Parasite, Induced, 10000, 500), 1e-9);

    [Fact]
    public void Thrust_ShallowDescent_BalancesTheForces() =>
        Assert.Equal(417.199667, GlideLaws.Thrust(700, 16, Parasite, Induced, 10000, -0.05), 1e-5);

    [Fact]
    public void LiftCoefficient_ShallowDescent_CarriesTheWeightAcrossThePath() =>
        Assert.Equal(0.8917413039, GlideLaws.LiftCoefficient(700, 16, 10000, -0.05), 1e-9);

    // The shallow form, √(3 C_D0/K) = 1.3346, is one per cent short of it.
    [Fact]
    public void MinimumSinkLift_Polar_IsWhereTheSearchOverExactGlidesFindsIt() =>
        Assert.Equal(1.3497529, GlideLaws.MinimumSinkLift(Parasite, Induced)!.Value, 1e-6);

    // 32 · 0.4 · 0.1 = 1.28 > 1.
    [Fact]
    public void MinimumSinkLift_VeryDraggyAeroplane_HasNoAnswer() =>
        Assert.Null(GlideLaws.MinimumSinkLift(0.4, 0.1));

    // Fourth-order differences of (C_L − 0.3 R^1.5)/C_D about C_L = 0.6, times C_D².
    [Fact]
    public void WayPerHeightSlope_Headwind_IsTheDerivativeTimesTheSquareOfDrag() =>
        Assert.Equal(0.00402310995, GlideLaws.WayPerHeightSlope(0.6, Parasite, Induced, 0.3), 1e-9);

    // A golden-section search over C_L puts the best there.
    [Fact]
    public void WayPerHeightSlope_AtTheBestLift_IsZero() =>
        Assert.Equal(0, GlideLaws.WayPerHeightSlope(0.65503101, Parasite, Induced, 0.3), 1e-8);
}
