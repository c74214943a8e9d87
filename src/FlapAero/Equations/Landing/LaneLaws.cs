using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// The two laws that the hot loop needs in lanes. They are <see cref="DragLaws.GroundEffect"/> and the induced and zero-lift drag of
/// <see cref="DragLaws.Coefficient"/> again, because a hardware vector has no power function; a test holds the one to the other.
/// </summary>
internal static class LaneLaws
{
    /// <summary>k_g(z) with 2z/b in place of z, the power by way of the logarithm.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T GroundEffect<T>(T heightOverHalfSpan)
        where T : unmanaged, ILanes<T> =>
        T.Of(1) - T.Exp(-2.48 * T.Exp(0.768 * T.Log(heightOverHalfSpan)));

    /// <summary>D/m from V² and the lift per mass over V: (½ρS/m) C_D0 V² + (k_g K m/½ρS) (L/mV)².</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T DragPerMass<T>(T zeroLift, T induced, T speedSquared, T liftOverSpeed)
        where T : unmanaged, ILanes<T> =>
        T.Fused(zeroLift, speedSquared, induced * liftOverSpeed * liftOverSpeed);

    /// <summary>arcsin by Newton's method, for lanes have none; from its series, for an angle that is a few hundredths.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static T ArcSine<T>(T sine)
        where T : unmanaged, ILanes<T>
    {
        T angle = T.Fused(1.0 / 6 * sine * sine, sine, sine);
        T change = T.Of(1);
        for (int i = 0; i < 3 && T.Any(T.Less(T.Of(1e-8), T.Abs(change))); i++)
        {
            (T reached, T cosine) = LaneAngles.SinCos(angle);
            change = (reached - sine) / cosine;
            angle -= change;
        }

        return angle;
    }
}
