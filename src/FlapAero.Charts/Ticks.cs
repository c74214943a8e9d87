using System.Globalization;

namespace FlapAero.Charts;

/// <summary>Round values along an axis, and the decimals that tell them apart.</summary>
internal sealed class Ticks
{
    private Ticks(double from, double to, double step, IReadOnlyList<double> values)
    {
        (From, To, Values) = (from, to, values);
        Decimals = DecimalsOf(step);
    }

    /// <summary>Where the axis starts.</summary>
    internal double From { get; }

    /// <summary>Where the axis ends.</summary>
    internal double To { get; }

    internal IReadOnlyList<double> Values { get; }

    private int Decimals { get; }

    internal IEnumerable<string> Labels => Values.Select(value => QuantityText.Of(value, Pattern(Decimals)));

    /// <summary>An axis that ends where the data do, with round values in between.</summary>
    internal static Ticks Within(double low, double high, int atMost)
    {
        (low, high) = Opened(low, high);
        double step = Step(high - low, atMost);
        // Two labels are no scale: take the next finer step.
        for (int more = atMost + 1; Multiples(step, low, high).Count < 3; more++) step = Step(high - low, more);
        return new Ticks(low, high, step, Multiples(step, low, high));
    }

    /// <summary>An axis that ends at round values around the data.</summary>
    internal static Ticks Around(double low, double high, int atMost)
    {
        (low, high) = Opened(low, high);
        double step = Step(high - low, atMost);
        double from = Math.Floor(low / step + 1e-9) * step, to = Math.Ceiling(high / step - 1e-9) * step;
        return new Ticks(Clean(from), Clean(to), step, Multiples(step, from, to));
    }

    internal static string Pattern(int decimals) => decimals <= 0 ? "0" : "0." + new string('0', decimals);

    /// <summary>The smallest of 1, 2, 5 × 10ⁿ that needs no more than so many steps.</summary>
    internal static double Step(double range, int atMost)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(range / atMost)));
        foreach (int factor in (int[])[1, 2, 5, 10])
            if (range / (factor * power) <= atMost * (1 + 1e-9)) return Clean(factor * power);
        return Clean(10 * power);
    }

    internal static IReadOnlyList<double> Multiples(double step, double low, double high)
    {
        var values = new List<double>();
        for (double i = Math.Ceiling(low / step - 1e-9); i * step <= high + step * 1e-9; i++) values.Add(Clean(i * step));
        return values;
    }

    internal static int DecimalsOf(double step) => Math.Max(0, -(int)Math.Floor(Math.Log10(step) + 1e-9));

    /// <summary>Takes the binary dust off a multiple: 0.30000000000000004 is 0.3.</summary>
    private static double Clean(double value) => value == 0 ? 0 : double.Parse(
        value.ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static (double Low, double High) Opened(double low, double high)
    {
        double least = 1e-9 * Math.Max(Math.Abs(low), Math.Abs(high));
        if (high - low > least && high > low) return (low, high);
        double room = low == 0 ? 1 : Math.Abs(low) * 0.1;
        return (low - room, high + room);
    }
}
