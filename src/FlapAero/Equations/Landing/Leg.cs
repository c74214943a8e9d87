namespace FlapAero.Equations;

/// <summary>Where a leg stands: time and motion of every lane, and which lanes are still to be flown.</summary>
internal ref struct LegState<T, TMotion>
    where T : unmanaged, ILanes<T>
    where TMotion : unmanaged, IMotion<TMotion, T>
{
    public T Time;
    public TMotion Motion;

    /// <summary>In: the lanes to fly. Out: those that the stage's own end did not stop before its time ran out.</summary>
    public T Open;

    /// <summary>Lanes in which no step was small enough: the speed has collapsed.</summary>
    public T Stuck;
}

/// <summary>Flies one stage in all lanes, each with steps of its own size, to the stage's end or to a time.</summary>
internal static class Leg
{
    private const int MostSteps = 20_000;
    private const double Safety = 0.9;

    public static void Fly<T, TMotion, TStage>(
        TStage stage, in PowerSchedule<T> power, T until, T step, T window, double tolerance, ref LegState<T, TMotion> leg,
        ITrace<TMotion>? trace = null)
        where T : unmanaged, ILanes<T>
        where TMotion : unmanaged, IMotion<TMotion, T>
        where TStage : struct, IStage<T, TMotion>
    {
        T flying = leg.Open & T.Less(leg.Time, until);
        T ended = T.Of(0);
        T correction = T.Of(0);
        T time = leg.Time;
        TMotion motion = leg.Motion;
        Thrust<T> thrust = power.At(time);
        stage.Thrust = thrust;
        TMotion rates = stage.Rates(time, motion);
        T end = stage.End(time, motion);
        T endRate = TStage.HasEnd ? stage.EndRate(time, motion, rates) : T.Of(0);
        T perTolerance = T.Of(1 / tolerance);

        for (int count = 0; T.Any(flying); count++)
        {
            if (count == MostSteps)
            {
                leg.Stuck |= flying;
                break;
            }

            T edge = T.Min(until, thrust.End);
            T left = edge - time;
            T whole = T.Less(left, 1.0001 * step);
            T size = T.Select(flying, T.Select(whole, left, step), T.Of(0));
            TMotion trial = Dop853.Step(in stage, time, motion, rates, size, out TMotion fifth, out TMotion third);
            T next = T.Select(whole, edge, time + size);

            // Hairer's estimate for the pair: of order 7 where both are small.
            T coarse = stage.Share(fifth, motion);
            T fine = stage.Share(third, motion);
            T error = size * perTolerance * coarse * coarse / T.Sqrt(coarse * coarse + 0.01 * fine * fine + T.Of(1e-300));
            T accepted = flying & T.Less(error, T.Of(1));
            // At most eight times, at least a fifth; where the error is not a number the smallest.
            T factor = Safety * T.Exp(-1.0 / Dop853.Order * T.Log(T.Max(error, T.Of(1e-9))));
            factor = T.Max(T.Of(0.2), T.Min(factor, T.Of(8)));
            // A step that an edge cut short says nothing against the one that was planned.
            T longer = T.Select(accepted & whole, T.Max(step, factor * size), factor * size);

            if (TStage.HasEnd)
            {
                TMotion nextRates = stage.Rates(next, trial);
                T nextEnd = stage.End(next, trial);
                T nextEndRate = stage.EndRate(next, trial, nextRates);
                T toEnd = T.Of(0) - nextEnd / nextEndRate;
                T near = accepted & T.Less(T.Of(0), nextEndRate) & T.Less(T.Abs(toEnd), window);
                T past = accepted & ~near & ~T.Less(nextEnd, T.Of(0));
                accepted &= ~past;
                ended |= near;
                correction = T.Select(near, toEnd, correction);
                T root = Hermite.Root(size, end, endRate, nextEnd, nextEndRate);
                T aimed = T.Less(T.Of(0), toEnd) & T.Less(toEnd, factor * size) & T.Less(T.Of(0), nextEndRate);
                step = T.Select(past, root, T.Select(aimed & accepted, toEnd, longer));
                rates = TMotion.Select(accepted, nextRates, rates);
                end = T.Select(accepted, nextEnd, end);
                endRate = T.Select(accepted, nextEndRate, endRate);
                flying &= ~near;
            }
            else
            {
                step = longer;
            }

            time = T.Select(accepted, next, time);
            motion = TMotion.Select(accepted, trial, motion);
            T arrived = accepted & whole;
            flying &= T.Less(time, until);
            leg.Stuck |= flying & T.Less(step, 1e-12 * (T.Of(1) + T.Abs(time)));
            flying &= ~leg.Stuck;
            if (T.Any(flying & arrived))
            {
                // A kink of the thrust: the rates on its far side.
                thrust = power.At(time);
                stage.Thrust = thrust;
                rates = stage.Rates(time, motion);
                endRate = TStage.HasEnd ? stage.EndRate(time, motion, rates) : endRate;
            }
            else if (!TStage.HasEnd && T.Any(flying))
            {
                rates = stage.Rates(time, motion);
            }

            trace?.Add(time[0], motion);
        }

        if (TStage.HasEnd)
            Polish(ref stage, ref time, ref motion, correction);
        leg.Time = time;
        leg.Motion = motion;
        leg.Open &= ~ended;
    }

    /// <summary>
    /// From near the end to it: a step of the classical method of order 4 over what Newton's method says is left, then what is
    /// left after that. The first is at most a window long, the second its square: too short to need more.
    /// </summary>
    private static void Polish<T, TMotion, TStage>(ref TStage stage, ref T time, ref TMotion motion, T step)
        where T : unmanaged, ILanes<T>
        where TMotion : unmanaged, IMotion<TMotion, T>
        where TStage : struct, IStage<T, TMotion>
    {
        TMotion a = stage.Rates(time, motion);
        TMotion b = stage.Rates(time + 0.5 * step, motion.Plus(0.5 * step, a));
        TMotion c = stage.Rates(time + 0.5 * step, motion.Plus(0.5 * step, b));
        TMotion d = stage.Rates(time + step, motion.Plus(step, c));
        motion = motion.Plus((1.0 / 6) * step, a.Plus(2, b).Plus(2, c).Plus(1, d));
        time += step;
        TMotion rates = stage.Rates(time, motion);
        T rate = stage.EndRate(time, motion, rates);
        T rest = T.Select(T.Less(T.Of(0), T.Abs(step)), T.Of(0) - stage.End(time, motion) / rate, T.Of(0));
        motion = motion.Plus(rest, rates);
        time += rest;
    }
}
