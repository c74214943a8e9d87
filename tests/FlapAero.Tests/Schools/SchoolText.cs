using System.Text.Json.Nodes;
using FlapAero.Tests.Aeroplanes;

namespace FlapAero.Tests.Schools;

/// <summary>The example's school, and edits that spoil it.</summary>
internal static class SchoolText
{
    public static string Example { get; } = Embedded("quillmere.json");

    public static string Embedded(string name)
    {
        using Stream stream = typeof(School).Assembly.GetManifestResourceStream($"schools/{name}")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    public static JsonNode Good() => JsonNode.Parse(Example)!;

    public static string Edited(Action<JsonNode> edit)
    {
        JsonNode root = Good();
        edit(root);
        return AeroplaneText.Written(root);
    }

    public static AeroplaneFileException Refused(string text) =>
        Assert.Throws<AeroplaneFileException>(() => School.Parse(text, "school.json"));
}
