using System.Globalization;
using System.Text.Json;

namespace FlapAero.Handouts.Lessons;

/// <summary>What a class may choose about a lesson: the seed of its problems, how many sheets of them, the aeroplane, the units, the school.</summary>
internal sealed record LessonInput(int Seed, int Sheets, AeroplaneText? Aeroplane, DisplayUnits Units = DisplayUnits.Aviation, SchoolFileText? School = null)
{
    private const string Begin = "Lesson.Begin()";

    /// <summary>A lesson as its notebook has it.</summary>
    public static LessonInput Standard { get; } = new(1, 1, null);

    /// <summary>The code of a cell, its lesson begun with these choices.</summary>
    public string Begun(string source) => source.Replace(Begin, Call(Seed), StringComparison.Ordinal);

    /// <summary>What a lesson that is running submits to begin again, for another sheet.</summary>
    public string BegunAgain(int seed) => $"lesson = {Call(seed)};";

    private string Call(int seed) => $"Lesson.Begin({string.Join(", ", Arguments(seed))})";

    /// <summary>What differs from the notebook's own: a lesson without choices is run as it stands.</summary>
    private IEnumerable<string> Arguments(int seed)
    {
        if (seed != Standard.Seed)
            yield return string.Create(CultureInfo.InvariantCulture, $"seed: {seed}");
        // A JSON string is a C# string, too. The text travels with the code: the kernel's process needs no file and no folder.
        if (Aeroplane is not null)
            yield return $"aeroplane: AeroplaneFile.Parse({JsonSerializer.Serialize(Aeroplane.Json)}, {JsonSerializer.Serialize(Aeroplane.Name)})";
        if (Units != Standard.Units || School is not null)
            yield return $"units: DisplayUnits.{Units}";
        if (School is not null)
            yield return $"school: School.Parse({JsonSerializer.Serialize(School.Json)}, {JsonSerializer.Serialize(School.Name)})";
    }
}
