using System.Text.Json.Nodes;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Tests;

/// <summary>Writes small notebooks for tests; each fault is then one change to a sound one.</summary>
internal sealed class NotebookText
{
    public const string Setup = Lesson.SetupCell;

    public NotebookText(string title = "A turn to final", int lesson = 1)
    {
        Root = new JsonObject
        {
            ["cells"] = new JsonArray(),
            ["metadata"] = new JsonObject
            {
                ["flapaero"] = new JsonObject { ["lesson"] = lesson, ["title"] = title, ["summary"] = "What the bank does to the stall.", ["minutes"] = 40 },
                ["kernelspec"] = new JsonObject { ["display_name"] = "FlapAero (C#)", ["language"] = "C#", ["name"] = "flapaero-csharp" },
                ["language_info"] = new JsonObject { ["name"] = "C#" },
            },
            ["nbformat"] = 4,
            ["nbformat_minor"] = 5,
        };
    }

    public JsonObject Root { get; }

    public JsonArray Cells => Root["cells"]!.AsArray();

    public JsonObject Facts => Root["metadata"]!["flapaero"]!.AsObject();

    /// <summary>A sound lesson of three cells: opening, setup, one paragraph.</summary>
    public static NotebookText Sound(string title = "A turn to final", int lesson = 1) => new NotebookText(title, lesson)
        .Markdown("opening", "opening", "Opening", $"# {title}\n\nAfterwards you can.")
        .Code("setup", "setup", "Setup", Setup)
        .Markdown("explain", "why", "Why it is so", "Because.");

    public NotebookText Markdown(string role, string id, string title, string source)
    {
        Cells.Add(new JsonObject
        {
            ["cell_type"] = "markdown",
            ["id"] = id,
            ["metadata"] = new JsonObject { ["flapaero"] = new JsonObject { ["role"] = role, ["title"] = title } },
            ["source"] = source,
        });
        return this;
    }

    public NotebookText Code(string role, string id, string title, string source, string? label = null, string? unit = null, string? student = null)
    {
        var ours = new JsonObject { ["role"] = role, ["title"] = title };
        if (label is not null)
            ours["label"] = label;
        if (unit is not null)
            ours["unit"] = unit;
        if (student is not null)
            ours["student"] = student;
        Cells.Add(new JsonObject
        {
            ["cell_type"] = "code",
            ["execution_count"] = null,
            ["id"] = id,
            ["metadata"] = new JsonObject { ["flapaero"] = ours },
            ["outputs"] = new JsonArray(),
            ["source"] = source,
        });
        return this;
    }

    public NotebookText Html(string role, string id, string title, string html) =>
        Code(role, id, title, $"HTML(\"\"\"\"\n{html}\n\"\"\"\")");

    public NotebookText Html(string role, string id, string title, string html, string label, string unit, string student) =>
        Code(role, id, title, $"HTML(\"\"\"\"\n{html}\n\"\"\"\")", label, unit, student);

    public override string ToString() => Root.ToJsonString();
}
