using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>What acts on an aeroplane in the air, per mass; the only place that knows the forces of the stages in the air.</summary>
/// <param name="ZeroLift">(½ρS/m) C_D0.</param>
/// <param name="Induced">K m/½ρS.</param>
/// <param name="WingHeight">Of the wing above the wheels.</param>
/// <param name="PerHalfSpan">2/b.</param>
/// <param name="Thrust">Thrust per mass.</param>
/// <param name="Wind">The wind.</param>
internal readonly record struct AirForces<T>(
    T ZeroLift, T Induced, T WingHeight, T PerHalfSpan, ThrustLaw<T> Thrust, WindField<T> Wind)
    where T : unmanaged, ILanes<T>
{
    /// <summary>The same with a slip's drag, (½ρS/m) ΔC_D, on top.</summary>
    public AirForces<T> Slipping(T drag) => this with { ZeroLift = ZeroLift + drag };

    /// <summary>
    /// Height of the wing. A trial step may dip under the ground: the laws go on there, so that the step sees no kink, until the wing
    /// itself is nearly down.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Wing(T wheelHeight) => T.Max(wheelHeight + WingHeight, 0.1 * WingHeight);

    /// <summary>2z/b: the wing's height as the ground effect has it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T InHalfSpans(T wing) => wing * PerHalfSpan;

    /// <summary>k_g at a height of the wing.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T GroundEffect(T wing) => LaneLaws.GroundEffect(InHalfSpans(wing));

    /// <summary>D/m from k_g, V² and the lift per mass over V: (½ρS/m) C_D0 V² + (k_g K m/½ρS) (L/mV)².</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Drag(T groundEffect, T squared, T liftOverSpeed) =>
        T.Fused(ZeroLift, squared, Induced * groundEffect * liftOverSpeed * liftOverSpeed);

    /// <summary>V̇ = (T − D)/m − g sin γ + ẇ cos γ.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Acceleration(T thrust, T drag, T sine, T windRate, T cosine) =>
        T.Fused(windRate, cosine, T.Fused(-StandardConstants.Gravity, sine, thrust)) - drag;
}
