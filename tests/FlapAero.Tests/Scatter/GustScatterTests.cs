using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests.Scatter;

/// <summary>A gust among the inputs: the landing in it is that of the conditions, and it moves what the hand says.</summary>
public sealed class GustScatterTests
{
    private static readonly LandingSetup Usual = UsualLanding.Setup;
    private static readonly LandingResult Calm = Landing.Fly(Usual).Value;

    private static readonly double HoldOff = Calm.Stage(LandingStage.HoldOff).Start.Seconds;

    // A gust that is over before the touchdown gives back what it took: this one is at its steepest there.
    private static readonly double Late = Calm.TouchdownTime.Seconds - 2;

    private static LandingSpread GustOf(Distribution<Speed> change, double start, double length) => new()
    {
        GustChange = change,
        GustStart = Distribution.Fixed(Duration.FromSeconds(start)),
        GustLength = Distribution.Fixed(Duration.FromSeconds(length)),
    };

    private static double Stop(double change, double start, double length) => InGust(change, start, length).StopDistance.Meters;

    private static LandingResult InGust(double change, double start, double length) => Landing.Fly(
        Usual, new() { Gust = new(Speed.FromMetersPerSecond(change), Duration.FromSeconds(start), Duration.FromSeconds(length)) }).Value;

    [Fact]
    public void Fly_GustOfZero_IsTheVerySameLandingAsWithoutOne()
    {
        LandingSampler sampler = new(Spreads.Laws(Spreads.Reference, (LandingVariable.ThresholdSpeed, DistributionLaw.Uniform(33, 40))));
        DistributionLaw[] laws =
        [
            .. Spreads.Laws(
                Spreads.Reference, (LandingVariable.ThresholdSpeed, DistributionLaw.Uniform(33, 40)),
                (LandingVariable.GustStart, DistributionLaw.Uniform(0, 5)), (LandingVariable.GustLength, DistributionLaw.Fixed(3))),
        ];
        Assert.True(ScatterRunTests.SameBits(Spreads.Fly(sampler, 300, 4), Spreads.Fly(new LandingSampler(laws), 300, 4)));
    }

    [Fact]
    public void Fly_GustWithoutAWidth_IsTheOneLandingInIt()
    {
        LandingScatterResult result = LandingScatter.Around(Usual, GustOf(Distribution.Fixed(Speed.FromMetersPerSecond(-4)), Late, 4)).Fly(9);
        Assert.Equal(0, result.StopDistance.StandardDeviation.Meters, 1e-9);
        Assert.Equal(1, result.StopDistance.Mean.Meters / Stop(-4, Late, 4), 1e-7);
        Assert.NotEqual((double)Calm.TouchdownDistance.Meters, result.TouchdownDistance.Mean.Meters, 1.0);
    }

    [Fact]
    public void Fly_OneThreadAndMany_GivesTheSameBits()
    {
        LandingScatter gusty = DemoPilot.GustyDay(DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FullFlaps), Air.StandardSeaLevel);
        LandingScatterResult one = gusty.Fly(700, threads: 1), many = gusty.Fly(700, threads: 5);
        for (int i = 0; i < one.Count; i++)
        {
            Assert.Equal(one.Refusal(i), many.Refusal(i));
            Assert.Equal(one.Stop(i)?.Meters, many.Stop(i)?.Meters);
        }

        Assert.Equal(one.Stop(5), gusty.Fly(6).Stop(5));
    }

    [Fact]
    public void Fly_EveryLandingInAGust_IsWhatTheConditionsGiveForItsDraw()
    {
        LandingSpread spread = GustOf(Distribution.Uniform(Speed.FromKnots(-8), Speed.FromKnots(8)), 0, 3) with
        {
            GustStart = Distribution.Uniform(Duration.FromSeconds(-1), Duration.FromSeconds(12)),
        };
        LandingScatter scatter = LandingScatter.Around(Usual, spread);
        LandingScatterResult result = scatter.Fly(40);
        IReadOnlyList<double> changes = scatter.Draws(LandingVariable.GustChange, 40), starts = scatter.Draws(LandingVariable.GustStart, 40);
        for (int i = 0; i < result.Count; i++)
            Assert.Equal(1, Stop(Speed.FromKnots(changes[i]).MetersPerSecond, starts[i], 3) / result.Stop(i)!.Value.Meters, 1e-6);
        Assert.True(changes.Min() < -4 && changes.Max() > 4 && starts.Max() > 6);
    }

    // Of gust strength, start and length by central differences of single landings.
    [Fact]
    public void Fly_SmallWidths_AgreesWithLinearPropagation()
    {
        (double change, double start, double length) = (-3, Late, 5);
        LandingSpread spread = new()
        {
            GustChange = Narrow(v => Speed.FromMetersPerSecond(v), change, 0.1),
            GustStart = Narrow(v => Duration.FromSeconds(v), start, 0.05),
            GustLength = Narrow(v => Duration.FromSeconds(v), length, 0.1),
        };
        LandingScatterResult result = LandingScatter.Around(Usual, spread).Fly(4000);
        double[] shifts =
        [
            Stop(change + 0.05, start, length) - Stop(change - 0.05, start, length),
            Stop(change, start + 0.025, length) - Stop(change, start - 0.025, length),
            Stop(change, start, length + 0.05) - Stop(change, start, length - 0.05),
        ];
        double deviation = result.StopDistance.StandardDeviation.Meters;
        Assert.Equal(1, deviation / Math.Sqrt(shifts.Sum(shift => shift * shift)), 0.05);
        Assert.InRange(result.StopDistance.Mean.Meters - Stop(change, start, length), -0.07 * deviation, 0.07 * deviation);
    }

    // A lull Δw is at its deepest d before the calm touchdown. The airspeed loses Δw at once and the speed over the ground nothing, so
    // that the wing is at its touchdown speed as soon as a landing would be that came in slower by Δw: at a deceleration a, about Δw/a
    // earlier (no more than the lull lasts). The float is shorter by that, at about the ground speed.
    [Fact]
    public void Fly_LullInTheHoldOff_ShortensTheFloatAndLengthensTheRoll()
    {
        const double lull = -1;
        double touch = Calm.TouchdownTime.Seconds, deceleration = Deceleration();
        double sooner = -lull / deceleration;
        LandingResult with = InGust(lull, touch - sooner - 10, 20);
        LandingScatterResult scatter = LandingScatter.Around(
            Usual, GustOf(Distribution.Fixed(Speed.FromMetersPerSecond(lull)), touch - sooner - 10, 20)).Fly(1);
        Assert.Equal(with.TouchdownDistance.Meters, scatter.Touchdown(0)!.Value.Meters, 0.01);

        Assert.InRange((touch - with.TouchdownTime.Seconds) / sooner, 0.6, 1.2);
        Assert.True(with.TouchdownDistance < Calm.TouchdownDistance, $"{with.TouchdownDistance} {Calm.TouchdownDistance}");
        // Less headwind at the same airspeed is more speed over the ground.
        Assert.True(with.GroundRoll > Calm.GroundRoll, $"{with.GroundRoll} {Calm.GroundRoll}");
    }

    [Fact]
    public void Sensitivity_OfGustAndBrakes_KnowsBoth()
    {
        LandingSpread spread = GustOf(Distribution.Uniform(Speed.FromKnots(-6), Speed.FromKnots(6)), Late, 4) with
        {
            BrakingFriction = Distribution.Uniform(0.28, 0.32),
        };
        LandingSensitivity sensitivity = LandingScatter.Around(Usual, spread).Sensitivity(300);
        Assert.Equal(LandingVariable.GustChange, Assert.Single(sensitivity.TouchdownDistance[0].Inputs));
        Assert.Equal(1, sensitivity.TouchdownDistance[0].FirstOrder.Value, 0.05);
        Assert.Equal(0, sensitivity.TouchdownDistance[1].Total.Value, 1e-6);
        Assert.InRange(sensitivity.StopDistance.Sum(index => index.FirstOrder.Value), 0.8, 1.2);
    }

    [Fact]
    public void GustyDay_BesideTheUsualDay_IsWiderAndCountsItsRefusals()
    {
        Configuration configuration = DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FullFlaps);
        LandingScatter still = DemoPilot.GustyDay(configuration, Air.StandardSeaLevel, Speed.Zero);
        LandingScatter gusty = DemoPilot.GustyDay(configuration, Air.StandardSeaLevel);
        LandingScatterResult without = still.Fly(1000), with = gusty.Fly(1000);
        Assert.True(with.TouchdownDistance.StandardDeviation > 1.1 * without.TouchdownDistance.StandardDeviation);
        Assert.Equal(1000, with.Landed.Hits + with.Refusals.Values.Sum(share => share.Hits));
        Assert.Equal(
            still.Inputs.ThresholdSpeed!.Mean.Knots + 5, gusty.Inputs.ThresholdSpeed!.Mean.Knots, 1e-6);
        Assert.Throws<RefusedInputException>(() => DemoPilot.GustyDay(configuration, Air.StandardSeaLevel, Speed.FromKnots(31)));
    }

    [Fact]
    public void Fly_GustsThatStallTheRoundOut_AreCountedByReason()
    {
        LandingScatterResult result = LandingScatter.Around(
            Usual, GustOf(Distribution.Uniform(Speed.FromKnots(-40), Speed.Zero), HoldOff - 2, 4)).Fly(200);
        Assert.Contains(LandingRefusal.LiftLimitBeforeRoundOut, result.Refusals.Keys);
        Assert.InRange(result.Landed.Hits, 1, 199);
        Assert.Equal(200, result.Landed.Hits + result.Refusals.Values.Sum(share => share.Hits));
    }

    public static TheoryData<string, Func<LandingSpread>> Nonsense => new()
    {
        { "gust change", () => new() { GustChange = Distribution.Uniform(Speed.Zero, Speed.FromKnots(61)) } },
        { "gust change", () => new() { GustChange = Distribution.Normal(Speed.Zero, Speed.FromKnots(1)) } },
        { "gust start", () => new() { GustStart = Distribution.Fixed(Duration.FromHours(2)) } },
        { "gust length", () => new() { GustLength = Distribution.Fixed(Duration.Zero) } },
    };

    [Theory, MemberData(nameof(Nonsense))]
    public void Scatter_GustOfNonsense_IsRefusedByTheInputsName(string named, Func<LandingSpread> spread)
    {
        RefusedInputException refusal = Assert.Throws<RefusedInputException>(
            () => LandingScatter.Around(Usual, spread()));
        Assert.StartsWith(named, refusal.Message, StringComparison.Ordinal);
        Assert.Contains("refused", refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("E+308", refusal.Message, StringComparison.Ordinal);
    }

    private static Distribution<T> Narrow<T>(Func<double, T> of, double mean, double deviation)
        where T : struct =>
        Distribution.TruncatedNormal(of(mean), of(deviation), of(mean - 6 * deviation), of(mean + 6 * deviation));

    private static double Deceleration()
    {
        LandingPoint[] points = [.. Calm.Trajectory.Where(point => point.Stage == LandingStage.HoldOff)];
        LandingPoint late = points[^1], before = points[^11];
        return (before.Airspeed.MetersPerSecond - late.Airspeed.MetersPerSecond) / (late.Time.Seconds - before.Time.Seconds);
    }
}
