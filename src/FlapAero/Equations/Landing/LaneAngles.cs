using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// Sine and cosine in lanes. Those of the runtime's vectors are compiled twice, ahead and again while they run, and the two differ in the
/// last digit: the same landing would not come out the same. These say every rounding. Up to 45° Sun's polynomials (from memory, held to
/// the runtime's scalar functions by a test), beyond that the scalar functions lane by lane.
/// </summary>
internal static class LaneAngles
{
    private const double Eighth = Math.PI / 4;

    /// <summary>sin x and cos x, each within a unit of its last digit.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (T Sine, T Cosine) SinCos<T>(T angle)
        where T : unmanaged, ILanes<T>
    {
        T square = angle * angle;
        T sine = T.Fused(square, 1.58969099521155010221e-10, -2.50507602534068634195e-8);
        sine = T.Fused(square, sine, 2.75573137070700676789e-6);
        sine = T.Fused(square, sine, -1.98412698298579493134e-4);
        sine = T.Fused(square, sine, 8.33333333332248946124e-3);
        sine = T.Fused(square, sine, -1.66666666666666324348e-1);
        sine = T.Fused(angle * square, sine, angle);
        T cosine = T.Fused(square, -1.13596475577881948265e-11, 2.08757232129817482790e-9);
        cosine = T.Fused(square, cosine, -2.75573143513906633035e-7);
        cosine = T.Fused(square, cosine, 2.48015872894767294178e-5);
        cosine = T.Fused(square, cosine, -1.38888888888741095749e-3);
        cosine = T.Fused(square, cosine, 4.16666666666666019037e-2);
        // 1 − x²/2 rounds; what it rounds away comes back with the rest.
        T half = 0.5 * square, most = 1 - half;
        cosine = most + T.Fused(square * square, cosine, 1 - most - half);
        T large = T.Less(Eighth, T.Abs(angle));
        return T.Any(large) ? (Each(angle, large, sine, Math.Sin), Each(angle, large, cosine, Math.Cos)) : (sine, cosine);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Each<T>(T angle, T large, T small, Func<double, double> function)
        where T : unmanaged, ILanes<T>
    {
        Span<double> values = stackalloc double[T.Count];
        for (int i = 0; i < values.Length; i++)
            values[i] = function(angle[i]);
        return T.Select(large, T.Gather(values, 0, 1), small);
    }
}
