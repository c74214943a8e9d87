using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Exponential and logarithm in lanes against the runtime's scalar functions.</summary>
public sealed class LaneExponentialTests
{
    [Fact]
    public void Exp_FromSmallestToLargest_IsThatOfTheScalarFunction()
    {
        var random = new Random(1);
        double[] most = [1e-9, 0.5, 5, 700];
        for (int i = 0; i < 100_000; i++)
        {
            double[] x = [.. most.Select(size => size * (2 * random.NextDouble() - 1))];
            AssertClose(x, Lanes4.Exp(Lanes4.Gather(x, 0, 1)), Math.Exp);
        }
    }

    [Fact]
    public void Log_FromSmallestToLargest_IsThatOfTheScalarFunction()
    {
        var random = new Random(2);
        for (int i = 0; i < 100_000; i++)
        {
            double near = 1 + 1e-9 * random.NextDouble(), far = Math.Exp(700 * (2 * random.NextDouble() - 1));
            double[] x = [near, 0.5 + random.NextDouble(), 100 * random.NextDouble(), far];
            AssertClose(x, Lanes4.Log(Lanes4.Gather(x, 0, 1)), Math.Log);
        }
    }

    // A result that is a normal number, whatever is asked: a ground effect far up is none, and the sink a long time after is none.
    [Theory]
    [InlineData(-708.0, -708.0), InlineData(-1e3, -708.0), InlineData(-1e300, -708.0), InlineData(double.NegativeInfinity, -708.0)]
    [InlineData(709.0, 709.0), InlineData(1e3, 709.0), InlineData(double.PositiveInfinity, 709.0)]
    public void Exp_BeyondWhatItCanSay_StaysWhatItIsThere(double x, double like) =>
        Assert.Equal(1, Lanes4.Exp(x)[0] / Math.Exp(like), 1e-15);

    [Fact]
    public void ExpAndLog_WholeAnswers_AreExact()
    {
        Assert.Equal(1, Lanes4.Exp(0)[2]);
        Assert.Equal(0, Lanes4.Log(1)[2]);
        Assert.True(double.IsNaN(Lanes4.Exp(double.NaN)[0]));
    }

    private static void AssertClose(double[] x, Lanes4 actual, Func<double, double> function)
    {
        for (int lane = 0; lane < x.Length; lane++)
        {
            double expected = function(x[lane]);
            Assert.InRange(Math.Abs(actual[lane] - expected), 0, 2 * (Math.BitIncrement(Math.Abs(expected)) - Math.Abs(expected)));
        }
    }
}
