using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace FlapAero.Handouts.Lessons;

/// <summary>Reads one cell and reports each of its faults under the cell's id and title.</summary>
internal sealed partial class CellReader(Action<string?, string> fault)
{
    public LessonCell? Read(JsonElement cell, int number, HashSet<string> ids)
    {
        JsonElement? ours = NotebookReader.Child(NotebookReader.Child(cell, "metadata"), "flapaero");
        string id = NotebookReader.Text(cell, "id") ?? "";
        string title = NotebookReader.Text(ours, "title") ?? "";
        string name = title.Length > 0 ? $"cell \"{title}\" ({id})" : string.Create(CultureInfo.InvariantCulture, $"cell {number} ({(id.Length > 0 ? id : "no id")})");
        void Fault(string words) => fault(name, words);

        if (!CellId().IsMatch(id))
            Fault($"has the id \"{id}\"; needed are 1 to 64 letters, digits, hyphens or underscores.");
        else if (!ids.Add(id))
            Fault($"has the id \"{id}\" of an earlier cell; each cell needs an id of its own.");
        if (string.IsNullOrWhiteSpace(title) || title.Contains('\n', StringComparison.Ordinal))
            Fault("has no title in its flapaero metadata; needed is one line of words.");
        bool isCode = ReadKind(cell, Fault);
        string? roleName = NotebookReader.Text(ours, "role");
        CellRole? role = roleName is null ? null : CellRules.Find(roleName);
        if (roleName is null)
            Fault($"has no role in its flapaero metadata; allowed are {string.Join(", ", CellRules.Names)}.");
        else if (role is null)
            Fault($"has the role \"{roleName}\"; allowed are {string.Join(", ", CellRules.Names)}.");
        string source = Source(NotebookReader.Child(cell, "source"), "source", Fault);
        if (role is not { } known)
            return null;
        if (!CellRules.Allows(known, isCode))
            Fault($"is {(isCode ? "code" : "markdown")}; the role {roleName} allows {CellRules.KindOf(known)}.");
        if (string.IsNullOrWhiteSpace(source))
            Fault("is empty; a cell of a lesson says or computes something.");
        FindExtraFaults(ours, known, Fault);
        return new LessonCell(id, known, title, isCode, source)
        {
            Label = NotebookReader.Text(ours, "label") ?? "",
            Unit = NotebookReader.Text(ours, "unit") ?? "",
            Values = NotebookReader.Text(ours, "values") is { Length: > 0 } values && CellRules.Choices(known).Contains("values") ? ChangedNumber.All(source, values, Fault) : [],
            Minutes = NoteReader.Minutes(ours, Fault),
            Note = NoteReader.Note(ours, Fault),
            Names = NoteReader.Cells(ours, Fault),
            StudentSource = NotebookReader.Child(ours, "student") is { } student ? Source(student, "student", Fault) : "",
        };
    }

    private static bool ReadKind(JsonElement cell, Action<string> fault)
    {
        string? kind = NotebookReader.Text(cell, "cell_type");
        if (kind is not ("code" or "markdown"))
            fault($"has the cell_type {NotebookReader.Shown(cell, "cell_type")}; allowed are code and markdown.");
        if (kind != "code")
            return false;
        if (NotebookReader.Child(cell, "outputs") is not { ValueKind: JsonValueKind.Array } outputs)
            fault("has no outputs list; a code cell has an empty one.");
        else if (outputs.GetArrayLength() > 0)
            fault("has stored outputs; clear them: pages are made by running the lesson.");
        if (NotebookReader.Child(cell, "execution_count") is not { ValueKind: JsonValueKind.Null })
            fault($"has the execution_count {NotebookReader.Shown(cell, "execution_count")}; allowed is null.");
        return true;
    }

    private static void FindExtraFaults(JsonElement? ours, CellRole role, Action<string> fault)
    {
        IReadOnlyList<string> needed = CellRules.Extras(role), choices = CellRules.Choices(role);
        string[] given = [.. NotebookReader.NamesOf(ours)];
        IReadOnlyList<string> extras = choices.Any(given.Contains) ? [.. needed, .. choices] : needed;
        string[] allowed = ["role", "title", .. needed, .. choices, .. CellRules.ForInstructor(role)];
        foreach (string name in given.Except(allowed, StringComparer.Ordinal))
            fault($"has \"{name}\" in its flapaero metadata; the role {CellRules.Name(role)} allows {string.Join(", ", allowed)}.");
        foreach (string name in extras)
            if (NotebookReader.Child(ours, name) is null)
                fault($"has no \"{name}\" in its flapaero metadata; the role {CellRules.Name(role)} needs {string.Join(", ", extras)}.");
        // A ratio has no unit, so that one may be empty.
        foreach (string name in extras.Where(n => n != "unit"))
            if (NotebookReader.Child(ours, name) is { ValueKind: JsonValueKind.String } text && string.IsNullOrWhiteSpace(text.GetString()))
                fault($"has an empty \"{name}\" in its flapaero metadata; needed are words.");
        foreach (string name in extras.Where(n => n != "student"))
            if (NotebookReader.Child(ours, name) is { ValueKind: not JsonValueKind.String })
                fault($"has \"{name}\": {NotebookReader.Shown(ours, name)} in its flapaero metadata; needed is text.");
    }

    /// <summary>nbformat stores a text whole or as a list of its lines.</summary>
    private static string Source(JsonElement? source, string name, Action<string> fault)
    {
        if (source is { ValueKind: JsonValueKind.String } whole)
            return Lf(whole.GetString()!);
        if (source is { ValueKind: JsonValueKind.Array } lines && lines.EnumerateArray().All(l => l.ValueKind == JsonValueKind.String))
            return Lf(string.Concat(lines.EnumerateArray().Select(l => l.GetString())));
        fault($"has no {name} that is text or a list of lines.");
        return "";
    }

    private static string Lf(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal);

    [GeneratedRegex("^[A-Za-z0-9_-]{1,64}$", RegexOptions.CultureInvariant)]
    private static partial Regex CellId();
}
