using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>Stage 1: the approach, at a sink rate that is held.</summary>
internal struct ApproachStage<T>(AirForces<T> forces, T sink, T thresholdHeight) : IStage<T, PathMotion<T>>
    where T : unmanaged, ILanes<T>
{
    private readonly AirForces<T> _forces = forces;
    private readonly T _sink = sink;
    private readonly T _thresholdHeight = thresholdHeight;
    private AtNodes<PathNode<T>> _nodes;

    public static bool HasEnd => false;

    public readonly T Height(T time) => _thresholdHeight - _sink * time;

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    public void Prepare(int node, T time, in Segment<T> segment) =>
        _nodes[node] = new(_forces, time, segment.Closed(time), _sink, T.Of(0), Height(time));

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    public PathMotion<T> Rates(int node, in PathMotion<T> motion) => _nodes[node].Rates(_forces, motion.Speed);

    public readonly T GroundSpeed(int node) => _nodes[node].GroundSpeed;

    public readonly T End(int node, in PathMotion<T> motion) => T.Of(-1);

    public readonly T EndRate(int node, in PathMotion<T> motion, in PathMotion<T> rates) => T.Of(0);

    public readonly T EndSize(in PathMotion<T> motion) => T.Of(1);

    // Past this the airspeed has collapsed: it cannot even make the sink rate.
    public readonly T Sound(int node, in PathMotion<T> motion) => T.Less(_nodes[node].Sink, motion.Speed);

    public readonly T Share(in PathMotion<T> error, in PathMotion<T> motion) => T.Abs(error.Speed) / motion.Speed;
}
