using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>Stages 5 and 6, one landing at a time: integrated while throttle or wind still change, in closed form after that.</summary>
internal readonly struct GroundRoll(
    LandingInput input, ThrustLaw<ScalarLane> thrust, WindField<ScalarLane> wind, Timetable<ScalarLane> timetable,
    double tolerance)
{
    private const double LongestStage = 300;

    /// <summary>A roll that speeds up may have the kink at the lift-off speed in a step; the estimates see only part of what it does.</summary>
    private const double KinkTolerance = 0.1;

    /// <summary>Window of <see cref="StageIntegrator"/>: Newton's last steps on a roll may be this long, s.</summary>
    private const double Window = 0.05;

    /// <summary>Stage 5, to the airspeed at which the nose comes down.</summary>
    public RollStage NoseHigh(double? lowered) => new(input, input.NoseHighLift, input.RollingFriction, thrust, wind, lowered);

    /// <summary>Stage 6, to the stop.</summary>
    public RollStage Braking => new(input, input.LevelLift, input.BrakingFriction, thrust, wind, null);

    /// <summary>Rolls from the touchdown in <paramref name="outcome"/> to the stop, or to a refusal.</summary>
    /// <param name="levelSpeed">V cos γ at the touchdown.</param>
    /// <param name="brakesFromTouchdown">Whether there is no roll with the nose held off.</param>
    /// <param name="outcome">The landing.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Run(double levelSpeed, bool brakesFromTouchdown, ref LandingOutcome outcome)
    {
        RollStage braking = Braking;
        double touchdownWind = braking.Headwind(outcome.TouchdownTime);
        RollState state = new(outcome.TouchdownTime, levelSpeed - touchdownWind, outcome.TouchdownDistance);
        if (!brakesFromTouchdown)
        {
            double lowered = input.NoseLowerSpeedFraction * outcome.TouchdownSpeed;
            RollStage noseHigh = NoseHigh(lowered);
            if (!(lowered > Math.Max(touchdownWind, 0)))
            {
                outcome.Refuse(LandingRefusal.StopsBeforeNoseLowers, lowered, Math.Max(touchdownWind, 0));
                return;
            }

            if (!Slow(noseHigh, ref state))
            {
                double headwind = noseHigh.Headwind(state.Time);
                if (state.Stands)
                    outcome.Refuse(LandingRefusal.StopsBeforeNoseLowers, lowered, headwind);
                else
                    outcome.Refuse(LandingRefusal.DoesNotSlowOnTheRoll, state.GroundSpeed + headwind, lowered);
                return;
            }
        }

        (outcome.NoseLowerDistance, outcome.NoseLowerTime) = (state.Distance, state.Time);
        if (!Slow(braking, ref state))
        {
            double headwind = braking.Headwind(state.Time);
            outcome.Refuse(LandingRefusal.DoesNotStop, state.GroundSpeed + headwind, headwind);
            return;
        }

        (outcome.StopDistance, outcome.StopTime) = (state.Distance, state.Time);
    }

    /// <summary>Rolls to the stage's end; false where it is not reached in time, no deceleration is left or the aeroplane stands before.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Slow(in RollStage stage, ref RollState state)
    {
        double latest = state.Time + LongestStage, gust = wind.Settled.Value;
        // A throttle that is never closed changes nothing.
        bool closes = double.IsFinite(timetable.Settled.Value);
        double settled = closes ? Math.Max(timetable.Settled.Value, gust) : gust;
        return (!(state.Time < settled) || WhileChanging(stage, settled, gust, latest, ref state))
            && InClosedForm(stage, closes ? 1 : 0, latest, ref state);
    }

    /// <summary>Rolls to the stage's end or until nothing changes any more; false where neither comes in time.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool WhileChanging(in RollStage stage, double settled, double gust, double latest, ref RollState state)
    {
        // Above the lift-off speed and below it are two laws; a step across both would see the kink between them. In a gust the airspeed
        // may cross it again and again.
        double target = stage.EndSpeed ?? stage.Headwind(state.Time);
        return (state.Time < gust || Integrate(stage.CarriedTo(Math.Max(stage.LiftOffSpeed, target)), settled, latest, ref state))
            && Integrate(stage, settled, latest, ref state);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Integrate(RollStage stage, double settled, double latest, ref RollState state)
    {
        if (HasEnded(stage, state) || !(state.Time < settled))
            return true;
        StageState<ScalarLane, PathMotion<ScalarLane>> flown = new()
        {
            Time = state.Time,
            Motion = new(state.GroundSpeed),
            Distance = state.Distance,
            Open = ScalarLane.True,
        };
        StageIntegrator.Fly(ref stage, timetable, Math.Min(settled, latest), 2, Window, KinkTolerance * tolerance, ref flown);
        bool slowed = !ScalarLane.Any(flown.Open);
        double time = flown.Time.Value;
        state = new(
            time, slowed ? EndGroundSpeed(stage, time) : flown.Motion.Speed.Value, flown.Distance.Value, ScalarLane.Any(flown.Stuck));
        return slowed || (!state.Stands && time < latest);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static bool InClosedForm(in RollStage stage, double closed, double latest, ref RollState state)
    {
        double headwind = stage.Headwind(state.Time), target = stage.EndSpeed ?? headwind;
        // Where the law has a kink it is taken in pieces: the wheels take up weight, the air comes from behind.
        ReadOnlySpan<double> edges = [stage.LiftOffSpeed, 0, target];
        foreach (double edge in edges)
        {
            double from = state.GroundSpeed + headwind, to = Math.Max(edge, target);
            if (HasEnded(stage, state) || from <= to)
                continue;
            RollLaw law = stage.Deceleration(0.5 * (from + to), closed);
            if (!law.Slows(from, to))
                return false;
            double time = law.Time(from, to);
            state = new(state.Time + time, to - headwind, state.Distance + law.Distance(from, to) - headwind * time);
            if (!(state.Time < latest))
                return false;
        }

        return true;
    }

    private static bool HasEnded(in RollStage stage, in RollState state) => state.GroundSpeed <= EndGroundSpeed(stage, state.Time);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double EndGroundSpeed(in RollStage stage, double time) => stage.EndSpeed is { } end ? end - stage.Headwind(time) : 0;

    private readonly record struct RollState(double Time, double GroundSpeed, double Distance, bool Stands = false);
}
