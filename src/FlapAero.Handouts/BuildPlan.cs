using FlapAero.Handouts.Cache;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Publishing;
using FlapAero.Handouts.Schools;

namespace FlapAero.Handouts;

/// <summary>Which of the wanted lessons have to be made, and which are in the output folder as they would be made.</summary>
internal sealed class BuildPlan
{
    private readonly Dictionary<LessonNotebook, string> _inputs = [];
    private readonly Dictionary<LessonNotebook, IReadOnlyList<string>> _unchanged = [];

    public BuildPlan(IReadOnlyList<LessonNotebook> wanted, LessonInput input, HandoutOptions options, OutputFolder output, SchoolMarks? school = null)
    {
        Choice = ChoiceOf(input, options);
        foreach (LessonNotebook notebook in wanted)
        {
            _inputs[notebook] = MadeLesson.InputsOf(notebook, input, options.Paper, school);
            if (!options.Fresh && Choice.Length > 0 && output.Unchanged(notebook.Stem, _inputs[notebook], Choice) is { } files)
                _unchanged[notebook] = files;
        }
        ToMake = [.. wanted.Where(n => !_unchanged.ContainsKey(n))];
    }

    /// <summary>The hash of what is wanted of each lesson; empty where it cannot be had.</summary>
    public string Choice { get; }

    public IReadOnlyList<LessonNotebook> ToMake { get; }

    /// <summary>The files of each lesson that is there already.</summary>
    public IReadOnlyDictionary<LessonNotebook, IReadOnlyList<string>> Unchanged => _unchanged;

    /// <summary>The hash of all that each lesson's files are made from.</summary>
    public IReadOnlyDictionary<LessonNotebook, string> Inputs => _inputs;

    private static string ChoiceOf(LessonInput input, HandoutOptions options)
    {
        try
        {
            // A hash, for the browser's folder has no business in a folder that is handed on.
            return new ContentKey("choice").With(string.Join(' ', options.Editions.Order())).With(input.Sheets)
                .With(options.Pdf ? InstalledBrowser.Identity() : "").With(options.HasEngine ? "engine" : "").With(options.IsWatched ? "watched" : "").ToString();
        }
        catch (BrowserMissingException)
        {
            return "";
        }
    }
}
