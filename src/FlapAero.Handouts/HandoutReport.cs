namespace FlapAero.Handouts;

/// <summary>What a build did.</summary>
public sealed class HandoutReport
{
    internal HandoutReport(IReadOnlyList<string> files, IReadOnlyList<string> removed, string? notPrinted)
    {
        Files = files;
        Removed = removed;
        NotPrinted = notPrinted;
    }

    /// <summary>The names of the files made, in their order.</summary>
    public IReadOnlyList<string> Files { get; }

    /// <summary>Files of earlier builds that would have disagreed with these, and are gone.</summary>
    public IReadOnlyList<string> Removed { get; }

    /// <summary>Why there are no PDFs although they were asked for, with what to do; else null.</summary>
    public string? NotPrinted { get; }
}
