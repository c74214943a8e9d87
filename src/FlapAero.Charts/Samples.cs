namespace FlapAero.Charts;

/// <summary>Values along an axis at which a curve is computed.</summary>
public static class Samples
{
    /// <summary>Evenly spaced values from one end to the other, both included where the step divides the range.</summary>
    /// <param name="from">The first value.</param>
    /// <param name="to">The last value, above the first.</param>
    /// <param name="step">The step, positive.</param>
    /// <returns>The values.</returns>
    /// <exception cref="RefusedInputException">
    /// The range is empty, the step is not positive, or there would be more than 10 000 values.
    /// </exception>
    /// <example><code>Samples.Between(0, 60, 1) // 0, 1, … 60</code></example>
    public static IReadOnlyList<double> Between(double from, double to, double step)
    {
        if (!(to > from) || !double.IsFinite(to - from))
            throw Require.RefusedWhole(
                nameof(to),
                $"Samples need a range: {QuantityText.Of(from)} to {QuantityText.Of(to)} is none.");
        if (!(step > 0))
            throw Require.RefusedWhole(nameof(step), "The step between samples must be positive.");
        double count = Math.Floor((to - from) / step * (1 + 1e-12) + 1e-9) + 1;
        if (count > 10_000)
            throw Require.RefusedWhole(
                nameof(step),
                "More than 10 000 samples make no better figure: take a larger step.");
        // Rounded, so that 0.1 × 3 is 0.3 and tables find the round values.
        return [.. Enumerable.Range(0, (int)count).Select(i => Math.Round(from + i * step, 12))];
    }
}
