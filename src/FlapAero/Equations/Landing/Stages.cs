using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>What the stages in the air need to know of an aeroplane, per mass.</summary>
internal readonly struct AirConstants<T>(T zeroLift, T induced, T wingHeight, T perHalfSpan, T headwind)
    where T : unmanaged, ILanes<T>
{
    /// <summary>(½ρS/m) C_D0 and K m/(½ρS), as in <see cref="LaneLaws.DragPerMass"/>.</summary>
    public readonly T ZeroLift = zeroLift;
    public readonly T Induced = induced;
    public readonly T WingHeight = wingHeight;
    public readonly T PerHalfSpan = perHalfSpan;
    public readonly T Headwind = headwind;

    /// <summary>
    /// K m/(½ρS) with the ground effect at a wheel height. A trial step may dip under the ground: the law goes on there, so that
    /// the step sees no kink, until the wing itself is nearly down.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T InducedNearGround(T wheelHeight) =>
        Induced * LaneLaws.GroundEffect(T.Max(wheelHeight + WingHeight, 0.1 * WingHeight) * PerHalfSpan);
}

/// <summary>What a path that is known fixes at a moment, whatever the airspeed.</summary>
internal struct PathNode<T>
    where T : unmanaged, ILanes<T>
{
    public T Thrust;
    public T Sink;
    public T ExtraLift;
    public T Induced;
    public T GroundSpeed;

    /// <summary>V̇ on a path whose sink rate and lift beyond W cos γ, per mass, are known.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public PathMotion<T> Rates(in AirConstants<T> air, T speed)
    {
        T gravity = T.Of(StandardConstants.Gravity);
        T squared = speed * speed;
        T perSpeed = T.Of(1) / speed;
        // The smallest number instead of zero: a trial step may ask for a sink rate above the airspeed.
        T level = T.Sqrt(T.Max(squared - Sink * Sink, T.Of(double.Epsilon)));
        GroundSpeed = level - air.Headwind;
        T lift = T.Fused(gravity, level * perSpeed, ExtraLift);
        T drag = LaneLaws.DragPerMass(air.ZeroLift, Induced, squared, lift * perSpeed);
        return new(T.Fused(gravity * Sink, perSpeed, Thrust - drag));
    }
}

/// <summary>Stage 1: the approach, at a sink rate that is held.</summary>
internal struct ApproachStage<T>(AirConstants<T> air, T sink, T thresholdHeight) : IStage<T, PathMotion<T>>
    where T : unmanaged, ILanes<T>
{
    private readonly AirConstants<T> _air = air;
    private readonly T _sink = sink;
    private readonly T _thresholdHeight = thresholdHeight;
    private AtNodes<PathNode<T>> _nodes;

    public static bool HasEnd => false;

    public readonly T Height(T time) => _thresholdHeight - _sink * time;

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Prepare(int node, T time, in Thrust<T> thrust)
    {
        ref PathNode<T> known = ref _nodes[node];
        known.Thrust = thrust.At(time);
        known.Sink = _sink;
        known.ExtraLift = T.Of(0);
        known.Induced = _air.InducedNearGround(Height(time));
    }

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining)]
    public PathMotion<T> Rates(int node, in PathMotion<T> motion) => _nodes[node].Rates(_air, motion.Speed);

    public readonly T GroundSpeed(int node) => _nodes[node].GroundSpeed;

    public readonly T End(int node, in PathMotion<T> motion) => T.Of(-1);

    public readonly T EndRate(int node, in PathMotion<T> motion, in PathMotion<T> rates) => T.Of(0);

    public readonly T EndSize(in PathMotion<T> motion) => T.Of(1);

    // Past this the airspeed has collapsed: it cannot even make the sink rate.
    public readonly T Sound(int node, in PathMotion<T> motion) => T.Less(_nodes[node].Sink, motion.Speed);

    public readonly T Share(in PathMotion<T> error, in PathMotion<T> motion) => T.Abs(error.Speed) / motion.Speed;
}

/// <summary>Stage 3: round-out and hold-off; the height above the hold-off height dies away exponentially.</summary>
internal struct HoldOffStage<T>(AirConstants<T> air, T start, T sink, T timeConstant, T holdOffHeight, T squareLift)
    : IStage<T, PathMotion<T>>
    where T : unmanaged, ILanes<T>
{
    private readonly AirConstants<T> _air = air;
    private readonly T _start = start;
    private readonly T _sink = sink;
    private readonly T _perTimeConstant = T.Of(1) / timeConstant;
    private readonly T _timeConstant = timeConstant;
    private readonly T _holdOffHeight = holdOffHeight;

    /// <summary>m/(½ρS f C_Lmax): V² at which a unit of lift per mass takes the touchdown lift.</summary>
    private readonly T _squareLift = squareLift;
    private AtNodes<PathNode<T>> _nodes;

    public static bool HasEnd => true;

    /// <summary>The sink rate −ḣ = (h − h_h)/τ; it was s when the stage began.</summary>
    public readonly T Sink(T time) => _sink * T.Exp((_start - time) * _perTimeConstant);

    public readonly T Height(T sink) => T.Fused(sink, _timeConstant, _holdOffHeight);

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Prepare(int node, T time, in Thrust<T> thrust)
    {
        ref PathNode<T> known = ref _nodes[node];
        T sink = Sink(time);
        known.Thrust = thrust.At(time);
        known.Sink = sink;
        known.ExtraLift = sink * _perTimeConstant;
        known.Induced = _air.InducedNearGround(Height(sink));
    }

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining)]
    public PathMotion<T> Rates(int node, in PathMotion<T> motion) => _nodes[node].Rates(_air, motion.Speed);

    public readonly T GroundSpeed(int node) => _nodes[node].GroundSpeed;

    /// <summary>C_L − f C_Lmax, scaled to a square of speed.</summary>
    public readonly T End(int node, in PathMotion<T> motion)
    {
        ref readonly PathNode<T> known = ref _nodes[node];
        T squared = motion.Speed * motion.Speed;
        T cosine = T.Sqrt(T.Max(squared - known.Sink * known.Sink, T.Of(0))) / motion.Speed;
        T lift = T.Fused(T.Of(StandardConstants.Gravity), cosine, known.ExtraLift);
        return T.Fused(lift, _squareLift, T.Of(0) - squared);
    }

    public readonly T EndRate(int node, in PathMotion<T> motion, in PathMotion<T> rates)
    {
        ref readonly PathNode<T> known = ref _nodes[node];
        T sine = known.Sink / motion.Speed;
        T cosine = T.Sqrt(T.Max(T.Of(1) - sine * sine, T.Of(double.Epsilon)));
        T flattening = sine * sine / cosine * (_perTimeConstant + rates.Speed / motion.Speed);
        T lift = T.Of(StandardConstants.Gravity) * flattening - known.ExtraLift * _perTimeConstant;
        return T.Fused(lift, _squareLift, -2 * motion.Speed * rates.Speed);
    }

    public readonly T EndSize(in PathMotion<T> motion) => motion.Speed * motion.Speed;

    // Past this the airspeed has collapsed: it cannot even make the sink rate.
    public readonly T Sound(int node, in PathMotion<T> motion) => T.Less(_nodes[node].Sink, motion.Speed);

    public readonly T Share(in PathMotion<T> error, in PathMotion<T> motion) => T.Abs(error.Speed) / motion.Speed;
}

/// <summary>Stage 4: settling at the touchdown lift until the wheels are down.</summary>
internal struct SettlingStage<T>(AirConstants<T> air, T squareLift, T angleSize, T heightSize) : IStage<T, FreeMotion<T>>
    where T : unmanaged, ILanes<T>
{
    private readonly AirConstants<T> _air = air;

    /// <summary>½ρS f C_Lmax/m: lift per mass and V².</summary>
    private readonly T _perSquare = T.Of(1) / squareLift;
    private readonly T _perAngle = T.Of(1) / angleSize;
    private readonly T _perHeight = T.Of(1) / heightSize;
    private AtNodes<(T Thrust, T GroundSpeed)> _nodes;

    public static bool HasEnd => true;

    public void Prepare(int node, T time, in Thrust<T> thrust) => _nodes[node].Thrust = thrust.At(time);

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining)]
    public FreeMotion<T> Rates(int node, in FreeMotion<T> motion)
    {
        T gravity = T.Of(StandardConstants.Gravity);
        (T sine, T cosine) = LaneAngles.SinCos(motion.Angle);
        T squared = motion.Speed * motion.Speed;
        T lift = squared * _perSquare;
        T drag = LaneLaws.DragPerMass(_air.ZeroLift, _air.InducedNearGround(motion.Height), squared, motion.Speed * _perSquare);
        _nodes[node].GroundSpeed = motion.Speed * cosine - _air.Headwind;
        return new(
            _nodes[node].Thrust - drag - gravity * sine,
            (lift - gravity * cosine) / motion.Speed,
            motion.Speed * sine);
    }

    public readonly T GroundSpeed(int node) => _nodes[node].GroundSpeed;

    public readonly T End(int node, in FreeMotion<T> motion) => T.Of(0) - motion.Height;

    public readonly T EndRate(int node, in FreeMotion<T> motion, in FreeMotion<T> rates) => T.Of(0) - rates.Height;

    // The angle's error has the settling's second or so to move the height.
    public readonly T EndSize(in FreeMotion<T> motion) => T.Of(1) / _perHeight + motion.Speed / _perAngle;

    public readonly T Sound(int node, in FreeMotion<T> motion) => T.Less(T.Of(0), motion.Speed);

    public readonly T Share(in FreeMotion<T> error, in FreeMotion<T> motion) =>
        T.Max(T.Abs(error.Speed) / motion.Speed, T.Max(T.Abs(error.Angle) * _perAngle, T.Abs(error.Height) * _perHeight));
}
