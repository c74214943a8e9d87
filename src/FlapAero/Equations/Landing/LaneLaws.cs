using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// What the hot loop needs in lanes: <see cref="DragLaws.GroundEffect"/> again, because a hardware vector has no power function (a test
/// holds the one to the other), and the arcsine.
/// </summary>
internal static class LaneLaws
{
    /// <summary>k_g(z) with 2z/b in place of z, the power by way of the logarithm.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T GroundEffect<T>(T heightOverHalfSpan)
        where T : unmanaged, ILanes<T> =>
        1 - T.Exp(-2.48 * T.Exp(0.768 * T.Log(heightOverHalfSpan)));

    /// <summary>arcsin by Newton's method, for lanes have none; from its series, for an angle that is a few hundredths.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static T ArcSine<T>(T sine)
        where T : unmanaged, ILanes<T>
    {
        T angle = T.Fused(1.0 / 6 * sine * sine, sine, sine);
        T change = 1;
        for (int i = 0; i < 3 && T.Any(T.Less(1e-8, T.Abs(change))); i++)
        {
            (T reached, T cosine) = LaneAngles.SinCos(angle);
            change = (reached - sine) / cosine;
            angle -= change;
        }

        return angle;
    }
}
