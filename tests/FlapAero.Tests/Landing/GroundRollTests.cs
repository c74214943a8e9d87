using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>The roll's refusals with their values, its time limit to the hundredth, and a thrust that still changes.</summary>
public sealed class GroundRollTests
{
    private static readonly LandingInput Usual = UsualLanding.Setup.Checked() with { Headwind = 0 };

    // Without drag, lift and thrust the deceleration is μ g.
    private static readonly LandingInput Even = Usual with
    {
        ZeroLiftDrag = 0,
        NoseHighLift = 0,
        LevelLift = 0,
        IdleThrust = 0,
        RollingFriction = 0.1,
        BrakingFriction = 0.2,
        NoseLowerSpeedFraction = 0.5,
    };

    [Fact]
    public void Run_EvenDeceleration_IsTheClosedFormTwice()
    {
        LandingOutcome outcome = Rolled(Even, 30, 29.9);
        double g = StandardConstants.Gravity;
        Assert.Equal(100 + (29.9 * 29.9 - 225) / (0.2 * g), outcome.NoseLowerDistance, 1e-9);
        Assert.Equal(10 + 14.9 / (0.1 * g), outcome.NoseLowerTime, 1e-9);
        Assert.Equal(outcome.NoseLowerDistance + 225 / (0.4 * g), outcome.StopDistance, 1e-9);
        Assert.Equal(outcome.NoseLowerTime + 15 / (0.2 * g), outcome.StopTime, 1e-9);
    }

    // Over the ground the way is less by the wind's, and the aeroplane stands when its airspeed is the wind's.
    [Fact]
    public void Run_EvenDecelerationInWind_GivesTheWindItsShare()
    {
        LandingOutcome outcome = Rolled(Even with { Headwind = 4 }, 30, 29.9);
        double g = StandardConstants.Gravity;
        Assert.Equal(100 + (29.9 * 29.9 - 225) / (0.2 * g) - 4 * 14.9 / (0.1 * g), outcome.NoseLowerDistance, 1e-9);
        Assert.Equal(outcome.NoseLowerDistance + (225 - 16) / (0.4 * g) - 4 * 11 / (0.2 * g), outcome.StopDistance, 1e-9);
    }

    [Fact]
    public void Run_LowersTheNoseAtTheWindsSpeed_IsRefusedWithBoth()
    {
        AssertRefused(Rolled(Even with { Headwind = 15 }, 30, 29.9), LandingRefusal.StopsBeforeNoseLowers, 15, 15);
        AssertRefused(Rolled(Even with { Headwind = 16 }, 30, 29.9), LandingRefusal.StopsBeforeNoseLowers, 15, 16);
        Assert.Equal(LandingRefusal.None, Rolled(Even with { Headwind = 14.99 }, 30, 29.9).Refusal);
        // A tailwind cannot stop it.
        Assert.Equal(LandingRefusal.None, Rolled(Even with { Headwind = -20 }, 30, 29.9).Refusal);
    }

    // 300 s of each stage and not a moment more: 14.9 m/s at 14.9/299.99 m/s², and at 14.9/300.01.
    [Theory]
    [InlineData(299.99, LandingRefusal.None), InlineData(300.01, LandingRefusal.DoesNotSlowOnTheRoll)]
    public void Run_NoseHighForFiveMinutes_IsRefused(double seconds, LandingRefusal expected)
    {
        LandingOutcome outcome = Rolled(Even with { RollingFriction = 14.9 / seconds / StandardConstants.Gravity }, 30, 29.9);
        Assert.Equal(expected, outcome.Refusal);
        if (expected != LandingRefusal.None)
            AssertRefused(outcome, expected, 15, 15);
    }

    [Theory]
    [InlineData(299.99, LandingRefusal.None), InlineData(300.01, LandingRefusal.DoesNotStop)]
    public void Run_BrakingForFiveMinutes_IsRefused(double seconds, LandingRefusal expected)
    {
        LandingOutcome outcome = Rolled(Even with { BrakingFriction = 15 / seconds / StandardConstants.Gravity }, 30, 29.9);
        Assert.Equal(expected, outcome.Refusal);
        Assert.Equal(expected != LandingRefusal.None, double.IsNaN(outcome.StopDistance));
        Assert.True(double.IsFinite(outcome.NoseLowerDistance));
    }

    // Thrust against friction: with T = μ m g nothing slows it.
    [Fact]
    public void Run_NoDecelerationLeft_IsRefusedWithTheSpeedAndTheWantedOne()
    {
        double friction = 0.1 * Even.Mass * StandardConstants.Gravity;
        AssertRefused(Rolled(Even with { IdleThrust = 1.001 * friction }, 30, 29.9), LandingRefusal.DoesNotSlowOnTheRoll, 29.9, 15);
        Assert.Equal(LandingRefusal.None, Rolled(Even with { IdleThrust = 0.9 * friction }, 30, 29.9).Refusal);
        AssertRefused(Rolled(Even with { IdleThrust = 0.9 * friction, BrakingFriction = 0.05 }, 30, 29.9), LandingRefusal.DoesNotStop, 15, 0);
        // Drag slows it at first, and at the end of the stage no longer.
        LandingInput draggy = Even with { ZeroLiftDrag = 0.1, IdleThrust = 1.3 * friction };
        AssertRefused(Rolled(draggy, 30, 29.9), LandingRefusal.DoesNotSlowOnTheRoll, 29.9, 15);
    }

    // A ramp that lasts to the stop, and an idle thrust that depends on the airspeed: V̇ = (T(t) − D − μ F_N − W sin ε)/m by small steps of the classical method.
    [Theory]
    [InlineData(30.0, 2.0, 0.01), InlineData(15.0, -3.0, 0.0), InlineData(60.0, 0.0, 0.0), InlineData(0.001, 2.0, 0.0)]
    public void Run_ThrustStillFalling_IsTheIntegralByHand(double ramp, double headwind, double slope)
    {
        LandingInput input = Usual with
        {
            Headwind = headwind,
            RunwaySlope = slope,
            RollingFriction = 0.05,
            IdleThrust = 250,
            IdleThrustSlope = -4,
            IdleThrustCurvature = -0.2,
        };
        Textbook book = new(input);
        double Thrust(double time, double v) => 400 + (250 - 4 * v - 0.2 * v * v - 400) * Math.Min(time / ramp, 1);
        (double time, double speed, double distance) = (10, 29.9, 100);
        void Until(double end, double lift, double friction)
        {
            const double step = 1e-3;
            double Rate(double t, double v) => book.OnWheels(v, Thrust(t, v), lift, friction);
            while (true)
            {
                double a = Rate(time, speed), b = Rate(time + step / 2, speed + step / 2 * a), c = Rate(time + step / 2, speed + step / 2 * b);
                double next = speed + step / 6 * (a + 2 * b + 2 * c + Rate(time + step, speed + step * c));
                if (next < end)
                {
                    double rest = (speed - end) / -a;
                    (time, distance, speed) = (time + rest, distance + rest * (0.5 * (speed + end) - headwind), end);
                    return;
                }

                distance += step * (0.5 * (speed + next) - headwind);
                (time, speed) = (time + step, next);
            }
        }

        LandingOutcome outcome = Rolled(input, 30, 29.9, 400, 0, ramp, 1e-9);
        Until(0.7 * 30, input.NoseHighLift, input.RollingFriction);
        Assert.Equal(distance, outcome.NoseLowerDistance, 1e-3);
        Assert.Equal(time, outcome.NoseLowerTime, 1e-4);
        Until(headwind, input.LevelLift, input.BrakingFriction);
        Assert.Equal(distance, outcome.StopDistance, 1e-3);
        Assert.Equal(time, outcome.StopTime, 1e-4);
    }

    // A thrust that takes an hour to fall, and is as strong as the friction all the while.
    [Fact]
    public void Run_ThrustThatFallsForAnHour_IsRefusedAfterFiveMinutes()
    {
        double friction = 0.1 * StandardConstants.Gravity;
        LandingOutcome outcome = Rolled(Even with { IdleThrust = 0.9 * friction * Even.Mass }, 30, 29.9, friction * Even.Mass, 0, 3600);
        // After 300 s: ∫ (T − μ m g) dt = −½ · 0.1 μ g (310² − 10²)/3600.
        AssertRefused(outcome, LandingRefusal.DoesNotSlowOnTheRoll, 29.9 - 0.05 * friction * (310 * 310 - 100) / 3600, 15);
    }

    // Thrust that is never cut is no reason to integrate: its law is the closed form's.
    [Fact]
    public void Run_ThrustNeverCut_RollsInClosedForm()
    {
        double thrust = 0.05 * StandardConstants.Gravity;
        LandingOutcome outcome = Rolled(Even, 30, 29.9, thrust * Even.Mass, double.PositiveInfinity, 4);
        Assert.Equal(100 + (29.9 * 29.9 - 225) / (2 * thrust), outcome.NoseLowerDistance, 1e-9);
        Assert.Equal(outcome.NoseLowerDistance + 225 / (6 * thrust), outcome.StopDistance, 1e-9);
    }

    // Already slower than the nose comes down at: that stage is empty.
    [Fact]
    public void Run_TouchdownBelowTheLoweringSpeed_GoesStraightToTheBrakes()
    {
        LandingOutcome outcome = Rolled(Even, 30, 14);
        Assert.Equal((100, 10), (outcome.NoseLowerDistance, outcome.NoseLowerTime));
        Assert.Equal(100 + 196 / (0.4 * StandardConstants.Gravity), outcome.StopDistance, 1e-9);
    }

    private static void AssertRefused(LandingOutcome outcome, LandingRefusal refusal, double shown, double limit)
    {
        Assert.Equal(refusal, outcome.Refusal);
        Assert.Equal(shown, outcome.Shown, 1e-6);
        Assert.Equal(limit, outcome.Limit, 1e-9);
        Assert.True(double.IsNaN(outcome.StopDistance));
    }

    // From 100 m and 10 s.
    private static LandingOutcome Rolled(
        LandingInput input, double touchdownSpeed, double along, double approachThrust = 0, double cut = 0, double ramp = 0,
        double tolerance = 1e-6)
    {
        LandingOutcome outcome = LandingOutcome.Unreached;
        outcome.Refuse(LandingRefusal.None, 0, 0);
        (outcome.TouchdownSpeed, outcome.TouchdownTime, outcome.TouchdownDistance) = (touchdownSpeed, 10, 100);
        ThrustLaw<ScalarLane> thrust = new(
            approachThrust / input.Mass, input.IdleThrust / input.Mass, input.IdleThrustSlope / input.Mass, input.IdleThrustCurvature / input.Mass);
        WindField<ScalarLane> wind = new(input.Headwind, input.GustChange, input.GustStart, input.GustLength);
        new GroundRoll(input, thrust, wind, new(cut, ramp, wind), tolerance).Run(along, false, ref outcome);
        return outcome;
    }
}
