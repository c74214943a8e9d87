namespace FlapAero.Equations;

/// <summary>
/// A landing moment by moment, for plotting: the same stages, flown from one moment to the next. Where a stage ends is taken from
/// the outcome, so that a picture and a table never disagree.
/// </summary>
internal sealed class TrajectorySampler
{
    private readonly LandingInput _input;
    private readonly LandingOutcome _outcome;
    private readonly ApproachPath<ScalarLane> _path;
    private readonly PowerSchedule<ScalarLane> _power;
    private readonly double _interval;
    private readonly double _tolerance;
    private readonly double _qArea;
    private readonly List<TrajectoryState> _states = [];

    private TrajectorySampler(in LandingInput input, in LandingOutcome outcome, double interval, double tolerance)
    {
        (_input, _outcome, _interval, _tolerance) = (input, outcome, interval, tolerance);
        _path = new(LandingInput.Rows(new ReadOnlySpan<LandingInput>(in input)));
        _power = _path.Power;
        _qArea = 0.5 * input.Density * input.WingArea;
    }

    /// <summary>States at most an interval apart; both ends of every stage are among them.</summary>
    public static List<TrajectoryState> Sample(in LandingInput input, in LandingOutcome outcome, double interval, double tolerance)
    {
        var sampler = new TrajectorySampler(input, outcome, interval, tolerance);
        sampler.Approach();
        sampler.HoldOff();
        if (outcome.TouchdownTime > outcome.HoldOffEndTime)
            sampler.Settle();
        sampler.Roll(
            LandingStage.RollNoseHigh, GroundRoll.Stage(input, input.NoseHighLift, input.RollingFriction, double.NegativeInfinity),
            input.NoseHighLift, outcome.TouchdownTime, sampler.RollStart, outcome.TouchdownDistance, outcome.NoseLowerTime, outcome.NoseLowerDistance);
        sampler.Roll(
            LandingStage.RollBraking, GroundRoll.Stage(input, input.LevelLift, input.BrakingFriction, double.NegativeInfinity),
            input.LevelLift, outcome.NoseLowerTime, Math.Min(sampler.RollStart, input.NoseLowerSpeedFraction * outcome.TouchdownSpeed),
            outcome.NoseLowerDistance, outcome.StopTime, outcome.StopDistance);
        return sampler._states;
    }

    private double RollStart
    {
        get
        {
            double sine = _outcome.TouchdownSink / _outcome.TouchdownSpeed;
            return _outcome.TouchdownSpeed * Math.Sqrt(1 - sine * sine);
        }
    }

    private void Approach()
    {
        LegState<ScalarLane, PathMotion<ScalarLane>> leg = new() { Motion = new(_path.ThresholdSpeed) };
        ApproachStage<ScalarLane> stage = _path.Approach;
        double sink = ApproachPath<ScalarLane>.SinkRate(_input);
        foreach (double time in Moments(0, _outcome.FlareStartTime))
        {
            FlyTo(ref stage, time, ref leg);
            Add(LandingStage.Approach, leg, _outcome.FlareStartDistance, stage.Height(time).Value, sink, 0);
        }
    }

    private void HoldOff()
    {
        LegState<ScalarLane, PathMotion<ScalarLane>> leg = new()
        {
            Time = _outcome.FlareStartTime,
            Motion = new(_outcome.FlareStartSpeed),
            Distance = _outcome.FlareStartDistance,
        };
        HoldOffStage<ScalarLane> stage = _path.HoldOff;
        foreach (double time in Moments(_outcome.FlareStartTime, _outcome.HoldOffEndTime))
        {
            FlyTo(ref stage, time, ref leg);
            double sink = stage.Sink(time).Value;
            Add(LandingStage.HoldOff, leg, _outcome.HoldOffEndDistance, stage.Height(sink).Value, sink, sink / _input.FlareTimeConstant);
        }
    }

    private void Settle()
    {
        HoldOffStage<ScalarLane> holdOff = _path.HoldOff;
        double sink = holdOff.Sink(_outcome.HoldOffEndTime).Value;
        LegState<ScalarLane, FreeMotion<ScalarLane>> leg = new()
        {
            Time = _outcome.HoldOffEndTime,
            Motion = new(_outcome.HoldOffEndSpeed, -Math.Asin(sink / _outcome.HoldOffEndSpeed), _outcome.HoldOffEndHeight),
            Distance = _outcome.HoldOffEndDistance,
        };
        SettlingStage<ScalarLane> stage = _path.Settling;
        foreach (double time in Moments(_outcome.HoldOffEndTime, _outcome.TouchdownTime))
        {
            FlyTo(ref stage, time, ref leg);
            FreeMotion<ScalarLane> motion = leg.Motion;
            bool down = time >= _outcome.TouchdownTime;
            _states.Add(new(
                LandingStage.Settling, time, down ? _outcome.TouchdownDistance : Within(leg.Distance, _outcome.TouchdownDistance), down ? 0 : motion.Height.Value, motion.Speed.Value,
                -motion.Speed.Value * Math.Sin(motion.Angle.Value), _path.TouchdownLift.Value, Thrust(time)));
        }
    }

    private void Roll(LandingStage name, RollStage stage, double lift, double start, double speed, double from, double end, double to)
    {
        LegState<ScalarLane, PathMotion<ScalarLane>> leg = new() { Time = start, Motion = new(speed), Distance = from };
        foreach (double time in Moments(start, end))
        {
            FlyTo(ref stage, time, ref leg);
            _states.Add(new(name, time, time >= end ? to : Within(leg.Distance, to), 0, leg.Motion.Speed.Value, 0, lift, Thrust(time)));
        }
    }

    private void Add(
        LandingStage name, in LegState<ScalarLane, PathMotion<ScalarLane>> leg, double to, double height, double sink, double extraLift)
    {
        double speed = leg.Motion.Speed.Value;
        double cosine = Math.Sqrt(1 - sink * sink / (speed * speed));
        double lift = _input.Mass * (StandardConstants.Gravity * cosine + extraLift) / (_qArea * speed * speed);
        _states.Add(new(name, leg.Time.Value, Within(leg.Distance, to), height, speed, sink, lift, Thrust(leg.Time.Value)));
    }

    // Flown in other steps than the outcome's, a stage's last metres differ in the last digits: none may lie beyond its end.
    private static double Within(ScalarLane distance, double end) => Math.Min(distance.Value, end);

    private double Thrust(double time) => _input.Mass * _power.At(time).At(time).Value;

    private IEnumerable<double> Moments(double start, double end)
    {
        int count = Math.Max(1, (int)Math.Min(Math.Ceiling((end - start) / _interval), 1_000_000));
        for (int i = 0; i < count; i++)
            yield return start + (end - start) * i / count;
        yield return end;
    }

    // Not to the stage's own end: that is the outcome's, found once.
    private void FlyTo<TMotion, TStage>(ref TStage stage, double time, ref LegState<ScalarLane, TMotion> leg)
        where TMotion : unmanaged, IMotion<TMotion, ScalarLane>
        where TStage : struct, IStage<ScalarLane, TMotion>
    {
        leg.Open = ScalarLane.True;
        Leg.FlyThrough(ref stage, _power, time, _interval, _tolerance, ref leg);
    }
}
