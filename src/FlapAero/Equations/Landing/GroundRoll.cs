namespace FlapAero.Equations;

/// <summary>Stages 5 and 6, one landing at a time: integrated while the thrust still changes, in closed form after that.</summary>
internal static class GroundRoll
{
    private const double LongestStage = 300;

    /// <summary>A roll that speeds up may have the kink at the lift-off speed in a step; the estimates see only part of what it does.</summary>
    private const double KinkTolerance = 0.1;

    /// <summary>Window of <see cref="Leg"/>: Newton's last steps on a roll may be this long, s.</summary>
    private const double Window = 0.05;

    /// <summary>Rolls from the touchdown in <paramref name="outcome"/> to the stop, or to a refusal.</summary>
    public static void Run(
        in LandingInput input, double touchdownGroundwardSpeed, in PowerSchedule<ScalarLane> power, double tolerance,
        ref LandingOutcome outcome)
    {
        double lowered = input.NoseLowerSpeedFraction * outcome.TouchdownSpeed;
        if (!(lowered > Math.Max(input.Headwind, 0)))
        {
            outcome.Refuse(LandingRefusal.StopsBeforeNoseLowers, lowered, Math.Max(input.Headwind, 0));
            return;
        }

        RollState state = new(outcome.TouchdownTime, touchdownGroundwardSpeed, outcome.TouchdownDistance);
        RollStage noseHigh = Stage(input, input.NoseHighLift, input.RollingFriction, lowered);
        if (!Slow(noseHigh, input, lowered, power, tolerance, ref state))
        {
            outcome.Refuse(LandingRefusal.DoesNotSlowOnTheRoll, state.Speed, lowered);
            return;
        }

        (outcome.NoseLowerDistance, outcome.NoseLowerTime) = (state.Distance, state.Time);
        RollStage braking = Stage(input, input.LevelLift, input.BrakingFriction, input.Headwind);
        if (!Slow(braking, input, input.Headwind, power, tolerance, ref state))
        {
            outcome.Refuse(LandingRefusal.DoesNotStop, state.Speed, input.Headwind);
            return;
        }

        (outcome.StopDistance, outcome.StopTime) = (state.Distance, state.Time);
    }

    public static RollStage Stage(in LandingInput input, double lift, double friction, double endSpeed)
    {
        double groundEffect = DragLaws.GroundEffect(input.WingHeight, input.Span);
        double induced = DragLaws.InducedFactor(input.Oswald, input.Span * input.Span / input.WingArea);
        double drag = DragLaws.Coefficient(input.ZeroLiftDrag, induced, lift, groundEffect);
        double area = 0.5 * input.Density * input.WingArea / input.Mass;
        return new RollStage(area, lift, drag, friction, input.RunwaySlope, input.Headwind, endSpeed);
    }

    /// <summary>Rolls down to an airspeed; false where it is not reached in time or no deceleration is left.</summary>
    private static bool Slow(
        RollStage stage, in LandingInput input, double target, in PowerSchedule<ScalarLane> power, double tolerance, ref RollState state)
    {
        double latest = state.Time + LongestStage;
        // Above the lift-off speed and below it are two laws; a step across both would see the kink between them.
        bool slows = WhileThrustChanges(stage.CarriedTo(Math.Max(stage.LiftOffSpeed, target)), power, latest, tolerance, ref state)
            && WhileThrustChanges(stage, power, latest, tolerance, ref state);
        if (!slows)
            return false;
        double thrust = power.At(state.Time).At(state.Time).Value;
        // Where the law has a kink it is taken in pieces: the wheels take up weight, the air comes from behind.
        ReadOnlySpan<double> edges = [stage.LiftOffSpeed, 0, target];
        foreach (double edge in edges)
        {
            double to = Math.Max(edge, target);
            if (state.Speed <= to)
                continue;
            (double constant, double squared) = stage.Deceleration(0.5 * (state.Speed + to), thrust);
            if (!(constant + squared * to * to > 0 && constant + squared * state.Speed * state.Speed > 0))
                return false;
            double time = RollQuadrature.Time(constant, squared, state.Speed, to);
            double distance = RollQuadrature.Distance(constant, squared, state.Speed, to) - input.Headwind * time;
            state = new(state.Time + time, to, state.Distance + distance);
            if (!(state.Time < latest))
                return false;
        }

        return true;
    }

    /// <summary>Rolls to the stage's airspeed or until the thrust stays what it is; false where neither comes in time.</summary>
    private static bool WhileThrustChanges(
        RollStage stage, in PowerSchedule<ScalarLane> power, double latest, double tolerance, ref RollState state)
    {
        double settled = power.Settled.Value;
        if (state.Speed <= stage.EndSpeed || !(state.Time < settled) || double.IsPositiveInfinity(settled))
            return true;
        LegState<ScalarLane, PathMotion<ScalarLane>> leg = new()
        {
            Time = state.Time,
            Motion = new(state.Speed),
            Distance = state.Distance,
            Open = ScalarLane.True,
        };
        Leg.Fly(ref stage, power, Math.Min(settled, latest), 2, Window, KinkTolerance * tolerance, ref leg);
        bool slowed = !ScalarLane.Any(leg.Open);
        state = new(leg.Time.Value, slowed ? stage.EndSpeed : leg.Motion.Speed.Value, leg.Distance.Value);
        return slowed || (!ScalarLane.Any(leg.Stuck) && state.Time < latest);
    }

    private readonly record struct RollState(double Time, double Speed, double Distance);
}
