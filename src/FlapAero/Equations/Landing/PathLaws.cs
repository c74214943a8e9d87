using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>The laws of a path whose height is a known function of time.</summary>
internal static class PathLaws
{
    /// <summary>V cos γ. Not quite zero where a trial step asks for a sink rate above the airspeed.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LevelSpeed<T>(T squared, T sink)
        where T : unmanaged, ILanes<T> => T.Sqrt(T.Max(squared - sink * sink, double.Epsilon));

    /// <summary>L/m = g cos γ + ḧ: an approximation of order γ².</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Lift<T>(T cosine, T extraLift)
        where T : unmanaged, ILanes<T> => T.Fused(StandardConstants.Gravity, cosine, extraLift);

    /// <summary>The same from speed and sink rate.</summary>
    public static T LiftOnPath<T>(T speed, T sink, T extraLift)
        where T : unmanaged, ILanes<T> => Lift(LevelSpeed(speed * speed, sink) / speed, extraLift);

    /// <summary>C_L − f C_Lmax, scaled to a square of speed by that at which a unit of lift per mass takes the touchdown lift.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LiftLeft<T>(T speed, T sink, T extraLift, T squareLift)
        where T : unmanaged, ILanes<T> => T.Fused(LiftOnPath(speed, sink, extraLift), squareLift, 0 - speed * speed);
}
