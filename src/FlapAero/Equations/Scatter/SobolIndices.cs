namespace FlapAero.Equations;

/// <summary>An estimate with its bootstrap interval.</summary>
internal readonly record struct SobolEstimate(double Value, double Low, double High);

/// <summary>
/// First-order and total shares of a variance by M. J. W. Jansen's estimators (Comput. Phys. Commun. 117, 1999) on A. Saltelli's
/// matrices (Comput. Phys. Commun. 181, 2010): S_i = 1 − ½⟨(f(B) − f(A_B,i))²⟩/V, S_Ti = ½⟨(f(A) − f(A_B,i))²⟩/V. Both are sums of
/// squares of differences, so that the output's mean, however large, takes no digits away.
/// </summary>
internal sealed class SobolIndices
{
    private readonly double[] _a;
    private readonly double[] _b;
    private readonly double[][] _mixed;
    private readonly double _origin;

    /// <summary>Rows in which an output is not a number are left out of all matrices, since a difference needs both.</summary>
    /// <param name="a">Outputs of the first matrix.</param>
    /// <param name="b">Outputs of the second.</param>
    /// <param name="mixed">Outputs of the first with one factor of the second, factor by factor.</param>
    public SobolIndices(double[] a, double[] b, double[][] mixed)
    {
        int[] rows =
        [
            .. Enumerable.Range(0, a.Length)
                .Where(k => double.IsFinite(a[k]) && double.IsFinite(b[k]) && mixed.All(m => double.IsFinite(m[k]))),
        ];
        _a = [.. rows.Select(k => a[k])];
        _b = [.. rows.Select(k => b[k])];
        _mixed = [.. mixed.Select(m => rows.Select(k => m[k]).ToArray())];
        _origin = rows.Length == 0 ? 0 : _a[0];
        Variance = VarianceOf(_a, _b);
    }

    /// <summary>How many rows are used.</summary>
    public int Rows => _a.Length;

    /// <summary>The output's variance, from both matrices.</summary>
    public double Variance { get; }

    /// <summary>
    /// First-order and total index of every factor; the intervals are percentiles of <paramref name="resamples"/> drawings of the
    /// rows with replacement, variance and all.
    /// </summary>
    public (SobolEstimate First, SobolEstimate Total)[] Estimate(int resamples, double confidence, ulong seed)
    {
        int factors = _mixed.Length;
        double[] values = IndicesOf(null);
        var drawn = new double[resamples][];
        Parallel.For(0, resamples, r =>
        {
            var stream = new RandomStream(seed, (ulong)r, StreamPurpose.Bootstrap);
            var rows = new int[Rows];
            for (int k = 0; k < rows.Length; k++)
                rows[k] = (int)(stream[k] * rows.Length);
            drawn[r] = IndicesOf(rows);
        });
        SobolEstimate Of(int index)
        {
            // A resample of one row over and over has no variance to share out.
            double[] sorted = [.. drawn.Select(d => d[index]).Where(double.IsFinite).Order()];
            double tail = 0.5 * (1 - confidence);
            return new(values[index], Percentile(sorted, tail, values[index]), Percentile(sorted, 1 - tail, values[index]));
        }

        return [.. Enumerable.Range(0, factors).Select(i => (Of(i), Of(factors + i)))];
    }

    private static double Percentile(double[] sorted, double p, double otherwise) =>
        sorted.Length == 0 ? otherwise : MathNet.Numerics.Statistics.SortedArrayStatistics.Quantile(sorted, p);

    private double[] IndicesOf(int[]? rows)
    {
        int count = Rows;
        double sum = 0;
        double squares = 0;
        for (int k = 0; k < count; k++)
        {
            int row = rows is null ? k : rows[k];
            double a = _a[row] - _origin;
            double b = _b[row] - _origin;
            sum += a + b;
            squares += a * a + b * b;
        }

        double variance = (squares - sum * sum / (2 * count)) / (2 * count - 1);
        var indices = new double[2 * _mixed.Length];
        for (int i = 0; i < _mixed.Length; i++)
        {
            double[] mixed = _mixed[i];
            double first = 0;
            double total = 0;
            for (int k = 0; k < count; k++)
            {
                int row = rows is null ? k : rows[k];
                double fromB = _b[row] - mixed[row];
                double fromA = _a[row] - mixed[row];
                first += fromB * fromB;
                total += fromA * fromA;
            }

            indices[i] = 1 - first / (2 * count * variance);
            indices[_mixed.Length + i] = total / (2 * count * variance);
        }

        return indices;
    }

    private double VarianceOf(double[] a, double[] b)
    {
        double mean = a.Concat(b).Select(value => value - _origin).DefaultIfEmpty(0).Average();
        double squares = a.Concat(b).Sum(value => (value - _origin - mean) * (value - _origin - mean));
        return squares / Math.Max(1, 2 * a.Length - 1);
    }
}
