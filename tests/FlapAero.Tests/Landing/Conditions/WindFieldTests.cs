using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>The wind by height and time, with a power law of 6 m/s at 10 m and a gust of 4 m/s from 3 s to 5 s.</summary>
public sealed class WindFieldTests
{
    private static readonly WindField<ScalarLane> Wind = new(99, 4, 3, 2, z => 6 * Math.Pow(z / 10, 0.25));
    private static readonly WindField<ScalarLane> Steady = new(5, 0, 3, 2);

    [Theory]
    [InlineData(2.0), InlineData(10.0), InlineData(60.0)]
    public void Rate_PowerLaw_IsItsDerivativeOnTheWay(double height)
    {
        double mean = Wind.WithoutGust().At(height, 0).Value;
        Assert.Equal(6 * Math.Pow(height / 10, 0.25), mean, 1e-12);
        Assert.Equal(-2 * 0.25 * mean / height, Wind.At(height, -2, 0).Rate.Value, 1e-8 * mean / height);
        Assert.Equal(-2 * 0.25 * mean / height + Wind.Gust(3.3).Rate.Value, Wind.At(height, -2, 3.3).Rate.Value, 1e-8);
    }

    [Fact]
    public void Mean_AboveTheCeiling_IsThatOfTheCeiling()
    {
        Assert.Equal(Wind.WithoutGust().At(590, 0).Value, Wind.WithoutGust().At(4000, 0).Value);
        Assert.Equal(Wind.At(590, 1, 0).Rate.Value, Wind.At(4000, 1, 0).Rate.Value);
        Assert.True(Wind.WithoutGust().At(589, 0).Value < Wind.WithoutGust().At(590, 0).Value);
        Assert.Equal((true, false), (Wind.Profile is not null, Wind.IsSteady));
    }

    [Fact]
    public void Steady_AnyHeightAndTime_IsTheSame()
    {
        Assert.Equal((5, 5, 0), (Steady.WithoutGust().At(1, 0).Value, Steady.At(50, 4).Value, Steady.At(20, 3, 4).Rate.Value));
        Assert.Equal((double.PositiveInfinity, double.NegativeInfinity), (Steady.NextEdge(1).Value, Steady.Settled.Value));
        Assert.Equal((false, true, true), (Steady.Profile is not null, Steady.IsSteady, default(WindField<ScalarLane>).IsSteady));
    }

    // A lane without a gust is the steady wind to the last bit, whatever blows in the others.
    [Fact]
    public void At_FourLanes_IsEachLanesOwnWind()
    {
        WindField<Lanes4> field = new(
            Lanes4.Gather([5, 1, 2, 3], 0, 1), Lanes4.Gather([0, 4, -4, 0], 0, 1), Lanes4.Gather([0, 3, 3, 3], 0, 1), 2);
        Lanes4 time = 3.5, at = field.At(2, time), rate = field.At(2, 1, time).Rate;
        Assert.Equal((5, 3), (at[0], at[3]));
        Assert.Equal((0, 0), (rate[0], rate[3]));
        Assert.Equal((1 + Wind.Gust(3.5).Change.Value, 2 - Wind.Gust(3.5).Change.Value), (at[1], at[2]));
        Assert.Equal([double.PositiveInfinity, 5, 5, double.PositiveInfinity], [.. Enumerable.Range(0, 4).Select(i => field.NextEdge(time)[i])]);
        Assert.Equal((1, -4), (field.Lane(1).At(9, 0).Value, field.Lane(2).Gust(4).Change.Value));
        Assert.True(field.WithoutGust().IsSteady);
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
        Assert.Equal(gust, Wind.Gust(time).Change.Value, 1e-12);
        Assert.Equal(2 * Math.PI * slope, Wind.Gust(time).Rate.Value, 1e-12);
        Assert.Equal(6 + gust, Wind.At(10, time).Value, 1e-12);
    }

    [Theory]
    [InlineData(0.0, 3.0), InlineData(2.99, 3.0), InlineData(3.0, 5.0), InlineData(4.9, 5.0), InlineData(5.0, double.PositiveInfinity), InlineData(6.0, double.PositiveInfinity)]
    public void NextEdge_FromATime_IsWhereTheGustBeginsOrEnds(double time, double edge) => Assert.Equal(edge, Wind.NextEdge(time).Value);
}
