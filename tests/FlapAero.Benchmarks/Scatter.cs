using FlapAero.Equations;

namespace FlapAero.Benchmarks;

/// <summary>Landings with every input drawn between two landings' values; only those that come to a stop.</summary>
internal static class Scatter
{
    /// <summary>The corners of a box that holds light aeroplanes, flaps up and down.</summary>
    public static (double[] Low, double[] High) LightAeroplanes { get; } = (
        [650, 11, 8.5, 0.6, 0.024, 0.65, 1.4, 0.95, -3, 15.24, 26, 2.5, 1.5, 0.2, 0.75, 0.6, 0, -100, 0.8, 0.5, 0.2, 0.02, 0.15, -0.018, 0, 0, 5, -6, -0.2, 0],
        [1250, 18, 13, 2.3, 0.1, 0.85, 2.3, 1.24, 9, 15.24, 48, 5.5, 3, 0.8, 0.95, 24, 5, 140, 1.9, 0.8, 0.6, 0.06, 0.44, 0.018, 0, 0, 5, 0, 0, 0]);

    /// <summary>The box of a table's own lowest and highest values.</summary>
    public static (double[] Low, double[] High) Around(IReadOnlyList<LandingInput> landings)
    {
        double[] low = [.. Enumerable.Repeat(double.PositiveInfinity, LandingInput.Count)];
        double[] high = [.. Enumerable.Repeat(double.NegativeInfinity, LandingInput.Count)];
        foreach (LandingInput landing in landings)
        {
            ReadOnlySpan<double> row = LandingInput.Rows([landing]);
            for (int i = 0; i < row.Length; i++)
                (low[i], high[i]) = (Math.Min(low[i], row[i]), Math.Max(high[i], row[i]));
        }

        return (low, high);
    }

    public static LandingInput[] Draw((double[] Low, double[] High) box, int count, int seed)
    {
        var random = new Random(seed);
        var landings = new List<LandingInput>(count);
        var row = new double[LandingInput.Count];
        for (int tries = 0; landings.Count < count; tries++)
        {
            if (tries > 1000 * (count + 1))
                throw new InvalidOperationException($"Only {landings.Count} of {tries} drawn landings came to a stop.");
            for (int i = 0; i < row.Length; i++)
                row[i] = box.Low[i] + (box.High[i] - box.Low[i]) * random.NextDouble();
            var landing = LandingInput.FromRow(row);
            if (LandingSolver.Solve(landing).Refusal == LandingRefusal.None)
                landings.Add(landing);
        }

        return [.. landings];
    }

    /// <summary>The same landings, each in a gust of up to 6 m/s either way that begins while it flies.</summary>
    public static LandingInput[] InGusts(LandingInput[] landings, int seed)
    {
        var random = new Random(seed);
        return
        [
            .. landings.Select(landing => landing with
            {
                GustChange = 12 * random.NextDouble() - 6,
                GustStart = 10 * random.NextDouble(),
                GustLength = 2 + 6 * random.NextDouble(),
            }),
        ];
    }
}
