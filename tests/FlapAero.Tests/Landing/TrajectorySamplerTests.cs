using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>The moments of one landing: each obeys Newton's law, and together they are the table's landing.</summary>
public sealed class TrajectorySamplerTests
{
    private const double Interval = 0.1;

    private static readonly LandingInput Input = UsualLanding.Setup.Checked() with { Headwind = 3.1, RunwaySlope = 0.01, PowerCutTime = 0.3 };
    private static readonly Textbook Book = new(Input);
    private static readonly LandingOutcome Outcome = LandingSolver.Solve(Input, 1e-12);
    private static readonly List<TrajectoryState> States = TrajectorySampler.Sample(Input, Outcome, Interval, 1e-12);

    [Fact]
    public void Sample_EachStage_RunsFromItsBeginningToItsEnd()
    {
        (LandingStage, double, double, double, double)[] edges =
        [
            (LandingStage.Approach, 0, Outcome.FlareStartTime, 0, Outcome.FlareStartDistance),
            (LandingStage.HoldOff, Outcome.FlareStartTime, Outcome.HoldOffEndTime, Outcome.FlareStartDistance, Outcome.HoldOffEndDistance),
            (LandingStage.Settling, Outcome.HoldOffEndTime, Outcome.TouchdownTime, Outcome.HoldOffEndDistance, Outcome.TouchdownDistance),
            (LandingStage.RollNoseHigh, Outcome.TouchdownTime, Outcome.NoseLowerTime, Outcome.TouchdownDistance, Outcome.NoseLowerDistance),
            (LandingStage.RollBraking, Outcome.NoseLowerTime, Outcome.StopTime, Outcome.NoseLowerDistance, Outcome.StopDistance),
        ];
        Assert.Equal(edges.Select(e => e.Item1), States.Select(s => s.Stage).Distinct());
        foreach ((LandingStage stage, double start, double end, double from, double to) in edges)
        {
            TrajectoryState[] own = Of(stage);
            Assert.Equal((start, end), (own[0].Time, own[^1].Time));
            Assert.Equal(from, own[0].Distance, 1e-9);
            Assert.Equal(to, own[^1].Distance, 1e-5);
            // As few equal intervals as are no longer than asked for.
            int intervals = (int)Math.Ceiling((end - start) / Interval);
            Assert.Equal(intervals, own.Length - 1);
            for (int i = 0; i < own.Length; i++)
                Assert.Equal(start + (end - start) * i / intervals, own[i].Time, 1e-12);
        }
    }

    [Fact]
    public void Sample_AtTheEdges_HasTheTablesValues()
    {
        Assert.Equal((Input.ThresholdHeight, Input.ThresholdSpeed), (States[0].Height, States[0].Speed));
        Assert.Equal(Outcome.ApproachThrust, States[0].Thrust, 1e-9);
        Assert.Equal(Outcome.FlareStartSpeed, Of(LandingStage.Approach)[^1].Speed, 1e-9);
        Assert.Equal(Outcome.FlareHeight, Of(LandingStage.Approach)[^1].Height, 1e-9);
        Assert.Equal(Outcome.HoldOffEndHeight, Of(LandingStage.HoldOff)[^1].Height, 1e-9);
        Assert.Equal(0.85 * 2, Of(LandingStage.HoldOff)[^1].Lift, 1e-6);
        TrajectoryState down = Of(LandingStage.Settling)[^1];
        Assert.Equal((0.0, Outcome.TouchdownSpeed, Outcome.TouchdownSink), (down.Height, Math.Round(down.Speed - Outcome.TouchdownSpeed, 7) + Outcome.TouchdownSpeed, Math.Round(down.Sink - Outcome.TouchdownSink, 7) + Outcome.TouchdownSink));
        double along = Math.Sqrt(Outcome.TouchdownSpeed * Outcome.TouchdownSpeed - Outcome.TouchdownSink * Outcome.TouchdownSink);
        Assert.Equal(along, Of(LandingStage.RollNoseHigh)[0].Speed, 1e-9);
        Assert.Equal(0.7 * Outcome.TouchdownSpeed, Of(LandingStage.RollBraking)[0].Speed, 1e-9);
        Assert.Equal(Input.Headwind, States[^1].Speed, 1e-6);
        Assert.All(States, s => Assert.Equal(s.Stage >= LandingStage.RollNoseHigh, s.Height == 0 && s.Sink == 0));
    }

    // Central differences over two intervals: ẋ = V cos γ − w, ḣ = −s, V̇ by the stage's own law.
    [Fact]
    public void Sample_EveryMoment_ObeysNewtonsLaw()
    {
        int looked = 0;
        for (int i = 1; i + 1 < States.Count; i++)
        {
            (TrajectoryState before, TrajectoryState at, TrajectoryState after) = (States[i - 1], States[i], States[i + 1]);
            if (before.Stage != after.Stage || before.Thrust - at.Thrust != 0 || at.Thrust - after.Thrust != 0)
                continue;
            double time = after.Time - before.Time, level = Math.Sqrt(at.Speed * at.Speed - at.Sink * at.Sink);
            bool rolls = at.Stage >= LandingStage.RollNoseHigh;
            double friction = at.Stage == LandingStage.RollBraking ? Input.BrakingFriction : Input.RollingFriction;
            double expected = rolls
                ? Book.OnWheels(at.Speed, at.Thrust, at.Lift, friction)
                : Book.Acceleration(at.Speed, at.Height + Input.WingHeight, at.Thrust, at.Sink, Book.Dynamic(at.Speed) * at.Lift);
            Assert.Equal(expected, (after.Speed - before.Speed) / time, 2e-3);
            Assert.Equal(level - Input.Headwind, (after.Distance - before.Distance) / time, 2e-3);
            if (!(at.Stage == LandingStage.Settling && i + 1 == States.FindLastIndex(s => s.Stage == LandingStage.Settling)))
                Assert.Equal(-at.Sink, (after.Height - before.Height) / time, 3e-3);
            looked++;
        }

        Assert.True(looked > 100, $"{looked} moments");
    }

    [Fact]
    public void Sample_LiftOfEachStage_IsThatOfItsLaw()
    {
        foreach (TrajectoryState state in States)
        {
            double upward = state.Stage == LandingStage.HoldOff ? state.Sink / Input.FlareTimeConstant : 0;
            double expected = state.Stage switch
            {
                LandingStage.Approach or LandingStage.HoldOff => Book.Lift(state.Speed, state.Sink, upward) / Book.Dynamic(state.Speed),
                LandingStage.Settling => 1.7,
                LandingStage.RollNoseHigh => Input.NoseHighLift,
                _ => Input.LevelLift,
            };
            Assert.Equal(expected, state.Lift, 1e-12);
        }
    }

    [Fact]
    public void Sample_ThrustInTheRamp_FallsEvenlyFromTheCut()
    {
        double sink = WindLaws.SinkOnPath(Input.ThresholdSpeed, Input.PathAngleDegrees * Math.PI / 180, Input.Headwind);
        double cut = (Input.ThresholdHeight - Input.PowerCutHeight) / sink;
        Assert.All(States, s => Assert.Equal(
            Outcome.ApproachThrust + (Input.IdleThrust - Outcome.ApproachThrust) * Math.Clamp((s.Time - cut) / 0.3, 0, 1), s.Thrust, 1e-6));
    }

    [Fact]
    public void Sample_LongInterval_KeepsBothEndsOfEveryStage()
    {
        List<TrajectoryState> few = TrajectorySampler.Sample(Input, Outcome, 1e3, 1e-9);
        Assert.Equal(10, few.Count);
        Assert.Equal(Outcome.StopDistance, few[^1].Distance, 1e-3);
    }

    [Theory, InlineData(1e-12), InlineData(1e-6), InlineData(1e-4)]
    public void Sample_AnyTolerance_NeverStepsBack(double tolerance)
    {
        foreach (LandingSetup setup in new[]
        {
            DemoLandings.TrainerH4FlapsUp, DemoLandings.TrainerH4FullFlaps, DemoLandings.TrainerL2FlapsUp, DemoLandings.TrainerL2FullFlaps,
        })
            foreach (double interval in new[] { 0.013, 0.1, 0.5 })
            {
                LandingInput input = setup.Checked();
                List<TrajectoryState> states = TrajectorySampler.Sample(input, LandingSolver.Solve(input, tolerance), interval, tolerance);
                for (int i = 1; i < states.Count; i++)
                    Assert.True(states[i].Distance >= states[i - 1].Distance && states[i].Time >= states[i - 1].Time, $"{interval} s, moment {i}");
            }
    }

    // Forced on, the wheels are down where the hold-off ends: nothing settles.
    [Fact]
    public void Sample_ForcedLanding_HasNoSettling()
    {
        LandingInput forced = Input with { TouchdownLiftFraction = 0.7 };
        LandingManner manner = new(PutsWheelsOn: true);
        List<TrajectoryState> states = TrajectorySampler.Sample(forced, LandingSolver.Solve(forced, manner: manner), 0.5, 1e-9, manner);
        Assert.DoesNotContain(states, s => s.Stage == LandingStage.Settling);
        Assert.Equal(1.4, states.Last(s => s.Stage == LandingStage.HoldOff).Lift, 1e-5);
    }

    private static TrajectoryState[] Of(LandingStage stage) => [.. States.Where(s => s.Stage == stage)];
}
