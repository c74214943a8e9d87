using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>What the general landing refuses, with the values that show it, and what it keeps of the way.</summary>
public sealed class ConditionsRefusalTests
{
    private static readonly LandingInput Usual = UsualLanding.Setup.Input();

    [Fact]
    public void Solve_RoundOutAboveTheThreshold_ShowsBothHeights()
    {
        LandingOutcome outcome = Solve(Usual with { ThresholdHeight = 3, FlareTimeConstant = 2 });
        double flare = 0.4 + 2 * ApproachPath<ScalarLane>.SinkRate(Usual);
        AssertRefused(outcome, LandingRefusal.RoundOutAboveThresholdHeight, flare, 3);
        // The edge itself is refused too.
        Assert.Equal(LandingRefusal.RoundOutAboveThresholdHeight, Solve(Usual with { ThresholdHeight = outcome.FlareHeight }).Refusal);
    }

    [Fact]
    public void Solve_PathSteeperThanTheIdleGlide_ShowsBothThrusts()
    {
        LandingInput steep = Usual with { PathAngleDegrees = 9, IdleThrust = 40 };
        double needed = LandingSolver.Solve(steep).ApproachThrust;
        AssertRefused(Solve(steep), LandingRefusal.PathSteeperThanIdleGlide, needed, 40);
        Assert.NotEqual(LandingRefusal.PathSteeperThanIdleGlide, Solve(Usual with { IdleThrust = Solve(Usual).ApproachThrust - 1e-6 }).Refusal);
    }

    [Fact]
    public void Solve_ReferenceRefusals_ShowWhatTheCanonicalLandingShows()
    {
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Refusals)
        {
            LandingOutcome expected = LandingSolver.Solve(landing.Input, 1e-10), actual = Solve(landing.Input);
            Assert.Equal(expected.Refusal, actual.Refusal);
            Assert.Equal(expected.Limit, actual.Limit, 1e-4);
            // On the roll the closed form stops where its piece begins, the integration after five minutes or where it stands still.
            if (expected.Refusal is not (LandingRefusal.DoesNotSlowOnTheRoll or LandingRefusal.DoesNotStop))
                Assert.Equal(expected.Shown, actual.Shown, 1e-3);
            // What comes after the refusal is not there.
            Assert.Equal(LandingOutcome.Results(expected).ToArray().Select(double.IsNaN), LandingOutcome.Results(actual).ToArray().Select(double.IsNaN));
        }
    }

    [Fact]
    public void Solve_HoldOffHighUp_NeverSettlesInAMinute()
    {
        LandingInput high = Usual with { ThresholdHeight = 500, HoldOffHeight = 450, PowerCutHeight = 458 };
        (LandingOutcome outcome, IReadOnlyList<ConditionsState> states) = ConditionsSolver.Solve(high, ConditionsSolverTests.Steady(high), interval: 1);
        Assert.Equal((LandingRefusal.NeverSettles, 0), (outcome.Refusal, outcome.Limit));
        Assert.Equal(60, states[^1].State.Time - outcome.HoldOffEndTime, 1e-9);
        Assert.Equal(outcome.Shown, states[^1].State.Height, 1e-9);
        Assert.InRange(outcome.Shown, 1, 449);
    }

    [Fact]
    public void Solve_PowerLeftOn_FloatsForTwoMinutes()
    {
        LandingInput on = Usual with { PowerCutHeight = 0, PathAngleDegrees = 0.5, FlareTimeConstant = 5 };
        (LandingOutcome outcome, IReadOnlyList<ConditionsState> states) = ConditionsSolver.Solve(on, ConditionsSolverTests.Steady(on), interval: 1);
        Assert.Equal(LandingRefusal.NeverSlowsToTouchdown, outcome.Refusal);
        Assert.Equal(120, states[^1].State.Time - outcome.FlareStartTime, 1e-9);
        Assert.Equal(states[^1].State.Speed, outcome.Shown, 1e-12);
        Assert.Equal(0.85 * 2, new Textbook(on).Weight / new Textbook(on).Dynamic(outcome.Limit), 1e-12);
    }

    // Downhill without friction the airspeed dies away to where drag and slope are in balance, and no further.
    [Fact]
    public void Solve_RollsThatHardlySlow_AreRefusedAfterFiveMinutes()
    {
        LandingInput even = Usual with { NoseHighLift = 0, LevelLift = 0, RollingFriction = 0, RunwaySlope = -0.04, Headwind = 0 };
        (LandingOutcome nose, IReadOnlyList<ConditionsState> states) = ConditionsSolver.Solve(even, ConditionsSolverTests.Steady(even), interval: 10);
        Assert.Equal(LandingRefusal.DoesNotSlowOnTheRoll, nose.Refusal);
        Assert.Equal(300, states[^1].State.Time - nose.TouchdownTime, 1e-9);
        Assert.Equal(states[^1].State.Speed, nose.Shown, 1e-12);
        Assert.Equal(0.7 * nose.TouchdownSpeed, nose.Limit, 1e-12);

        LandingInput slippery = even with { RollingFriction = 0.2, BrakingFriction = 0 };
        (LandingOutcome brakes, states) = ConditionsSolver.Solve(slippery, ConditionsSolverTests.Steady(slippery), interval: 10);
        Assert.Equal(LandingRefusal.DoesNotStop, brakes.Refusal);
        Assert.Equal(300, states[^1].State.Time - brakes.NoseLowerTime, 1e-9);
        Assert.Equal((states[^1].State.Speed, 0), (brakes.Shown, brakes.Limit));
    }

    [Fact]
    public void Solve_NoseLowersAtTheWindsSpeed_IsRefusedWithBoth()
    {
        LandingInput windy = Usual with { Headwind = 18 };
        LandingOutcome outcome = Solve(windy);
        AssertRefused(outcome, LandingRefusal.StopsBeforeNoseLowers, 0.7 * outcome.TouchdownSpeed, 18);
        Assert.Equal(LandingRefusal.None, Solve(Usual with { Headwind = -3 }).Refusal);
    }

    [Fact]
    public void Solve_WindRisesToTheAirspeed_StandsWithTheNoseUp()
    {
        LandingOutcome calm = Solve(Usual);
        (LandingOutcome outcome, IReadOnlyList<ConditionsState> states) = ConditionsSolver.Solve(
            Usual, new WindField(null, Usual.Headwind, 25, calm.TouchdownTime, 90), interval: 1);
        Assert.Equal(LandingRefusal.StopsBeforeNoseLowers, outcome.Refusal);
        Assert.Equal(0.7 * outcome.TouchdownSpeed, outcome.Shown, 1e-9);
        // Standing, its airspeed is the wind's.
        Assert.Equal(states[^1].State.Speed, outcome.Limit, 0.05);
        Assert.True(outcome.Limit > outcome.Shown);
    }

    // A gust in each stage takes the airspeed past the end of the idling engine's table.
    [Theory]
    [InlineData(LandingStage.Approach)]
    [InlineData(LandingStage.HoldOff)]
    [InlineData(LandingStage.Settling)]
    [InlineData(LandingStage.RollNoseHigh)]
    [InlineData(LandingStage.RollBraking)]
    public void Solve_FasterThanTheIdleThrustIsKnown_IsRefusedInWords(LandingStage stage)
    {
        LandingOutcome calm = Solve(Usual);
        double start = stage switch
        {
            LandingStage.Approach => 0,
            LandingStage.HoldOff => calm.FlareStartTime,
            LandingStage.Settling => calm.HoldOffEndTime,
            LandingStage.RollNoseHigh => calm.TouchdownTime,
            _ => calm.NoseLowerTime,
        };
        var gusty = new WindField(null, Usual.Headwind, 29, start, 1);
        double fastest = Usual.ThresholdSpeed + 1;
        string message = Assert.Throws<RefusedInputException>(() => ConditionsSolver.Solve(Usual, gusty, _ => Usual.IdleThrust, fastest)).Message;
        Assert.StartsWith(FormattableString.Invariant($"idle thrust: its table ends at {fastest:g5} m/s, and the landing gets there;"), message, StringComparison.Ordinal);
        Assert.Equal(LandingRefusal.None, ConditionsSolver.Solve(Usual, ConditionsSolverTests.Steady(Usual), _ => Usual.IdleThrust, fastest).Outcome.Refusal);
    }

    // Each stage begins where the last one ended, and every state is the table's there.
    [Fact]
    public void Solve_States_BeginAndEndEachStage()
    {
        (LandingOutcome outcome, IReadOnlyList<ConditionsState> states) = ConditionsSolver.Solve(Usual, ConditionsSolverTests.Steady(Usual), interval: 0.5);
        (LandingStage Stage, double Start, double End, double From, double To)[] edges =
        [
            (LandingStage.Approach, 0, outcome.FlareStartTime, 0, outcome.FlareStartDistance),
            (LandingStage.HoldOff, outcome.FlareStartTime, outcome.HoldOffEndTime, outcome.FlareStartDistance, outcome.HoldOffEndDistance),
            (LandingStage.Settling, outcome.HoldOffEndTime, outcome.TouchdownTime, outcome.HoldOffEndDistance, outcome.TouchdownDistance),
            (LandingStage.RollNoseHigh, outcome.TouchdownTime, outcome.NoseLowerTime, outcome.TouchdownDistance, outcome.NoseLowerDistance),
            (LandingStage.RollBraking, outcome.NoseLowerTime, outcome.StopTime, outcome.NoseLowerDistance, outcome.StopDistance),
        ];
        foreach ((LandingStage stage, double start, double end, double from, double to) in edges)
        {
            TrajectoryState[] own = [.. states.Select(s => s.State).Where(s => s.Stage == stage)];
            Assert.Equal((start, end, from, to), (own[0].Time, own[^1].Time, own[0].Distance, own[^1].Distance));
            Assert.All(own.Zip(own.Skip(1)), pair => Assert.InRange(pair.Second.Time - pair.First.Time, 0, 0.5 + 1e-9));
            Assert.Equal(1 + (int)Math.Ceiling((end - start) / 0.5), own.Length, 1.0);
        }

        Assert.Equal(outcome.HoldOffEndHeight, states.Last(s => s.State.Stage == LandingStage.HoldOff).State.Height);
        Assert.Equal(outcome.TouchdownSink, states.Last(s => s.State.Stage == LandingStage.Settling).State.Sink, 1e-12);
        Assert.All(states, s => Assert.Equal(s.State.Stage >= LandingStage.RollNoseHigh, s.State.Height == 0 && s.State.Sink == 0));
        Textbook book = new(Usual);
        Assert.All(states, s => Assert.Equal(book.Drag(s.State.Speed, s.State.Lift, s.State.Height + 2), s.Drag, 1e-8));
        Assert.All(states, s => Assert.Equal((Usual.Headwind, 0), (s.Headwind, s.WindRate)));
        Assert.Equal(outcome.ApproachThrust, states[0].State.Thrust, 1e-9);
        Assert.Equal(Usual.IdleThrust, states[^1].State.Thrust, 1e-9);
        Assert.Equal(
            (Usual.NoseHighLift, Usual.LevelLift),
            (states.First(s => s.State.Stage == LandingStage.RollNoseHigh).State.Lift, states[^1].State.Lift));
    }

    [Fact]
    public void Solve_WithoutAnInterval_KeepsTheEndsOnly() =>
        Assert.Equal(10, ConditionsSolver.Solve(Usual, ConditionsSolverTests.Steady(Usual)).States.Count);

    [Fact]
    public void Solve_BrakesFromTheTouchdown_HasNoRollBefore()
    {
        (LandingOutcome outcome, IReadOnlyList<ConditionsState> states) =
            ConditionsSolver.Solve(Usual, ConditionsSolverTests.Steady(Usual), brakesFromTouchdown: true);
        Assert.Equal((outcome.TouchdownDistance, outcome.TouchdownTime), (outcome.NoseLowerDistance, outcome.NoseLowerTime));
        Assert.DoesNotContain(states, s => s.State.Stage == LandingStage.RollNoseHigh);
    }

    [Fact]
    public void Solve_InputWithoutSense_IsAnArgumentError() =>
        Assert.Throws<RefusedInputException>(() => Solve(Usual with { Mass = 0 }));

    private static void AssertRefused(LandingOutcome outcome, LandingRefusal refusal, double shown, double limit)
    {
        Assert.Equal(refusal, outcome.Refusal);
        Assert.Equal(shown, outcome.Shown, 1e-9);
        Assert.Equal(limit, outcome.Limit, 1e-9);
        Assert.True(double.IsNaN(outcome.StopDistance));
    }

    private static LandingOutcome Solve(LandingInput input) => ConditionsSolver.Solve(input, ConditionsSolverTests.Steady(input)).Outcome;
}
