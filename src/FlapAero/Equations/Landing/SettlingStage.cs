using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// Stage 4: settling at the touchdown lift until the wheels are down. V γ̇ = (L − W cos γ)/m − ẇ sin γ.
/// </summary>
internal struct SettlingStage<T>(AirForces<T> forces, T squareLift, T angleSize, T heightSize) : IStage<T, FreeMotion<T>>
    where T : unmanaged, ILanes<T>
{
    private readonly AirForces<T> _forces = forces;

    /// <summary>½ρS f C_Lmax/m: lift per mass and V².</summary>
    private readonly T _perSquare = 1 / squareLift;
    private readonly T _perAngle = 1 / angleSize;
    private readonly T _perHeight = 1 / heightSize;
    private AtNodes<(T Time, T Closed, T GroundSpeed)> _nodes;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Prepare(ReadOnlySpan<T> times, in Segment<T> segment)
    {
        for (int i = 0; i < times.Length; i++)
            (_nodes[i].Time, _nodes[i].Closed) = (times[i], segment.Closed(times[i]));
    }

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    public FreeMotion<T> Rates(int node, FreeMotion<T> motion)
    {
        ref (T Time, T Closed, T GroundSpeed) at = ref _nodes[node];
        T gravity = StandardConstants.Gravity;
        (T sine, T cosine) = LaneAngles.SinCos(motion.Angle);
        T wing = _forces.Wing(motion.Height);
        T climb = motion.Speed * sine;
        T squared = motion.Speed * motion.Speed;
        T drag = _forces.Drag(_forces.GroundEffect(wing), squared, motion.Speed * _perSquare);
        (T headwind, T wind) = _forces.Wind.At(wing, climb, at.Time);
        at.GroundSpeed = motion.Speed * cosine - headwind;
        return new(
            AirForces<T>.Acceleration(_forces.Thrust.At(at.Closed, motion.Speed), drag, sine, wind, cosine),
            (squared * _perSquare - gravity * cosine - wind * sine) / motion.Speed,
            climb);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T GroundSpeed(int node) => _nodes[node].GroundSpeed;

    public readonly T End(int node, in FreeMotion<T> motion) => 0 - motion.Height;

    public readonly T EndRate(int node, in FreeMotion<T> motion, in FreeMotion<T> rates) => 0 - rates.Height;

    // The angle's error has the settling's second or so to move the height.
    public readonly T EndSize(in FreeMotion<T> motion) => 1 / _perHeight + motion.Speed / _perAngle;

    // Above its highest wing nothing is known of a profile.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T Sound(int node, in FreeMotion<T> motion) =>
        T.Less(0, motion.Speed)
        & T.Less(motion.Height, _forces.Wind.Profile is not null ? WindField<T>.Ceiling : double.PositiveInfinity);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T Share(in FreeMotion<T> error, in FreeMotion<T> motion) =>
        T.Max(T.Abs(error.Speed) / motion.Speed, T.Max(T.Abs(error.Angle) * _perAngle, T.Abs(error.Height) * _perHeight));
}
