using FlapAero.Equations;
using MathNet.Numerics.Statistics;
using UnitsNet;

namespace FlapAero;

/// <summary>A distance as many landings gave it. Immutable.</summary>
public sealed class SampledDistance
{
    private const int MostBins = 1000;

    private readonly double[] _sorted;

    internal SampledDistance(double[] meters)
    {
        _sorted = meters;
        Array.Sort(_sorted);
        (double mean, double deviation) = _sorted.MeanStandardDeviation();
        Mean = Length.FromMeters(mean);
        // Of a single landing there is none.
        StandardDeviation = Length.FromMeters(double.IsFinite(deviation) ? deviation : 0);
    }

    /// <summary>Of how many landings.</summary>
    public int Count => _sorted.Length;

    /// <summary>Mean.</summary>
    public Length Mean { get; }

    /// <summary>Standard deviation, with n − 1; zero of a single landing.</summary>
    public Length StandardDeviation { get; }

    /// <summary>Standard error of the mean, σ/√n.</summary>
    public Length StandardError => StandardDeviation / Math.Sqrt(Count);

    /// <summary>The shortest.</summary>
    public Length Minimum => Length.FromMeters(_sorted[0]);

    /// <summary>The longest.</summary>
    public Length Maximum => Length.FromMeters(_sorted[^1]);

    /// <summary>The distance that a share of the landings stays within.</summary>
    /// <remarks>
    /// Formula: between the order statistics on both sides of (n + ⅓)p + ⅓, a straight line. Range: p from 0 to 1. Source: [statistics].
    /// </remarks>
    /// <param name="p">The share: 0.5 is the median.</param>
    /// <returns>The distance.</returns>
    /// <exception cref="RefusedInputException">A share outside the range.</exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Fly(1000).StopDistance.Quantile(0.95).Meters // 864</code></example>
    public Length Quantile(double p)
    {
        Require.Between(p, 0, 1, "share", "It is a share of the landings.");
        return Length.FromMeters(SortedArrayStatistics.Quantile(_sorted, p));
    }

    /// <summary>Between which distances a quantile of endlessly many landings lies.</summary>
    /// <remarks>
    /// Formula: the order statistics of ranks l and u with P(B &lt; l) and P(B ≥ u) at most half of what confidence leaves, B binomial
    /// of n and p: no distribution is assumed. Range: p above 0, below 1; confidence 0.5 to 0.9999. Source: [statistics].
    /// </remarks>
    /// <param name="p">The share.</param>
    /// <param name="confidence">In how many of all such intervals the quantile lies, at least; 95 % where none is given.</param>
    /// <returns>The two distances; nothing where the landings are too few for an end.</returns>
    /// <exception cref="RefusedInputException">A share or a confidence outside the range.</exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Fly(1000).StopDistance.QuantileInterval(0.95)!.Value.High.Meters // 875</code></example>
    public (Length Low, Length High)? QuantileInterval(double p, double confidence = 0.95)
    {
        if (!(p > 0 && p < 1))
            throw Require.Refused(nameof(p), "share", p, "above 0 and below 1", "No number of landings finds the very least or greatest.");
        (int low, int high) = Intervals.Ranks(p, Count, Confidence.InRange(confidence));
        return low < 1 || high > Count
            ? null
            : (Length.FromMeters(_sorted[low - 1]), Length.FromMeters(_sorted[high - 1]));
    }

    /// <summary>Bins of equal width for a figure, from the shortest distance to the longest.</summary>
    /// <remarks>
    /// Formula: a value at an edge counts in the bin above it, the longest in the last. Without a number of bins their width is
    /// 2 IQR/∛n, at most 60 of them. Range: 1 to 1 000 bins; one where all distances are equal. Source: [freedman-diaconis].
    /// </remarks>
    /// <param name="bins">How many; from the spread where none is given.</param>
    /// <returns>The bins in order.</returns>
    /// <exception cref="RefusedInputException">A number of bins outside the range.</exception>
    /// <example><code>(double)DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Fly(1000).StopDistance.Histogram().Count // 24</code></example>
    public IReadOnlyList<HistogramBin> Histogram(int? bins = null)
    {
        if (bins is { } asked)
            Require.Between(asked, 1, MostBins, "number of bins", "More than the eye sees.", nameof(bins));
        double least = _sorted[0];
        double range = _sorted[^1] - least;
        int count = range > 0 ? bins ?? UsualBins(range) : 1;
        var hits = new int[count];
        foreach (double value in _sorted)
            hits[range > 0 ? Math.Min(count - 1, (int)((value - least) / range * count)) : 0]++;
        double Edge(int i) => i == count ? _sorted[^1] : least + range * i / count;
        return [.. hits.Select((hit, i) => new HistogramBin(Length.FromMeters(Edge(i)), Length.FromMeters(Edge(i + 1)), hit))];
    }

    private int UsualBins(double range)
    {
        double width = 2 * SortedArrayStatistics.InterquartileRange(_sorted) / Math.Cbrt(Count);
        return width > 0 ? (int)Math.Clamp(Math.Ceiling(range / width), 1, 60) : 1;
    }
}
