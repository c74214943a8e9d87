using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>What is known before the first step: the path, when the power goes, and the stages with their constants.</summary>
internal readonly struct ApproachPath<T>
    where T : unmanaged, ILanes<T>
{
    private readonly T _mass;
    private readonly T _thresholdHeight;
    private readonly T _squareLift;
    private readonly T _sink;
    private readonly T _approachThrust;
    private readonly T _idleThrust;
    private readonly T _cut;
    private readonly T _ramp;
    private readonly T _holdOffHeight;
    private readonly AirConstants<T> _air;

    [SkipLocalsInit]
    public ApproachPath(ReadOnlySpan<double> rows)
    {
        Columns columns = new(rows);
        T half = 0.5 * columns[7] * columns[1];
        T span = columns[2];
        _mass = columns[0];
        T induced = columns[1] / (Math.PI * columns[5] * span * span);
        _air = new(half * columns[4] / _mass, induced * _mass / half, columns[3], T.Of(2) / span, columns[8]);
        _thresholdHeight = columns[9];
        ThresholdSpeed = columns[10];
        TimeConstant = columns[12];
        _holdOffHeight = columns[13];
        TouchdownLift = columns[14] * columns[6];
        _squareLift = _mass / (half * TouchdownLift);

        T angle = Math.PI / 180 * columns[11];
        (T sine, T cosine) = LaneAngles.SinCos(angle);
        T slope = sine / cosine;
        T secant = T.Fused(slope, slope, T.Of(1));
        T wind = columns[8];
        T root = T.Sqrt(ThresholdSpeed * ThresholdSpeed * secant - wind * wind * slope * slope);
        _sink = slope * (root - wind) / secant;
        FlareHeight = T.Fused(_sink, TimeConstant, _holdOffHeight);
        FlareStart = (_thresholdHeight - FlareHeight) / _sink;

        // What the rates without thrust lack is the thrust that balances them.
        ApproachStage<T> stage = new(_air, _sink, _thresholdHeight);
        stage.Prepare(0, T.Of(0), default);
        T balance = stage.Rates(0, new(ThresholdSpeed)).Speed;
        _approachThrust = T.Of(0) - balance;
        _idleThrust = columns[17] / _mass;
        _cut = CutTime(columns[15]);
        _ramp = columns[16];
    }

    /// <summary>The sink rate of a landing's approach.</summary>
    public static double SinkRate(in LandingInput input) =>
        new ApproachPath<ScalarLane>(LandingInput.Rows(new ReadOnlySpan<LandingInput>(in input)))._sink.Value;

    public T ThresholdSpeed { get; }

    public T TimeConstant { get; }

    public T TouchdownLift { get; }

    public T FlareHeight { get; }

    public T FlareStart { get; }

    public ApproachStage<T> Approach => new(_air, _sink, _thresholdHeight);

    public HoldOffStage<T> HoldOff => new(_air, FlareStart, _sink, TimeConstant, _holdOffHeight, _squareLift);

    public SettlingStage<T> Settling => new(_air, _squareLift, _sink / ThresholdSpeed, _holdOffHeight);

    public PowerSchedule<T> Power => new(_approachThrust, _idleThrust, _cut, _ramp);

    /// <summary>The schedule of one lane.</summary>
    public PowerSchedule<ScalarLane> PowerOf(int lane) =>
        new(_approachThrust[lane], _idleThrust[lane], _cut[lane], _ramp[lane]);

    /// <summary>How far C_L just after the round-out begins is below the touchdown lift, as <see cref="HoldOffStage{T}.End"/> has it.</summary>
    public T LiftLeftAtFlare(in PathMotion<T> motion)
    {
        HoldOffStage<T> stage = HoldOff;
        stage.Prepare(0, FlareStart, default);
        return stage.End(0, motion);
    }

    /// <summary>C_L just after the round-out begins, m ḧ included.</summary>
    public double LiftAtFlare(double speed, int lane)
    {
        double ratio = _sink[lane] / speed;
        double lift = StandardConstants.Gravity * Math.Sqrt(Math.Max(0, 1 - ratio * ratio)) + _sink[lane] / TimeConstant[lane];
        return lift * _squareLift[lane] * TouchdownLift[lane] / (speed * speed);
    }

    /// <summary>The airspeed at which the touchdown lift carries the weight.</summary>
    public double LiftSpeed(int lane) => Math.Sqrt(StandardConstants.Gravity * _squareLift[lane]);

    /// <summary>
    /// About how long the settling lasts: where h − s t + ½ ḧ t² − ⅙ j t³ is zero, ḧ as the hold-off left it and j from the speed
    /// that is lost. It is only the first step.
    /// </summary>
    public T SettlingGuess(in PowerSchedule<T> power, T time, in FreeMotion<T> motion, T sink)
    {
        SettlingStage<T> stage = Settling;
        stage.Prepare(0, time, power.At(time));
        FreeMotion<T> rates = stage.Rates(0, motion);
        T curve = motion.Speed * rates.Angle;
        T jerk = T.Max(-2 * StandardConstants.Gravity * rates.Speed / motion.Speed, T.Of(0.05));
        T guess = T.Of(1.5);
        for (int i = 0; i < 4; i++)
        {
            T height = motion.Height - guess * (sink - guess * (0.5 * curve - 1.0 / 6 * guess * jerk));
            T slope = T.Of(0) - sink + guess * (curve - 0.5 * guess * jerk);
            guess = T.Max(T.Of(0.2), T.Min(guess - height / T.Min(slope, T.Of(-0.1)), T.Of(6)));
        }

        // From high up the ground effect grows from nothing to most of itself on the way: more than one step should see of it.
        return T.Select(T.Less(2 * _air.WingHeight, motion.Height), 0.6 * guess, guess);
    }

    /// <summary>The values before the first step, and the landings that are refused on them.</summary>
    /// <returns>The mask of lanes to fly.</returns>
    public T Begin(Span<LandingOutcome> outcomes)
    {
        T tooHigh = ~T.Less(FlareHeight, _thresholdHeight);
        T tooSteep = T.Less(_approachThrust, _idleThrust);
        for (int i = 0; i < T.Count; i++)
        {
            outcomes[i].ApproachThrust = _approachThrust[i] * _mass[i];
            outcomes[i].FlareHeight = FlareHeight[i];
            if (double.IsNaN(tooHigh[i]))
                outcomes[i].Refuse(LandingRefusal.RoundOutAboveThresholdHeight, FlareHeight[i], _thresholdHeight[i]);
            else if (double.IsNaN(tooSteep[i]))
                outcomes[i].Refuse(LandingRefusal.PathSteeperThanIdleGlide, outcomes[i].ApproachThrust, _idleThrust[i] * _mass[i]);
        }

        return ~(tooHigh | tooSteep);
    }

    /// <summary>
    /// When the wheels pass the cut height on the path of stages 1 and 3, whatever ends stage 3: power is a function of time alone.
    /// </summary>
    private T CutTime(T cutHeight)
    {
        T above = cutHeight - _holdOffHeight;
        T approaching = (_thresholdHeight - cutHeight) / _sink;
        T roundingOut = FlareStart + TimeConstant * T.Log(_sink * TimeConstant / T.Max(above, T.Of(double.Epsilon)));
        T time = T.Select(T.Less(cutHeight, FlareHeight), roundingOut, T.Max(approaching, T.Of(0)));
        return T.Select(T.Less(T.Of(0), above), time, T.Of(double.PositiveInfinity));
    }

    private readonly ref struct Columns(ReadOnlySpan<double> rows)
    {
        private readonly ReadOnlySpan<double> _rows = rows;

        public T this[int column] => T.Gather(_rows, column, LandingColumns.InputCount);
    }
}
