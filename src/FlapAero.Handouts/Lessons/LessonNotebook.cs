using System.Globalization;
using System.Text;
using FlapAero.Files;

namespace FlapAero.Handouts.Lessons;

/// <summary>A lesson's notebook, read and found to keep the rules; there is no other kind of instance.</summary>
public sealed class LessonNotebook
{
    /// <summary>The kernel that notebooks name: the entry that setting up Jupyter makes.</summary>
    public const string KernelName = "flapaero-csharp";

    /// <summary>What people see of its name.</summary>
    public const string KernelDisplayName = "FlapAero (C#)";

    internal LessonNotebook(string fileName, LessonFacts facts, IReadOnlyList<LessonCell> cells)
    {
        FileName = fileName;
        Stem = Path.GetFileNameWithoutExtension(fileName);
        Number = facts.Number;
        Title = facts.Title;
        Summary = facts.Summary;
        Minutes = facts.Minutes ?? cells.Sum(cell => cell.Minutes);
        Cells = cells;
    }

    /// <summary>The notebook's file name, such as <c>04-approach-speed.ipynb</c>.</summary>
    public string FileName { get; }

    /// <summary>The file name without its ending; pages take their names from it.</summary>
    public string Stem { get; }

    /// <summary>The stem without its number, such as <c>approach-speed</c>.</summary>
    public string Slug => Stem[(Stem.IndexOf('-', StringComparison.Ordinal) + 1)..];

    /// <summary>The lesson's number, 0 to 99; lesson 0 says how to use the others.</summary>
    public int Number { get; }

    /// <summary>The lesson's title.</summary>
    public string Title { get; }

    /// <summary>One line about the lesson, for the index.</summary>
    public string Summary { get; }

    /// <summary>How long the lesson takes, in minutes: the sum of its sections, or what a copy without them says.</summary>
    public int Minutes { get; }

    /// <summary>The cells in their order.</summary>
    public IReadOnlyList<LessonCell> Cells { get; }

    /// <summary>Reads one notebook from its text.</summary>
    /// <param name="fileName">The notebook's file name, <c>NN-slug.ipynb</c>.</param>
    /// <param name="json">The notebook's text.</param>
    /// <exception cref="HandoutException">The notebook breaks rules; the message lists all of them.</exception>
    public static LessonNotebook Parse(string fileName, string json)
    {
        var faults = new List<string>();
        LessonNotebook? notebook = NotebookReader.Read(fileName, json, faults);
        return notebook is null || faults.Count > 0 ? throw Refusal(faults) : notebook;
    }

    /// <summary>Reads every notebook of a folder, in the order of their file names.</summary>
    /// <param name="folder">The folder that holds the <c>.ipynb</c> files.</param>
    /// <exception cref="HandoutException">There is no folder, no notebook in it, or any notebook breaks rules; the message lists all faults of all notebooks.</exception>
    public static IReadOnlyList<LessonNotebook> ReadFolder(string folder)
    {
        if (!Directory.Exists(folder))
            throw new HandoutException($"The folder of notebooks {folder} does not exist; name one with --notebooks.");
        string[] files = Directory.GetFiles(folder, "*.ipynb");
        if (files.Length == 0)
            throw new HandoutException($"The folder {folder} holds no notebook (NN-slug.ipynb); name another with --notebooks.");
        Array.Sort(files, StringComparer.Ordinal);
        var faults = new List<string>();
        var notebooks = new List<LessonNotebook>();
        foreach (string file in files)
            if (NotebookReader.Read(Path.GetFileName(file), ReadText(file), faults) is { } notebook)
                notebooks.Add(notebook);
        FindFaultsBetween(notebooks, faults);
        return faults.Count > 0 ? throw Refusal(faults) : notebooks;
    }

    /// <summary>The text of a notebook's file.</summary>
    /// <exception cref="HandoutException">It cannot be read.</exception>
    internal static string ReadText(string file)
    {
        try
        {
            return Encoding.UTF8.GetString(OrdinaryFile.Read(file, OrdinaryFile.NotebookLimit)).TrimStart('\uFEFF');
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new HandoutException($"The notebook {Path.GetFileName(file)} cannot be read: {e.Message}", e);
        }
    }

    private static void FindFaultsBetween(List<LessonNotebook> notebooks, List<string> faults)
    {
        foreach (IGrouping<int, LessonNotebook> same in notebooks.GroupBy(n => n.Number).Where(g => g.Count() > 1))
            faults.Add(string.Create(CultureInfo.InvariantCulture,
                $"{string.Join(" and ", same.Select(n => n.FileName))}: both are lesson {same.Key}; each lesson needs a number of its own."));
    }

    private static HandoutException Refusal(List<string> faults) => new(
        (faults.Count == 1 ? "A notebook breaks a rule:\n" : string.Create(CultureInfo.InvariantCulture, $"The notebooks break {faults.Count} rules:\n"))
        + string.Join('\n', Listing.Capped(faults).Select(f => "  " + f)));
}
