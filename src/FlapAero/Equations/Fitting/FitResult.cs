using MathNet.Numerics.LinearAlgebra;

namespace FlapAero.Equations.Fitting;

/// <summary>What a fit found. Immutable.</summary>
/// <param name="Unknowns">The unknowns, in spreads from their typical values.</param>
/// <param name="Predicted">The numbers at them; NaN where the law has none.</param>
/// <param name="Covariance">(JᵀJ + 1)⁻¹.</param>
/// <param name="Slopes">J, each row in its number's σ.</param>
/// <param name="Cost">The sum that was made least; a number that the law has not counts as one far off.</param>
/// <param name="LeftOut">How many numbers the law had not at the start of the search and has at its end.</param>
internal sealed record FitResult(
    double[] Unknowns, double[] Predicted, Matrix<double> Covariance, Matrix<double> Slopes, double Cost, int LeftOut)
{
    /// <summary>Standard error of an unknown, in its typical spread: 1 where the data say nothing.</summary>
    public double Error(int unknown) => Math.Sqrt(Covariance[unknown, unknown]);

    /// <summary>Share of a number's own error that it keeps after the fit: 0 where it alone determines something, 1 where it determines nothing.</summary>
    public double Freedom(int number)
    {
        Vector<double> row = Slopes.Row(number);
        return Math.Max(0, 1 - row * (Covariance * row));
    }

    /// <summary>Standard error of what depends on the unknowns with these slopes.</summary>
    public double Propagated(double[] slopes)
    {
        Vector<double> row = Vector<double>.Build.Dense(slopes);
        return Math.Sqrt(Math.Max(0, row * (Covariance * row)));
    }
}
