namespace FlapAero.Tests.Scatter;

/// <summary>The largest distance between a sample's distribution function and a given one.</summary>
internal static class Ks
{
    /// <summary>Passed by chance about once in 10⁴ such tests: √(−½ ln(α/2)/n), n large. The seeds are fixed.</summary>
    public static double Limit(int count) => Math.Sqrt(-0.5 * Math.Log(0.5e-4) / count);

    public static double Distance(double[] sorted, Func<double, double> cumulative)
    {
        double most = 0;
        for (int i = 0; i < sorted.Length; i++)
        {
            double f = cumulative(sorted[i]);
            most = Math.Max(most, Math.Max(f - (double)i / sorted.Length, (i + 1.0) / sorted.Length - f));
        }

        return most;
    }
}
