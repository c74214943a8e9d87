using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>Thrust per mass: T_a on the approach, T_i(V) = T_0 + T_1 V + T_2 V² with the throttle closed, and between them while it closes.</summary>
internal readonly record struct ThrustLaw<T>(T Approach, T AtRest, T Slope, T Curvature)
    where T : unmanaged, ILanes<T>
{
    /// <summary>T_i(V).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Idle(T speed) => T.Fused(T.Fused(Curvature, speed, Slope), speed, AtRest);

    /// <summary>T_a + (T_i(V) − T_a) r.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T At(T closed, T speed) => T.Fused(closed, Idle(speed) - Approach, Approach);

    /// <summary>The law of one lane.</summary>
    public ThrustLaw<ScalarLane> Lane(int lane) => new(Approach[lane], AtRest[lane], Slope[lane], Curvature[lane]);
}
