using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>What acts on an aeroplane in the air, per mass; the only place that knows the forces of the stages in the air.</summary>
internal readonly struct AirForces<T>(T zeroLift, T induced, T wingHeight, T perHalfSpan, ThrustLaw<T> thrust, WindField<T> wind)
    where T : unmanaged, ILanes<T>
{
    private readonly T _zeroLift = zeroLift;
    private readonly T _induced = induced;
    private readonly T _wingHeight = wingHeight;
    private readonly T _perHalfSpan = perHalfSpan;

    public readonly ThrustLaw<T> Thrust = thrust;
    public readonly WindField<T> Wind = wind;

    /// <summary>The same in the wind without its gust.</summary>
    public AirForces<T> WithoutGust => new(_zeroLift, _induced, _wingHeight, _perHalfSpan, Thrust, Wind.WithoutGust);

    /// <summary>The same with a slip's drag, (½ρS/m) ΔC_D, on top.</summary>
    public AirForces<T> Slipping(T drag) => new(_zeroLift + drag, _induced, _wingHeight, _perHalfSpan, Thrust, Wind);

    /// <summary>The same with the thrust known.</summary>
    public AirForces<T> With(ThrustLaw<T> thrust) => new(_zeroLift, _induced, _wingHeight, _perHalfSpan, thrust, Wind);

    /// <summary>
    /// Height of the wing. A trial step may dip under the ground: the laws go on there, so that the step sees no kink, until the wing
    /// itself is nearly down.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Wing(T wheelHeight) => T.Max(wheelHeight + _wingHeight, 0.1 * _wingHeight);

    /// <summary>2z/b: the wing's height as the ground effect has it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T InHalfSpans(T wing) => wing * _perHalfSpan;

    /// <summary>k_g at a height of the wing.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T GroundEffect(T wing) => LaneLaws.GroundEffect(InHalfSpans(wing));

    /// <summary>D/m from k_g, V² and the lift per mass over V.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Drag(T groundEffect, T squared, T liftOverSpeed) =>
        LaneLaws.DragPerMass(_zeroLift, _induced * groundEffect, squared, liftOverSpeed);

    /// <summary>V̇ = (T − D)/m − g sin γ + ẇ cos γ.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Acceleration(T thrust, T drag, T sine, T windRate, T cosine) =>
        T.Fused(windRate, cosine, T.Fused(T.Of(-StandardConstants.Gravity), sine, thrust)) - drag;
}
