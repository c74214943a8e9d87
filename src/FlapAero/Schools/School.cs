using FlapAero.AeroplaneFiles;
using FlapAero.Schools;

namespace FlapAero;

/// <summary>
/// A school in one file: its name and marks, its aerodromes and weather, its rules, and what of the lessons it hands out.
/// <c>data/schools/school.schema.json</c> describes the file; only the name must be there. Immutable, thread-safe.
/// </summary>
public sealed class School
{
    /// <summary>What the file is called where nobody names it.</summary>
    public const string FileName = "school.json";

    internal School(string name) => Name = name;

    /// <summary>The school's name.</summary>
    public string Name { get; }

    /// <summary>A line for the foot of each page; empty where there is none.</summary>
    public string FootLine { get; internal init; } = "";

    /// <summary>What the school adds to the caution; empty where there is nothing.</summary>
    public string Caution { get; internal init; } = "";

    /// <summary>The logo's path as the file gives it, relative to the file's folder; none where there is none.</summary>
    public string? Logo { get; internal init; }

    /// <summary>The units of pages; none where the file leaves them.</summary>
    public DisplayUnits? Units { get; internal init; }

    /// <summary>The paper; none where the file leaves it.</summary>
    public SchoolPaper? Paper { get; internal init; }

    /// <summary>The lessons that are handed out, in their order, by number or name; all in their own order where none are named.</summary>
    public IReadOnlyList<string> Lessons { get; internal init; } = [];

    /// <summary>The aerodromes; the first is the school's own.</summary>
    public IReadOnlyList<SchoolAerodrome> Aerodromes { get; internal init; } = [];

    /// <summary>Days of weather.</summary>
    public IReadOnlyList<SchoolDay> Days { get; internal init; } = [];

    /// <summary>The rules by which a flight is briefed.</summary>
    public BriefingRules Rules { get; internal init; } = BriefingRules.Usual;

    /// <summary>The circuit and the landing as the school flies them.</summary>
    public SchoolCircuit Circuit { get; internal init; } = new();

    /// <summary>The school in a file.</summary>
    /// <param name="path">The file, UTF-8, ordinary (no device, no pipe) and of at most 1 MiB.</param>
    /// <returns>The school.</returns>
    /// <exception cref="AeroplaneFileException">There is no such file, or it makes no school; all faults at once.</exception>
    /// <exception cref="RefusedInputException">No path.</exception>
    public static School Read(string path)
    {
        Require.Words(path, "path of the file");
        return Parse(AeroplaneFile.ReadText(path), AeroplaneFile.NameOf(path));
    }

    /// <summary>The school in a text.</summary>
    /// <param name="json">The text of a school's file.</param>
    /// <param name="name">What messages call the text: the file's name.</param>
    /// <returns>The school.</returns>
    /// <exception cref="AeroplaneFileException">The text makes no school; all faults at once.</exception>
    /// <exception cref="RefusedInputException">No text or no name.</exception>
    public static School Parse(string json, string name)
    {
        ArgumentNullException.ThrowIfNull(json);
        Require.Words(name, "name of the file");
        var faults = new FaultList();
        School? school = JsonTreeReader.Read(json, faults) is { } tree ? SchoolReader.Read(tree, faults) : null;
        return school is not null && faults.IsEmpty ? school : throw new AeroplaneFileException(name, faults.ByLine());
    }

    /// <summary>The school's name.</summary>
    public override string ToString() => Name;
}
