using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Numbers = System.Runtime.Intrinsics.Vector256<double>;

namespace FlapAero.Equations;

/// <summary>
/// Exponential and logarithm in lanes, for the reasons of <see cref="LaneAngles"/>, and because the runtime's are calls: these
/// become part of the law that asks for them. A Taylor series and Sun's polynomials (from memory); a test holds both to the
/// runtime's scalar functions.
/// </summary>
internal static class LaneExponentials
{
    private const int Digits = 52;
    private const long Bias = 1023;

    /// <summary>2⁵²: the digits of a number above it are a whole number.</summary>
    private const double Whole = 1L << Digits;

    /// <summary>A number to which it is added becomes a whole one, in the last digits of the sum.</summary>
    private const double Rounding = 1.5 * Whole;

    /// <summary>From the digits of √½ to those of 1.</summary>
    private const long RootToOne = 0x9_5F61_9980_C433;

    // ln 2 in two parts; the first, times a power of two, is exact.
    private const double Ln2 = 6.93147180369123816490e-01;
    private const double Ln2Rest = 1.90821492927058770002e-10;

    /// <summary>eˣ within two units of its last digit, for x from −708 to 709; beyond these it stays what it is there.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Numbers Exp(Numbers x)
    {
        x = Vector256.MaxNative(Vector256.Create(-708.0), Vector256.MinNative(Vector256.Create(709.0), x));
        Numbers rounded = Line(x, Rounding, 1.44269504088896338700), power = rounded - Vector256.Create(Rounding);
        Numbers r = Fused(Vector256.Create(-Ln2Rest), power, Fused(Vector256.Create(-Ln2), power, x));
        Numbers r2 = r * r, r4 = r2 * r2;
        // In pairs, and pairs of pairs: no term waits for the one before.
        Numbers low = Fused(r2, Line(r, 1.0 / 2, 1.0 / 6), Line(r, 1, 1));
        Numbers middle = Fused(r2, Line(r, 1.0 / 720, 1.0 / 5_040), Line(r, 1.0 / 24, 1.0 / 120));
        Numbers high = Fused(r2, Line(r, 1.0 / 3_628_800, 1.0 / 39_916_800), Line(r, 1.0 / 40_320, 1.0 / 362_880));
        high = Fused(r4, Line(r, 1.0 / 479_001_600, 1.0 / 6_227_020_800), high);
        return (Fused(r4, Fused(r4, high, middle), low).AsInt64() + (rounded.AsInt64() << Digits)).AsDouble();
    }

    /// <summary>ln x within two units of its last digit, for a normal number above zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Numbers Log(Numbers x)
    {
        // x = m 2ⁿ with m from √½ to √2, and ln m from f = m − 1.
        var biased = x.AsInt64() + Vector256.Create(RootToOne) >>> Digits;
        Numbers power = (biased | Vector256.Create(Whole).AsInt64()).AsDouble() - Vector256.Create(Whole + Bias);
        Numbers f = (x.AsInt64() - (biased - Vector256.Create(Bias) << Digits)).AsDouble() - Numbers.One;
        Numbers s = f / (Vector256.Create(2.0) + f), s2 = s * s, s4 = s2 * s2;
        Numbers odd = Line(s4, 6.666666666666735130e-01, 2.857142874366239149e-01);
        odd = Fused(s4 * s4, Line(s4, 1.818357216161805012e-01, 1.479819860511658591e-01), odd);
        Numbers even = Line(s4, 2.222219843214978396e-01, 1.531383769920937332e-01);
        even = Fused(s4, even, Vector256.Create(3.999999999940941908e-01));
        Numbers half = 0.5 * f * f;
        Numbers tail = Fused(s, Fused(s2, odd, Fused(s4, even, half)), Vector256.Create(Ln2Rest) * power);
        return Fused(Vector256.Create(Ln2), power, f - (half - tail));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Numbers Line(Numbers x, double constant, double slope) =>
        Fused(Vector256.Create(slope), x, Vector256.Create(constant));

    private static Numbers Fused(Numbers a, Numbers b, Numbers c) => Vector256.FusedMultiplyAdd(a, b, c);
}
