namespace FlapAero.Equations;

/// <summary>What an integrator moves: a few numbers that can be added and scaled.</summary>
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

/// <summary>A path that is known: only the airspeed and the distance over the ground move.</summary>
internal readonly struct PathMotion<T>(T speed, T distance) : IMotion<PathMotion<T>, T>
    where T : unmanaged, ILanes<T>
{
    public readonly T Speed = speed;
    public readonly T Distance = distance;

    public PathMotion<T> Plus(T factor, in PathMotion<T> rate) =>
        new(T.Fused(factor, rate.Speed, Speed), T.Fused(factor, rate.Distance, Distance));

    public PathMotion<T> Plus(double coefficient, in PathMotion<T> rate) => Plus(T.Of(coefficient), rate);

    public PathMotion<T> Times(double coefficient) => new(coefficient * Speed, coefficient * Distance);

    public static PathMotion<T> Select(T mask, in PathMotion<T> yes, in PathMotion<T> no) =>
        new(T.Select(mask, yes.Speed, no.Speed), T.Select(mask, yes.Distance, no.Distance));
}

/// <summary>A path that the forces shape: angle and height move too.</summary>
internal readonly struct FreeMotion<T>(T speed, T angle, T height, T distance) : IMotion<FreeMotion<T>, T>
    where T : unmanaged, ILanes<T>
{
    public readonly T Speed = speed;
    public readonly T Angle = angle;
    public readonly T Height = height;
    public readonly T Distance = distance;

    public FreeMotion<T> Plus(T factor, in FreeMotion<T> rate) => new(
        T.Fused(factor, rate.Speed, Speed),
        T.Fused(factor, rate.Angle, Angle),
        T.Fused(factor, rate.Height, Height),
        T.Fused(factor, rate.Distance, Distance));

    public FreeMotion<T> Plus(double coefficient, in FreeMotion<T> rate) => Plus(T.Of(coefficient), rate);

    public FreeMotion<T> Times(double coefficient) =>
        new(coefficient * Speed, coefficient * Angle, coefficient * Height, coefficient * Distance);

    public static FreeMotion<T> Select(T mask, in FreeMotion<T> yes, in FreeMotion<T> no) => new(
        T.Select(mask, yes.Speed, no.Speed),
        T.Select(mask, yes.Angle, no.Angle),
        T.Select(mask, yes.Height, no.Height),
        T.Select(mask, yes.Distance, no.Distance));
}
