using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>Stage 3: round-out and hold-off; the height above the hold-off height dies away exponentially.</summary>
internal struct HoldOffStage<T>(AirForces<T> forces, T start, T sink, T timeConstant, T holdOffHeight, T squareLift)
    : IStage<T, PathMotion<T>>
    where T : unmanaged, ILanes<T>
{
    private readonly AirForces<T> _forces = forces;
    private readonly T _start = start;
    private readonly T _sink = sink;
    private readonly T _perTimeConstant = T.Of(1) / timeConstant;
    private readonly T _timeConstant = timeConstant;
    private readonly T _holdOffHeight = holdOffHeight;

    /// <summary>m/(½ρS f C_Lmax): V² at which a unit of lift per mass takes the touchdown lift.</summary>
    private readonly T _squareLift = squareLift;
    private PathNodes<T> _nodes;

    public static bool HasEnd => true;

    /// <summary>The sink rate −ḣ = (h − h_h)/τ; it was s when the stage began.</summary>
    public readonly T Sink(T time) => _sink * T.Exp(TimeConstants(time));

    public readonly T Height(T sink) => T.Fused(sink, _timeConstant, _holdOffHeight);

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    public void Prepare(ReadOnlySpan<T> times, in Segment<T> segment)
    {
        for (int i = 0; i < times.Length; i++)
            _nodes.Sinks[i] = TimeConstants(times[i]);
        foreach (ref Lanes4 sink in PathNodes<T>.ByFour(_nodes.Sinks, times.Length))
            sink = Lanes4.Exp(sink);
        for (int i = 0; i < times.Length; i++)
        {
            _nodes.Sinks[i] *= _sink;
            _nodes.Heights[i] = Height(_nodes.Sinks[i]);
        }

        _nodes.Complete(_forces, times, segment);
    }

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    public PathMotion<T> Rates(int node, PathMotion<T> motion) => _nodes.Rates(_forces, node, motion.Speed, ExtraLift(node));

    public readonly T GroundSpeed(int node) => _nodes.GroundSpeed(node);

    public readonly T End(int node, in PathMotion<T> motion) =>
        PathLaws.LiftLeft(motion.Speed, _nodes.Sinks[node], ExtraLift(node), _squareLift);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public readonly T EndRate(int node, in PathMotion<T> motion, in PathMotion<T> rates)
    {
        T sine = _nodes.Sinks[node] / motion.Speed;
        T cosine = T.Sqrt(T.Max(T.Of(1) - sine * sine, T.Of(double.Epsilon)));
        T flattening = sine * sine / cosine * (_perTimeConstant + rates.Speed / motion.Speed);
        T lift = T.Of(StandardConstants.Gravity) * flattening - ExtraLift(node) * _perTimeConstant;
        return T.Fused(lift, _squareLift, -2 * motion.Speed * rates.Speed);
    }

    public readonly T EndSize(in PathMotion<T> motion) => motion.Speed * motion.Speed;

    // Past this the airspeed has collapsed: it cannot even make the sink rate.
    public readonly T Sound(int node, in PathMotion<T> motion) => T.Less(_nodes.Sinks[node], motion.Speed);

    public readonly T Share(in PathMotion<T> error, in PathMotion<T> motion) => T.Abs(error.Speed) / motion.Speed;

    private readonly T TimeConstants(T time) => (_start - time) * _perTimeConstant;

    /// <summary>ḧ.</summary>
    private readonly T ExtraLift(int node) => _nodes.Sinks[node] * _perTimeConstant;
}
