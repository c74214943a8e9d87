namespace FlapAero.Handouts;

/// <summary>Where the notebooks are, where the pages go, and which lessons are wanted.</summary>
public sealed class HandoutOptions
{
    /// <summary>Makes options.</summary>
    /// <param name="notebooksFolder">The folder of notebooks.</param>
    /// <param name="outputFolder">The folder of pages; made where it is missing.</param>
    /// <param name="lessons">Lessons by slug, number or file name; none means all.</param>
    public HandoutOptions(string notebooksFolder, string outputFolder, IReadOnlyList<string> lessons)
    {
        ArgumentException.ThrowIfNullOrEmpty(notebooksFolder);
        ArgumentException.ThrowIfNullOrEmpty(outputFolder);
        ArgumentNullException.ThrowIfNull(lessons);
        NotebooksFolder = notebooksFolder;
        OutputFolder = outputFolder;
        Lessons = lessons;
    }

    /// <summary>The folder of notebooks.</summary>
    public string NotebooksFolder { get; }

    /// <summary>The folder of pages.</summary>
    public string OutputFolder { get; }

    /// <summary>The wanted lessons; none means all.</summary>
    public IReadOnlyList<string> Lessons { get; }
}
