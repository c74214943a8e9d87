using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Lessons;

/// <summary>
/// Reads nbformat 4.5 with our metadata, strictly, and collects every fault instead of stopping at the first:
/// an author mends a notebook in one go.
/// </summary>
internal sealed partial class NotebookReader
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    private readonly string _fileName;
    private readonly List<string> _faults;

    private NotebookReader(string fileName, List<string> faults)
    {
        _fileName = fileName;
        _faults = faults;
    }

    /// <summary>The notebook, or null where faults were added.</summary>
    public static LessonNotebook? Read(string fileName, string json, List<string> faults)
    {
        int before = faults.Count;
        LessonNotebook? notebook = ReadWithFaults(fileName, json, faults);
        return faults.Count > before ? null : notebook;
    }

    /// <summary>The notebook as far as it can be read, whatever faults were added: other rules can be told at once. Null where it is no notebook.</summary>
    public static LessonNotebook? ReadWithFaults(string fileName, string json, List<string> faults) => new NotebookReader(fileName, faults).Read(json);

    private LessonNotebook? Read(string json)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(json, Strict);
            return Read(document.RootElement);
        }
        catch (JsonException e)
        {
            Fault(null, string.Create(CultureInfo.InvariantCulture, $"is not valid JSON at line {e.LineNumber + 1}; a notebook is nbformat 4.5 JSON without doubled names."));
            return null;
        }
    }

    private LessonNotebook? Read(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            Fault(null, "is not a JSON object; a notebook is nbformat 4.5.");
            return null;
        }
        if (IntegerIn(root, "nbformat") is not 4 || IntegerIn(root, "nbformat_minor") is not 5)
            Fault(null, $"has nbformat {Shown(root, "nbformat")}.{Shown(root, "nbformat_minor")}; allowed is 4.5.");
        LessonFacts facts = ReadFacts(Child(root, "metadata"));
        var cells = new List<LessonCell>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        if (Child(root, "cells") is { ValueKind: JsonValueKind.Array } array && array.GetArrayLength() > 0)
        {
            var reader = new CellReader(Fault);
            int number = 0;
            foreach (JsonElement cell in array.EnumerateArray())
                if (reader.Read(cell, ++number, ids) is { } read)
                    cells.Add(read);
        }
        else
        {
            Fault(null, "has no cells; a lesson starts with an opening and a setup.");
        }
        FindTimeFaults(facts, cells);
        FindOrderFaults(cells);
        FindHeadingFaults(cells, facts.Title);
        return new LessonNotebook(_fileName, facts, cells);
    }

    private LessonFacts ReadFacts(JsonElement? metadata)
    {
        if (Text(Child(metadata, "kernelspec"), "name") is not LessonNotebook.KernelName)
            Fault(null, $"names the kernel {Shown(Child(metadata, "kernelspec"), "name")}; allowed is \"{LessonNotebook.KernelName}\".");
        if (Text(Child(metadata, "language_info"), "name") is not "C#")
            Fault(null, $"names the language {Shown(Child(metadata, "language_info"), "name")}; allowed is \"C#\".");
        JsonElement? ours = Child(metadata, "flapaero");
        if (ours is not { ValueKind: JsonValueKind.Object })
            Fault(null, "has no \"flapaero\" object in its metadata; needed are lesson, title, summary and minutes.");
        FindUnknownNames(ours, ["lesson", "title", "summary", "minutes"]);
        int number = Number(ours, "lesson", 0, 99);
        Match name = FileName().Match(_fileName);
        if (!name.Success)
            Fault(null, "has a name that pages cannot take; allowed is NN-slug.ipynb with two digits, then small letters, digits and single hyphens.");
        else if (int.Parse(name.Groups["number"].ValueSpan, CultureInfo.InvariantCulture) != number)
            Fault(null, string.Create(CultureInfo.InvariantCulture, $"says it is lesson {number} in its metadata; its file name says {name.Groups["number"].Value}."));
        return new LessonFacts(number, Words(ours, "title"), Words(ours, "summary"), Child(ours, "minutes") is null ? null : Number(ours, "minutes", 1, 600));
    }

    /// <summary>A lesson's minutes are those of its sections; a copy, which has none, says them for the whole.</summary>
    private void FindTimeFaults(LessonFacts facts, List<LessonCell> cells)
    {
        bool isTimed = cells.Any(cell => cell.Minutes > 0);
        if (facts.Minutes is null && !isTimed)
            Fault(null, "has no \"minutes\"; needed are those of each section, in the metadata of the cell that begins it.");
        else if (facts.Minutes is not null && isTimed)
            Fault(null, "has \"minutes\" of its own beside those of its cells; the lesson's are the sum of the cells': take out its own.");
    }

    private void FindOrderFaults(List<LessonCell> cells)
    {
        List<LessonCell> openings = [.. cells.Where(c => c.Role == CellRole.Opening)];
        if (openings.Count == 0)
            Fault(null, "has no opening cell; a lesson has exactly one, and it is the first cell.");
        foreach (LessonCell second in openings.Skip(1))
            Fault(second, "is a second opening; a lesson has exactly one, and it is the first cell.");
        if (openings.Count > 0 && cells[0].Role != CellRole.Opening)
            Fault(openings[0], "is not the first cell; an opening is.");
        LessonCell? code = cells.FirstOrDefault(c => c.IsCode);
        if (code is null || code.Role != CellRole.Setup)
            Fault(code, "is the first code cell and no setup; the first code cell of a lesson is its setup.");
        // A student's copy names the package instead.
        else if (code.Source.TrimEnd().Replace(Lesson.PackageReference, Lesson.ProjectReference, StringComparison.Ordinal) != Lesson.SetupCell)
            Fault(code, $"does not begin as every lesson does; a setup is exactly these lines:\n{Lesson.SetupCell}");
        foreach (LessonCell second in cells.Where(c => c.Role == CellRole.Setup).Skip(1))
            Fault(second, "is a second setup; a lesson has exactly one.");
    }

    private void FindHeadingFaults(List<LessonCell> cells, string title)
    {
        foreach (LessonCell cell in cells.Where(c => !c.IsCode))
        {
            List<string> top = [.. LessonMarkdown.Headings(cell.Source).Where(h => h.Level == 1).Select(h => h.Text)];
            if (cell.Role != CellRole.Opening && top.Count > 0)
                Fault(cell, $"has a top heading \"# {top[0]}\"; only the opening has one: headings in other cells start at ##.");
            else if (cell.Role == CellRole.Opening && (top.Count != 1 || top[0] != title))
                Fault(cell, $"has the top headings [{string.Join(", ", top)}]; allowed is exactly one, the lesson's title \"{title}\".");
        }
    }

    private int Number(JsonElement? parent, string name, int low, int high)
    {
        if (IntegerIn(parent, name) is { } value && value >= low && value <= high)
            return value;
        Fault(null, string.Create(CultureInfo.InvariantCulture, $"has \"{name}\": {Shown(parent, name)} in its flapaero metadata; allowed is a whole number from {low} to {high}."));
        return low;
    }

    private string Words(JsonElement? parent, string name)
    {
        if (Text(parent, name) is { } text && !string.IsNullOrWhiteSpace(text) && !text.Contains('\n', StringComparison.Ordinal))
            return text;
        Fault(null, $"has \"{name}\": {Shown(parent, name)} in its flapaero metadata; needed is one line of words.");
        return "";
    }

    private void FindUnknownNames(JsonElement? ours, string[] allowed)
    {
        foreach (string name in NamesOf(ours).Except(allowed, StringComparer.Ordinal))
            Fault(null, $"has \"{name}\" in its flapaero metadata; allowed are {string.Join(", ", allowed)}.");
    }

    /// <summary>Adds a fault of the notebook (null) or of a cell, which is a cell or the name of one that could not be read.</summary>
    private void Fault(object? cell, string words) =>
        _faults.Add(cell is null ? $"{_fileName} {words}" : $"{_fileName}, {cell} {words}");

    internal static JsonElement? Child(JsonElement? parent, string name) =>
        parent is { ValueKind: JsonValueKind.Object } o && o.TryGetProperty(name, out JsonElement child) ? child : null;

    internal static string? Text(JsonElement? parent, string name) =>
        Child(parent, name) is { ValueKind: JsonValueKind.String } text ? text.GetString() : null;

    internal static string Shown(JsonElement? parent, string name) => Child(parent, name)?.GetRawText() ?? "(nothing)";

    internal static IEnumerable<string> NamesOf(JsonElement? parent) =>
        parent is { ValueKind: JsonValueKind.Object } o ? o.EnumerateObject().Select(p => p.Name) : [];

    private static int? IntegerIn(JsonElement? parent, string name) =>
        Child(parent, name) is { ValueKind: JsonValueKind.Number } number && number.TryGetInt32(out int value) ? value : null;

    [GeneratedRegex("^(?<number>[0-9]{2})-[a-z0-9]+(-[a-z0-9]+)*\\.ipynb$", RegexOptions.CultureInvariant)]
    private static partial Regex FileName();
}
