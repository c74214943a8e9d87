using CsCheck;
using FlapAero.Equations;
using MathNet.Numerics.Distributions;

namespace FlapAero.Tests.Scatter;

/// <summary>Intervals for shares and quantiles against their own equations and a reference library.</summary>
public sealed class IntervalTests
{
    [Fact]
    public void Wilson_TextbookCases_GiveTextbookNumbers()
    {
        // z = 1.959964: 0 of 10 gives z²/(n + z²) above, 5 of 10 is symmetric about a half.
        (double low, double high) = Intervals.Wilson(0, 10, 0.95);
        Assert.Equal(0, low);
        Assert.Equal(3.8414588 / 13.8414588, high, 1e-7);
        (low, high) = Intervals.Wilson(5, 10, 0.95);
        Assert.Equal(0.2365931, low, 1e-6);
        Assert.Equal(1, low + high, 1e-12);
        Assert.Equal(1, Intervals.Wilson(10, 10, 0.95).High);
    }

    [Fact]
    public void Wilson_NoneOrAll_EndsExactlyThere()
    {
        for (int count = 1; count <= 500; count++)
            Assert.Equal((0, 1), (Intervals.Wilson(0, count, 0.95).Low, Intervals.Wilson(count, count, 0.95).High));
    }

    [Fact]
    public void Wilson_AnyShare_SolvesItsOwnEquation() =>
        Gen.Int[1, 5000].SelectMany(n => Gen.Select(Gen.Int[0, n], Gen.Const(n), Gen.Double[0.5, 0.999])).Sample((hits, n, confidence) =>
        {
            (double low, double high) = Intervals.Wilson(hits, n, confidence);
            double z = StandardNormal.Quantile(0.5 + 0.5 * confidence);
            double p = (double)hits / n;
            bool OnEdge(double edge) => Math.Abs((p - edge) * (p - edge) - z * z * edge * (1 - edge) / n) < 1e-12;
            return low >= 0 && low <= p && p <= high && high <= 1 && OnEdge(low) && OnEdge(high);
        });

    [Theory, InlineData(0.05, 100), InlineData(0.5, 101), InlineData(0.95, 400), InlineData(0.99, 1000)]
    public void Ranks_OfAQuantile_HaveAtLeastTheirConfidenceAndNoneToSpare(double p, int count)
    {
        (int low, int high) = Intervals.Ranks(p, count, 0.95);
        // P(X_(low) ≤ ξ ≤ X_(high)) = P(low ≤ B < high).
        Assert.True(Binomial.CDF(p, count, low - 1) <= 0.025 && Binomial.CDF(p, count, low) > 0.025);
        Assert.True(1 - Binomial.CDF(p, count, high - 1) <= 0.025 && 1 - Binomial.CDF(p, count, high - 2) > 0.025);
    }

    [Fact]
    public void Ranks_OfTooFewValues_LieOutside()
    {
        Assert.Equal(0, Intervals.Ranks(0.01, 20, 0.95).Low);
        Assert.Equal(21, Intervals.Ranks(0.99, 20, 0.95).High);
    }
}
