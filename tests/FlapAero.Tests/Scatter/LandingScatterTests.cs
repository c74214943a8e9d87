using CsCheck;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests.Scatter;

/// <summary>The public surface: results in the trade's terms, refusals counted, nonsense named.</summary>
public sealed class LandingScatterTests
{
    private static readonly Air Air = Air.StandardSeaLevel;

    private static LandingScatter Demo(FlapSetting flaps) => DemoPilot.Scatter(DemoAeroplanes.TrainerH4.Configure(flaps), Air);

    [Fact]
    public void DemoPilot_FlapsUpAndFull_LandsLongerAndWiderWithoutFlaps()
    {
        LandingScatterResult up = Demo(DemoAeroplanes.TrainerH4.FlapsUp).Fly();
        LandingScatterResult full = Demo(DemoAeroplanes.TrainerH4.FullFlaps).Fly();

        Assert.Equal(10_000, up.Count);
        Assert.Equal(1, up.Landed.Value, 0.01);
        Assert.Equal(1, full.Landed.Value, 0.01);
        Assert.InRange(full.StopDistance.Mean.Meters, 300, 700);
        Assert.InRange(up.StopDistance.Mean / full.StopDistance.Mean, 1.35, 1.55);
        Assert.True(up.TouchdownDistance.StandardDeviation > full.TouchdownDistance.StandardDeviation);
        Assert.True(up.StopDistance.StandardDeviation > full.StopDistance.StandardDeviation);
        Assert.InRange(full.StopDistance.StandardDeviation.Meters, 15, 100);
        Assert.True(up.TouchdownInFirstThird(Length.FromMeters(1000)).Value < full.TouchdownInFirstThird(Length.FromMeters(1000)).Value);
    }

    [Fact]
    public void Around_WithoutASpread_IsTheCanonicalLandingExactly()
    {
        LandingSetup meant = DemoPilot.Setup(DemoAeroplanes.TrainerL2.Configure(DemoAeroplanes.TrainerL2.FullFlaps), Air);
        var batch = new LandingOutcome[8];
        LandingSolver.Solve([.. Enumerable.Repeat(meant.Checked(), batch.Length)], batch);

        LandingScatterResult result = LandingScatter.Around(meant, new LandingSpread()).Fly(5);

        Assert.Equal(5, result.Landed.Hits);
        Assert.Equal(batch[0].StopDistance, (double)result.StopDistance.Minimum.Meters);
        Assert.Equal(batch[0].StopDistance, (double)result.StopDistance.Maximum.Meters);
        Assert.Equal(batch[0].TouchdownDistance, (double)result.Touchdown(4)!.Value.Meters);
        Assert.Equal(1, batch[0].StopDistance / (double)Landing.Fly(meant).Value.StopDistance.Meters, 2e-5);
    }

    [Fact]
    public void DemoPilot_Means_LieNearTheLandingThatIsMeant()
    {
        Configuration configuration = DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FlapsUp);
        double meant = Landing.Fly(DemoPilot.Setup(configuration, Air)).Value.StopDistance.Meters;
        Assert.InRange(DemoPilot.Scatter(configuration, Air).Fly(2000).StopDistance.Mean.Meters / meant, 0.95, 1.05);
    }

    [Fact]
    public void Result_Numbers_FitTogether()
    {
        LandingScatterResult result = Demo(DemoAeroplanes.TrainerH4.FlapsUp).Fly(2000, seed: 3);
        SampledDistance stop = result.StopDistance;

        Assert.Equal(stop.Count, result.Landed.Hits);
        Assert.Equal(stop.Minimum, stop.Quantile(0));
        Assert.Equal(stop.Maximum, stop.Quantile(1));
        Assert.Equal(stop.StandardDeviation.Meters / Math.Sqrt(stop.Count), stop.StandardError.Meters, 1e-9);
        (Length low, Length high) = stop.QuantileInterval(0.5)!.Value;
        Assert.True(low < stop.Quantile(0.5) && stop.Quantile(0.5) < high);
        Assert.True(high - low < stop.StandardDeviation);
        Assert.Null(stop.QuantileInterval(0.0001));
        for (int i = 0; i < 50; i++)
        {
            Assert.Equal(result.Refusal(i) == LandingRefusal.None, result.Stop(i) is not null);
            Assert.True(result.Stop(i) is null || result.Touchdown(i) < result.Stop(i));
        }

        Assert.Equal(result.Landed.Hits, result.StoppedWithin(stop.Maximum).Hits);
        Share half = result.StoppedWithin(stop.Quantile(0.5));
        Assert.Equal(0.5 * result.Landed.Value, half.Value, 0.001);
        Assert.Equal(result.Count, half.Count);
        Assert.InRange(half.Value, half.Interval().Low, half.Interval().High);
        Assert.Equal(
            result.TouchdownInFirstThird(Length.FromMeters(900)).Hits,
            Enumerable.Range(0, result.Count).Count(i => result.Touchdown(i) <= Length.FromMeters(300)));
    }

    [Fact]
    public void Histogram_AnyNumberOfBins_HoldsEveryLandingOnce()
    {
        SampledDistance stop = Demo(DemoAeroplanes.TrainerH4.FullFlaps).Fly(1000).StopDistance;
        foreach (int? bins in (int?[])[null, 1, 2, 37])
        {
            IReadOnlyList<HistogramBin> histogram = stop.Histogram(bins);
            Assert.Equal(bins ?? histogram.Count, histogram.Count);
            Assert.Equal(stop.Count, histogram.Sum(bin => bin.Count));
            Assert.Equal(stop.Minimum, histogram[0].Low);
            Assert.Equal(stop.Maximum, histogram[^1].High);
            Assert.All(histogram.Zip(histogram.Skip(1)), pair => Assert.Equal(pair.First.High, pair.Second.Low));
        }

        Assert.InRange(stop.Histogram().Count, 8, 60);
        Assert.Throws<RefusedInputException>(() => stop.Histogram(0));
    }

    [Fact]
    public void Histogram_EqualDistances_IsOneBin()
    {
        var fixedScatter = new LandingScatter(Spreads.Inputs(Spreads.Reference));
        SampledDistance stop = fixedScatter.Fly(50).StopDistance;
        HistogramBin bin = Assert.Single(stop.Histogram(20));
        Assert.Equal(50, bin.Count);
        Assert.Equal(0, stop.StandardDeviation.Meters, 1e-9);
        Assert.Equal(ReferenceLandings.Cases[0].Results[11], stop.Mean.Meters, 0.02);
    }

    [Fact]
    public void Refusals_OfAWideScatter_AreCountedByReasonOverAllLandings()
    {
        LandingScatterResult result = Demo(DemoAeroplanes.TrainerH4.FlapsUp)
            .With(new()
            {
                ThresholdSpeed = Distribution.Uniform(Speed.FromKnots(45), Speed.FromKnots(80)),
                ThresholdHeight = Distribution.Uniform(Length.FromFeet(1), Length.FromFeet(60)),
            })
            .Fly(2000);

        Assert.Contains(LandingRefusal.LiftLimitBeforeRoundOut, result.Refusals.Keys);
        Assert.Contains(LandingRefusal.RoundOutAboveThresholdHeight, result.Refusals.Keys);
        Assert.DoesNotContain(LandingRefusal.None, result.Refusals.Keys);
        Assert.Equal(result.Count, result.Landed.Hits + result.Refusals.Values.Sum(share => share.Hits));
        Assert.All(result.Refusals, refusal => Assert.Equal(
            Enumerable.Range(0, result.Count).Count(i => result.Refusal(i) == refusal.Key), refusal.Value.Hits));
        // A runway without an end does not make a landing of a refused one.
        Assert.Equal(result.Landed.Hits, result.StoppedWithin(Length.FromKilometers(1000)).Hits);
        Assert.True(result.Landed.Value < 0.95);
    }

    [Fact]
    public void Result_WithoutAnyLanding_HasSharesButNoDistances()
    {
        LandingScatterResult result = new LandingScatter(Spreads.Inputs(ReferenceLandings.Refusals[0].Input)).Fly(10);
        Assert.Equal(0, result.Landed.Hits);
        Assert.Equal(10, Assert.Single(result.Refusals).Value.Hits);
        Assert.Equal(0, result.StoppedWithin(Length.FromMeters(1000)).Hits);
        InvalidOperationException refusal = Assert.Throws<InvalidOperationException>(() => result.StopDistance);
        Assert.Contains(ReferenceLandings.Refusals[0].Reason, refusal.Message, StringComparison.Ordinal);
        Assert.Null(result.Touchdown(0));
    }

    [Fact]
    public void Draws_OfAnInput_AreInItsUnitAndSpread()
    {
        LandingScatter scatter = Demo(DemoAeroplanes.TrainerH4.FlapsUp);
        IReadOnlyList<double> speeds = scatter.Draws(LandingVariable.ThresholdSpeed, 5000, 1);
        Distribution<Speed> stated = scatter.Inputs.ThresholdSpeed!;
        Assert.Equal("kt", stated.Unit);
        Assert.All(speeds, speed => Assert.InRange(speed, stated.Minimum!.Value.Knots - 1e-9, stated.Maximum!.Value.Knots + 1e-9));
        Assert.Equal(stated.Mean.Knots, speeds.Average(), 0.15);
        Assert.Equal((speeds[0] - stated.Mean.Knots) / stated.StandardDeviation.Knots, stated.StandardScore(speeds[0]), 1e-12);
    }

    public static TheoryData<string, Func<LandingSpread>> Nonsense => new()
    {
        { "threshold height", () => new() { ThresholdHeight = Distribution.Uniform(Length.Zero, Length.FromFeet(60)) } },
        { "flare time constant", () => new() { FlareTimeConstant = Distribution.Normal(Duration.FromSeconds(2), Duration.FromSeconds(1)) } },
        { "touchdown lift fraction", () => new() { TouchdownLiftFraction = Distribution.Uniform(0.8, 1) } },
        { "braking friction", () => new() { BrakingFriction = Distribution.Triangular(-0.1, 0.2, 0.4) } },
        { "path angle", () => new() { PathAngle = Distribution.Uniform(Angle.FromDegrees(3), Angle.FromDegrees(90)) } },
        { "headwind", () => new() { Headwind = Distribution.Normal(Speed.FromKnots(5), Speed.FromKnots(5)) } },
        { "threshold speed", () => new() { Headwind = Distribution.Uniform(Speed.Zero, Speed.FromKnots(80)) } },
        { "tailwind", () => new() { Headwind = Distribution.Fixed(Speed.FromKnots(-2000)) } },
    };

    [Theory, MemberData(nameof(Nonsense))]
    public void Scatter_OfNonsense_IsRefusedByTheInputsName(string named, Func<LandingSpread> spread)
    {
        LandingSpread inputs = spread().Over(Spreads.Inputs(Spreads.Reference));
        RefusedInputException refusal = Assert.Throws<RefusedInputException>(() => new LandingScatter(inputs));
        Assert.Contains(named, refusal.Message, StringComparison.Ordinal);
        Assert.Contains("refused", refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("E+308", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Scatter_MissingOrUnknownInputCountOrCorrelation_IsRefused()
    {
        LandingSpread inputs = Spreads.Inputs(Spreads.Reference);
        var scatter = new LandingScatter(inputs);
        Assert.Throws<RefusedInputException>(() => new LandingScatter(inputs, 1.01));
        Assert.Throws<RefusedInputException>(() => new LandingScatter(inputs, double.NaN));
        Assert.Throws<RefusedInputException>(() => scatter.Fly(0));
        Assert.Throws<RefusedInputException>(() => scatter.Fly(1_000_001));
        Assert.Throws<RefusedInputException>(() => scatter.Fly(10, threads: 0));
        Assert.Throws<RefusedInputException>(() => scatter.Draws((LandingVariable)30, 10));
        Assert.Throws<RefusedInputException>(() => scatter.Fly(10).StoppedWithin(Length.Zero));
        Assert.Throws<RefusedInputException>(() => scatter.Fly(10).Stop(10));
        Assert.Throws<RefusedInputException>(() => scatter.Fly(10).Landed.Interval(1));
        Assert.Throws<RefusedInputException>(() => scatter.Fly(10).StopDistance.QuantileInterval(1));
        Assert.Throws<RefusedInputException>(() => scatter.Inputs[(LandingVariable)30]);
        Assert.Contains(
            "runway slope", Assert.Throws<RefusedInputException>(() => new LandingScatter(inputs with { RunwaySlope = null })).Message,
            StringComparison.Ordinal);
        Assert.All(LandingVariables.All, variable => Assert.NotNull(scatter.Inputs[variable]));
    }

    [Fact]
    public void Spread_EveryProperty_IsOneOfTheInputsAndOfItsKind()
    {
        LandingSpread spread = LandingSpread.Fixed(Spreads.Reference);
        foreach (LandingVariable variable in LandingVariables.All)
        {
            Distribution? there = (Distribution?)typeof(LandingSpread).GetProperty(variable.ToString())!.GetValue(spread);
            Assert.Same(spread[variable], there);
            Assert.Null(spread.Without(variable)[variable]);
            Assert.Equal(spread.Only(variable), new LandingSpread().With(variable, there!));
        }
    }

    [Fact]
    public void Fly_AnyScatter_CountsEveryLandingWithFiniteResultsOrRefusesIt()
    {
        int flown = 0;
        Gen<double> factor = Gen.Frequency((6, Gen.Double[0.7, 1.4]), (2, Gen.Double[0.01, 10]), (1, Gen.Double[-3, 3]), (1, Gen.Double));
        Gen.Select(Gen.Int[0, ReferenceLandings.Cases.Count - 1], Gen.Select(Gen.Int[0, 23], factor, factor).Array[1, 5], Gen.Double[-1, 1], Gen.Long).Sample(
            (which, spreads, correlation, seed) =>
            {
                double[] row = Spreads.Row(ReferenceLandings.Cases[which].Input);
                LandingSpread inputs = Spreads.Inputs(ReferenceLandings.Cases[which].Input);
                try
                {
                    foreach ((int column, double a, double b) in spreads)
                    {
                        double low = row[column] * Math.Min(a, b);
                        double high = row[column] * Math.Max(a, b);
                        DistributionLaw law = Distribution.Uniform(low, high).Law;
                        inputs = inputs.With((LandingVariable)column, LandingVariables.Distributed((LandingVariable)column, law));
                    }

                    LandingScatterResult result = new LandingScatter(inputs, correlation).Fly(16, seed, 1);
                    Interlocked.Increment(ref flown);
                    return result.Landed.Hits + result.Refusals.Values.Sum(share => share.Hits) == 16
                        && Enumerable.Range(0, 16).All(i => result.Stop(i) is not { } stop || double.IsFinite(stop.Meters));
                }
                catch (RefusedInputException refusal)
                {
                    return refusal.Message.Length > 0;
                }
            },
            iter: 500);
        Assert.True(flown > 50, $"{flown} flown");
    }
}
