using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Flying a stage to its end, held to motions in closed form; and what it costs, counted in steps.</summary>
public sealed class StageIntegratorTests
{
    private const double Far = 1e3;
    private static readonly Timetable<ScalarLane> Never = new(double.PositiveInfinity, 0, default);

    // V̇ = −k V from 10 to 4: t = ln(2.5)/k, x = 6/k.
    [Theory]
    [InlineData(0.3, 0.01), InlineData(1.0, 0.05), InlineData(2.0, 0.1)]
    public void Fly_Decay_EndsWhereTheClosedFormSays(double rate, double window)
    {
        Count count = new();
        StageState<ScalarLane, PathMotion<ScalarLane>> state = new() { Motion = new(10), Open = ScalarLane.True, Time = 2, Distance = 7 };
        DecayStage<ScalarLane> stage = new(rate, 4, count);
        StageIntegrator.Fly(ref stage, Never, Far, 1 / rate, window / rate, 1e-12, ref state);
        Assert.Equal(2 + Math.Log(2.5) / rate, state.Time.Value, 1e-9 / rate);
        Assert.Equal(7 + 6 / rate, state.Distance.Value, 1e-8 / rate);
        Assert.Equal(4, state.Motion.Speed.Value, 1e-8);
        Assert.False(ScalarLane.Any(state.Open) || ScalarLane.Any(state.Stuck));
        Assert.InRange(count.Steps, 1, 12);
    }

    [Fact]
    public void Fly_FourLanes_EndEachAtItsOwnTime()
    {
        // The third is closed from the start, the fourth runs out of time first.
        double[] rates = [0.5, 2, 1, 0.1];
        Lanes4 rate = Lanes4.Gather(rates, 0, 1), open = Lanes4.Less(0, Lanes4.Gather([1, 1, -1, 1], 0, 1));
        StageState<Lanes4, PathMotion<Lanes4>> state = new() { Motion = new(10), Open = open };
        DecayStage<Lanes4> stage = new(rate, 4, new());
        StageIntegrator.Fly(ref stage, Forever(), Lanes4.Gather([9, 9, 9, 3], 0, 1), 1, 0.01, 1e-12, ref state);
        Assert.Equal(Math.Log(2.5) / 0.5, state.Time[0], 1e-10);
        Assert.Equal(Math.Log(2.5) / 2, state.Time[1], 1e-10);
        Assert.Equal((0, 10, 0), (state.Time[2], state.Motion.Speed[2], state.Distance[2]));
        Assert.Equal((3, 10 * Math.Exp(-0.3)), (state.Time[3], Math.Round(state.Motion.Speed[3] - 10 * Math.Exp(-0.3), 9) + 10 * Math.Exp(-0.3)));
        Assert.Equal(100 * (1 - Math.Exp(-0.3)), state.Distance[3], 1e-9);
        Assert.Equal([false, false, false, true], Mask(state.Open));
    }

    // V = sin t passes ½ at π/6 and falls again before a step of 2.8 ends: both ends of the step are below.
    [Theory]
    [InlineData(0.5), InlineData(0.9), InlineData(0.02)]
    public void Fly_EndReachedAndLeftWithinAStep_IsFoundWhereItWasReached(double end)
    {
        StageState<ScalarLane, PathMotion<ScalarLane>> state = Sine(end, 1e-4, Far, 2.8, 1e-3, out _);
        Assert.Equal(Math.Asin(end), state.Time.Value, 1e-6);
        Assert.False(ScalarLane.Any(state.Open) || ScalarLane.Any(state.Stuck));
    }

    // The last stretch, as long as the window lets it be: V = sin t passes 0.7 at arcsin 0.7, and the way is the time.
    [Theory]
    [InlineData(0.25, 0.55, 1e-5), InlineData(0.05, 0.75, 1e-9)]
    public void Fly_LastStretchInOneGo_KeepsTheTimeInStep(double window, double step, double allowed)
    {
        StageState<ScalarLane, PathMotion<ScalarLane>> state = Sine(0.7, 1e-6, Far, step, window, out int steps);
        Assert.Equal(1, steps);
        Assert.Equal(Math.Asin(0.7), state.Time.Value, allowed);
        Assert.Equal(state.Time.Value, state.Distance.Value, 1e-12);
    }

    [Fact]
    public void Fly_EndGrazed_IsNoEndlessSearch()
    {
        StageState<ScalarLane, PathMotion<ScalarLane>> state = Sine(1 - 1e-13, 1e-9, Far, 1, 0, out int steps);
        Assert.Equal(Math.PI / 2, state.Time.Value, 1e-5);
        Assert.InRange(steps, 2, 200);
    }

    [Fact]
    public void Fly_EndNeverReached_StopsAtItsTime()
    {
        StageState<ScalarLane, PathMotion<ScalarLane>> state = Sine(1.0001, 1e-9, 7, 1, 0.01, out _);
        Assert.Equal(7, state.Time.Value);
        Assert.Equal(Math.Sin(7), state.Motion.Speed.Value, 1e-8);
        Assert.True(ScalarLane.Any(state.Open));
        Assert.False(ScalarLane.Any(state.Stuck));
    }

    [Fact]
    public void Fly_ThroughAnEndOnTheWay_FliesOn()
    {
        SineStage stage = new(0.5, 1, new());
        StageState<ScalarLane, PathMotion<ScalarLane>> state = new() { Open = ScalarLane.True };
        StageIntegrator.Fly(ref stage, Never, 2, 0.3, 0, 1e-10, ref state, through: true);
        Assert.Equal((2, true), (state.Time.Value, ScalarLane.Any(state.Open)));
        Assert.Equal(Math.Sin(2), state.Motion.Speed.Value, 1e-9);
    }

    [Fact]
    public void Fly_NothingOpenOrNoTimeLeft_MovesNothing()
    {
        SineStage stage = new(0.5, 1, new());
        StageState<ScalarLane, PathMotion<ScalarLane>> shut = new() { Time = 1 }, late = new() { Time = 1, Open = ScalarLane.True };
        StageIntegrator.Fly(ref stage, Never, 2, 0.3, 0, 1e-10, ref shut);
        StageIntegrator.Fly(ref stage, Never, 1, 0.3, 0, 1e-10, ref late);
        Assert.Equal((1, 1), (shut.Time.Value, late.Time.Value));
        Assert.True(ScalarLane.Any(late.Open));
    }

    // V̇ is the throttle's share of the way to idle: the speed is an integral of straight lines, which a step that crosses none of their kinks has exactly.
    [Fact]
    public void Fly_ThrottleWithTwoKinks_StepsFromKinkToKink()
    {
        Count count = new();
        ThrottleStage stage = new(count);
        StageState<ScalarLane, PathMotion<ScalarLane>> state = new() { Open = ScalarLane.True };
        StageIntegrator.Fly(ref stage, new Timetable<ScalarLane>(10, 4, default), 20, 50, 0, 1e-9, ref state);
        // 10·0 + 4·½ + 6·1.
        Assert.Equal(8, state.Motion.Speed.Value, 1e-11);
        Assert.Equal(20, state.Time.Value);
        Assert.Equal(3, count.Steps);
    }

    // V̇ = −1 from 1 in a law that is meant for V > 0: no step is small enough.
    [Fact]
    public void Fly_SpeedThatCollapses_IsStuckWhereItDoes()
    {
        Lanes4 slope = Lanes4.Gather([1, 0.001, 2, 0.002], 0, 1);
        CollapseStage stage = new(slope);
        StageState<Lanes4, PathMotion<Lanes4>> state = new() { Motion = new(1), Open = ~(Lanes4)0 };
        StageIntegrator.Fly(ref stage, Forever(), 5, 0.7, 0, 1e-9, ref state);
        Assert.Equal([true, false, true, false], Mask(state.Stuck));
        Assert.Equal([true, true, true, true], Mask(state.Open));
        Assert.Equal(1, state.Time[0], 1e-9);
        Assert.Equal(0.5, state.Time[2], 1e-9);
        Assert.Equal((5, 5), (state.Time[1], state.Time[3]));
        Assert.Equal(0.995, state.Motion.Speed[1], 1e-12);
    }

    [Fact]
    public void Fly_MotionTooRoughForItsSteps_GivesUp()
    {
        Count count = new();
        SineStage stage = new(2, 1e5, count);
        StageState<ScalarLane, PathMotion<ScalarLane>> state = new() { Open = ScalarLane.True };
        StageIntegrator.Fly(ref stage, Never, 10, 1, 0, 1e-12, ref state);
        Assert.True(ScalarLane.Any(state.Stuck));
        Assert.Equal(2000, count.Steps);
    }

    // Order 8: a tolerance a hundred million times as tight takes ten times as many steps, and the answer is as good as asked for.
    [Fact]
    public void Fly_TighterTolerance_TakesTheStepsOfOrderEight()
    {
        (int Steps, double Error) At(double tolerance)
        {
            StageState<ScalarLane, PathMotion<ScalarLane>> state = Sine(2, tolerance, 60, 0.5, 0, out int steps);
            return (steps, Math.Abs(state.Motion.Speed.Value - Math.Sin(60)));
        }

        (int fewSteps, double largeError) = At(1e-3);
        (int manySteps, double smallError) = At(1e-11);
        Assert.InRange(largeError, 1e-8, 1e-2);
        Assert.InRange(smallError, 1e-15, 1e-9);
        Assert.InRange((double)manySteps / fewSteps, 6, 14);
        // A step of the sine at 1e-3 is about a sixth of its period or longer.
        Assert.InRange(fewSteps, 15, 60);
    }

    // A first step far too long or too short costs a few more, and no precision.
    [Theory]
    [InlineData(50.0), InlineData(1e-4)]
    public void Fly_BadFirstStep_IsMadeGood(double step)
    {
        StageState<ScalarLane, PathMotion<ScalarLane>> state = Sine(2, 1e-9, 10, step, 0, out int steps);
        Assert.Equal(Math.Sin(10), state.Motion.Speed.Value, 1e-7);
        Sine(2, 1e-9, 10, 1, 0, out int usual);
        Assert.InRange(steps, usual, usual + 8);
    }

    [Fact]
    public void Solve_ReferenceCases_TakeFewSteps()
    {
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Cases)
        {
            ApproachPath<ScalarLane> path = new([landing.Input]);
            LandingOutcome outcome = LandingSolver.Solve(landing.Input);
            Count count = new();
            Counted<PathStage<ScalarLane>> stage = new(path.HoldOff, count);
            StageState<ScalarLane, PathMotion<ScalarLane>> state = new()
            {
                Time = outcome.FlareStartTime,
                Motion = new(outcome.FlareStartSpeed),
                Open = ScalarLane.True,
            };
            StageIntegrator.Fly(ref stage, path.Timetable, Far, 1.7 * path.TimeConstant, 0.08 * path.TimeConstant, LandingSolver.DefaultTolerance, ref state);
            Assert.Equal(outcome.HoldOffEndTime, state.Time.Value, 1e-4);
            Assert.InRange(count.Steps, 1, 9);
        }
    }

    private static StageState<ScalarLane, PathMotion<ScalarLane>> Sine(
        double end, double tolerance, double until, double step, double window, out int steps)
    {
        Count count = new();
        SineStage stage = new(end, 1, count);
        StageState<ScalarLane, PathMotion<ScalarLane>> state = new() { Open = ScalarLane.True };
        StageIntegrator.Fly(ref stage, Never, until, step, window, tolerance, ref state);
        steps = count.Steps;
        return state;
    }

    private static Timetable<Lanes4> Forever() => new(double.PositiveInfinity, 0, default);

    private static bool[] Mask(Lanes4 mask) => [.. Enumerable.Range(0, 4).Select(i => double.IsNaN(mask[i]))];
}
