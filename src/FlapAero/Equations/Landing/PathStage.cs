using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace FlapAero.Equations;

/// <summary>
/// Stages 1 and 3, whose height is known by the time. On the approach the sink rate s is held; from the round-out on it dies away
/// exponentially, and with it the height above the hold-off height.
/// </summary>
/// <param name="forces">What acts.</param>
/// <param name="start">When the stage begins.</param>
/// <param name="sink">s.</param>
/// <param name="height">The threshold's on the approach, the hold-off height after it.</param>
/// <param name="squareLift">m/(½ρS f C_Lmax): V² at which a unit of lift per mass takes the touchdown lift.</param>
/// <param name="timeConstant">τ; none on the approach.</param>
internal struct PathStage<T>(AirForces<T> forces, T start, T sink, T height, T squareLift, T? timeConstant = null)
    : IStage<T, PathMotion<T>>
    where T : unmanaged, ILanes<T>
{
    private readonly bool _roundsOut = timeConstant.HasValue;
    private readonly T _timeConstant = timeConstant.GetValueOrDefault();
    private readonly T _perTimeConstant = timeConstant is { } lasts ? 1 / lasts : 0;

    // What the path fixes at the nodes of a step, whatever the airspeed.
    private AtNodes<T> _sinks;
    private AtNodes<T> _groundEffects;
    private AtNodes<T> _closed;
    private AtNodes<T> _headwinds;
    private AtNodes<T> _windRates;
    private AtNodes<T> _groundSpeeds;

    /// <summary>The sink rate −ḣ, after the round-out (h − h_h)/τ.</summary>
    public readonly T Sink(T time) => _roundsOut ? sink * T.Exp(TimeConstants(time)) : sink;

    public readonly T Height(T time, T sinking) =>
        _roundsOut ? T.Fused(sinking, _timeConstant, height) : height - sink * time;

    /// <summary>ḧ at a sink rate.</summary>
    public readonly T ExtraLift(T sinking) => sinking * _perTimeConstant;

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    public void Prepare(ReadOnlySpan<T> times, in Segment<T> segment)
    {
        for (int i = 0; i < times.Length; i++)
            _sinks[i] = TimeConstants(times[i]);
        if (_roundsOut)
        {
            foreach (ref Lanes4 share in ByFour(_sinks, times.Length))
                share = Lanes4.Exp(share);
        }

        for (int i = 0; i < times.Length; i++)
        {
            _sinks[i] = _roundsOut ? _sinks[i] * sink : sink;
            T wing = forces.Wing(Height(times[i], _sinks[i]));
            _closed[i] = segment.Closed(times[i]);
            (_headwinds[i], _windRates[i]) = forces.Wind.At(wing, 0 - _sinks[i], times[i]);
            _groundEffects[i] = forces.InHalfSpans(wing);
        }

        foreach (ref Lanes4 effect in ByFour(_groundEffects, times.Length))
            effect = LaneLaws.GroundEffect(effect);
    }

    /// <summary>V̇ at a node and an airspeed V, per mass, the lift being ḧ beyond W cos γ.</summary>
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    public PathMotion<T> Rates(int node, PathMotion<T> motion)
    {
        T squared = motion.Speed * motion.Speed;
        T perSpeed = 1 / motion.Speed;
        T level = PathLaws.LevelSpeed(squared, _sinks[node]);
        _groundSpeeds[node] = level - _headwinds[node];
        T cosine = level * perSpeed;
        T drag = forces.Drag(_groundEffects[node], squared, PathLaws.Lift(cosine, ExtraLift(_sinks[node])) * perSpeed);
        T thrust = forces.Thrust.At(_closed[node], motion.Speed);
        return new(AirForces<T>.Acceleration(thrust, drag, 0 - _sinks[node] * perSpeed, _windRates[node], cosine));
    }

    public readonly T GroundSpeed(int node) => _groundSpeeds[node];

    public readonly T End(int node, in PathMotion<T> motion) =>
        PathLaws.LiftLeft(motion.Speed, _sinks[node], ExtraLift(_sinks[node]), squareLift);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public readonly T EndRate(int node, in PathMotion<T> motion, in PathMotion<T> rates)
    {
        T sine = _sinks[node] / motion.Speed;
        T cosine = T.Sqrt(T.Max(1 - sine * sine, double.Epsilon));
        T flattening = sine * sine / cosine * (_perTimeConstant + rates.Speed / motion.Speed);
        T lift = StandardConstants.Gravity * flattening - ExtraLift(_sinks[node]) * _perTimeConstant;
        return T.Fused(lift, squareLift, -2 * motion.Speed * rates.Speed);
    }

    public readonly T EndSize(in PathMotion<T> motion) => motion.Speed * motion.Speed;

    // Past this the airspeed has collapsed: it cannot even make the sink rate.
    public readonly T Sound(int node, in PathMotion<T> motion) => T.Less(_sinks[node], motion.Speed);

    public readonly T Share(in PathMotion<T> error, in PathMotion<T> motion) => T.Abs(error.Speed) / motion.Speed;

    /// <summary>Nodes by four numbers, of one landing or of four: costly functions take no longer for four than for one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Span<Lanes4> ByFour(Span<T> nodes, int count) =>
        MemoryMarshal.Cast<T, Lanes4>(nodes)[..((count * T.Count + Lanes4.Count - 1) / Lanes4.Count)];

    private readonly T TimeConstants(T time) => (start - time) * _perTimeConstant;
}
