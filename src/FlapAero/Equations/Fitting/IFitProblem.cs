namespace FlapAero.Equations.Fitting;

/// <summary>Numbers that are given, and a law that predicts them from unknowns.</summary>
internal interface IFitProblem
{
    /// <summary>The numbers given.</summary>
    IReadOnlyList<double> Given { get; }

    /// <summary>Below which each unknown makes no sense.</summary>
    IReadOnlyList<double> Lowest { get; }

    /// <summary>Above which each unknown makes no sense.</summary>
    IReadOnlyList<double> Highest { get; }

    /// <summary>Whether a number depends on an unknown.</summary>
    bool Touches(int number, int unknown);

    /// <summary>The numbers as the law has them; NaN where it has none.</summary>
    /// <param name="unknowns">The unknowns.</param>
    /// <param name="unknown">Only the numbers that this one touches are wanted; all where none is given.</param>
    double[] Predict(double[] unknowns, int? unknown);
}
