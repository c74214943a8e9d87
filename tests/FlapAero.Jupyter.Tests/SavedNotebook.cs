using System.Text.Json.Nodes;

namespace FlapAero.Jupyter.Tests;

/// <summary>One output of a cell: HTML, plain text or an error's text.</summary>
internal sealed record Output(string Kind, string Text);

/// <summary>A notebook with the outputs that Jupyter stored in it.</summary>
internal sealed class SavedNotebook
{
    private SavedNotebook(string text)
    {
        Text = text;
        Dictionary<string, JsonArray> outputs = JsonNode.Parse(text)!["cells"]!.AsArray()
            .Where(cell => (string?)cell!["cell_type"] == "code")
            .ToDictionary(cell => (string)cell!["id"]!, cell => cell!["outputs"]!.AsArray());
        Outputs = outputs.ToDictionary(cell => cell.Key, cell => OutputsOf(cell.Value));
        PlainTexts = outputs.ToDictionary(cell => cell.Key, cell => PlainTextsOf(cell.Value));
    }

    /// <summary>The file's whole text.</summary>
    public string Text { get; }

    /// <summary>The outputs of each code cell, by the cell's id.</summary>
    public Dictionary<string, IReadOnlyList<Output>> Outputs { get; }

    /// <summary>What each code cell says in plain text, beside HTML or alone.</summary>
    public Dictionary<string, IReadOnlyList<Output>> PlainTexts { get; }

    public static SavedNotebook Read(string file) => new(File.ReadAllText(file));

    /// <summary>The text of the one error that a cell put out.</summary>
    public string ErrorOf(string cell) => Assert.Single(Outputs[cell], output => output.Kind == "error").Text;

    private static IReadOnlyList<Output> OutputsOf(JsonArray outputs)
    {
        var read = new List<Output>();
        foreach (JsonNode? output in outputs)
        {
            JsonNode? data = output!["data"];
            Output next = (string?)output["output_type"] switch
            {
                "error" => new("error", string.Join('\n', output["traceback"]!.AsArray().Select(line => (string?)line))),
                "stream" => new("text", Joined(output["text"]!)),
                _ when data?["text/html"] is { } html => new("html", Joined(html)),
                _ => new("text", Joined(data!["text/plain"]!)),
            };
            read.Add(next with { Text = next.Text.ReplaceLineEndings("\n").TrimEnd() });
        }
        return read;
    }

    private static IReadOnlyList<Output> PlainTextsOf(JsonArray outputs) =>
        [.. outputs.Select(output => output!["text"] ?? output["data"]?["text/plain"]).OfType<JsonNode>()
            .Select(text => new Output("text", Joined(text).ReplaceLineEndings("\n").TrimEnd()))];

    /// <summary>nbformat stores a text whole or as a list of its lines.</summary>
    private static string Joined(JsonNode text) =>
        text is JsonArray lines ? string.Concat(lines.Select(line => (string?)line)) : (string)text!;
}
