using System.Globalization;
using System.Text.Json;

namespace FlapAero.Handouts.Lessons;

/// <summary>What a class may choose about a lesson: the seed of its problems, how many sheets of them, the aeroplane.</summary>
internal sealed record LessonInput(int Seed, int Sheets, AeroplaneText? Aeroplane)
{
    private const string Begin = "Lesson.Begin()";

    /// <summary>The code of a cell, its lesson begun with these choices.</summary>
    public string Begun(string source) => source.Replace(Begin, Call(Seed), StringComparison.Ordinal);

    /// <summary>What a lesson that is running submits to begin again, for another sheet.</summary>
    public string BegunAgain(int seed) => $"lesson = {Call(seed)};";

    // A JSON string is a C# string, too. The text travels with the code: the kernel's process needs no file and no folder.
    private string Call(int seed) => string.Create(CultureInfo.InvariantCulture, $"Lesson.Begin(seed: {seed}{AeroplaneArgument()})");

    private string AeroplaneArgument() => Aeroplane is null ? ""
        : $", aeroplane: AeroplaneFile.Parse({JsonSerializer.Serialize(Aeroplane.Json)}, {JsonSerializer.Serialize(Aeroplane.Name)})";
}
