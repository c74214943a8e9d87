using System.Globalization;
using FlapAero.Equations;

namespace FlapAero;

/// <summary>
/// A share of a variance as it was estimated, with the bootstrap interval of its error. Immutable. A true share lies between 0 and
/// 1; the estimate of a small first-order share may fall a little below zero.
/// </summary>
public sealed class SensitivityEstimate
{
    internal SensitivityEstimate(SobolEstimate estimate) => (Value, Low, High) = (estimate.Value, estimate.Low, estimate.High);

    /// <summary>The estimate.</summary>
    public double Value { get; }

    /// <summary>Lower end of the interval.</summary>
    public double Low { get; }

    /// <summary>Upper end of the interval.</summary>
    public double High { get; }

    /// <summary>The estimate and its interval.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value:0.000} ({Low:0.000} to {High:0.000})");
}
