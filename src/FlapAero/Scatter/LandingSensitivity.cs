namespace FlapAero;

/// <summary>Which inputs the variance of touchdown and stop comes from. Immutable.</summary>
public sealed class LandingSensitivity
{
    internal LandingSensitivity(
        int rows, int rowsLeftOut, IReadOnlyList<SensitivityIndex> touchdownDistance, IReadOnlyList<SensitivityIndex> stopDistance)
    {
        Rows = rows;
        RowsLeftOut = rowsLeftOut;
        TouchdownDistance = touchdownDistance;
        StopDistance = stopDistance;
    }

    /// <summary>Rows of each sample.</summary>
    public int Rows { get; }

    /// <summary>Rows without a result, because one of their landings cannot happen.</summary>
    public int RowsLeftOut { get; }

    /// <summary>Shares of the touchdown distance's variance, the largest total first; empty where it does not vary.</summary>
    public IReadOnlyList<SensitivityIndex> TouchdownDistance { get; }

    /// <summary>Shares of the stopping distance's variance, the largest total first; empty where it does not vary.</summary>
    public IReadOnlyList<SensitivityIndex> StopDistance { get; }
}
