namespace FlapAero.Handouts.Kernels;

/// <summary>What one run of a cell gave.</summary>
public sealed class CellResult
{
    /// <summary>Makes a result.</summary>
    /// <param name="outputs">The outputs in their order.</param>
    /// <param name="failure">Why the cell failed, in words without a stack; null where it did not.</param>
    public CellResult(IReadOnlyList<CellOutput> outputs, string? failure)
    {
        ArgumentNullException.ThrowIfNull(outputs);
        Outputs = outputs;
        Failure = failure;
    }

    /// <summary>The outputs in their order.</summary>
    public IReadOnlyList<CellOutput> Outputs { get; }

    /// <summary>Why the cell failed, or null.</summary>
    public string? Failure { get; }
}
