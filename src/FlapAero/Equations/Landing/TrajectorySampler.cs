namespace FlapAero.Equations;

/// <summary>
/// A landing moment by moment, for plotting: the same stages, flown from one moment to the next. Where a stage ends is taken from
/// the outcome, so that a picture and a table never disagree.
/// </summary>
internal sealed class TrajectorySampler
{
    /// <summary>Of a stage: an approach that takes ages has no more of them, whatever the interval.</summary>
    private const int MostMoments = 150_000;

    private readonly LandingInput _input;
    private readonly LandingOutcome _outcome;
    private readonly ApproachPath<ScalarLane> _path;
    private readonly double _interval;
    private readonly double _tolerance;
    private readonly List<TrajectoryState> _states = [];

    private TrajectorySampler(
        in LandingInput input, in LandingOutcome outcome, double interval, double tolerance,
        Func<double, double>? profile) =>
        (_input, _outcome, _interval, _tolerance, _path) = (input, outcome, interval, tolerance, new([input], profile));

    /// <summary>States at most an interval apart; both ends of every stage are among them.</summary>
    public static List<TrajectoryState> Sample(
        in LandingInput input, in LandingOutcome outcome, double interval, double tolerance, in LandingManner manner = default)
    {
        var sampler = new TrajectorySampler(input, outcome, interval, tolerance, manner.Profile);
        sampler.InTheAir();
        sampler.OnTheGround(manner.BrakesFromTouchdown);
        return sampler._states;
    }

    private void InTheAir()
    {
        OnPath(
            LandingStage.Approach, _path.Approach, 0, _input.ThresholdSpeed, 0,
            _outcome.FlareStartTime, _outcome.FlareStartDistance);
        OnPath(
            LandingStage.HoldOff, _path.HoldOff, _outcome.FlareStartTime, _outcome.FlareStartSpeed,
            _outcome.FlareStartDistance, _outcome.HoldOffEndTime, _outcome.HoldOffEndDistance);
        if (_outcome.TouchdownTime > _outcome.HoldOffEndTime)
            Settle();
    }

    private void OnTheGround(bool brakesFromTouchdown)
    {
        GroundRoll roll = _path.Roll([_input], 0, _tolerance);
        RollStage noseHigh = roll.NoseHigh(null);
        double level = Math.Sqrt(_outcome.TouchdownSpeed * _outcome.TouchdownSpeed - _outcome.TouchdownSink * _outcome.TouchdownSink);
        double ground = level - noseHigh.Headwind(_outcome.TouchdownTime);
        if (!brakesFromTouchdown)
            ground = Roll(
                LandingStage.RollNoseHigh, noseHigh, _input.NoseHighLift, _outcome.TouchdownTime, ground, _outcome.TouchdownDistance,
                _outcome.NoseLowerTime, _outcome.NoseLowerDistance);
        Roll(
            LandingStage.RollBraking, roll.Braking, _input.LevelLift, _outcome.NoseLowerTime, ground, _outcome.NoseLowerDistance,
            _outcome.StopTime, _outcome.StopDistance);
    }

    private void OnPath(
        LandingStage name, PathStage<ScalarLane> stage, double start, double speed, double from, double end, double to)
    {
        StageState<ScalarLane, PathMotion<ScalarLane>> state = new() { Time = start, Motion = new(speed), Distance = from };
        foreach (double time in Moments(start, end))
        {
            FlyTo(ref stage, time, ref state);
            ScalarLane airspeed = state.Motion.Speed, sink = stage.Sink(time);
            double lift = _path.LiftCoefficient(airspeed, sink, stage.ExtraLift(sink)).Value;
            Add(name, time, Within(state.Distance, to), stage.Height(time, sink).Value, airspeed.Value, sink.Value, lift);
        }
    }

    private void Settle()
    {
        double sink = _path.HoldOff.Sink(_outcome.HoldOffEndTime).Value;
        StageState<ScalarLane, FreeMotion<ScalarLane>> state = new()
        {
            Time = _outcome.HoldOffEndTime,
            Motion = new(_outcome.HoldOffEndSpeed, -Math.Asin(sink / _outcome.HoldOffEndSpeed), _outcome.HoldOffEndHeight),
            Distance = _outcome.HoldOffEndDistance,
        };
        SettlingStage<ScalarLane> stage = _path.Settling;
        foreach (double time in Moments(_outcome.HoldOffEndTime, _outcome.TouchdownTime))
        {
            FlyTo(ref stage, time, ref state);
            FreeMotion<ScalarLane> motion = state.Motion;
            bool down = time >= _outcome.TouchdownTime;
            Add(LandingStage.Settling, time, down ? _outcome.TouchdownDistance : Within(state.Distance, _outcome.TouchdownDistance),
                down ? 0 : motion.Height.Value, motion.Speed.Value, -motion.Speed.Value * Math.Sin(motion.Angle.Value), _path.TouchdownLift.Value);
        }
    }

    /// <summary>Rolls a stage.</summary>
    /// <returns>Speed over the ground at its end.</returns>
    private double Roll(LandingStage name, RollStage stage, double lift, double start, double ground, double from, double end, double to)
    {
        StageState<ScalarLane, PathMotion<ScalarLane>> state = new() { Time = start, Motion = new(ground), Distance = from };
        foreach (double time in Moments(start, end))
        {
            FlyTo(ref stage, time, ref state);
            double airspeed = state.Motion.Speed.Value + stage.Headwind(time);
            Add(name, time, time >= end ? to : Within(state.Distance, to), 0, airspeed, 0, lift);
        }

        return state.Motion.Speed.Value;
    }

    private void Add(LandingStage name, double time, double distance, double height, double speed, double sink, double lift)
    {
        AirForces<ScalarLane> forces = _path.Forces;
        double wing = forces.Wing(height).Value, area = 0.5 * _input.Density * _input.WingArea / _input.Mass;
        double drag = Math.CopySign(forces.Drag(forces.GroundEffect(wing), speed * speed, area * lift * speed).Value, speed);
        double thrust = _path.Thrust.At(_path.Timetable.At(time).Closed(time), speed).Value;
        (ScalarLane headwind, ScalarLane windRate) = forces.Wind.At(wing, -sink, time);
        _states.Add(new(
            name, time, distance, height, speed, sink, lift, _input.Mass * thrust, _input.Mass * drag,
            headwind.Value, windRate.Value));
    }

    // Flown in other steps than the outcome's, a stage's last metres differ in the last digits: none may lie beyond its end.
    private static double Within(ScalarLane distance, double end) => Math.Min(distance.Value, end);

    private IEnumerable<double> Moments(double start, double end)
    {
        int count = Math.Max(1, (int)Math.Min(Math.Ceiling((end - start) / _interval), MostMoments));
        for (int i = 0; i < count; i++)
            yield return start + (end - start) * i / count;
        yield return end;
    }

    // Not to the stage's own end: that is the outcome's, found once.
    private void FlyTo<TMotion, TStage>(ref TStage stage, double time, ref StageState<ScalarLane, TMotion> state)
        where TMotion : unmanaged, IMotion<TMotion, ScalarLane>
        where TStage : struct, IStage<ScalarLane, TMotion>
    {
        state.Open = ScalarLane.True;
        StageIntegrator.Fly(ref stage, _path.Timetable, time, _interval, 0, _tolerance, ref state, through: true);
    }
}
