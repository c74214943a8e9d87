using System.Text.Json.Nodes;

namespace FlapAero.Tests.Schools;

/// <summary>The example's school, and edits that spoil it.</summary>
internal static class SchoolText
{
    public static string Example { get; } = Embedded("quillmere.json");

    public static string Embedded(string name) => Tests.Embedded.Text($"schools/{name}");

    public static JsonNode Good() => JsonNode.Parse(Example)!;

    public static string Edited(Action<JsonNode> edit) => Tests.Embedded.Edited(Good(), edit);

    public static AeroplaneFileException Refused(string text) =>
        Assert.Throws<AeroplaneFileException>(() => School.Parse(text, "school.json"));
}
