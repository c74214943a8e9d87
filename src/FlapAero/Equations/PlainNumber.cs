using System.Globalization;

namespace FlapAero.Equations;

/// <summary>A number as messages write it. Absurd input can lead beyond every number that a reader knows: that is said in words.</summary>
internal static class PlainNumber
{
    private const double Largest = 1e300;

    /// <summary>A number in a sentence that goes on, where one that is none must not stand.</summary>
    public static string InWords(double value, string format) =>
        double.IsNaN(value) ? "no number at all" : Of(Math.Clamp(value, -double.MaxValue, double.MaxValue), format);

    public static string Of(double value, string format) =>
        double.IsFinite(value) && Math.Abs(value) > Largest
            ? value > 0 ? "more than 1e+300" : "less than -1e+300"
            : value.ToString(format, CultureInfo.InvariantCulture);
}
