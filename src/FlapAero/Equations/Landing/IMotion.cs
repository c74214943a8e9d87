using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// What an integrator moves: a few numbers that can be added and scaled. The distance is not among them: nothing depends on it, so
/// it is a quadrature beside the motion.
/// </summary>
internal interface IMotion<TSelf, T>
    where TSelf : unmanaged, IMotion<TSelf, T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>this + factor · rate.</summary>
    TSelf Plus(T factor, in TSelf rate);

    /// <summary>this + coefficient · rate.</summary>
    TSelf Plus(double coefficient, in TSelf rate);

    TSelf Times(double coefficient);

    static abstract TSelf Select(T mask, in TSelf yes, in TSelf no);
}

/// <summary>A path that is known: only the airspeed moves.</summary>
internal readonly record struct PathMotion<T>(T Speed) : IMotion<PathMotion<T>, T>
    where T : unmanaged, ILanes<T>
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public PathMotion<T> Plus(T factor, in PathMotion<T> rate) => new(T.Fused(factor, rate.Speed, Speed));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public PathMotion<T> Plus(double coefficient, in PathMotion<T> rate) => new(T.Fused(coefficient, rate.Speed, Speed));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public PathMotion<T> Times(double coefficient) => new(coefficient * Speed);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PathMotion<T> Select(T mask, in PathMotion<T> yes, in PathMotion<T> no) =>
        new(T.Select(mask, yes.Speed, no.Speed));
}

/// <summary>A path that the forces shape: angle and height move too.</summary>
internal readonly record struct FreeMotion<T>(T Speed, T Angle, T Height) : IMotion<FreeMotion<T>, T>
    where T : unmanaged, ILanes<T>
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public FreeMotion<T> Plus(T factor, in FreeMotion<T> rate) => new(
        T.Fused(factor, rate.Speed, Speed), T.Fused(factor, rate.Angle, Angle), T.Fused(factor, rate.Height, Height));

    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    public FreeMotion<T> Plus(double coefficient, in FreeMotion<T> rate) => Plus((T)coefficient, rate);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public FreeMotion<T> Times(double coefficient) => new(coefficient * Speed, coefficient * Angle, coefficient * Height);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FreeMotion<T> Select(T mask, in FreeMotion<T> yes, in FreeMotion<T> no) => new(
        T.Select(mask, yes.Speed, no.Speed), T.Select(mask, yes.Angle, no.Angle), T.Select(mask, yes.Height, no.Height));
}
