using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>Stage 1: the approach, at a sink rate that is held.</summary>
internal struct ApproachStage<T>(AirForces<T> forces, T sink, T thresholdHeight) : IStage<T, PathMotion<T>>
    where T : unmanaged, ILanes<T>
{
    private readonly AirForces<T> _forces = forces;
    private readonly T _sink = sink;
    private readonly T _thresholdHeight = thresholdHeight;
    private PathNodes<T> _nodes;

    public static bool HasEnd => false;

    public readonly T Height(T time) => _thresholdHeight - _sink * time;

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    public void Prepare(ReadOnlySpan<T> times, in Segment<T> segment)
    {
        for (int i = 0; i < times.Length; i++)
            (_nodes.Sinks[i], _nodes.Heights[i]) = (_sink, Height(times[i]));
        _nodes.Complete(_forces, times, segment);
    }

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    public PathMotion<T> Rates(int node, PathMotion<T> motion) => _nodes.Rates(_forces, node, motion.Speed, T.Of(0));

    public readonly T GroundSpeed(int node) => _nodes.GroundSpeed(node);

    public readonly T End(int node, in PathMotion<T> motion) => T.Of(-1);

    public readonly T EndRate(int node, in PathMotion<T> motion, in PathMotion<T> rates) => T.Of(0);

    public readonly T EndSize(in PathMotion<T> motion) => T.Of(1);

    // Past this the airspeed has collapsed: it cannot even make the sink rate.
    public readonly T Sound(int node, in PathMotion<T> motion) => T.Less(_nodes.Sinks[node], motion.Speed);

    public readonly T Share(in PathMotion<T> error, in PathMotion<T> motion) => T.Abs(error.Speed) / motion.Speed;
}
