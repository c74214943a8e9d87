using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>A plain number as a quantity without a unit, so that numbers and quantities take the same way.</summary>
internal static class FiniteNumber
{
    /// <summary>UnitsNet refuses a number that is not finite too, but does not say which one it was.</summary>
    internal static Scalar Of(double value, string what) => double.IsFinite(value)
        ? Scalar.FromAmount(value)
        : throw Require.Refused(nameof(value), what, value, "a finite number", "Nothing else can be compared.");
}
