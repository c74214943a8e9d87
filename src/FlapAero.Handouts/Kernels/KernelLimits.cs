using System.Globalization;

namespace FlapAero.Handouts.Kernels;

/// <summary>How long a cell may run and how much it may put out.</summary>
public sealed class KernelLimits
{
    /// <summary>Makes limits.</summary>
    /// <param name="cellTime">The longest a cell may run; more than zero.</param>
    /// <param name="cellOutput">The most characters a cell may put out; more than zero.</param>
    public KernelLimits(TimeSpan cellTime, int cellOutput)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(cellTime, TimeSpan.Zero);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(cellOutput);
        CellTime = cellTime;
        CellOutput = cellOutput;
    }

    /// <summary>Far more characters than any cell of a lesson needs to put out.</summary>
    public const int StandardCellOutput = 4_000_000;

    /// <summary>One minute, and <see cref="StandardCellOutput"/> characters.</summary>
    public static KernelLimits Standard { get; } = new(TimeSpan.FromSeconds(60), StandardCellOutput);

    /// <summary>The longest a cell may run.</summary>
    public TimeSpan CellTime { get; }

    /// <summary>The most characters a cell may put out.</summary>
    public int CellOutput { get; }

    internal string TooLong => string.Create(CultureInfo.InvariantCulture,
        $"It did not end within {CellTime.TotalSeconds:0.###} s and was stopped; a loop in it may never end. A slow cell gets more time with --time-limit.");

    internal static string TooMuch(int cellOutput) => string.Create(CultureInfo.InvariantCulture,
        $"It put out more than {cellOutput} characters and was stopped; a page takes a figure, a table or a sentence.");
}
