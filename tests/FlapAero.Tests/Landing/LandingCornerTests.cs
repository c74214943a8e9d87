using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>What the reference cases do not reach.</summary>
public sealed class LandingCornerTests
{
    private static readonly LandingInput Usual = UsualLanding.Setup.Checked();

    [Theory]
    [InlineData(1e-9), InlineData(-1e-9)]
    public void Solve_PowerCutAtTheRoundOut_IsNoSpecialCase(double off)
    {
        double flare = LandingSolver.Solve(Usual).FlareHeight;
        double exactly = LandingSolver.Solve(Usual with { PowerCutHeight = flare }).StopDistance;
        Assert.Equal(exactly, LandingSolver.Solve(Usual with { PowerCutHeight = flare + off }).StopDistance, 1e-3);
    }

    [Fact]
    public void Solve_PowerCutAtTheThreshold_IsTheCutAboveIt() =>
        Assert.Equal(
            LandingSolver.Solve(Usual with { PowerCutHeight = 40 }), LandingSolver.Solve(Usual with { PowerCutHeight = Usual.ThresholdHeight }));

    [Fact]
    public void Solve_PowerCutAtTheHoldOffHeight_NeverComes()
    {
        LandingInput never = Usual with { PathAngleDegrees = 6, PowerCutHeight = Usual.HoldOffHeight, IdleThrust = -500 };
        Assert.Equal(LandingSolver.Solve(never), LandingSolver.Solve(never with { PowerCutHeight = 0 }));
        Assert.NotEqual(LandingSolver.Solve(never).StopDistance, LandingSolver.Solve(never with { PowerCutHeight = 8 }).StopDistance);
    }

    [Fact]
    public void Solve_StepAndShortRamp_Agree()
    {
        double step = LandingSolver.Solve(Usual with { PowerCutTime = 0 }).StopDistance;
        Assert.Equal(step, LandingSolver.Solve(Usual with { PowerCutTime = 1e-6 }).StopDistance, 1e-2);
    }

    [Fact]
    public void Solve_RampIntoTheRoll_IsLongerThanIdleThere()
    {
        double early = LandingSolver.Solve(Usual with { PowerCutTime = 4 }).StopDistance;
        LandingOutcome late = LandingSolver.Solve(Usual with { PowerCutTime = 20 }, 1e-12);
        Assert.True(late.TouchdownTime < 20 && late.StopDistance > early);
        Assert.Equal(late.StopDistance, LandingSolver.Solve(Usual with { PowerCutTime = 20 }).StopDistance, 0.01);
    }

    [Fact]
    public void Solve_WingCarriesAllAtTouchdown_RollsOnDragAlone()
    {
        // C_Lg1 above the touchdown's lift: no wheel load until the speed at which it just carries the weight.
        LandingInput input = Usual with { NoseHighLift = 2.1, RunwaySlope = 0.01 };
        LandingOutcome outcome = LandingSolver.Solve(input, 1e-12);
        double byHand = RollByHand(input, outcome);
        Assert.Equal(byHand, outcome.NoseLowerDistance, 1e-4);
    }

    [Fact]
    public void Solve_TailwindAtTheStop_IsTheIntegralThroughZeroAirspeed()
    {
        LandingInput input = Usual with { Headwind = -4, NoseHighLift = 0.9 };
        LandingOutcome outcome = LandingSolver.Solve(input, 1e-12);
        RollStage stage = Stage(input, input.LevelLift, input.BrakingFriction);
        double speed = input.NoseLowerSpeedFraction * outcome.TouchdownSpeed, distance = outcome.NoseLowerDistance, time = outcome.NoseLowerTime;
        const int steps = 200_000;
        double step = (speed - input.Headwind) / steps;
        for (int i = 0; i < steps; i++)
        {
            double v = speed - (i + 0.5) * step;
            RollLaw law = stage.Deceleration(v, 1);
            distance += (v - input.Headwind) * step / law.At(v);
            time += step / law.At(v);
        }

        Assert.Equal(distance, outcome.StopDistance, 1e-5);
        Assert.Equal(time, outcome.StopTime, 1e-6);
    }

    [Fact]
    public void Deceleration_AirFromBehind_PushesOn()
    {
        RollStage stage = Stage(Usual with { IdleThrust = 0 }, 0.5, 0.3);
        (double constant, _, double ahead) = stage.Deceleration(5, 1);
        (double same, _, double behind) = stage.Deceleration(-5, 1);
        Assert.Equal(constant, same);
        double area = 0.5 * Usual.Density * Usual.WingArea / Usual.Mass;
        double drag = DragLaws.Coefficient(
            Usual.ZeroLiftDrag, DragLaws.InducedFactor(Usual.Oswald, Usual.Span * Usual.Span / Usual.WingArea), 0.5,
            DragLaws.GroundEffect(Usual.WingHeight, Usual.Span));
        Assert.Equal(area * (drag - 0.3 * 0.5), ahead, 1e-12);
        Assert.Equal(area * (-drag - 0.3 * 0.5), behind, 1e-12);
    }

    [Fact]
    public void Deceleration_Slope_TakesSineAndCosine()
    {
        double angle = Math.Atan(0.3);
        RollStage stage = Stage(Usual with { RunwaySlope = 0.3, IdleThrust = 1.5 * Usual.Mass }, 0, 0.2);
        Assert.Equal(9.80665 * (0.2 * Math.Cos(angle) + Math.Sin(angle)) - 1.5, stage.Deceleration(1, 1).Constant, 1e-12);
    }

    [Fact]
    public void Solve_NoseLoweredAtOnce_HasNoFirstRoll()
    {
        LandingInput input = Usual with { NoseLowerSpeedFraction = 1 - 1e-12 };
        LandingOutcome outcome = LandingSolver.Solve(input);
        Assert.Equal(outcome.TouchdownDistance, outcome.NoseLowerDistance);
    }

    [Fact]
    public void Solve_PowerLeftOn_FloatsUntilRefused()
    {
        LandingOutcome outcome = LandingSolver.Solve(Usual with { PowerCutHeight = 0, PathAngleDegrees = 0.5, FlareTimeConstant = 5 });
        Assert.Equal(LandingRefusal.NeverSlowsToTouchdown, outcome.Refusal);
        Assert.Contains("after 120 s of floating", RefusalText.Explain(outcome), StringComparison.Ordinal);
    }

    [Fact]
    public void Solve_SpeedCollapsesOnTheApproach_IsTheLiftLimit()
    {
        LandingOutcome outcome = LandingSolver.Solve(Usual with
        {
            ThresholdSpeed = 26.6,
            Headwind = 8,
            Mass = 1250,
            PathAngleDegrees = 2.5,
            PowerCutHeight = 20,
            ZeroLiftDrag = 0.3,
            MaximumLift = 9,
        });
        Assert.Equal(LandingRefusal.LiftLimitBeforeRoundOut, outcome.Refusal);
    }

    [Fact]
    public void Explain_EveryReferenceRefusal_NamesItsValues() =>
        Assert.All(ReferenceLandings.Refusals, landing =>
        {
            LandingOutcome outcome = LandingSolver.Solve(landing.Input);
            string text = RefusalText.Explain(outcome);
            Assert.StartsWith(landing.Reason + ": ", text, StringComparison.Ordinal);
            Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
            Assert.Matches("[0-9]", text);
        });

    // Distance with the wheels unloaded, then loaded, by the printed closed form ln[(C + E V₁²)/(C + E V₂²)] m/2E.
    private static double RollByHand(LandingInput input, LandingOutcome outcome)
    {
        double cosine = 1 / Math.Sqrt(1 + input.RunwaySlope * input.RunwaySlope), sine = input.RunwaySlope * cosine;
        double weight = input.Mass * StandardConstants.Gravity, half = 0.5 * input.Density * input.WingArea;
        double near = DragLaws.GroundEffect(input.WingHeight, input.Span);
        double drag = DragLaws.Coefficient(
            input.ZeroLiftDrag, DragLaws.InducedFactor(input.Oswald, input.Span * input.Span / input.WingArea), input.NoseHighLift, near);
        double unloaded = Math.Sqrt(weight * cosine / (half * input.NoseHighLift));
        double start = Math.Sqrt(outcome.TouchdownSpeed * outcome.TouchdownSpeed - outcome.TouchdownSink * outcome.TouchdownSink);
        double end = input.NoseLowerSpeedFraction * outcome.TouchdownSpeed;
        Assert.InRange(unloaded, end, start);

        double Air(double c, double e, double from, double to) => input.Mass / (2 * e) * Math.Log((c + e * from * from) / (c + e * to * to));
        double Time(double c, double e, double from, double to)
        {
            double total = 0;
            const int steps = 100_000;
            for (int i = 0; i < steps; i++)
            {
                double v = to + (from - to) * (i + 0.5) / steps;
                total += input.Mass * (from - to) / steps / (c + e * v * v);
            }

            return total;
        }

        (double c, double e, double f, double t)[] pieces =
        [
            (weight * sine - input.IdleThrust, half * drag, start, unloaded),
            (weight * (input.RollingFriction * cosine + sine) - input.IdleThrust, half * (drag - input.RollingFriction * input.NoseHighLift), unloaded, end),
        ];
        return outcome.TouchdownDistance
            + pieces.Sum(p => Air(p.c, p.e, p.f, p.t) - input.Headwind * Time(p.c, p.e, p.f, p.t));
    }

    private static RollStage Stage(LandingInput input, double lift, double friction) =>
        new(input, lift, friction, new ApproachPath<ScalarLane>([input]).Thrust, default, null);
}
