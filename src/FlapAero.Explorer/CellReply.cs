using System.Text.Encodings.Web;
using System.Text.Json.Nodes;

namespace FlapAero.Explorer;

/// <summary>What a cell put out, in its order, and the words of its failure; empty where it did not fail.</summary>
internal sealed record CellReply(IReadOnlyList<CellOutput> Outputs, string Failure)
{
    /// <summary>As the worker's script reads it.</summary>
    public string ToJson() => new JsonObject
    {
        ["outputs"] = new JsonArray([.. Outputs.Select(o => new JsonObject { ["html"] = o.IsHtml, ["text"] = o.Text })]),
        ["failure"] = Failure,
    }.ToJsonString(new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
}

/// <summary>One output of a cell.</summary>
internal sealed record CellOutput(bool IsHtml, string Text);
