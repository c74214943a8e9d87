using System.Text.Json.Nodes;
using FlapAero.Tests.Aeroplanes;

namespace FlapAero.Tests.Manuals;

/// <summary>The example's manual, and edits that spoil it.</summary>
internal static class ManualText
{
    public static string Example { get; } = Embedded("trainer-h4.json");

    public static string Embedded(string name)
    {
        using Stream stream = typeof(Manual).Assembly.GetManifestResourceStream($"manuals/{name}")!;
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
        Assert.Throws<AeroplaneFileException>(() => Manual.Parse(text, "manual.json"));
}
