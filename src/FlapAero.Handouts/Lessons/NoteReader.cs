using System.Text;
using System.Text.Json;
using static System.FormattableString;

namespace FlapAero.Handouts.Lessons;

/// <summary>Reads what a cell's metadata says to the instructor: minutes, the kind of a note, and the cells that it names.</summary>
internal static class NoteReader
{
    private const int MostMinutes = 120;

    /// <summary>Every kind of note as metadata spells it.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Enum.GetValues<InstructorNote>().Select(Name)];

    /// <summary>How metadata spells a kind: <c>leave-out</c>.</summary>
    public static string Name(InstructorNote note)
    {
        var name = new StringBuilder();
        foreach (char letter in note.ToString())
            name.Append(char.IsUpper(letter) && name.Length > 0 ? "-" : "").Append(char.ToLowerInvariant(letter));
        return name.ToString();
    }

    /// <summary>The minutes of the section that the cell begins; 0 where it begins none.</summary>
    public static int Minutes(JsonElement? ours, Action<string> fault)
    {
        if (NotebookReader.Child(ours, "minutes") is null)
            return 0;
        if (Whole(ours) is { } minutes)
            return minutes;
        fault(Invariant($"has \"minutes\": {NotebookReader.Shown(ours, "minutes")} in its flapaero metadata; allowed is a whole number from 1 to {MostMinutes}."));
        return 0;
    }

    public static InstructorNote? Note(JsonElement? ours, Action<string> fault)
    {
        if (NotebookReader.Text(ours, "note") is not { } text)
            return null;
        foreach (InstructorNote note in Enum.GetValues<InstructorNote>())
            if (Name(note) == text)
                return note;
        fault($"has the note \"{text}\"; allowed are {string.Join(", ", Names)}.");
        return null;
    }

    /// <summary>The cells that a note names, in its order.</summary>
    public static IReadOnlyList<TimedCell> Cells(JsonElement? ours, Action<string> fault)
    {
        if (NotebookReader.Child(ours, "cells") is not { } given)
            return [];
        var cells = new List<TimedCell>();
        if (given.ValueKind == JsonValueKind.Array)
            foreach (JsonElement one in given.EnumerateArray())
                if (NotebookReader.Text(one, "cell") is { Length: > 0 } id && Whole(one) is { } minutes && NotebookReader.NamesOf(one).Count() == 2)
                    cells.Add(new TimedCell(id, minutes));
        if (given.ValueKind != JsonValueKind.Array || cells.Count < given.GetArrayLength())
            fault(Invariant($"has \"cells\": {given.GetRawText().ReplaceLineEndings(" ")} in its flapaero metadata; needed is a list of {{\"cell\": an id, \"minutes\": 1 to {MostMinutes}}}."));
        return cells;
    }

    private static int? Whole(JsonElement? parent) =>
        NotebookReader.Child(parent, "minutes") is { ValueKind: JsonValueKind.Number } number && number.TryGetInt32(out int value) && value is >= 1 and <= MostMinutes ? value : null;
}
