using System.Text.Json.Nodes;
using FlapAero.Tests.Aeroplanes;

namespace FlapAero.Tests;

/// <summary>Files that the library carries, and edits of them.</summary>
internal static class Embedded
{
    public static string Text(string resource)
    {
        using Stream stream = typeof(Manual).Assembly.GetManifestResourceStream(resource)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    public static string Edited(JsonNode root, Action<JsonNode> edit)
    {
        edit(root);
        return AeroplaneText.Written(root);
    }
}
