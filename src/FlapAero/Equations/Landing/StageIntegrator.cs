using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>Where a stage stands: time, motion and distance of every lane, and which lanes are still to be flown.</summary>
internal ref struct StageState<T, TMotion>
    where T : unmanaged, ILanes<T>
    where TMotion : unmanaged, IMotion<TMotion, T>
{
    public T Time;
    public TMotion Motion;
    public T Distance;

    /// <summary>In: the lanes to fly. Out: those that the stage's own end did not stop before its time ran out.</summary>
    public T Open;

    /// <summary>Lanes in which no step was small enough: the speed has collapsed.</summary>
    public T Stuck;

    /// <summary>Lanes whose end was reached very slowly, or all but reached: a small error of the motion is a large one in time.</summary>
    public T Grazing;

    /// <summary>Steps of the stage so far beyond one a flight: a stage that is flown in many pieces has no more of them than in one.</summary>
    public int Spent;
}

/// <summary>Flies one stage in all lanes, each with steps of its own size, to the stage's end or to a time.</summary>
internal static class StageIntegrator
{
    private const int MostSteps = 2_000;

    /// <summary>An end is not looked for between moments closer than this, s.</summary>
    private const double Shortest = 1e-7;
    private const double Safety = 0.9;

    /// <summary>Longer steps may fool the estimates, s.</summary>
    private const double LongestStep = 10;

    /// <summary>Of a stage that takes hours, what else a step may be.</summary>
    private const double LongestShare = 0.02;

    /// <summary>The end is stepped to at once where its rate changes by less than this share on the way.</summary>
    private const double MostBend = 0.1;

    /// <summary>An end is grazed where at its rate an error as large as the motion would be made up in more than this, s.</summary>
    private const double Slow = 60;

    /// <summary>And where it rose to within this share of that size and fell again: the cubic cannot tell whether it was reached.</summary>
    private const double Close = 1e-3;

    /// <summary>Flies to the stage's end or to a time; <paramref name="through"/>, to the time whatever the end says.</summary>
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Fly<T, TMotion, TStage>(
        ref TStage stage, in Timetable<T> timetable, T until, T step, T window, double tolerance, ref StageState<T, TMotion> state,
        bool through = false)
        where T : unmanaged, ILanes<T>
        where TMotion : unmanaged, IMotion<TMotion, T>
        where TStage : struct, IStage<T, TMotion>
    {
        const int last = Dop853.Nodes - 1;
        T flying = state.Open & T.Less(state.Time, until);
        T ended = 0;
        T correction = 0;
        Segment<T> endSegment = default;
        Span<T> times = stackalloc T[Dop853.Nodes];
        T longest = T.Max(LongestStep, LongestShare * (until - state.Time));
        for (int count = 0; T.Any(flying); count++)
        {
            state.Spent += Math.Min(count, 1);
            if (state.Spent >= MostSteps)
            {
                state.Stuck |= flying;
                break;
            }

            // To the next kink, so that no step sees one.
            Segment<T> segment = timetable.At(state.Time);
            step = T.Min(step, longest);
            T edge = T.Min(until, segment.End);
            T left = edge - state.Time;
            T whole = T.Less(left, 1.0001 * step);
            T size = T.Select(flying, T.Select(whole, left, step), 0);
            for (int node = 0; node < Dop853.Nodes; node++)
                times[node] = T.Fused(Dop853.Places[node], size, state.Time);
            stage.Prepare(times, segment);
            TMotion rates = stage.Rates(0, state.Motion);
            TMotion trial = Dop853.Step(ref stage, size, state.Motion, rates, out TMotion fifth, out TMotion third, out T distance);
            T error = Error(stage.Share(fifth, state.Motion), stage.Share(third, state.Motion), size, tolerance);
            T sound = stage.Sound(last, trial);
            T accepted = flying & sound & T.Less(error, 1);
            T factor = T.Select(sound, Factor(error), 0.2);
            // A step that an edge cut short says nothing against the one that was planned.
            step = T.Select(accepted & whole, T.Max(step, factor * size), factor * size);

            if (!through)
            {
                T end = stage.End(0, state.Motion);
                T endRate = stage.EndRate(0, state.Motion, rates);
                T nextEnd = stage.End(last, trial);
                T nextEndRate = stage.EndRate(last, trial, stage.Rates(last, trial));
                T rises = T.Less(0, nextEndRate);
                T toEnd = 0 - nextEnd / nextEndRate;
                // By what share the rate changes on the way: where it does, Newton's method has no say.
                T bend = Bend(toEnd, size, endRate, nextEndRate);
                // On the step's own segment: what Polish does sees no kink either.
                T near = accepted & rises & T.Less(T.Abs(toEnd), window) & T.Less(T.Abs(bend), MostBend)
                    & ~T.Less(left - size, toEnd) & ~T.Less(toEnd, 0 - size);
                T past = accepted & ~near & ~T.Less(nextEnd, 0);
                // Where the end is only grazed, Newton's method has no say: the bracket itself has become the answer.
                T grazed = past & T.Less(size, Shortest);
                near |= grazed;
                past &= ~grazed;
                toEnd = T.Select(grazed, 0, toEnd);
                T turned = accepted & ~near & ~past & T.Less(0, endRate) & ~rises;
                T aimed = rises & T.Less(0, toEnd) & T.Less(toEnd, step);
                if (T.Any(past))
                    step = T.Select(past, Hermite.Root(size, end, endRate, nextEnd, nextEndRate), step);
                state.Grazing |= near & T.Less(Slow * nextEndRate, stage.EndSize(trial));
                if (T.Any(turned))
                {
                    // It rose and fell within the step: see whether it reached the end in between.
                    T peak = Hermite.Above(size, end, endRate, nextEnd, nextEndRate) & turned;
                    T lift = Close * stage.EndSize(trial);
                    state.Grazing |= Hermite.Above(size, end + lift, endRate, nextEnd + lift, nextEndRate) & turned;
                    step = T.Select(peak, 0.5 * size, step);
                    past |= peak & T.Less(Shortest, size);
                }

                step = T.Select(~past & accepted & aimed, toEnd, step);
                accepted &= ~past;
                ended |= near;
                correction = T.Select(near, toEnd / (1 + 0.5 * bend), correction);
                endSegment = Segment<T>.Select(near, segment, endSegment);
                flying &= ~near;
            }

            state.Time = T.Select(accepted, T.Select(whole, edge, state.Time + size), state.Time);
            state.Motion = TMotion.Select(accepted, trial, state.Motion);
            state.Distance = T.Select(accepted, state.Distance + distance, state.Distance);
            flying &= T.Less(state.Time, until);
            T stuck = flying & T.Less(step, 1e-12 * (1 + T.Abs(state.Time)));
            state.Stuck |= stuck;
            flying &= ~stuck;
        }

        state.Open &= ~ended;
        if (T.Any(ended))
            Polish(ref stage, endSegment, correction, ref state);
    }

    /// <summary>Hairer's estimate for the pair, as a share of the tolerance: of order 7 where both are small.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Error<T>(T coarse, T fine, T size, double tolerance)
        where T : unmanaged, ILanes<T>
    {
        T square = coarse * coarse;
        return 1 / tolerance * size * square / T.Sqrt(T.Fused(0.01 * fine, fine, square) + 1e-300);
    }

    /// <summary>How much longer the next step may be: at most eight times, at least a fifth, also where the error is not a number.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static T Factor<T>(T error)
        where T : unmanaged, ILanes<T>
    {
        T factor = Safety * T.Exp(-1.0 / Dop853.Order * T.Log(T.Max(error, 1e-9)));
        return T.Max(0.2, T.Min(factor, 8));
    }

    /// <summary>
    /// From near the end to it: a step of the classical method of order 4 over what is left, and over what is left then a Taylor series
    /// with the rates at both ends of that step.
    /// </summary>
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private static void Polish<T, TMotion, TStage>(
        ref TStage stage, in Segment<T> segment, T step, ref StageState<T, TMotion> state)
        where T : unmanaged, ILanes<T>
        where TMotion : unmanaged, IMotion<TMotion, T>
        where TStage : struct, IStage<T, TMotion>
    {
        T middle = state.Time + 0.5 * step;
        stage.Prepare([state.Time, middle, middle, state.Time + step], segment);
        TMotion a = stage.Rates(0, state.Motion);
        T groundSpeed = stage.GroundSpeed(0), endRate = stage.EndRate(0, state.Motion, a);
        TMotion b = stage.Rates(1, state.Motion.Plus(0.5 * step, a));
        TMotion c = stage.Rates(2, state.Motion.Plus(0.5 * step, b));
        TMotion d = stage.Rates(3, state.Motion.Plus(step, c));
        T sixth = 1.0 / 6 * step;
        TMotion motion = state.Motion.Plus(sixth, a.Plus(2, b).Plus(2, c).Plus(1, d));
        T distance = sixth * (groundSpeed + 2 * stage.GroundSpeed(1) + 2 * stage.GroundSpeed(2) + stage.GroundSpeed(3));

        TMotion rates = stage.Rates(3, motion);
        T nextEndRate = stage.EndRate(3, motion, rates);
        T rest = 0 - stage.End(3, motion) / nextEndRate;
        rest /= 1 + 0.5 * Bend(rest, step, endRate, nextEndRate);
        T curve = 0.5 * rest * rest / step;
        // Where there was no step, there is no rest.
        T polished = T.Less(0, T.Abs(step));
        (rest, curve) = (T.Select(polished, rest, 0), T.Select(polished, curve, 0));
        state.Motion = motion.Plus(rest + curve, rates).Plus(0 - curve, a);
        state.Distance += distance + (rest + curve) * stage.GroundSpeed(3) - curve * groundSpeed;
        state.Time += step + rest;
    }

    /// <summary>By what share the end's rate changes on the way to it, if it goes on to change as it did within a step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Bend<T>(T toEnd, T size, T startRate, T rate)
        where T : unmanaged, ILanes<T> => (1 - startRate / rate) * toEnd / size;
}
