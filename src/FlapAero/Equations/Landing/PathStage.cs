using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>What a path that is known fixes at a moment, whatever the airspeed.</summary>
internal struct PathNode<T>
    where T : unmanaged, ILanes<T>
{
    public T Closed;
    public T Sink;
    public T ExtraLift;
    public T Induced;
    public T Headwind;
    public T WindRate;
    public T GroundSpeed;

    /// <summary>A node of a path at a height of the wheels.</summary>
    /// <param name="forces">What acts.</param>
    /// <param name="time">When.</param>
    /// <param name="closed">How far the throttle is closed.</param>
    /// <param name="sink">−ḣ.</param>
    /// <param name="extraLift">ḧ: the lift beyond W cos γ, per mass.</param>
    /// <param name="wheelHeight">h.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public PathNode(in AirForces<T> forces, T time, T closed, T sink, T extraLift, T wheelHeight)
    {
        T wing = forces.Wing(wheelHeight);
        (Closed, Sink, ExtraLift) = (closed, sink, extraLift);
        Induced = forces.Induced(wing);
        Headwind = forces.Wind.At(wing, time);
        WindRate = forces.Wind.IsSteady ? T.Of(0) : forces.Wind.Rate(wing, T.Of(0) - sink, time);
    }

    /// <summary>V̇ at an airspeed.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public PathMotion<T> Rates(in AirForces<T> forces, T speed)
    {
        T squared = speed * speed;
        T perSpeed = T.Of(1) / speed;
        T level = PathLaws.LevelSpeed(squared, Sink);
        GroundSpeed = level - Headwind;
        T cosine = level * perSpeed;
        T drag = forces.Drag(Induced, squared, PathLaws.Lift(cosine, ExtraLift) * perSpeed);
        return new(AirForces<T>.Acceleration(forces.Thrust.At(Closed, speed), drag, T.Of(0) - Sink * perSpeed, WindRate, cosine));
    }
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
}
