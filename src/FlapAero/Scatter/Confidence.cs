using System.Runtime.CompilerServices;

namespace FlapAero;

/// <summary>The confidences that intervals are given for.</summary>
internal static class Confidence
{
    public static double InRange(double confidence, [CallerArgumentExpression(nameof(confidence))] string? argument = null) =>
        Require.Between(confidence, 0.5, 0.9999, "confidence", "Less is a guess; more rests on tails that nobody knows.", argument);
}
