using FlapAero.Equations.Fitting;

namespace FlapAero.Manuals;

/// <summary>A manual as a problem of least squares.</summary>
internal sealed class ManualProblem : IFitProblem
{
    private readonly Unknowns _unknowns;
    private readonly IReadOnlyList<ManualNumber> _numbers;

    public ManualProblem(Unknowns unknowns, IReadOnlyList<ManualNumber> numbers)
    {
        (_unknowns, _numbers) = (unknowns, numbers);
        Given = [.. numbers.Select(number => number.Given)];
        Lowest = [.. unknowns.All.Select(unknown => unknown.Lowest)];
        Highest = [.. unknowns.All.Select(unknown => unknown.Highest)];
    }

    public IReadOnlyList<double> Given { get; }

    public IReadOnlyList<double> Lowest { get; }

    public IReadOnlyList<double> Highest { get; }

    public bool Touches(int number, int unknown)
    {
        Unknown looked = _unknowns.All[unknown];
        ManualNumber given = _numbers[number];
        return (looked.Parts & given.Parts) != 0 && (looked.Flaps is not { } flaps || flaps == given.Flaps || given.Kind == NumberKind.FlapsUp);
    }

    public double[] Predict(double[] unknowns, int? unknown)
    {
        double[] numbers = new double[_numbers.Count];
        if (TrialAt(unknowns) is not { } trial)
        {
            Array.Fill(numbers, double.NaN);
            return numbers;
        }

        for (int i = 0; i < numbers.Length; i++)
            numbers[i] = unknown is { } one && !Touches(i, one) ? double.NaN : Of(_numbers[i], trial, shift: 0);
        return numbers;
    }

    /// <summary>Standard error of each number: its own rounding, and that of the speed it is read at.</summary>
    public double[] Errors(double[] unknowns)
    {
        if (TrialAt(unknowns) is not { } trial) return [.. _numbers.Select(_ => double.PositiveInfinity)];
        return [.. _numbers.Select(number =>
        {
            if (!number.IsFitted) return double.PositiveInfinity;
            double moved = Of(number, trial, shift: 1) - Of(number, trial, shift: -1);
            double read = number.Kind is NumberKind.Level or NumberKind.Climb or NumberKind.GlideRatio && double.IsFinite(moved) ? moved / 2 : 0;
            return Math.Sqrt(number.Error * number.Error + read * read);
        })];
    }

    public Trial? TrialAt(double[] unknowns)
    {
        try
        {
            return _unknowns.At(unknowns);
        }
        catch (RefusedInputException)
        {
            // No aeroplane has these values: the step that led here was too long.
            return null;
        }
    }

    private static double Of(ManualNumber number, Trial trial, double shift)
    {
        try
        {
            return number.Predict(trial, shift);
        }
        catch (RefusedInputException)
        {
            return double.NaN;
        }
    }
}
