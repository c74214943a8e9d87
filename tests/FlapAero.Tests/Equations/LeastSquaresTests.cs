using FlapAero.Equations.Fitting;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace FlapAero.Tests.Equations;

/// <summary>The fit against the library's own minimiser, against a closed form, and with a number that lies.</summary>
public sealed class LeastSquaresTests
{
    [Fact]
    public void Solve_Exponential_IsTheLibrarysMinimum()
    {
        double[] x = [.. Enumerable.Range(0, 9).Select(i => 0.5 * i)];
        double[] y = [.. x.Select((at, i) => 2.4 * Math.Exp(-0.7 * at) + 0.01 * Math.Cos(5 * i))];
        var problem = new Problem(y, z => [.. x.Select(at => z[0] * Math.Exp(-z[1] * at))], 2);

        FitResult fit = LeastSquares.Solve(problem, [1, 1], [.. y.Select(_ => 1e-5)]);

        var model = ObjectiveFunction.NonlinearModel(
            (Vector<double> z, Vector<double> at) => at.Map(value => z[0] * Math.Exp(-z[1] * value)), Vector<double>.Build.Dense(x), Vector<double>.Build.Dense(y));
        NonlinearMinimizationResult theirs = new LevenbergMarquardtMinimizer().FindMinimum(model, Vector<double>.Build.Dense([1.0, 1.0]));
        Assert.Equal(theirs.MinimizingPoint[0], fit.Unknowns[0], 2e-3);
        Assert.Equal(theirs.MinimizingPoint[1], fit.Unknowns[1], 2e-3);
    }

    [Fact]
    public void Solve_StraightLine_HasTheClosedFormsErrors()
    {
        // y = z₀, four numbers with σ = 0.5 and the typical value 0 ± 1: variance 1/(4/0.25 + 1), mean 16/17 of the numbers'.
        var problem = new Problem([1, 2, 3, 2], z => [z[0], z[0], z[0], z[0]], 2);

        FitResult fit = LeastSquares.Solve(problem, [0, 0], [0.5, 0.5, 0.5, 0.5]);

        Assert.Equal(2 * 16 / 17.0, fit.Unknowns[0], 1e-5);
        Assert.Equal(Math.Sqrt(1 / 17.0), fit.Error(0), 1e-9);
        Assert.Equal(0, fit.Unknowns[1], 1e-12);
        Assert.Equal(1, fit.Error(1), 1e-12);
    }

    [Fact]
    public void Solve_LimitInTheWay_StopsThereAndFitsTheRest()
    {
        var problem = new Problem([5, 1], z => [z[0], z[1]], 2, highest: 3);

        FitResult fit = LeastSquares.Solve(problem, [0, 0], [0.01, 0.01]);

        Assert.Equal(3, fit.Unknowns[0], 1e-9);
        Assert.Equal(1, fit.Unknowns[1], 1e-3);
    }

    [Fact]
    public void Graded_OneNumberOfAKindLies_IsTakenOut()
    {
        double[] y = [4, 1.01, 0.99, 1.0, 1.02, 0.98, 1.01, 1, 0.99, 1.01, 1.02, 0.98, 2];
        var problem = new Problem(y, z => [.. Enumerable.Repeat(z[0], 12), z[1]], 2);

        (FitResult fit, double[] used) = GradedFit.Solve(
            problem, [new double[2]], [.. y.Select(_ => 0.02)], [.. Enumerable.Repeat(0, 12), 1], new Dictionary<int, double>());

        Assert.True(double.IsInfinity(used[0]));
        Assert.Equal(1, fit.Unknowns[0], 0.01);
        Assert.All(used.Skip(1), error => Assert.Equal(0.02, error));
    }

    [Fact]
    public void Graded_KindThatDoesNotFit_CountsLessAndLeavesTheOthersAlone()
    {
        // One unknown: three numbers say 1, five of another kind scatter about 3.
        double[] y = [1, 1, 1, 2, 3.2, 2.6, 3.5, 4];
        var problem = new Problem(y, z => [.. y.Select(_ => z[0])], 1);

        (FitResult fit, double[] used) = GradedFit.Solve(
            problem, [new double[1]], [.. y.Select(_ => 0.02)], [0, 0, 0, 1, 1, 1, 1, 1], new Dictionary<int, double> { [1] = 60 });

        Assert.InRange(fit.Unknowns[0], 0.97, 1.05);
        Assert.All(used.Skip(3), error => Assert.True(error > 0.5));
    }

    private sealed class Problem(double[] given, Func<double[], double[]> law, int unknowns, double highest = 10) : IFitProblem
    {
        public IReadOnlyList<double> Given => given;

        public IReadOnlyList<double> Lowest { get; } = [.. Enumerable.Repeat(-10.0, unknowns)];

        public IReadOnlyList<double> Highest { get; } = [.. Enumerable.Repeat(highest, unknowns)];

        public bool Touches(int number, int unknown) => true;

        public double[] Predict(double[] at, int? unknown) => law(at);
    }
}
