using FlapAero.Equations;
using MathNet.Numerics.Distributions;

namespace FlapAero.Tests.Scatter;

/// <summary>Intervals hold what they promise: counted, not believed.</summary>
public sealed class IntervalCoverageTests
{
    private const int Trials = 2000;

    [Theory, InlineData(0.02, 1000), InlineData(0.5, 200), InlineData(0.9, 500)]
    public void Wilson_ManyTrials_CoverTheShareAsOftenAsTheySay(double share, int count)
    {
        int covered = 0;
        for (int trial = 0; trial < Trials; trial++)
        {
            int hits = Enumerable.Range(0, count).Count(i => Uniform(trial, i) < share);
            (double low, double high) = Intervals.Wilson(hits, count, 0.95);
            covered += low <= share && share <= high ? 1 : 0;
        }

        // Wilson's coverage swings a little about 95 %; a count of 2 000 trials adds half a per cent.
        Assert.InRange((double)covered / Trials, 0.93, 0.975);
    }

    [Theory, InlineData(0.5, 100), InlineData(0.95, 400)]
    public void Ranks_ManyTrials_CoverTheQuantileAsOftenAsTheySay(double p, int count)
    {
        (int low, int high) = Intervals.Ranks(p, count, 0.95);
        double expected = Binomial.CDF(p, count, high - 1) - Binomial.CDF(p, count, low - 1);
        int covered = 0;
        for (int trial = 0; trial < Trials; trial++)
        {
            double[] sorted = [.. Enumerable.Range(0, count).Select(i => Uniform(trial, i)).Order()];
            covered += sorted[low - 1] <= p && p <= sorted[high - 1] ? 1 : 0;
        }

        double error = Math.Sqrt(expected * (1 - expected) / Trials);
        Assert.InRange((double)covered / Trials, expected - 4 * error, expected + 4 * error);
        Assert.True(expected >= 0.95);
    }

    [Fact]
    public void Ishigami_ManySeeds_IntervalsCoverAsOftenAsTheySay()
    {
        double v1 = 0.5 * Math.Pow(1 + SobolTests.B * Math.Pow(Math.PI, 4) / 5, 2);
        double v13 = 8 * SobolTests.B * SobolTests.B * Math.Pow(Math.PI, 8) / 225;
        double v = v1 + SobolTests.A * SobolTests.A / 8 + v13;
        int first = 0;
        int total = 0;
        const int trials = 120;
        for (int trial = 0; trial < trials; trial++)
        {
            var estimate = SobolTests.Sample(400, 3, (ulong)(100 + trial), SobolTests.Ishigami).Estimate(150, 0.9, (ulong)trial)[0];
            first += estimate.First.Low <= v1 / v && v1 / v <= estimate.First.High ? 1 : 0;
            total += estimate.Total.Low <= (v1 + v13) / v && (v1 + v13) / v <= estimate.Total.High ? 1 : 0;
        }

        // 90 % ± 2.7 % of 120 trials, and percentile intervals of a bootstrap are a little short.
        Assert.InRange((double)first / trials, 0.82, 0.98);
        Assert.InRange((double)total / trials, 0.82, 0.98);
    }

    private static double Uniform(int trial, int i) => new RandomStream(2, (ulong)trial, StreamPurpose.Scatter)[i];
}
