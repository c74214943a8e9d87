using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>How long each stage may last, what a gust refuses, and what is kept of the way.</summary>
public sealed class LandingLimitTests
{
    private static readonly LandingInput Usual = UsualLanding.Setup.Checked();

    [Fact]
    public void Solve_HoldOffHighUp_NeverSettlesInAMinute()
    {
        LandingInput high = Usual with { ThresholdHeight = 500, HoldOffHeight = 450, PowerCutHeight = 458 };
        LandingOutcome outcome = LandingSolver.Solve(high);
        Assert.Equal((LandingRefusal.NeverSettles, 0), (outcome.Refusal, outcome.Limit));
        Assert.InRange(outcome.Shown, 1, 449);
    }

    [Fact]
    public void Solve_PowerLeftOn_FloatsForTwoMinutes()
    {
        LandingInput on = Usual with { PowerCutHeight = 0, PathAngleDegrees = 0.5, FlareTimeConstant = 5 };
        LandingOutcome outcome = LandingSolver.Solve(on);
        Assert.Equal(LandingRefusal.NeverSlowsToTouchdown, outcome.Refusal);
        Assert.Equal(0.85 * 2, new Textbook(on).Weight / new Textbook(on).Dynamic(outcome.Limit), 1e-12);
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
        LandingOutcome outcome = Solve(Usual with { GustChange = 25, GustStart = calm.TouchdownTime, GustLength = 90 });
        Assert.Equal(LandingRefusal.StopsBeforeNoseLowers, outcome.Refusal);
        Assert.Equal(0.7 * outcome.TouchdownSpeed, outcome.Shown, 1e-9);
        Assert.True(outcome.Limit > outcome.Shown);
    }

    // In a wind that changes each stage begins where the last one ended, and every state is the table's there.
    [Fact]
    public void Sample_GustAndProfile_BeginsAndEndsEachStage()
    {
        (_, LandingOutcome outcome, IReadOnlyList<TrajectoryState> states) = WindyLanding.Fly(Usual, 5, 0.2, 3, 4, 30, interval: 0.5);
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
            TrajectoryState[] own = [.. states.Where(s => s.Stage == stage)];
            Assert.Equal((start, end), (own[0].Time, own[^1].Time));
            Assert.Equal((from, to), (Math.Round(own[0].Distance - from, 4) + from, Math.Round(own[^1].Distance - to, 4) + to));
        }

        Assert.Equal(outcome.TouchdownSink, states.Last(s => s.Stage == LandingStage.Settling).Sink, 1e-4);
        Assert.Equal(outcome.ApproachThrust, states[0].Thrust, 1e-9);
        // It stands: the airspeed is the wind's.
        Assert.Equal(states[^1].Headwind, states[^1].Speed, 1e-4);
        Assert.Equal(0.7 * outcome.TouchdownSpeed, states.First(s => s.Stage == LandingStage.RollBraking).Speed, 1e-4);
        Textbook book = new(Usual);
        Assert.All(states, s => Assert.Equal(book.Drag(s.Speed, s.Lift, s.Height + 2), s.Drag, 1e-8));
    }

    [Fact]
    public void Solve_BrakesFromTheTouchdown_HasNoRollBefore()
    {
        (_, LandingOutcome outcome, IReadOnlyList<TrajectoryState> states) = WindyLanding.Fly(Usual, new(BrakesFromTouchdown: true));
        Assert.Equal((outcome.TouchdownDistance, outcome.TouchdownTime), (outcome.NoseLowerDistance, outcome.NoseLowerTime));
        Assert.DoesNotContain(states, s => s.Stage == LandingStage.RollNoseHigh);
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

    private static LandingOutcome Solve(LandingInput input) => LandingSolver.Solve(input);
}
