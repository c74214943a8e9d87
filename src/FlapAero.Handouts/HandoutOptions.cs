using FlapAero.Handouts.Printing;

namespace FlapAero.Handouts;

/// <summary>Where the notebooks are, where the pages go, what is wanted of which lessons, and for which class.</summary>
public sealed class HandoutOptions
{
    /// <summary>The most problem sheets of a lesson.</summary>
    public const int MostSheets = 99;

    /// <summary>Makes options; everything else has a standard value.</summary>
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

    /// <summary>The wanted editions; all where nothing else is said.</summary>
    public IReadOnlySet<Edition> Editions { get; init; } = new HashSet<Edition>(Enum.GetValues<Edition>());

    /// <summary>The seed that problems are drawn from, 0 or more; 1 where nothing else is said.</summary>
    public int Seed
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfNegative(value);
            field = value;
        }
    } = 1;

    /// <summary>How many different problem sheets of each lesson, 1 to <see cref="MostSheets"/>.</summary>
    public int Sheets
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value, MostSheets);
            field = value;
        }
    } = 1;

    /// <summary>The file of the aeroplane that the lessons are about; null for the lessons' own.</summary>
    public string? AeroplaneFile { get; init; }

    /// <summary>The file of the school whose pages they are; null for nobody's. Its units and paper are for the caller to take.</summary>
    public string? SchoolFile { get; init; }

    /// <summary>The units in which pages show their values.</summary>
    public DisplayUnits Units { get; init; } = DisplayUnits.Aviation;

    /// <summary>The paper that pages are printed on.</summary>
    public Paper Paper { get; init; } = Paper.A4;

    /// <summary>Whether each page gets a PDF beside it.</summary>
    public bool Pdf { get; init; }

    /// <summary>Whether the folder with pages in which cells run is made beside, see <see cref="InPage.EngineFolder"/>: students' pages lead there.</summary>
    public bool HasEngine { get; init; }

    /// <summary>Whether pages load themselves anew when they have been made anew, for an author who watches one.</summary>
    public bool IsWatched { get; init; }

    /// <summary>Whether everything is computed anew, whatever the cache holds; the files are the same.</summary>
    public bool Fresh { get; init; }

    /// <summary>The folder where runs are kept so that an unchanged lesson is not run again; null for none.</summary>
    public string? CacheFolder { get; init; }
}
