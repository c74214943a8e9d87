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
    public static void Solve(ReadOnlySpan<LandingInput> inputs, Span<LandingOutcome> outcomes, double tolerance)
    {
        T grazing = Fly(inputs, outcomes, tolerance);
        if (!T.Any(grazing) || tolerance <= GrazingTolerance)
            return;
        for (int i = 0; i < T.Count; i++)
        {
            if (!double.IsNaN(grazing[i]))
                continue;
            outcomes[i] = LandingOutcome.Unreached;
            LaneSolver<ScalarLane>.Fly(inputs.Slice(i, 1), outcomes.Slice(i, 1), GrazingTolerance);
        }
    }

    /// <summary>Flies the landings once.</summary>
    /// <returns>The mask of those that graze.</returns>
    internal static T Fly(ReadOnlySpan<LandingInput> inputs, Span<LandingOutcome> outcomes, double tolerance)
    {
        ApproachPath<T> path = new(LandingInput.Rows(inputs));
        T open = path.Begin(outcomes);
        LegState<T, PathMotion<T>> leg = new() { Motion = new(path.ThresholdSpeed), Open = open };
        if (T.Any(open))
            Approach(path, tolerance, ref leg, outcomes);
        if (T.Any(leg.Open))
            HoldOff(path, tolerance, ref leg, outcomes);
        if (T.Any(leg.Open))
            leg.Grazing |= Settle(path, inputs, tolerance, leg, outcomes);
        return leg.Grazing;
    }

    private static void Approach(in ApproachPath<T> path, double tolerance, ref LegState<T, PathMotion<T>> leg, Span<LandingOutcome> outcomes)
    {
        T open = leg.Open;
        ApproachStage<T> stage = path.Approach;
        Leg.Fly(ref stage, path.Power, path.FlareStart, path.FlareStart, T.Of(0), tolerance, ref leg);
        for (int i = 0; i < T.Count; i++)
        {
            outcomes[i].FlareStartTime = path.FlareStart[i];
            outcomes[i].FlareStartDistance = leg.Distance[i];
            outcomes[i].FlareStartSpeed = leg.Motion.Speed[i];
        }

        // Speed that collapses on the way down has passed the touchdown lift long before.
        T limit = open & (~T.Less(path.LiftLeftAtFlare(leg.Motion), T.Of(0)) | leg.Stuck);
        for (int i = 0; i < T.Count; i++)
        {
            if (!double.IsNaN(limit[i]))
                continue;
            double lift = path.LiftAtFlare(outcomes[i].FlareStartSpeed, i);
            outcomes[i].Refuse(LandingRefusal.LiftLimitBeforeRoundOut, lift, path.TouchdownLift[i]);
        }

        leg.Open = open & ~limit;
        leg.Grazing |= leg.Open & T.Less(RunAway * path.ThresholdSpeed, T.Abs(leg.Motion.Speed - path.ThresholdSpeed));
        leg.Stuck = T.Of(0);
        leg.Spent = 0;
        leg.Time = path.FlareStart;
    }

    private static void HoldOff(in ApproachPath<T> path, double tolerance, ref LegState<T, PathMotion<T>> leg, Span<LandingOutcome> outcomes)
    {
        T open = leg.Open;
        HoldOffStage<T> stage = path.HoldOff;
        Leg.Fly(
            ref stage, path.Power, path.FlareStart + T.Of(LongestHoldOff), 1.5 * path.TimeConstant, 0.03 * path.TimeConstant,
            tolerance, ref leg);
        T floats = leg.Open & ~leg.Stuck;
        T height = stage.Height(stage.Sink(leg.Time));
        T done = open & ~leg.Open;
        for (int i = 0; i < T.Count; i++)
        {
            if (double.IsNaN(floats[i]))
                outcomes[i].Refuse(LandingRefusal.NeverSlowsToTouchdown, leg.Motion.Speed[i], path.LiftSpeed(i));
            if (!double.IsNaN(done[i]))
                continue;
            outcomes[i].HoldOffEndTime = leg.Time[i];
            outcomes[i].HoldOffEndHeight = height[i];
            outcomes[i].HoldOffEndDistance = leg.Distance[i];
            outcomes[i].HoldOffEndSpeed = leg.Motion.Speed[i];
        }

        leg.Open = done;
    }

    private static T Settle(
        in ApproachPath<T> path, ReadOnlySpan<LandingInput> inputs, double tolerance, in LegState<T, PathMotion<T>> before,
        Span<LandingOutcome> outcomes)
    {
        HoldOffStage<T> holdOff = path.HoldOff;
        T sink = holdOff.Sink(before.Time);
        T speed = before.Motion.Speed;
        T angle = T.Of(0) - LaneLaws.ArcSine(sink / speed);
        LegState<T, FreeMotion<T>> leg = new()
        {
            Time = before.Time,
            Motion = new(speed, angle, holdOff.Height(sink)),
            Distance = before.Distance,
            Open = before.Open,
        };
        T until = before.Time + T.Of(LongestSettling);
        PowerSchedule<T> power = path.Power;
        T guess = path.SettlingGuess(power, before.Time, leg.Motion, sink);
        SettlingStage<T> stage = path.Settling;
        Leg.Fly(ref stage, power, until, guess, T.Of(0.1), tolerance, ref leg);
        T hovers = leg.Open & ~leg.Stuck;
        T done = before.Open & ~leg.Open;
        (T sine, T cosine) = LaneAngles.SinCos(leg.Motion.Angle);
        for (int i = 0; i < T.Count; i++)
        {
            if (double.IsNaN(hovers[i]))
                outcomes[i].Refuse(LandingRefusal.NeverSettles, leg.Motion.Height[i], 0);
            if (!double.IsNaN(done[i]))
                continue;
            outcomes[i].TouchdownTime = leg.Time[i];
            outcomes[i].TouchdownDistance = leg.Distance[i];
            outcomes[i].TouchdownSpeed = leg.Motion.Speed[i];
            outcomes[i].TouchdownSink = -leg.Motion.Speed[i] * sine[i];
            GroundRoll.Run(inputs[i], leg.Motion.Speed[i] * cosine[i], path.PowerOf(i), tolerance, ref outcomes[i]);
        }

        return leg.Grazing;
    }
}
