using System.Runtime.InteropServices;
using FlapAero.Equations;
using MathNet.Numerics.Statistics;

namespace FlapAero.Tests.Scatter;

/// <summary>Drawn landings: the same whoever flies them, the canonical one without a spread, a linear map with a small one.</summary>
public sealed class ScatterRunTests
{
#if MUTATION_RUN
    private const string? TooSlow = "A mutated library runs a hundred times slower.";
#else
    private const string? TooSlow = null;
#endif

    private static readonly (LandingVariable Variable, double Deviation)[] Widths =
    [
        (LandingVariable.Mass, 8), (LandingVariable.Headwind, 0.03), (LandingVariable.ThresholdHeight, 0.05),
        (LandingVariable.ThresholdSpeed, 0.05), (LandingVariable.FlareTimeConstant, 0.01), (LandingVariable.HoldOffHeight, 0.004),
        (LandingVariable.TouchdownLiftFraction, 0.001), (LandingVariable.PowerCutHeight, 0.05), (LandingVariable.PowerCutTime, 0.02),
        (LandingVariable.BrakingFriction, 0.002), (LandingVariable.NoseLowerSpeedFraction, 0.005),
    ];

    [Fact]
    public void Fly_ZeroWidths_GivesTheCanonicalLandingExactly()
    {
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Cases.Concat(ReferenceLandings.Refusals))
        {
            DistributionLaw[] laws =
            [
                .. Spreads.Row(landing.Input).Select((value, i) => (i % 4) switch
                {
                    0 => DistributionLaw.Normal(value, 0),
                    1 => DistributionLaw.Uniform(value, value),
                    2 => DistributionLaw.Triangular(value, value, value),
                    _ => DistributionLaw.TruncatedNormal(value, 0, value - 1, value + 1),
                }),
            ];
            var sampler = new LandingSampler(laws, 10, 9, 0.5);
            sampler.Draw(new RandomStream(1, 2, StreamPurpose.Scatter), out LandingInput drawn);
            Assert.Equal(landing.Input, drawn);
            Assert.Empty(sampler.Factors);

            var many = new LandingOutcome[11];
            LandingSolver.Solve([.. Enumerable.Repeat(landing.Input, 16)], many = new LandingOutcome[16]);
            LandingOutcome one = LandingSolver.Solve(landing.Input);
            foreach (LandingOutcome outcome in Spreads.Fly(sampler, 11, 1))
            {
                Assert.True(SameBits([outcome], [many[0]]), landing.Name);
                Assert.Equal(one.Refusal, outcome.Refusal);
                if (one.Refusal == LandingRefusal.None)
                    Assert.Equal(1, outcome.StopDistance / one.StopDistance, 1e-9);
            }
        }
    }

    [Fact]
    public void Fly_OneThreadManyThreadsAndShuffledBlocks_GivesTheSameBits()
    {
        LandingSampler sampler = Wide();
        const int count = 3003;
        LandingOutcome[] one = Spreads.Fly(sampler, count, 42);
        foreach (int threads in (int[])[2, 3, 16])
            Assert.True(SameBits(one, Spreads.Fly(sampler, count, 42, threads)), $"{threads} threads");

        var shuffled = new LandingOutcome[3008];
        var room = new LandingInput[ScatterRun.BlockSize];
        int[] order = [.. Enumerable.Range(0, (shuffled.Length + ScatterRun.BlockSize - 1) / ScatterRun.BlockSize)];
        new Random(3).Shuffle(order);
        foreach (int block in order)
            ScatterRun.FlyBlock(block, room, shuffled, (first, inputs) =>
            {
                for (int i = 0; i < inputs.Length; i++)
                    sampler.Draw(new RandomStream(42, (ulong)(first + i), StreamPurpose.Scatter), out inputs[i]);
            });
        Assert.True(SameBits(one, shuffled.AsSpan(0, count)));
        Assert.False(SameBits(one, Spreads.Fly(sampler, count, 43)));
    }

    [Theory, InlineData(1), InlineData(7), InlineData(128), InlineData(130)]
    public void Fly_FewerLandings_GivesTheFirstOfMore(int few) =>
        Assert.True(SameBits(Spreads.Fly(Wide(), few, 5), Spreads.Fly(Wide(), 300, 5).AsSpan(0, few)));

    [Fact]
    public void Fly_EveryLanding_IsWhatTheSolverGivesForItsDraw()
    {
        LandingSampler sampler = Wide();
        LandingOutcome[] outcomes = Spreads.Fly(sampler, 500, 8);
        int refused = 0;
        for (int i = 0; i < outcomes.Length; i++)
        {
            sampler.Draw(new RandomStream(8, (ulong)i, StreamPurpose.Scatter), out LandingInput drawn);
            LandingOutcome one = LandingSolver.Solve(drawn);
            Assert.Equal(one.Refusal, outcomes[i].Refusal);
            refused += one.Refusal == LandingRefusal.None ? 0 : 1;
            if (one.Refusal == LandingRefusal.None)
                Assert.Equal(1, outcomes[i].StopDistance / one.StopDistance, 1e-5);
        }

        Assert.InRange(refused, 1, 400);
    }

    [Fact(Skip = TooSlow)]
    public void Fly_SmallWidths_AgreesWithLinearPropagation()
    {
        const int count = 20_000;
        var sampler = new LandingSampler(Spreads.Laws(Spreads.Reference, [.. Widths.Select(Law)]));
        LandingOutcome[] outcomes = Spreads.Fly(sampler, count, 1, 2);
        Assert.All(outcomes, outcome => Assert.Equal(LandingRefusal.None, outcome.Refusal));

        AssertLinear(outcomes, outcome => outcome.TouchdownDistance, 0);
        AssertLinear(outcomes, outcome => outcome.StopDistance, 0);
    }

    [Theory(Skip = TooSlow), InlineData(0.8), InlineData(-0.8)]
    public void Fly_SmallWidthsCorrelated_AgreesWithLinearPropagation(double correlation)
    {
        var sampler = new LandingSampler(Spreads.Laws(Spreads.Reference, [.. Widths.Select(Law)]), 10, 9, correlation);
        AssertLinear(Spreads.Fly(sampler, 20_000, 1, 2), outcome => outcome.StopDistance, correlation);
    }

    [Fact(Skip = TooSlow)]
    public void Fly_MoreLandings_AllocatesNothingButTheirResults()
    {
        // The solver allocates nothing when it is optimised; what an unoptimised build's boxes take is not the scatter's.
        LandingSampler sampler = Wide();
        long Allocated(Action action)
        {
            action();
            long before = GC.GetAllocatedBytesForCurrentThread();
            action();
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        LandingInput[] later = [.. Draws(sampler, 4096).Skip(1024)];
        var outcomes = new LandingOutcome[later.Length];
        long solver = 0;
        for (int first = 0; first < later.Length; first += ScatterRun.BlockSize)
        {
            int from = first;
            solver += Allocated(() => LandingSolver.Solve(
                later.AsSpan(from, ScatterRun.BlockSize), outcomes.AsSpan(from, ScatterRun.BlockSize)));
        }

        long more = Allocated(() => Spreads.Fly(sampler, 4096, 1)) - Allocated(() => Spreads.Fly(sampler, 1024, 1));
        double perLanding = (double)(more - solver) / later.Length - Marshal.SizeOf<LandingOutcome>();
        // The smallest object takes 24 bytes; the runtime's own tiering may take a few of this thread's in passing.
        Assert.InRange(perLanding, -8, 8);
    }

    [Theory, InlineData(1), InlineData(2)]
    public void Fly_ALandingOfNonsense_IsRefusedByItsNumber(int threads)
    {
        RefusedInputException refusal = Assert.Throws<RefusedInputException>(() => ScatterRun.Fly(1000, threads, (first, inputs) =>
        {
            for (int i = 0; i < inputs.Length; i++)
                inputs[i] = first + i is 300 or 900 ? Spreads.Reference with { Mass = -1 } : Spreads.Reference;
        }));
        Assert.StartsWith("Landing 301: mass", refusal.Message, StringComparison.Ordinal);
    }

    [Theory, InlineData(0.7), InlineData(-0.7), InlineData(1), InlineData(-1)]
    public void Draw_TheFarthestNumbersOfAStream_AreFinite(double correlation)
    {
        const double least = 0.5 / (1UL << 52);
        var sampler = new LandingSampler(
            Spreads.Laws(
                Spreads.Reference,
                (LandingVariable.ThresholdSpeed, DistributionLaw.Normal(35, 1)),
                (LandingVariable.ThresholdHeight, DistributionLaw.Normal(15, 1))),
            10, 9, correlation);
        foreach (double leader in (double[])[least, 0.5, 1 - least])
        {
            foreach (double own in (double[])[least, 0.5, 1 - least])
            {
                sampler.Draw(new Given(leader, own), out LandingInput drawn);
                Assert.InRange(drawn.ThresholdSpeed, 35 - 8.3, 35 + 8.3);
                Assert.InRange(drawn.ThresholdHeight, 15 - 11.8, 15 + 8.3);
            }
        }
    }

    private readonly struct Given(double leader, double own) : IUniforms
    {
        private readonly double _leader = leader;
        private readonly double _own = own;

        public double this[int slot] => slot == (int)LandingVariable.ThresholdSpeed ? _leader : _own;
    }

    [Theory, InlineData(0.7), InlineData(-0.4), InlineData(1), InlineData(-1)]
    public void Draw_CorrelatedNormals_HaveTheCorrelation(double correlation)
    {
        const int count = 20_000;
        var sampler = new LandingSampler(
            Spreads.Laws(
                Spreads.Reference,
                (LandingVariable.ThresholdSpeed, DistributionLaw.Normal(35, 1)),
                (LandingVariable.ThresholdHeight, DistributionLaw.Normal(15, 2))),
            10, 9, correlation);
        LandingInput[] drawn = Draws(sampler, count);
        double[] speeds = [.. drawn.Select(landing => landing.ThresholdSpeed)];
        double[] heights = [.. drawn.Select(landing => landing.ThresholdHeight)];

        Assert.Equal(correlation, Correlation.Pearson(speeds, heights), 4 * (1 - correlation * correlation) / Math.Sqrt(count) + 1e-9);
        // The follower keeps its own distribution.
        Assert.Equal(15, heights.Mean(), 0.06);
        Assert.Equal(2, heights.StandardDeviation(), 0.06);
        Array.Sort(heights);
        Assert.True(Ks.Distance(heights, x => MathNet.Numerics.Distributions.Normal.CDF(15, 2, x)) < Ks.Limit(count));
        Assert.Equal([10, 9], Assert.Single(sampler.Factors));
    }

    [Fact]
    public void Draw_CorrelatedOtherFamilies_HaveTheRankCorrelationOfTheCopula()
    {
        const double correlation = 0.6;
        var sampler = new LandingSampler(
            Spreads.Laws(
                Spreads.Reference,
                (LandingVariable.ThresholdSpeed, DistributionLaw.Triangular(30, 31, 40)),
                (LandingVariable.ThresholdHeight, DistributionLaw.Uniform(10, 20))),
            10, 9, correlation);
        LandingInput[] drawn = Draws(sampler, 20_000);
        double ranks = Correlation.Spearman(drawn.Select(d => d.ThresholdSpeed), drawn.Select(d => d.ThresholdHeight));
        // Of a Gaussian copula: ρ_S = (6/π) arcsin(ρ/2).
        Assert.Equal(6 / Math.PI * Math.Asin(correlation / 2), ranks, 0.02);
    }

    [Fact]
    public void Draw_AnotherInputFixed_LeavesTheRestAsItWas()
    {
        var both = new LandingSampler(Spreads.Laws(Spreads.Reference, Law(Widths[0]), Law(Widths[3])));
        var one = new LandingSampler(Spreads.Laws(Spreads.Reference, Law(Widths[3])));
        Assert.Equal(Draws(both, 50).Select(d => d.ThresholdSpeed), Draws(one, 50).Select(d => d.ThresholdSpeed));
    }

    private static LandingInput[] Draws(LandingSampler sampler, int count) =>
    [
        .. Enumerable.Range(0, count).Select(i =>
        {
            sampler.Draw(new RandomStream(1, (ulong)i, StreamPurpose.Scatter), out LandingInput landing);
            return landing;
        }),
    ];

    private static (LandingVariable, DistributionLaw) Law((LandingVariable Variable, double Deviation) width) =>
        (width.Variable, DistributionLaw.Normal(Spreads.Row(Spreads.Reference)[(int)width.Variable], width.Deviation));

    /// <summary>Wide enough that some landings cannot happen.</summary>
    private static LandingSampler Wide() => new(
        Spreads.Laws(
            Spreads.Reference,
            (LandingVariable.ThresholdSpeed, DistributionLaw.Uniform(28, 42)),
            (LandingVariable.ThresholdHeight, DistributionLaw.Triangular(3, 15, 20)),
            (LandingVariable.IdleThrust, DistributionLaw.Normal(100, 150)),
            (LandingVariable.BrakingFriction, DistributionLaw.Uniform(0.1, 0.4))),
        10, 9, 0.3);

    private static void AssertLinear(LandingOutcome[] outcomes, Func<LandingOutcome, double> result, double correlation)
    {
        double[] shifts = [.. Widths.Select(width => Shift(width, result))];
        double variance = shifts.Sum(shift => shift * shift)
            + 2 * correlation * shifts[2] * shifts[3];
        (double mean, double deviation) = outcomes.Select(result).MeanStandardDeviation();

        // 20 000 landings know a deviation to 0.5 %, and a mean to 0.7 % of it.
        Assert.Equal(1, deviation / Math.Sqrt(variance), 0.02);
        double center = result(LandingSolver.Solve(Spreads.Reference, 1e-9));
        Assert.InRange(mean - center, -0.04 * deviation, 0.04 * deviation);
    }

    /// <summary>What one deviation of an input does, by central differences of the solver.</summary>
    private static double Shift((LandingVariable Variable, double Deviation) width, Func<LandingOutcome, double> result)
    {
        double At(double deviations)
        {
            double[] row = Spreads.Row(Spreads.Reference);
            row[(int)width.Variable] += deviations * width.Deviation;
            return result(LandingSolver.Solve(LandingInput.FromRow(row), 1e-9));
        }

        return (At(0.5) - At(-0.5)) / 1;
    }

    internal static bool SameBits(ReadOnlySpan<LandingOutcome> a, ReadOnlySpan<LandingOutcome> b)
    {
        if (a.Length != b.Length)
            return false;
        for (int i = 0; i < a.Length; i++)
        {
            // Bit by bit, so that NaN is NaN.
            bool same = a[i].Refusal == b[i].Refusal
                && Bits(LandingOutcome.Results(a[i])).SequenceEqual(Bits(LandingOutcome.Results(b[i])));
            if (!same)
                return false;
        }

        return true;
    }

    private static ReadOnlySpan<long> Bits(ReadOnlySpan<double> values) => MemoryMarshal.Cast<double, long>(values);
}
