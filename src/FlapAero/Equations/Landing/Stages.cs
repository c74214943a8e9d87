using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>A stage in the air, or of the roll while the thrust still changes: its law, and what ends it.</summary>
internal interface IStage<T, TMotion> : IRates<T, TMotion>
    where T : unmanaged, ILanes<T>
    where TMotion : unmanaged, IMotion<TMotion, T>
{
    /// <summary>The thrust of the step that is being taken.</summary>
    Thrust<T> Thrust { set; }

    /// <summary>Whether anything but the time ends the stage.</summary>
    static abstract bool HasEnd { get; }

    /// <summary>Negative before the stage ends, zero where it does.</summary>
    T End(T time, in TMotion motion);

    /// <summary>How fast <see cref="End"/> grows.</summary>
    T EndRate(T time, in TMotion motion, in TMotion rates);

    /// <summary>How large an error is, as a share of the motion's own size.</summary>
    T Share(in TMotion error, in TMotion motion);
}

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

    /// <summary>k_g with the wheels at a height; a trial step may dip under the ground, where the height counts as zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T GroundEffect(T wheelHeight) =>
        LaneLaws.GroundEffect((T.Max(wheelHeight, T.Of(0)) + WingHeight) * PerHalfSpan);

    /// <summary>V̇ and ẋ on a path whose sink rate and lift beyond W cos γ, per mass, are known.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public PathMotion<T> Along(T sink, T extraLift, T wheelHeight, T speed, T thrust)
    {
        T gravity = T.Of(StandardConstants.Gravity);
        T squared = speed * speed;
        // The smallest number instead of zero: a trial step may ask for a sink rate above the airspeed.
        T level = T.Sqrt(T.Max(squared - sink * sink, T.Of(double.Epsilon)));
        T lift = T.Fused(gravity, level / speed, extraLift);
        T drag = LaneLaws.DragPerMass(ZeroLift, Induced, GroundEffect(wheelHeight), squared, lift);
        return new(thrust - drag + gravity * sink / speed, level - Headwind);
    }
}

/// <summary>Stage 1: the approach, at a sink rate that is held.</summary>
internal struct ApproachStage<T>(AirConstants<T> air, T sink, T thresholdHeight) : IStage<T, PathMotion<T>>
    where T : unmanaged, ILanes<T>
{
    private readonly AirConstants<T> _air = air;
    private readonly T _sink = sink;
    private readonly T _thresholdHeight = thresholdHeight;

    public Thrust<T> Thrust { private get; set; }

    public static bool HasEnd => false;

    public readonly T Height(T time) => _thresholdHeight - _sink * time;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly PathMotion<T> Rates(T time, in PathMotion<T> motion) =>
        _air.Along(_sink, T.Of(0), Height(time), motion.Speed, Thrust.At(time));

    public readonly T End(T time, in PathMotion<T> motion) => T.Of(-1);

    public readonly T EndRate(T time, in PathMotion<T> motion, in PathMotion<T> rates) => T.Of(0);

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

    public Thrust<T> Thrust { private get; set; }

    public static bool HasEnd => true;

    /// <summary>The sink rate −ḣ = (h − h_h)/τ; it was s when the stage began.</summary>
    public readonly T Sink(T time) => _sink * T.Exp((_start - time) * _perTimeConstant);

    public readonly T Height(T sink) => T.Fused(sink, _timeConstant, _holdOffHeight);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly PathMotion<T> Rates(T time, in PathMotion<T> motion)
    {
        T sink = Sink(time);
        return _air.Along(sink, sink * _perTimeConstant, Height(sink), motion.Speed, Thrust.At(time));
    }

    /// <summary>C_L − f C_Lmax, scaled to a square of speed.</summary>
    public readonly T End(T time, in PathMotion<T> motion)
    {
        T sink = Sink(time);
        T squared = motion.Speed * motion.Speed;
        T cosine = T.Sqrt(T.Max(squared - sink * sink, T.Of(0))) / motion.Speed;
        T lift = T.Fused(T.Of(StandardConstants.Gravity), cosine, sink * _perTimeConstant);
        return T.Fused(lift, _squareLift, T.Of(0) - squared);
    }

    // cos γ is taken as constant: the rate only steers Newton's method, whose result is checked on End itself.
    public readonly T EndRate(T time, in PathMotion<T> motion, in PathMotion<T> rates) =>
        T.Of(0) - Sink(time) * _perTimeConstant * _perTimeConstant * _squareLift - 2 * motion.Speed * rates.Speed;

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

    public Thrust<T> Thrust { private get; set; }

    public static bool HasEnd => true;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly FreeMotion<T> Rates(T time, in FreeMotion<T> motion)
    {
        T gravity = T.Of(StandardConstants.Gravity);
        T sine = T.Sin(motion.Angle);
        T cosine = T.Cos(motion.Angle);
        T squared = motion.Speed * motion.Speed;
        T lift = squared * _perSquare;
        T drag = LaneLaws.DragPerMass(_air.ZeroLift, _air.Induced, _air.GroundEffect(motion.Height), squared, lift);
        return new(
            Thrust.At(time) - drag - gravity * sine,
            (lift - gravity * cosine) / motion.Speed,
            motion.Speed * sine,
            motion.Speed * cosine - _air.Headwind);
    }

    public readonly T End(T time, in FreeMotion<T> motion) => T.Of(0) - motion.Height;

    public readonly T EndRate(T time, in FreeMotion<T> motion, in FreeMotion<T> rates) => T.Of(0) - rates.Height;

    public readonly T Share(in FreeMotion<T> error, in FreeMotion<T> motion) =>
        T.Max(T.Abs(error.Speed) / motion.Speed, T.Max(T.Abs(error.Angle) * _perAngle, T.Abs(error.Height) * _perHeight));
}
