using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>The wind by height and time, with a power law of 6 m/s at 10 m and a gust of 4 m/s from 3 s to 5 s.</summary>
public sealed class WindFieldTests
{
    private static readonly WindField Wind = new(z => 6 * Math.Pow(z / 10, 0.25), 99, 4, 3, 2);
    private static readonly WindField Steady = new(null, 5, 0, 3, 2);

    [Theory]
    [InlineData(2.0), InlineData(10.0), InlineData(60.0)]
    public void Shear_PowerLaw_IsItsDerivative(double height)
    {
        Assert.Equal(6 * Math.Pow(height / 10, 0.25), Wind.Mean(height), 1e-12);
        Assert.Equal(0.25 * Wind.Mean(height) / height, Wind.Shear(height), 1e-8 * Wind.Mean(height) / height);
    }

    [Fact]
    public void Mean_AboveTheCeiling_IsThatOfTheCeiling()
    {
        Assert.Equal(Wind.Mean(590), Wind.Mean(4000));
        Assert.Equal(Wind.Shear(590), Wind.Shear(4000));
        Assert.True(Wind.Mean(589) < Wind.Mean(590));
        Assert.True(Wind.HasProfile);
    }

    [Fact]
    public void Steady_AnyHeightAndTime_IsTheSame()
    {
        Assert.Equal((5, 5, 0), (Steady.Mean(1), Steady.At(50, 4), Steady.Shear(20)));
        Assert.Equal((0, 0, double.PositiveInfinity), (Steady.Gust(4), Steady.TimeRate(4), Steady.NextEdge(1)));
        Assert.False(Steady.HasProfile);
    }

    // ½ Δw (1 − cos 2π(t − t_g)/λ), and its slope πΔw/λ · sin.
    [Theory]
    [InlineData(2.9, 0.0, 0.0)]
    [InlineData(3.0, 0.0, 0.0)]
    [InlineData(3.5, 2.0, 1.0)]
    [InlineData(4.0, 4.0, 0.0)]
    [InlineData(4.5, 2.0, -1.0)]
    [InlineData(5.0, 0.0, 0.0)]
    [InlineData(5.5, 0.0, 0.0)]
    public void Gust_OverItsTime_RisesAndFalls(double time, double gust, double slope)
    {
        Assert.Equal(gust, Wind.Gust(time), 1e-12);
        Assert.Equal(2 * Math.PI * slope, Wind.TimeRate(time), 1e-12);
        Assert.Equal(6 + gust, Wind.At(10, time), 1e-12);
    }

    [Theory]
    [InlineData(0.0, 3.0), InlineData(2.99, 3.0), InlineData(3.0, 5.0), InlineData(4.9, 5.0), InlineData(5.0, double.PositiveInfinity), InlineData(6.0, double.PositiveInfinity)]
    public void NextEdge_FromATime_IsWhereTheGustBeginsOrEnds(double time, double edge) => Assert.Equal(edge, Wind.NextEdge(time));
}
