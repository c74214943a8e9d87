using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>What is known before the first step: the path, when the power goes, and the stages with their constants.</summary>
internal readonly struct ApproachPath<T>
    where T : unmanaged, ILanes<T>
{
    private readonly T _mass;
    private readonly T _thresholdHeight;
    private readonly T _squareLift;
    private readonly T _holdOffHeight;
    private readonly T _slip;

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public ApproachPath(ReadOnlySpan<LandingInput> landings, Func<double, double>? profile = null)
    {
        Inputs inputs = new(LandingInput.Rows(landings));
        _mass = inputs[LandingVariable.Mass];
        T area = inputs[LandingVariable.WingArea], span = inputs[LandingVariable.Span];
        T half = 0.5 * inputs[LandingVariable.Density] * area;
        T induced = area / (Math.PI * inputs[LandingVariable.OswaldFactor] * span * span);
        T headwind = inputs[LandingVariable.Headwind];
        WindField<T> wind = new(
            headwind, inputs[LandingVariable.GustChange], inputs[LandingVariable.GustStart], inputs[LandingVariable.GustLength], profile);
        AirForces<T> gliding = new(
            half * inputs[LandingVariable.ZeroLiftDragCoefficient] / _mass, induced * _mass / half, inputs[LandingVariable.WingHeight],
            2 / span, default, wind);
        _thresholdHeight = inputs[LandingVariable.ThresholdHeight];
        ThresholdSpeed = inputs[LandingVariable.ThresholdSpeed];
        TimeConstant = inputs[LandingVariable.FlareTimeConstant];
        _holdOffHeight = inputs[LandingVariable.HoldOffHeight];
        TouchdownLift = inputs[LandingVariable.TouchdownLiftFraction] * inputs[LandingVariable.MaximumLiftCoefficient];
        _squareLift = _mass / (half * TouchdownLift);

        Sink = SinkRate(Math.PI / 180 * inputs[LandingVariable.PathAngle], ThresholdSpeed, headwind);
        FlareHeight = T.Fused(Sink, TimeConstant, _holdOffHeight);
        FlareStart = (_thresholdHeight - FlareHeight) / Sink;
        _slip = half * inputs[LandingVariable.SlipDragCoefficient] / _mass;
        T balance = Balance(gliding.Slipping(_slip) with { Wind = wind.WithoutGust() });
        ThrustLaw<T> thrust = new(
            balance, inputs[LandingVariable.IdleThrust] / _mass, inputs[LandingVariable.IdleThrustSlope] / _mass,
            inputs[LandingVariable.IdleThrustCurvature] / _mass);
        Forces = gliding with { Thrust = thrust };
        Timetable = new(CutTime(inputs[LandingVariable.PowerCutHeight]), inputs[LandingVariable.PowerCutTime], wind);
    }

    public T ThresholdSpeed { get; }

    public T TimeConstant { get; }

    public T TouchdownLift { get; }

    /// <summary>s, the sink rate of the approach.</summary>
    public T Sink { get; }

    public T FlareHeight { get; }

    public T FlareStart { get; }

    public Timetable<T> Timetable { get; }

    public AirForces<T> Forces { get; }

    public ThrustLaw<T> Thrust => Forces.Thrust;

    /// <summary>A slip ends where the round-out begins.</summary>
    public PathStage<T> Approach => new(Forces.Slipping(_slip), 0, Sink, _thresholdHeight, _squareLift);

    public PathStage<T> HoldOff => new(Forces, FlareStart, Sink, _holdOffHeight, _squareLift, TimeConstant);

    public SettlingStage<T> Settling => new(Forces, _squareLift, Sink / ThresholdSpeed, _holdOffHeight);

    /// <summary>How far C_L just after the round-out begins is below the touchdown lift, as <see cref="PathStage{T}.End"/> has it.</summary>
    public T LiftLeftAtFlare(T speed) => PathLaws.LiftLeft(speed, Sink, Sink / TimeConstant, _squareLift);

    /// <summary>C_L just after the round-out begins, m ḧ included.</summary>
    public T LiftAtFlare(T speed) => LiftCoefficient(speed, Sink, Sink / TimeConstant);

    /// <summary>C_L on a path of a sink rate and a ḧ.</summary>
    public T LiftCoefficient(T speed, T sink, T extraLift) =>
        PathLaws.LiftOnPath(speed, sink, extraLift) * _squareLift * TouchdownLift / (speed * speed);

    /// <summary>The airspeed at which the touchdown lift carries the weight.</summary>
    public T LiftSpeed => T.Sqrt(StandardConstants.Gravity * _squareLift);

    /// <summary>The roll of one lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public GroundRoll Roll(ReadOnlySpan<LandingInput> landings, int lane, double tolerance)
    {
        WindField<ScalarLane> wind = Forces.Wind.Lane(lane);
        return new(landings[lane], Thrust.Lane(lane), wind, new(Timetable.Cut[lane], landings[lane].PowerCutTime, wind), tolerance);
    }

    /// <summary>
    /// About how long the settling lasts: where h − s t + ½ ḧ t² − ⅙ j t³ is zero, ḧ as the hold-off left it and j from the speed
    /// that is lost. It is only the first step.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public T SettlingGuess(T time, in FreeMotion<T> motion)
    {
        SettlingStage<T> stage = Settling;
        stage.Prepare([time], Timetable.At(time));
        FreeMotion<T> rates = stage.Rates(0, motion);
        T climb = rates.Height, curve = motion.Speed * rates.Angle;
        T jerk = T.Max(-2 * StandardConstants.Gravity * rates.Speed / motion.Speed, 0.05);
        T guess = 1.5;
        for (int i = 0; i < 4; i++)
        {
            T height = motion.Height + guess * (climb + guess * (0.5 * curve - 1.0 / 6 * guess * jerk));
            T slope = climb + guess * (curve - 0.5 * guess * jerk);
            guess = T.Max(0.2, T.Min(guess - height / T.Min(slope, -0.1), 6));
        }

        // From high up the ground effect grows from nothing to most of itself on the way: more than one step should see of it.
        // Otherwise a little short: what is left then costs less than a step that is too long.
        return T.Select(T.Less(2 * Forces.Wing(0), motion.Height), 0.6, 0.95) * guess;
    }

    /// <summary>The values before the first step, and the landings that are refused on them.</summary>
    /// <returns>The mask of lanes to fly.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public T Begin(Span<LandingOutcome> outcomes)
    {
        T tooHigh = ~T.Less(FlareHeight, _thresholdHeight);
        T idle = Thrust.Idle(ThresholdSpeed), thrust = Thrust.Approach * _mass;
        T tooSteep = T.Less(Thrust.Approach, idle);
        for (int i = 0; i < T.Count; i++)
            (outcomes[i].ApproachThrust, outcomes[i].FlareHeight) = (thrust[i], FlareHeight[i]);
        LandingOutcome.Refuse(
            outcomes, tooSteep & ~tooHigh, LandingRefusal.PathSteeperThanIdleGlide, thrust, idle * _mass);
        LandingOutcome.Refuse(
            outcomes, tooHigh, LandingRefusal.RoundOutAboveThresholdHeight, FlareHeight, _thresholdHeight);
        return ~(tooHigh | tooSteep);
    }

    /// <summary>
    /// When the wheels pass the cut height on the path of stages 1 and 3, whatever ends stage 3: power is a function of time alone.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T CutTime(T cutHeight)
    {
        T above = cutHeight - _holdOffHeight;
        T approaching = (_thresholdHeight - cutHeight) / Sink;
        T roundingOut = FlareStart + TimeConstant * T.Log(Sink * TimeConstant / T.Max(above, double.Epsilon));
        T time = T.Select(T.Less(cutHeight, FlareHeight), roundingOut, T.Max(approaching, 0));
        return T.Select(T.Less(0, above), time, double.PositiveInfinity);
    }

    /// <summary>s = k [√(V² (1 + k²) − w² k²) − w]/(1 + k²), k the tangent of the path's angle over the ground.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T SinkRate(T angle, T speed, T headwind)
    {
        (T sine, T cosine) = LaneAngles.SinCos(angle);
        T slope = sine / cosine;
        T secant = T.Fused(slope, slope, 1);
        T root = T.Sqrt(speed * speed * secant - headwind * headwind * slope * slope);
        return slope * (root - headwind) / secant;
    }

    /// <summary>
    /// What the rates without thrust lack is the thrust that balances them. A pilot on the approach has trimmed for the shear that he
    /// flies through, and not for a gust to come.
    /// </summary>
    private T Balance(AirForces<T> gliding)
    {
        PathStage<T> stage = new(gliding, 0, Sink, _thresholdHeight, _squareLift);
        stage.Prepare([0], default);
        return 0 - stage.Rates(0, new(ThresholdSpeed)).Speed;
    }

    private readonly ref struct Inputs(ReadOnlySpan<double> rows)
    {
        private readonly ReadOnlySpan<double> _rows = rows;

        public T this[LandingVariable variable] => T.Gather(_rows, (int)variable, LandingInput.Count);
    }
}
