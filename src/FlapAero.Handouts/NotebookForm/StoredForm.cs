using System.Text.Json.Nodes;

namespace FlapAero.Handouts.NotebookForm;

/// <summary>
/// The one way in which the repository stores a notebook: known names in a fixed order, names it does not know after
/// them as they were found, each source as a list of its lines.
/// </summary>
internal static class StoredForm
{
    private static readonly string[] Notebook = ["cells", "metadata", "nbformat", "nbformat_minor"];

    private static readonly string[] NotebookMetadata = ["flapaero", "kernelspec", "language_info"];

    private static readonly string[] Facts = ["lesson", "title", "summary", "minutes"];

    private static readonly string[] Kernel = ["display_name", "language", "name"];

    private static readonly string[] Language = ["file_extension", "mimetype", "name", "pygments_lexer", "version"];

    private static readonly string[] Cell = ["cell_type", "id", "metadata", "source", "execution_count", "outputs"];

    private static readonly string[] CellMetadata = ["flapaero"];

    private static readonly string[] Role = ["role", "title", "student", "label", "unit", "minutes", "note", "cells"];

    private static readonly string[] Named = ["cell", "minutes"];

    public static void Arrange(JsonObject notebook)
    {
        Order(notebook, Notebook);
        if (notebook["metadata"] is JsonObject metadata)
        {
            Order(metadata, NotebookMetadata);
            Order(metadata["flapaero"], Facts);
            Order(metadata["kernelspec"], Kernel);
            Order(metadata["language_info"], Language);
        }
        foreach (JsonObject cell in CellsOf(notebook))
        {
            Order(cell, Cell);
            Order(cell["metadata"], CellMetadata);
            JsonNode? ours = (cell["metadata"] as JsonObject)?["flapaero"];
            Order(ours, Role);
            if ((ours as JsonObject)?["cells"] is JsonArray named)
                foreach (JsonNode? one in named)
                    Order(one, Named);
            if (TextOf(cell["source"]) is { } source)
                cell["source"] = Lines(source);
        }
    }

    public static IEnumerable<JsonObject> CellsOf(JsonObject notebook) =>
        notebook["cells"] is JsonArray cells ? cells.OfType<JsonObject>() : [];

    /// <summary>A text that nbformat stores whole or as a list of lines; null where it is neither.</summary>
    public static string? TextOf(JsonNode? node) => node switch
    {
        JsonValue value when value.TryGetValue(out string? whole) => whole,
        JsonArray lines when lines.All(line => line is JsonValue value && value.TryGetValue(out string? _)) =>
            string.Concat(lines.Select(line => line!.GetValue<string>())),
        _ => null,
    };

    private static void Order(JsonNode? node, string[] names)
    {
        if (node is not JsonObject map)
            return;
        List<KeyValuePair<string, JsonNode?>> found = [.. map];
        map.Clear();
        foreach (string name in names)
            foreach ((string _, JsonNode? value) in found.Where(pair => pair.Key == name))
                map.Add(name, value);
        foreach ((string name, JsonNode? value) in found.Where(pair => !names.Contains(pair.Key)))
            map.Add(name, value);
    }

    private static JsonArray Lines(string text)
    {
        var lines = new JsonArray();
        int start = 0;
        while (start < text.Length)
        {
            int end = text.IndexOf('\n', start);
            int next = end < 0 ? text.Length : end + 1;
            lines.Add(JsonValue.Create(text[start..next]));
            start = next;
        }
        return lines;
    }
}
