using MathNet.Numerics.Statistics;

namespace FlapAero.Equations.Fitting;

/// <summary>
/// Least squares whose numbers belong to kinds. A kind that the law cannot follow within its numbers' own errors gets larger errors, so
/// that it does not bend what the other kinds determine; a single number far outside its kind is taken out.
/// </summary>
internal static class GradedFit
{
    private const int MostRounds = 4;
    private const double FollowsWithin = 2.5;
    private const int Few = 4;
    private const double Tighter = 0.1;
    private const double FarOutside = 4;

    /// <param name="problem">What is fitted.</param>
    /// <param name="starts">Where searches begin; the best of them goes on.</param>
    /// <param name="errors">σ of every number by itself; infinite for one that is only compared.</param>
    /// <param name="kinds">The kind of every number.</param>
    /// <param name="looseness">By how much each kind's errors are enlarged at first.</param>
    public static (FitResult Fit, double[] Errors) Solve(
        IFitProblem problem, IReadOnlyList<double[]> starts, double[] errors, int[] kinds, IReadOnlyDictionary<int, double> looseness)
    {
        double[] Loosened(double share) =>
            Enlarged(errors, [.. kinds.Select(kind => 1 + share * (looseness.GetValueOrDefault(kind, 1) - 1))]);

        // From loose to tight: the tightest numbers make a narrow valley, and the search must not climb over its sides.
        double[] unknowns = starts.Select(start => LeastSquares.Solve(problem, start, Loosened(1))).MinBy(found => found.Cost)!.Unknowns;
        unknowns = LeastSquares.Solve(problem, unknowns, Loosened(Tighter)).Unknowns;
        double[] scales = [.. kinds.Select(_ => 1.0)];
        double[] used = errors;
        FitResult fit = LeastSquares.Solve(problem, unknowns, used);
        for (int round = 0; round < MostRounds; round++)
        {
            double[] next = Scales(problem, fit, errors, used, kinds);
            if (fit.LeftOut == 0 && next.Zip(scales).All(pair => Same(pair.First, pair.Second))) break;
            scales = next;
            used = Enlarged(errors, scales);
            fit = LeastSquares.Solve(problem, fit.Unknowns, used);
        }

        return (fit, used);
    }

    private static double[] Enlarged(double[] errors, double[] scales) => [.. errors.Zip(scales, (error, scale) => error * scale)];

    private static bool Same(double first, double second) =>
        double.IsInfinity(first) ? double.IsInfinity(second) : Math.Abs(first - second) <= 0.1 * second;

    private static double[] Scales(IFitProblem problem, FitResult fit, double[] errors, double[] used, int[] kinds)
    {
        double[] scales = new double[kinds.Length];
        foreach (IGrouping<int, int> kind in Enumerable.Range(0, kinds.Length).GroupBy(i => kinds[i]))
        {
            int[] fitted = [.. kind.Where(i => double.IsFinite(errors[i]) && double.IsFinite(fit.Predicted[i]))];
            double Freedom(int i) => Math.Max(double.IsFinite(used[i]) ? fit.Freedom(i) : 1, 0.1);
            double Residual(int i) => Math.Abs(problem.Given[i] - fit.Predicted[i]) / errors[i];

            // By how many of its own errors each number misses; what the fit takes up of them is given back.
            double[] missed = [.. fitted.Select(i => Residual(i) / Math.Sqrt(Freedom(i)))];
            double middle = missed.Length == 0 ? 0
                : missed.Length <= Few ? Math.Sqrt(fitted.Sum(i => Residual(i) * Residual(i)) / fitted.Sum(Freedom))
                : 1.4826 * missed.Median();
            double scale = middle <= FollowsWithin ? 1 : middle;
            foreach (int i in kind) scales[i] = scale;
            for (int i = 0; i < fitted.Length; i++)
                if (missed.Length > Few && missed[i] > FarOutside * scale) scales[fitted[i]] = double.PositiveInfinity;
        }

        return scales;
    }
}
