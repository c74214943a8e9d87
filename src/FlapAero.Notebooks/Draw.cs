using MathNet.Numerics.Random;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>
/// Draws the numbers of a problem: the same seed gives the same numbers on every machine. Each draw moves it on, so it
/// belongs to one problem and one thread.
/// </summary>
public sealed class Draw
{
    private readonly Xoshiro256StarStar _numbers;

    /// <summary>Starts from a seed.</summary>
    /// <param name="seed">Any whole number.</param>
    public Draw(int seed) => _numbers = new Xoshiro256StarStar(seed, threadSafe: false);

    /// <summary>One of some values, each as likely.</summary>
    /// <typeparam name="T">Their type.</typeparam>
    /// <param name="values">At least one value.</param>
    /// <returns>The value drawn.</returns>
    /// <exception cref="RefusedInputException">There are no values.</exception>
    public T Pick<T>(params IReadOnlyList<T> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count == 0) throw Require.RefusedWhole(nameof(values), "There is nothing to draw from.");
        return values[Below(values.Count)];
    }

    /// <summary>A quantity between two others, a whole number of steps above the lower.</summary>
    /// <typeparam name="T">The kind of quantity.</typeparam>
    /// <param name="low">The lowest value.</param>
    /// <param name="high">The highest value; drawn too where the step divides the range.</param>
    /// <param name="step">The step; its unit is the unit of the result.</param>
    /// <returns>The quantity drawn.</returns>
    /// <exception cref="RefusedInputException">The step is not positive, or high is below low.</exception>
    public T Between<T>(T low, T high, T step) where T : IQuantity
    {
        Enum unit = step.Unit;
        double value = Between(low.As(unit), high.As(unit), step.As(unit));
        return (T)Quantity.From(value, unit);
    }

    /// <summary>A number between two others, a whole number of steps above the lower.</summary>
    /// <param name="low">The lowest value.</param>
    /// <param name="high">The highest value; drawn too where the step divides the range.</param>
    /// <param name="step">The step.</param>
    /// <returns>The number drawn.</returns>
    /// <exception cref="RefusedInputException">The step is not positive, or high is below low.</exception>
    public double Between(double low, double high, double step)
    {
        if (!double.IsFinite(low) || !double.IsFinite(high) || !(high >= low))
            throw Require.RefusedWhole(
                nameof(high),
                $"From {Text(low)} to {Text(high)} there is nothing to draw: the second must not be below the first.");
        if (!(step > 0) || !double.IsFinite(step))
            throw Require.RefusedWhole(nameof(step), $"The step is {Text(step)}: it must be positive.");
        double steps = Math.Floor((high - low) / step + 1e-9);
        if (steps >= int.MaxValue)
            throw Require.RefusedWhole(nameof(step), $"The step of {Text(step)} is too fine for the range.");
        // Twelve digits: a draw of 0.1 × 3 is to read 0.3.
        return Math.Round(low + Below((int)steps + 1) * step, 12);
    }

    /// <summary>A whole number between two others, both included.</summary>
    /// <param name="low">The lowest value.</param>
    /// <param name="high">The highest value.</param>
    /// <returns>The number drawn.</returns>
    /// <exception cref="RefusedInputException">High is below low.</exception>
    public int Between(int low, int high)
    {
        if (high < low) throw Require.RefusedWhole(
            nameof(high),
            $"From {low} to {high} there is nothing to draw: the second must not be below the first.");
        return (int)(low + (long)(_numbers.NextDouble() * ((long)high - low + 1)));
    }

    private int Below(int count) => (int)(_numbers.NextDouble() * count);

    private static string Text(double value) => value.ToString("G6", System.Globalization.CultureInfo.InvariantCulture);
}
