using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>The stages in the air, in lanes; the roll after them is a matter of closed forms, landing by landing.</summary>
internal static class LaneSolver<T>
    where T : unmanaged, ILanes<T>
{
    private const double LongestHoldOff = 120;
    private const double LongestSettling = 60;

    /// <summary>Where the lift only grazes the touchdown's, or the wheels the runway, what is left of the tolerance in the results is not small.</summary>
    private const double GrazingTolerance = 1e-10;

    /// <summary>Share of the threshold speed; an approach that departs from it by more has run away, and its errors with it.</summary>
    private const double RunAway = 0.2;

    /// <summary>Flies <see cref="ILanes{T}.Count"/> landings; those few that graze a stage's end once more by themselves, closely.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Solve(
        ReadOnlySpan<LandingInput> inputs, Span<LandingOutcome> outcomes, double tolerance, in LandingManner manner = default)
    {
        T grazing = Fly(inputs, outcomes, tolerance, manner);
        if (!T.Any(grazing) || tolerance <= GrazingTolerance)
            return;
        for (int i = 0; i < T.Count; i++)
        {
            if (!double.IsNaN(grazing[i]))
                continue;
            outcomes[i] = LandingOutcome.Unreached;
            LaneSolver<ScalarLane>.Fly(inputs.Slice(i, 1), outcomes.Slice(i, 1), GrazingTolerance, manner);
        }
    }

    /// <summary>Flies the landings once.</summary>
    /// <returns>The mask of those that graze.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static T Fly(
        ReadOnlySpan<LandingInput> inputs, Span<LandingOutcome> outcomes, double tolerance, in LandingManner manner = default)
    {
        ApproachPath<T> path = new(inputs, manner.Profile);
        T open = path.Begin(outcomes);
        StageState<T, PathMotion<T>> state = new() { Motion = new(path.ThresholdSpeed), Open = open };
        if (T.Any(open))
            Approach(path, tolerance, ref state, outcomes);
        if (!T.Any(state.Open))
            return state.Grazing;
        StageState<T, FreeMotion<T>> free = HoldOff(path, tolerance, ref state, outcomes);
        if (T.Any(free.Open))
            Land(path, inputs, tolerance, manner, ref free, outcomes);
        return free.Grazing;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Approach(in ApproachPath<T> path, double tolerance, ref StageState<T, PathMotion<T>> state, Span<LandingOutcome> outcomes)
    {
        T open = state.Open;
        PathStage<T> stage = path.Approach;
        StageIntegrator.Fly(
            ref stage, path.Timetable, path.FlareStart, path.FlareStart, 0, tolerance, ref state, through: true);
        for (int i = 0; i < T.Count; i++)
        {
            outcomes[i].FlareStartTime = path.FlareStart[i];
            outcomes[i].FlareStartDistance = state.Distance[i];
            outcomes[i].FlareStartSpeed = state.Motion.Speed[i];
        }

        // Speed that collapses on the way down has passed the touchdown lift long before.
        T limit = open & (~T.Less(path.LiftLeftAtFlare(state.Motion.Speed), 0) | state.Stuck);
        T lift = path.LiftAtFlare(state.Motion.Speed);
        LandingOutcome.Refuse(outcomes, limit, LandingRefusal.LiftLimitBeforeRoundOut, lift, path.TouchdownLift);
        state.Open = open & ~limit;
        state.Grazing |= state.Open & T.Less(RunAway * path.ThresholdSpeed, T.Abs(state.Motion.Speed - path.ThresholdSpeed));
        state.Stuck = 0;
        state.Spent = 0;
        state.Time = path.FlareStart;
    }

    /// <returns>Where the settling begins.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static StageState<T, FreeMotion<T>> HoldOff(
        in ApproachPath<T> path, double tolerance, ref StageState<T, PathMotion<T>> state, Span<LandingOutcome> outcomes)
    {
        T open = state.Open;
        PathStage<T> stage = path.HoldOff;
        StageIntegrator.Fly(
            ref stage, path.Timetable, path.FlareStart + LongestHoldOff, 1.7 * path.TimeConstant,
            Stretch(tolerance) * 0.08 * path.TimeConstant, tolerance, ref state);
        LandingOutcome.Refuse(
            outcomes, state.Open & ~state.Stuck, LandingRefusal.NeverSlowsToTouchdown, state.Motion.Speed, path.LiftSpeed);
        T sink = stage.Sink(state.Time), height = stage.Height(state.Time, sink);
        T done = open & ~state.Open;
        for (int i = 0; i < T.Count; i++)
        {
            if (!double.IsNaN(done[i]))
                continue;
            outcomes[i].HoldOffEndTime = state.Time[i];
            outcomes[i].HoldOffEndHeight = height[i];
            outcomes[i].HoldOffEndDistance = state.Distance[i];
            outcomes[i].HoldOffEndSpeed = state.Motion.Speed[i];
        }

        T angle = 0 - LaneLaws.ArcSine(sink / state.Motion.Speed);
        return new()
        {
            Time = state.Time,
            Motion = new(state.Motion.Speed, angle, height),
            Distance = state.Distance,
            Open = done,
            Grazing = state.Grazing,
        };
    }

    /// <summary>From the end of the hold-off to the wheels on the runway, and the roll.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Land(
        in ApproachPath<T> path, ReadOnlySpan<LandingInput> inputs, double tolerance, in LandingManner manner,
        ref StageState<T, FreeMotion<T>> state, Span<LandingOutcome> outcomes)
    {
        T done = state.Open;
        if (!manner.PutsWheelsOn)
        {
            Settle(path, tolerance, ref state, outcomes);
            done &= ~state.Open;
        }

        (T sine, T cosine) = LaneAngles.SinCos(state.Motion.Angle);
        for (int i = 0; i < T.Count; i++)
        {
            if (!double.IsNaN(done[i]))
                continue;
            outcomes[i].TouchdownTime = state.Time[i];
            outcomes[i].TouchdownDistance = state.Distance[i];
            outcomes[i].TouchdownSpeed = state.Motion.Speed[i];
            outcomes[i].TouchdownSink = -state.Motion.Speed[i] * sine[i];
            path.Roll(inputs, i, tolerance).Run(state.Motion.Speed[i] * cosine[i], manner.BrakesFromTouchdown, ref outcomes[i]);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Settle(
        in ApproachPath<T> path, double tolerance, ref StageState<T, FreeMotion<T>> state, Span<LandingOutcome> outcomes)
    {
        T guess = path.SettlingGuess(state.Time, state.Motion);
        SettlingStage<T> stage = path.Settling;
        StageIntegrator.Fly(
            ref stage, path.Timetable, state.Time + LongestSettling, guess, Stretch(tolerance) * 0.2, tolerance, ref state);
        LandingOutcome.Refuse(outcomes, state.Open & ~state.Stuck, LandingRefusal.NeverSettles, state.Motion.Height, 0);
    }

    /// <summary>The last stretch to a stage's end is a step of order 4: with a tighter tolerance it must be shorter.</summary>
    private static double Stretch(double tolerance) => Math.Min(1, Math.Sqrt(Math.Sqrt(tolerance / LandingSolver.DefaultTolerance)));
}
