namespace FlapAero.Equations;

/// <summary>
/// The landing of <see cref="LandingSolver"/> in conditions that it does not know: T_i(V), a wind that changes with height and time, brakes
/// from the touchdown. One landing at a time, every stage integrated. With none of them it is the canonical landing.
/// </summary>
internal sealed class ConditionsSolver
{
    public const double DefaultTolerance = 1e-9;

    private const double LongestHoldOff = 120;
    private const double LongestSettling = 60;
    private const double LongestRoll = 300;

    /// <summary>Window of <see cref="Leg"/>: so short that no kink of the thrust in it counts, s.</summary>
    private const double Window = 1e-4;

    /// <summary>States that one stage keeps at most: an approach from absurdly high must end too.</summary>
    private const int MostStates = 50_000;

    private readonly LandingInput _input;
    private readonly bool _brakesFromTouchdown;
    private readonly double _interval;
    private readonly double _tolerance;
    private readonly LandingVoice _voice;
    private readonly ConditionsForces _forces;
    private readonly ApproachPath<ScalarLane> _path;
    private readonly double _sink;
    private readonly List<ConditionsState> _states = [];
    private LandingOutcome _outcome = LandingOutcome.Unreached;

    private ConditionsSolver(
        in LandingInput input, WindField wind, Func<double, double>? idle, double fastest, bool brakesFromTouchdown, double interval,
        double tolerance, LandingVoice voice)
    {
        _input = input;
        _voice = voice;
        _brakesFromTouchdown = brakesFromTouchdown;
        _interval = interval;
        _tolerance = tolerance;
        _forces = new(input, wind, idle, fastest);
        // The path needs the headwind alone, and gives when the wheels pass the heights that matter.
        _path = new(LandingInput.Rows(new ReadOnlySpan<LandingInput>(in input)));
        _sink = ApproachPath<ScalarLane>.SinkRate(input);
        double cut = _path.Power.At(double.NegativeInfinity).End.Value;
        Power = new(0, 1, cut, input.PowerCutTime);
    }

    /// <summary>The share of the way from the approach's thrust to idle.</summary>
    private PowerSchedule<ScalarLane> Power { get; }

    /// <summary>Flies one landing.</summary>
    /// <param name="input">The landing; its headwind is the wind's mean at the wing over the threshold.</param>
    /// <param name="wind">The wind.</param>
    /// <param name="idleThrust">T_i(V), N; the input's constant where none is given.</param>
    /// <param name="fastest">Highest airspeed that T_i(V) is known for.</param>
    /// <param name="brakesFromTouchdown">Whether there is no roll with the nose held off.</param>
    /// <param name="interval">Longest time between the states that are kept.</param>
    /// <param name="tolerance">Share by which a step may be wrong, by its own estimate.</param>
    /// <param name="row">Its place among many, from 0, for messages.</param>
    /// <param name="voice">How messages call its numbers.</param>
    public static (LandingOutcome Outcome, IReadOnlyList<ConditionsState> States) Solve(
        in LandingInput input, WindField wind, Func<double, double>? idleThrust = null, double fastest = double.PositiveInfinity,
        bool brakesFromTouchdown = false, double interval = double.PositiveInfinity, double tolerance = DefaultTolerance,
        int row = LandingCheck.NoRow, LandingVoice? voice = null)
    {
        LandingCheck.Input(input, row, voice);
        ConditionsSolver solver = new(
            input, wind, idleThrust, fastest, brakesFromTouchdown, interval, tolerance, voice ?? LandingVoice.OfTables);
        solver.Fly();
        LandingCheck.Computed(input, solver._outcome, row, voice);
        return (solver._outcome, solver._states);
    }

    private void Fly()
    {
        double flare = _path.FlareHeight.Value, speed = _input.ThresholdSpeed, cosine = Math.Sqrt(1 - _sink / speed * (_sink / speed));
        double lift = StandardConstants.Gravity * cosine / (_forces.Area * speed * speed);
        // A pilot on the approach has trimmed for the shear that he flies through, and not for a gust to come.
        double shear = -_sink * _forces.Wind.Shear(_forces.Wing(_input.ThresholdHeight)) * cosine;
        _forces.ApproachThrust = _forces.Drag(speed, lift, _input.ThresholdHeight) - StandardConstants.Gravity * _sink / speed - shear;
        _outcome.ApproachThrust = _forces.ApproachThrust * _input.Mass;
        _outcome.FlareHeight = flare;
        if (!(flare < _input.ThresholdHeight))
            _outcome.Refuse(LandingRefusal.RoundOutAboveThresholdHeight, flare, _input.ThresholdHeight);
        else if (_forces.ApproachThrust < _forces.Idle(speed))
            _outcome.Refuse(LandingRefusal.PathSteeperThanIdleGlide, _outcome.ApproachThrust, _forces.Idle(speed) * _input.Mass);
        else
            Approach();
    }

    private void Approach()
    {
        ConditionsPathStage stage = new(_forces, 0, _input.ThresholdHeight, _sink, double.PositiveInfinity, 0);
        LegState<ScalarLane, PathMotion<ScalarLane>> leg = new() { Motion = new(_input.ThresholdSpeed), Open = ScalarLane.True };
        double until = _path.FlareStart.Value;
        OnPath(ref stage, LandingStage.Approach, until, ref leg);
        double speed = leg.Motion.Speed.Value;
        (_outcome.FlareStartTime, _outcome.FlareStartDistance, _outcome.FlareStartSpeed) = (until, leg.Distance.Value, speed);
        ConditionsPathStage roundOut = new(_forces, until, 0, _sink, _input.FlareTimeConstant, _input.HoldOffHeight);
        double lift = roundOut.LiftCoefficient(until, speed);
        if (ScalarLane.Any(leg.Stuck) || !(lift < _forces.TouchdownLift))
        {
            KnowsIdle(speed);
            _outcome.Refuse(LandingRefusal.LiftLimitBeforeRoundOut, lift, _forces.TouchdownLift);
            return;
        }

        HoldOff(roundOut, leg);
    }

    private void HoldOff(ConditionsPathStage stage, LegState<ScalarLane, PathMotion<ScalarLane>> leg)
    {
        OnPath(ref stage, LandingStage.HoldOff, leg.Time.Value + LongestHoldOff, ref leg);
        double speed = leg.Motion.Speed.Value, time = leg.Time.Value;
        if (ScalarLane.Any(leg.Open))
        {
            KnowsIdle(speed);
            _outcome.Refuse(
                LandingRefusal.NeverSlowsToTouchdown, speed, Math.Sqrt(StandardConstants.Gravity / (_forces.Area * _forces.TouchdownLift)));
            return;
        }

        (_outcome.HoldOffEndTime, _outcome.HoldOffEndHeight) = (time, stage.Height(time));
        (_outcome.HoldOffEndDistance, _outcome.HoldOffEndSpeed) = (leg.Distance.Value, speed);
        Settle(new()
        {
            Time = time,
            Motion = new(speed, -Math.Asin(stage.Sink(time) / speed), stage.Height(time)),
            Distance = leg.Distance,
            Open = ScalarLane.True,
        });
    }

    private void Settle(LegState<ScalarLane, FreeMotion<ScalarLane>> leg)
    {
        ConditionsSettlingStage stage = new(_forces, _sink / _input.ThresholdSpeed, _input.HoldOffHeight);
        Pieces(ref stage, leg.Time.Value + LongestSettling, ref leg, (in LegState<ScalarLane, FreeMotion<ScalarLane>> at) => Keep(
            LandingStage.Settling, at.Time.Value, at.Distance.Value, at.Motion.Height.Value, at.Motion.Speed.Value,
            -at.Motion.Speed.Value * Math.Sin(at.Motion.Angle.Value), _forces.TouchdownLift));
        double speed = leg.Motion.Speed.Value, time = leg.Time.Value;
        if (ScalarLane.Any(leg.Open))
        {
            KnowsIdle(speed);
            _outcome.Refuse(LandingRefusal.NeverSettles, leg.Motion.Height.Value, 0);
            return;
        }

        (_outcome.TouchdownTime, _outcome.TouchdownDistance, _outcome.TouchdownSpeed) = (time, leg.Distance.Value, speed);
        _outcome.TouchdownSink = -speed * Math.Sin(leg.Motion.Angle.Value);
        double ground = speed * Math.Cos(leg.Motion.Angle.Value) - _forces.Wind.At(_forces.Wing(0), time);
        Roll(new() { Time = time, Motion = new(ground), Distance = leg.Distance, Open = ScalarLane.True });
    }

    private void Roll(LegState<ScalarLane, PathMotion<ScalarLane>> leg)
    {
        if (!_brakesFromTouchdown && !NoseHigh(ref leg))
            return;
        (_outcome.NoseLowerDistance, _outcome.NoseLowerTime) = (leg.Distance.Value, leg.Time.Value);
        ConditionsRollStage braking = new(_forces, _input.LevelLift, _input.BrakingFriction, _input.RunwaySlope, null);
        if (!Slow(ref braking, LandingStage.RollBraking, _input.LevelLift, ref leg))
            _outcome.Refuse(LandingRefusal.DoesNotStop, braking.Airspeed(leg.Time.Value, leg.Motion.Speed.Value), Wind(leg.Time.Value));
        else
            (_outcome.StopDistance, _outcome.StopTime) = (leg.Distance.Value, leg.Time.Value);
    }

    private bool NoseHigh(ref LegState<ScalarLane, PathMotion<ScalarLane>> leg)
    {
        double lowered = _input.NoseLowerSpeedFraction * _outcome.TouchdownSpeed;
        if (!(lowered > Math.Max(Wind(leg.Time.Value), 0)))
        {
            _outcome.Refuse(LandingRefusal.StopsBeforeNoseLowers, lowered, Math.Max(Wind(leg.Time.Value), 0));
            return false;
        }

        ConditionsRollStage stage = new(_forces, _input.NoseHighLift, _input.RollingFriction, _input.RunwaySlope, lowered);
        if (stage.Airspeed(leg.Time.Value, leg.Motion.Speed.Value) <= lowered
            || Slow(ref stage, LandingStage.RollNoseHigh, _input.NoseHighLift, ref leg))
        {
            leg.Open = ScalarLane.True;
            return true;
        }

        double airspeed = stage.Airspeed(leg.Time.Value, leg.Motion.Speed.Value);
        // Where no step is small enough, the aeroplane stands in its headwind with the nose still up.
        if (ScalarLane.Any(leg.Stuck))
            _outcome.Refuse(LandingRefusal.StopsBeforeNoseLowers, lowered, Wind(leg.Time.Value));
        else
            _outcome.Refuse(LandingRefusal.DoesNotSlowOnTheRoll, airspeed, lowered);
        return false;
    }

    private bool Slow(
        ref ConditionsRollStage stage, LandingStage name, double lift, ref LegState<ScalarLane, PathMotion<ScalarLane>> leg)
    {
        ConditionsRollStage law = stage;
        Pieces(ref stage, leg.Time.Value + LongestRoll, ref leg, (in LegState<ScalarLane, PathMotion<ScalarLane>> at) => Keep(
            name, at.Time.Value, at.Distance.Value, 0, law.Airspeed(at.Time.Value, at.Motion.Speed.Value), 0, lift));
        if (ScalarLane.Any(leg.Open))
            KnowsIdle(stage.Airspeed(leg.Time.Value, leg.Motion.Speed.Value));
        return !ScalarLane.Any(leg.Open);
    }

    private void OnPath(
        ref ConditionsPathStage stage, LandingStage name, double until, ref LegState<ScalarLane, PathMotion<ScalarLane>> leg)
    {
        ConditionsPathStage law = stage;
        Pieces(ref stage, until, ref leg, (in LegState<ScalarLane, PathMotion<ScalarLane>> at) => Keep(
            name, at.Time.Value, at.Distance.Value, law.Height(at.Time.Value), at.Motion.Speed.Value, law.Sink(at.Time.Value),
            law.LiftCoefficient(at.Time.Value, at.Motion.Speed.Value)));
    }

    private delegate void Keeper<TMotion>(in LegState<ScalarLane, TMotion> at) where TMotion : unmanaged, IMotion<TMotion, ScalarLane>;

    /// <summary>From edge of the gust to edge, and from one state that is kept to the next.</summary>
    private void Pieces<TMotion, TStage>(ref TStage stage, double until, ref LegState<ScalarLane, TMotion> leg, Keeper<TMotion> keep)
        where TMotion : unmanaged, IMotion<TMotion, ScalarLane>
        where TStage : struct, IStage<ScalarLane, TMotion>
    {
        keep(leg);
        leg.Spent = 0;
        double interval = Math.Max(_interval, (until - leg.Time.Value) / MostStates);
        while (ScalarLane.Any(leg.Open) && !ScalarLane.Any(leg.Stuck) && leg.Time.Value < until)
        {
            double piece = Math.Min(until, Math.Min(_forces.Wind.NextEdge(leg.Time.Value), leg.Time.Value + interval));
            Leg.Fly(ref stage, Power, piece, Math.Min(1, piece - leg.Time.Value), Window, _tolerance, ref leg);
            keep(leg);
        }
    }

    private double Wind(double time) => _forces.Wind.At(_forces.Wing(0), time);

    private void Keep(LandingStage stage, double time, double distance, double height, double airspeed, double sink, double lift)
    {
        double thrust = _forces.Thrust(Power.At(time).At(time).Value, airspeed);
        _states.Add(new(
            new(stage, time, distance, height, airspeed, sink, lift, thrust * _input.Mass),
            _forces.Wind.At(_forces.Wing(height), time), _forces.WindRate(height, -sink, time), _forces.Drag(airspeed, lift, height) * _input.Mass));
    }

    private string BeyondTheTable() =>
        $"idle thrust: its table ends at {_voice.Shown((int)LandingVariable.ThresholdSpeed, _forces.Fastest)}, and the landing "
        + "gets there; allowed is a table that covers the whole landing. Beyond it nothing is known of the idling engine.";

    private void KnowsIdle(double airspeed)
    {
        if (airspeed > 0.999 * _forces.Fastest)
            throw RefusedInputException.OfWhole("idleThrust", BeyondTheTable());
    }
}

/// <summary>A moment of a landing with the wind w and ẇ at the wing, and the drag.</summary>
internal readonly record struct ConditionsState(TrajectoryState State, double Headwind, double WindRate, double Drag);
