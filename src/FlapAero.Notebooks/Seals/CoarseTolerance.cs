using UnitsNet;

namespace FlapAero.Notebooks.Seals;

/// <summary>
/// Tolerances that say nothing of the answer. A seal tells its tolerance to everybody; two per cent of the answer,
/// to all its
/// digits, would tell the answer too.
/// </summary>
internal static class CoarseTolerance
{
    /// <summary>What a person writes: one digit, or one of three usual pairs.</summary>
    private static readonly double[] Steps = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9];

    private static readonly double[] Round = [1, 2, 5, 10];

    /// <summary>The shares of an answer that a tolerance usually is, and that someone would try.</summary>
    internal static readonly IReadOnlyList<double> UsualShares = [0.01, 0.02, 0.03, 0.05, 0.1];

    /// <summary>
    /// The tolerance itself where a person would write it so, else the nearest 1, 2 or 5 times a power of ten; and
    /// a step
    /// less where it is just a usual share of the answer.
    /// </summary>
    public static IQuantity Of(IQuantity expected, IQuantity tolerance) =>
        Quantity.From(Of(expected.As(tolerance.Unit), tolerance.As(tolerance.Unit)), tolerance.Unit);

    /// <summary>The same of two numbers; a tolerance that is none is left for the check to refuse.</summary>
    public static double Of(double expected, double tolerance)
    {
        if (!(tolerance > 0) || !double.IsFinite(tolerance) || !double.IsFinite(expected))
            return tolerance;
        int power = (int)Math.Floor(Math.Log10(tolerance) + 1e-9);
        double digits = tolerance / Math.Pow(10, power);
        int at = Array.FindIndex(Steps, step => Math.Abs(step - digits) < 1e-6);
        if (at < 0)
        {
            double nearest = Round.MinBy(step => Math.Abs(Math.Log(step / digits)));
            (at, power) = nearest >= 10 ? (0, power + 1) : (Array.IndexOf(Steps, nearest), power);
        }
        while (IsUsualShare(expected, Written(at, power)))
            (at, power) = at > 0 ? (at - 1, power) : (Steps.Length - 1, power - 1);
        return Written(at, power);
    }

    /// <summary>Whether a guess by a usual share would pass for the answer.</summary>
    private static bool IsUsualShare(double expected, double tolerance) =>
        UsualShares.Any(share => Math.Abs(tolerance / share - Math.Abs(expected)) <= tolerance * (1 + 1e-6));

    /// <summary>As a person would write it: a product with a tenth would have sixteen digits, a quotient of whole numbers has not.</summary>
    private static double Written(int step, int power)
    {
        double tenths = Math.Round(Steps[step] * 10);
        return power > 0 ? tenths * PowerOfTen(power - 1) : tenths / PowerOfTen(1 - power);
    }

    /// <summary>Whole, and so exact as far as a double holds it.</summary>
    private static double PowerOfTen(int power) => Enumerable.Repeat(10.0, power).Aggregate(1.0, (product, ten) => product * ten);
}
