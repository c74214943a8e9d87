using System.Globalization;
using FlapAero.Equations;

namespace FlapAero;

/// <summary>The share of a variance that comes from one input, or from two that go together. Immutable.</summary>
public sealed class SensitivityIndex
{
    private SensitivityIndex(IReadOnlyList<LandingVariable> inputs, SensitivityEstimate firstOrder, SensitivityEstimate total)
    {
        Inputs = inputs;
        FirstOrder = firstOrder;
        Total = total;
    }

    /// <summary>The input; threshold speed and height where they are correlated.</summary>
    public IReadOnlyList<LandingVariable> Inputs { get; }

    /// <summary>S: by what share the variance falls, on average, once this input is known.</summary>
    public SensitivityEstimate FirstOrder { get; }

    /// <summary>S_T: what share is left, on average, once all the other inputs are known.</summary>
    public SensitivityEstimate Total { get; }

    /// <summary>The input and its two shares.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{string.Join(" and ", Inputs.Select(LandingVariables.Words))}: first order {FirstOrder}, total {Total}");

    internal static IReadOnlyList<SensitivityIndex> List(
        IReadOnlyList<IReadOnlyList<int>> factors, (SobolEstimate First, SobolEstimate Total)[]? estimates) =>
        estimates is null
            ? []
            : [.. factors.Zip(estimates)
                .Select(pair => new SensitivityIndex(
                    [.. pair.First.Select(column => (LandingVariable)column)],
                    new SensitivityEstimate(pair.Second.First), new SensitivityEstimate(pair.Second.Total)))
                .OrderByDescending(index => index.Total.Value)];
}
