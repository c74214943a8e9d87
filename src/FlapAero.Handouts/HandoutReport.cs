namespace FlapAero.Handouts;

/// <summary>What a build did.</summary>
public sealed class HandoutReport
{
    internal HandoutReport(IReadOnlyList<string> files, IReadOnlyList<string> removed, int cellsRun, string? notPrinted)
    {
        Files = files;
        Removed = removed;
        CellsRun = cellsRun;
        NotPrinted = notPrinted;
    }

    /// <summary>The names of the files made, in their order.</summary>
    public IReadOnlyList<string> Files { get; }

    /// <summary>Files of earlier builds that would have disagreed with these, and are gone.</summary>
    public IReadOnlyList<string> Removed { get; }

    /// <summary>How many cells ran for them; 0 where all was there from an earlier build.</summary>
    public int CellsRun { get; }

    /// <summary>Why there are no PDFs although they were asked for, with what to do; else null.</summary>
    public string? NotPrinted { get; }
}
