using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace FlapAero.Tests.Wings;

/// <summary>
/// The same integral equation another way: a row of horseshoe vortices with constant strength, panels that crowd at the tips
/// and at the flap's ends, and no series at all. A reference for the library's lifting line, written from the law of Biot
/// and Savart.
/// </summary>
internal sealed class DiscreteHorseshoes
{
    private readonly double[] _middles;
    private readonly double[] _widths;
    private readonly double[] _strengths;
    private readonly double[] _washes;
    private readonly double _area;

    /// <param name="planform">The wing.</param>
    /// <param name="slope">Section slope.</param>
    /// <param name="angleOfAttack">Angle of attack, rad.</param>
    /// <param name="flap">The flap.</param>
    /// <param name="height">Height above the ground, m; none far from it.</param>
    /// <param name="perPart">Panels for each part of the half span.</param>
    public DiscreteHorseshoes(
        WingPlanform planform, double slope, double angleOfAttack, PartSpanFlap? flap = null, double? height = null,
        int perPart = 60)
    {
        double half = planform.Span.Meters / 2;
        _area = planform.Area.SquareMeters;
        double[] ends = flap is null ? [0, 1] : [.. new[] { 0, flap.From, flap.To, 1 }.Distinct()];
        double[] right = [.. ends.Zip(ends.Skip(1)).SelectMany(part => Enumerable.Range(0, perPart)
            .Select(i => half * (part.First + (part.Second - part.First) * (1 - Math.Cos(Math.PI * i / perPart)) / 2))), half];
        double[] edges = [.. right.Skip(1).Reverse().Select(edge => -edge), .. right];
        int count = edges.Length - 1;
        _middles = [.. Enumerable.Range(0, count).Select(i => (edges[i] + edges[i + 1]) / 2)];
        _widths = [.. Enumerable.Range(0, count).Select(i => edges[i + 1] - edges[i])];

        // Downwash over V at a panel for a circulation over V of one on another.
        Matrix<double> wash = DenseMatrix.Create(count, count, (i, j) =>
            (Trailing(_middles[i] - edges[j], height) - Trailing(_middles[i] - edges[j + 1], height)) / (4 * Math.PI));
        Matrix<double> matrix = wash.Clone();
        var wanted = new double[count];
        for (int i = 0; i < count; i++)
        {
            double share = Math.Abs(_middles[i]) / half;
            matrix[i, i] += 2 / (slope * planform.Chord(share).Meters);
            bool flapped = flap is not null && share > flap.From && share < flap.To;
            wanted[i] = angleOfAttack + planform.Twist(share).Radians - (flapped ? flap!.ZeroLiftAngleChange.Radians : 0);
        }

        Vector<double> strengths = matrix.LU().Solve(DenseVector.OfArray(wanted));
        _strengths = strengths.ToArray();
        _washes = (wash * strengths).ToArray();
    }

    public double LiftCoefficient => 2 / _area * _strengths.Zip(_widths, (strength, width) => strength * width).Sum();

    public double InducedDrag => 2 / _area * Enumerable.Range(0, _middles.Length).Sum(i => _strengths[i] * _washes[i] * _widths[i]);

    private static double Trailing(double across, double? height)
    {
        double own = 1 / across;
        return height is { } z ? own - across / (across * across + 4 * z * z) : own;
    }
}
