namespace FlapAero.Handouts.Exporting;

/// <summary>Which lessons become programs, where, and from where they take the library.</summary>
public sealed class ExportOptions
{
    /// <summary>Makes options.</summary>
    /// <param name="notebooksFolder">The folder of notebooks.</param>
    /// <param name="outputFolder">The folder of programs; made where it is missing.</param>
    /// <param name="lessons">Lessons by slug, number or file name; none means all.</param>
    /// <param name="project">The project file of the lessons' library; null takes its package.</param>
    public ExportOptions(string notebooksFolder, string outputFolder, IReadOnlyList<string> lessons, string? project)
    {
        ArgumentException.ThrowIfNullOrEmpty(notebooksFolder);
        ArgumentException.ThrowIfNullOrEmpty(outputFolder);
        ArgumentNullException.ThrowIfNull(lessons);
        NotebooksFolder = notebooksFolder;
        OutputFolder = outputFolder;
        Lessons = lessons;
        Project = project;
    }

    /// <summary>The folder of notebooks.</summary>
    public string NotebooksFolder { get; }

    /// <summary>The folder of programs.</summary>
    public string OutputFolder { get; }

    /// <summary>The wanted lessons; none means all.</summary>
    public IReadOnlyList<string> Lessons { get; }

    /// <summary>The project file that the programs reference, or null where they take the package.</summary>
    public string? Project { get; }
}
