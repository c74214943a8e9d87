using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// A distribution by its quantile function: a number between 0 and 1 in, a value out. What does not depend on that number is
/// worked out once. Special functions are MathNet.Numerics'; its samplers are not used, since they draw from a stream of their own.
/// </summary>
internal readonly struct DistributionLaw
{
    private readonly double _location;
    private readonly double _scale;

    // Truncated: the probabilities that bound it, counted from the tail that lies nearer to it, where they are exact.
    private readonly double _low;
    private readonly double _high;
    private readonly bool _upperTail;

    private DistributionLaw(
        DistributionFamily family, double location, double scale, double minimum, double maximum, double low = 0, double high = 1,
        bool upperTail = false)
    {
        Family = family;
        _location = location;
        _scale = scale;
        (Minimum, Maximum) = (minimum, maximum);
        (_low, _high, _upperTail) = (low, high, upperTail);
    }

    public DistributionFamily Family { get; }

    /// <summary>No value lies outside; infinite for a normal.</summary>
    public double Minimum { get; }

    public double Maximum { get; }

    /// <summary>Whether every value is the same one.</summary>
    public bool IsFixed => Minimum == Maximum;

    /// <summary>Probability that a truncated normal's parent lies inside the truncation; 1 for the others.</summary>
    public double Kept => _high - _low;

    public double Mean => Family switch
    {
        DistributionFamily.Uniform => Minimum + 0.5 * (Maximum - Minimum),
        DistributionFamily.Triangular => Minimum + ((_location - Minimum) + (Maximum - Minimum)) / 3,
        DistributionFamily.TruncatedNormal when !IsFixed => _location + _scale * TruncatedMean,
        _ => _location,
    };

    public double StandardDeviation => Family switch
    {
        _ when IsFixed => 0,
        DistributionFamily.Uniform => (Maximum - Minimum) / Math.Sqrt(12),
        DistributionFamily.Triangular => TriangularDeviation,
        DistributionFamily.TruncatedNormal => _scale * TruncatedDeviation,
        _ => _scale,
    };

    public static DistributionLaw Fixed(double value) => new(DistributionFamily.Fixed, value, 0, value, value);

    public static DistributionLaw Uniform(double minimum, double maximum) =>
        new(DistributionFamily.Uniform, minimum, maximum - minimum, minimum, maximum);

    public static DistributionLaw Triangular(double minimum, double mode, double maximum) =>
        new(DistributionFamily.Triangular, mode, maximum - minimum, minimum, maximum);

    public static DistributionLaw Normal(double mean, double deviation) =>
        deviation == 0
            ? new(DistributionFamily.Normal, mean, 0, mean, mean)
            : new(DistributionFamily.Normal, mean, deviation, double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>A normal of which only the part between two values is drawn from. Mean and deviation are the whole normal's.</summary>
    public static DistributionLaw TruncatedNormal(double mean, double deviation, double minimum, double maximum)
    {
        if (deviation == 0)
            return new(DistributionFamily.TruncatedNormal, mean, 0, mean, mean);
        double a = (minimum - mean) / deviation;
        double b = (maximum - mean) / deviation;
        bool upper = a > 0;
        (double low, double high) = upper ? (StandardNormal.Cdf(-b), StandardNormal.Cdf(-a)) : (StandardNormal.Cdf(a), StandardNormal.Cdf(b));
        return new(DistributionFamily.TruncatedNormal, mean, deviation, minimum, maximum, low, high, upper);
    }

    /// <summary>The value below which a share p of all values lies, 0 &lt; p &lt; 1.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Quantile(double p)
    {
        if (IsFixed)
            return Minimum;
        return Family switch
        {
            DistributionFamily.Uniform => Inside(Minimum + p * _scale),
            DistributionFamily.Triangular => Inside(TriangularQuantile(p)),
            DistributionFamily.TruncatedNormal => Inside(_location + _scale * TruncatedQuantile(p)),
            DistributionFamily.Normal => _location + _scale * StandardNormal.Quantile(p),
            _ => _location,
        };
    }

    // From the nearer end: the difference 1 − p is exact where it matters.
    private double TriangularQuantile(double p)
    {
        double left = _location - Minimum;
        double right = Maximum - _location;
        return p * _scale < left
            ? Minimum + Math.Sqrt(p * _scale * left)
            : Maximum - Math.Sqrt((1 - p) * _scale * right);
    }

    private double TruncatedQuantile(double p) => _upperTail
        ? -StandardNormal.Quantile(_high - p * (_high - _low))
        : StandardNormal.Quantile(_low + p * (_high - _low));

    // Rounding in the last digit may step over an edge.
    private double Inside(double value) => Math.Clamp(value, Minimum, Maximum);

    private double TriangularDeviation
    {
        get
        {
            double left = _location - Minimum;
            double right = Maximum - _location;
            return Math.Sqrt((left * left + left * right + right * right) / 18);
        }
    }

    private double TruncatedMean => (Density(Lower) - Density(Upper)) / Kept;

    private double TruncatedDeviation
    {
        get
        {
            // z φ(z) is nothing where z is infinite.
            double edges = (Edge(Lower) - Edge(Upper)) / Kept;
            return Math.Sqrt(Math.Max(0, 1 + edges - TruncatedMean * TruncatedMean));
        }
    }

    private double Lower => (Minimum - _location) / _scale;

    private double Upper => (Maximum - _location) / _scale;

    private static double Edge(double z) => double.IsInfinity(z) ? 0 : z * Density(z);

    private static double Density(double z) => MathNet.Numerics.Distributions.Normal.PDF(0, 1, z);
}
