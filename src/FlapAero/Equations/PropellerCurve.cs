using MathNet.Numerics;
using MathNet.Numerics.Interpolation;

namespace FlapAero.Equations;

/// <summary>
/// A coefficient against the advance ratio: piecewise cubic Hermite with slopes that keep the table's own rises and falls
/// (MathNet's Pchip, Fritsch and Carlson's condition), so that it never overshoots a value of the table.
/// </summary>
internal sealed class PropellerCurve(double[] advanceRatios, double[] coefficients)
{
    private readonly CubicSpline _spline = CubicSpline.InterpolatePchipSorted(advanceRatios, coefficients);

    public double At(double advanceRatio) => _spline.Interpolate(advanceRatio);

    /// <summary>The advance ratio between two of the table at which the coefficient is zero.</summary>
    public double ZeroBetween(double low, double high) => FindRoots.OfFunction(At, low, high, 1e-12);
}
