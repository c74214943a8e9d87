using MathNet.Numerics.LinearAlgebra;

namespace FlapAero.Equations.Fitting;

/// <summary>
/// Weighted nonlinear least squares in unknowns that are counted from their typical values in their typical spreads: the sum
/// Σ ((y − f(z))/σ)² + Σ z². The second sum keeps what the data do not determine at its typical value, with its typical spread as its
/// standard error. Levenberg's damped Gauss–Newton steps; the linear algebra is MathNet's. The loop is this library's own, because a trial
/// that physics refuses must only shorten the step, and because a number that an unknown does not touch is not computed again.
/// </summary>
internal static class LeastSquares
{
    // Long enough that the landing integrator's tolerance does not show in a slope, short against the spread.
    private const double SlopeStep = 0.02;
    private const double SmallestGain = 1e-4;
    private const double FreeDamping = 0.02;
    private const double LongestStep = 2;
    private const double LostNumber = 100;
    private const int MostSteps = 25;

    /// <param name="problem">What is fitted.</param>
    /// <param name="start">Where the search begins.</param>
    /// <param name="errors">σ of every number; an infinite one takes the number out.</param>
    public static FitResult Solve(IFitProblem problem, double[] start, double[] errors)
    {
        double[] at = [.. start];
        double[] predicted = problem.Predict(at, unknown: null);
        double[] weights = Weights(problem, predicted, errors);
        double cost = Cost(problem, at, predicted, weights);
        Matrix<double> slopes = Slopes(problem, at, predicted, weights);
        double damping = 1e-3;
        (int steps, int small) = (0, 0);
        bool settled = false;
        while (!settled && steps++ < MostSteps)
        {
            bool better = false;
            for (int trial = 0; trial < 10 && !better; trial++)
            {
                double[] next = Step(problem, at, predicted, weights, slopes, damping);
                double[] there = problem.Predict(next, unknown: null);
                double costThere = Cost(problem, next, there, weights);
                if (!(costThere < cost))
                {
                    damping *= 8;
                    continue;
                }

                // A short step gains little wherever it is taken: only a free one says that there is no more to gain.
                small = cost - costThere <= SmallestGain * (1 + cost) ? small + 1 : 0;
                settled = small > 0 && (damping <= FreeDamping || small >= 3);
                (better, at, predicted, cost, damping) = (true, next, there, costThere, Math.Max(damping / 10, 1e-9));
            }

            if (!better) settled = true;
            else slopes = Slopes(problem, at, predicted, weights);
        }

        Matrix<double> covariance = Normal(slopes, damping: 0).Cholesky().Solve(Matrix<double>.Build.DenseIdentity(at.Length));
        int leftOut = Enumerable.Range(0, predicted.Length).Count(
            i => weights[i] == 0 && double.IsFinite(predicted[i]) && double.IsFinite(errors[i]));
        return new FitResult(at, predicted, covariance, slopes, cost + LostNumber * weights.Count(weight => weight == 0), leftOut);
    }

    private static double[] Step(
        IFitProblem problem, double[] at, double[] predicted, double[] weights, Matrix<double> slopes, double damping)
    {
        Vector<double> residuals = Vector<double>.Build.Dense(
            predicted.Length, i => weights[i] == 0 ? 0 : (problem.Given[i] - predicted[i]) * weights[i]);
        Vector<double> downhill = slopes.TransposeThisAndMultiply(residuals) - Vector<double>.Build.Dense(at);
        Matrix<double> normal = Normal(slopes, damping);
        for (int i = 0; i < at.Length; i++)
        {
            // What stands at its limit and would pass it stays there, and does not pull the others along.
            bool isHeld = (at[i] <= problem.Lowest[i] && downhill[i] < 0) || (at[i] >= problem.Highest[i] && downhill[i] > 0);
            if (!isHeld) continue;
            normal.ClearRow(i);
            normal.ClearColumn(i);
            normal[i, i] = 1;
            downhill[i] = 0;
        }

        Vector<double> step = normal.Cholesky().Solve(downhill);
        double share = Math.Min(1, LongestStep / Math.Max(step.AbsoluteMaximum(), 1e-300));
        return [.. at.Select((value, i) => Math.Clamp(value + share * step[i], problem.Lowest[i], problem.Highest[i]))];
    }

    private static Matrix<double> Normal(Matrix<double> slopes, double damping)
    {
        Matrix<double> normal = slopes.TransposeThisAndMultiply(slopes);
        for (int i = 0; i < normal.RowCount; i++)
            normal[i, i] = (normal[i, i] + 1) * (1 + damping);
        return normal;
    }

    private static Matrix<double> Slopes(IFitProblem problem, double[] at, double[] predicted, double[] weights)
    {
        Matrix<double> slopes = Matrix<double>.Build.Dense(predicted.Length, at.Length);
        for (int unknown = 0; unknown < at.Length; unknown++)
        {
            if (!Enumerable.Range(0, predicted.Length).Any(i => weights[i] > 0 && problem.Touches(i, unknown))) continue;
            double step = at[unknown] + SlopeStep <= problem.Highest[unknown] ? SlopeStep : -SlopeStep;
            double[] beside = [.. at];
            beside[unknown] += step;
            double[] there = problem.Predict(beside, unknown);
            for (int i = 0; i < predicted.Length; i++)
            {
                double slope = (there[i] - predicted[i]) / step * weights[i];
                if (weights[i] > 0 && problem.Touches(i, unknown) && double.IsFinite(slope)) slopes[i, unknown] = slope;
            }
        }

        return slopes;
    }

    /// <summary>1/σ; zero for a number that the model does not have where the search begins.</summary>
    private static double[] Weights(IFitProblem problem, double[] predicted, double[] errors) =>
        [.. predicted.Select((value, i) => double.IsFinite(value) && double.IsFinite(problem.Given[i]) ? 1 / errors[i] : 0)];

    private static double Cost(IFitProblem problem, double[] at, double[] predicted, double[] weights)
    {
        double cost = at.Sum(value => value * value);
        for (int i = 0; i < predicted.Length; i++)
        {
            if (weights[i] == 0) continue;
            double residual = (problem.Given[i] - predicted[i]) * weights[i];
            // A number that is lost on the way makes the step a bad one.
            if (!double.IsFinite(residual)) return double.PositiveInfinity;
            cost += residual * residual;
        }

        return cost;
    }
}
