using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>A distribution of one kind of value; its numbers are those of what is drawn, truncation included. Immutable.</summary>
/// <typeparam name="T">The quantity, or double for a plain number.</typeparam>
public sealed class Distribution<T> : Distribution
    where T : struct
{
    internal Distribution(DistributionLaw law, QuantityInfo? kind, Enum? unit)
        : base(law, kind, unit)
    {
    }

    /// <summary>Mean.</summary>
    public T Mean => Value(Law.Mean);

    /// <summary>Standard deviation.</summary>
    public T StandardDeviation => Value(Law.StandardDeviation);

    /// <summary>No value lies below; none where there is no such edge.</summary>
    public T? Minimum => double.IsFinite(Law.Minimum) ? Value(Law.Minimum) : null;

    /// <summary>No value lies above; none where there is no such edge.</summary>
    public T? Maximum => double.IsFinite(Law.Maximum) ? Value(Law.Maximum) : null;

    private T Value(double si) => GivenUnit is { } unit ? (T)Quantity.From(InUnit(si), unit) : (T)(object)si;
}
