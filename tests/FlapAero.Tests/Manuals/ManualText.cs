using System.Text.Json.Nodes;

namespace FlapAero.Tests.Manuals;

/// <summary>The example's manual, and edits that spoil it.</summary>
internal static class ManualText
{
    public static string Example { get; } = Embedded("trainer-h4.json");

    public static string Embedded(string name) => Tests.Embedded.Text($"manuals/{name}");

    public static JsonNode Good() => JsonNode.Parse(Example)!;

    public static string Edited(Action<JsonNode> edit) => Tests.Embedded.Edited(Good(), edit);

    public static AeroplaneFileException Refused(string text) =>
        Assert.Throws<AeroplaneFileException>(() => Manual.Parse(text, "manual.json"));
}
