using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace FlapAero.Equations;

/// <summary>What a path that is known fixes at the nodes of a step, whatever the airspeed.</summary>
internal struct PathNodes<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>−ḣ.</summary>
    public AtNodes<T> Sinks;

    /// <summary>h; k_g there once the nodes are complete.</summary>
    public AtNodes<T> Heights;
    private AtNodes<T> _closed;
    private AtNodes<T> _headwinds;
    private AtNodes<T> _windRates;
    private AtNodes<T> _groundSpeeds;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T GroundSpeed(int node) => _groundSpeeds[node];

    /// <summary>Works out what follows from <see cref="Heights"/> and <see cref="Sinks"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Complete(in AirForces<T> forces, ReadOnlySpan<T> times, in Segment<T> segment)
    {
        for (int i = 0; i < times.Length; i++)
        {
            T wing = forces.Wing(Heights[i]);
            _closed[i] = segment.Closed(times[i]);
            (_headwinds[i], _windRates[i]) = forces.Wind.At(wing, T.Of(0) - Sinks[i], times[i]);
            Heights[i] = forces.InHalfSpans(wing);
        }

        foreach (ref Lanes4 effect in ByFour(Heights, times.Length))
            effect = LaneLaws.GroundEffect(effect);
    }

    /// <summary>V̇ at a node, an airspeed V and an <paramref name="extraLift"/> ḧ beyond W cos γ, per mass.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public PathMotion<T> Rates(in AirForces<T> forces, int node, T speed, T extraLift)
    {
        T squared = speed * speed;
        T perSpeed = T.Of(1) / speed;
        T level = PathLaws.LevelSpeed(squared, Sinks[node]);
        _groundSpeeds[node] = level - _headwinds[node];
        T cosine = level * perSpeed;
        T drag = forces.Drag(Heights[node], squared, PathLaws.Lift(cosine, extraLift) * perSpeed);
        T thrust = forces.Thrust.At(_closed[node], speed);
        return new(AirForces<T>.Acceleration(thrust, drag, T.Of(0) - Sinks[node] * perSpeed, _windRates[node], cosine));
    }

    /// <summary>Nodes by four numbers, of one landing or of four: costly functions take no longer for four than for one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Span<Lanes4> ByFour(Span<T> nodes, int count) =>
        MemoryMarshal.Cast<T, Lanes4>(nodes)[..((count * T.Count + Lanes4.Count - 1) / Lanes4.Count)];
}

/// <summary>The laws of a path whose height is a known function of time.</summary>
internal static class PathLaws
{
    /// <summary>V cos γ. Not quite zero where a trial step asks for a sink rate above the airspeed.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LevelSpeed<T>(T squared, T sink)
        where T : unmanaged, ILanes<T> => T.Sqrt(T.Max(squared - sink * sink, T.Of(double.Epsilon)));

    /// <summary>L/m = g cos γ + ḧ: an approximation of order γ².</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Lift<T>(T cosine, T extraLift)
        where T : unmanaged, ILanes<T> => T.Fused(T.Of(StandardConstants.Gravity), cosine, extraLift);

    /// <summary>The same from speed and sink rate.</summary>
    public static T LiftOnPath<T>(T speed, T sink, T extraLift)
        where T : unmanaged, ILanes<T> => Lift(LevelSpeed(speed * speed, sink) / speed, extraLift);

    /// <summary>C_L − f C_Lmax, scaled to a square of speed by that at which a unit of lift per mass takes the touchdown lift.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LiftLeft<T>(T speed, T sink, T extraLift, T squareLift)
        where T : unmanaged, ILanes<T> => T.Fused(LiftOnPath(speed, sink, extraLift), squareLift, T.Of(0) - speed * speed);
}
