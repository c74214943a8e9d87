using System.Text.Json.Nodes;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Jupyter.Tests;

/// <summary>Small notebooks made for a test.</summary>
internal static class Notebooks
{
    public static string Of(params (string Id, string Source)[] cells) => new JsonObject
    {
        ["nbformat"] = 4,
        ["nbformat_minor"] = 5,
        ["metadata"] = new JsonObject { ["kernelspec"] = new JsonObject { ["name"] = LessonNotebook.KernelName, ["display_name"] = "", ["language"] = "C#" } },
        ["cells"] = new JsonArray([.. cells.Select(cell => new JsonObject
        {
            ["cell_type"] = "code",
            ["id"] = cell.Id,
            ["metadata"] = new JsonObject(),
            ["source"] = cell.Source,
            ["outputs"] = new JsonArray(),
            ["execution_count"] = null,
        })]),
    }.ToJsonString();
}
