using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using FlapAero.Handouts.NotebookForm;

namespace FlapAero.Handouts.Tests.NotebookForm;

/// <summary>What editors do to a notebook when they save it, drawn at random: to its tree, then to its text.</summary>
internal static class SavedByAnEditor
{
    public static Gen<string> Of(string committed) =>
        from mutations in Gen.OneOf<Action<JsonObject, Random>>(Run, Fold, Time, Trust, Widgets, DrawIds, WithoutIds, WholeSources, WithoutCounts, Sort, Shuffle).Array[0, 6]
        from seed in Gen.Int
        from layout in Gen.Int[0, 5]
        from ending in Gen.OneOf("", "\n", "\n\n", " \n")
        from isCrlf in Gen.Bool
        from isMarked in Gen.Bool
        select Text(committed, mutations, new Random(seed), layout, ending, isCrlf, isMarked);

    private static string Text(string committed, Action<JsonObject, Random>[] mutations, Random random, int layout, string ending, bool isCrlf, bool isMarked)
    {
        JsonObject notebook = JsonNode.Parse(committed)!.AsObject();
        foreach (Action<JsonObject, Random> mutation in mutations)
            mutation(notebook, random);
        string text = layout switch
        {
            0 => CanonicalJson.Write(notebook).TrimEnd(),
            1 => notebook.ToJsonString(),
            _ => notebook.ToJsonString(new JsonSerializerOptions
            {
                WriteIndented = true,
                IndentSize = layout == 2 ? 1 : layout == 3 ? 2 : 4,
                Encoder = layout == 5 ? JavaScriptEncoder.UnsafeRelaxedJsonEscaping : null,
            }),
        };
        text = (text.ReplaceLineEndings("\n") + ending).Replace("\n", isCrlf ? "\r\n" : "\n", StringComparison.Ordinal);
        return isMarked ? "\uFEFF" + text : text;
    }

    private static void Run(JsonObject notebook, Random random)
    {
        int count = 0;
        foreach (JsonObject cell in Code(notebook))
        {
            cell["execution_count"] = ++count;
            if (random.Next(2) == 0)
                continue;
            cell["outputs"] = new JsonArray(
                new JsonObject { ["output_type"] = "stream", ["name"] = "stdout", ["text"] = new JsonArray("http://172.17.0.2:1024/\n", "/home/ada/x") },
                new JsonObject { ["output_type"] = "display_data", ["metadata"] = new JsonObject(), ["data"] = new JsonObject { ["text/html"] = "<p>51.1&nbsp;kt</p>", ["image/png"] = "iVBORw0KGgo=" } });
        }
    }

    private static void Fold(JsonObject notebook, Random random)
    {
        foreach (JsonObject cell in Some(notebook, random))
        {
            cell["metadata"]!["collapsed"] = random.Next(2) == 0;
            cell["metadata"]!["scrolled"] = "auto";
            cell["metadata"]!["jupyter"] = new JsonObject { ["outputs_hidden"] = true, ["source_hidden"] = false };
        }
    }

    private static void Time(JsonObject notebook, Random random)
    {
        foreach (JsonObject cell in Some(notebook, random))
        {
            cell["metadata"]!["ExecuteTime"] = new JsonObject { ["end_time"] = "2026-01-01T10:00:00.1Z" };
            cell["metadata"]!["execution"] = new JsonObject { ["shell.execute_reply"] = "2026-01-01T10:00:00.1Z" };
            cell["metadata"]!["vscode"] = new JsonObject { ["languageId"] = "polyglot-notebook" };
            cell["metadata"]!["dotnet_interactive"] = new JsonObject { ["language"] = "csharp" };
            cell["metadata"]!["polyglot_notebook"] = new JsonObject { ["kernelName"] = "csharp" };
        }
    }

    private static void Trust(JsonObject notebook, Random random)
    {
        notebook["metadata"]!["trusted"] = true;
        foreach (JsonObject cell in Some(notebook, random))
            cell["metadata"]!["trusted"] = false;
    }

    private static void Widgets(JsonObject notebook, Random random)
    {
        notebook["metadata"]!["widgets"] = new JsonObject { ["application/vnd.jupyter.widget-state+json"] = new JsonObject { ["version_major"] = random.Next(3) } };
        notebook["metadata"]!["orig_nbformat"] = 4;
        notebook["metadata"]!["toc"] = new JsonObject { ["base_numbering"] = 1 };
    }

    private static void DrawIds(JsonObject notebook, Random random)
    {
        foreach (JsonObject cell in Some(notebook, random))
            cell["id"] = random.Next(3) switch
            {
                0 => random.Next().ToString("x8", null),
                1 => new Guid(random.Next(), 1, 2, 3, 4, 5, 6, 7, 8, 9, 10).ToString(),
                _ => "aB3" + random.Next().ToString("x8", null),
            };
    }

    private static void WithoutIds(JsonObject notebook, Random random)
    {
        notebook["nbformat_minor"] = random.Next(5);
        foreach (JsonObject cell in StoredForm.CellsOf(notebook))
            cell.Remove("id");
    }

    private static void WholeSources(JsonObject notebook, Random random)
    {
        foreach (JsonObject cell in Some(notebook, random))
            cell["source"] = StoredForm.TextOf(cell["source"]);
    }

    private static void WithoutCounts(JsonObject notebook, Random random)
    {
        foreach (JsonObject cell in Code(notebook))
            cell.Remove(random.Next(2) == 0 ? "execution_count" : "outputs");
    }

    private static void Sort(JsonObject notebook, Random random) => Reorder(notebook, pairs => pairs.OrderBy(pair => pair.Key, StringComparer.Ordinal));

    private static void Shuffle(JsonObject notebook, Random random) => Reorder(notebook, pairs => pairs.OrderBy(_ => random.Next()));

    private static void Reorder(JsonNode? node, Func<IEnumerable<KeyValuePair<string, JsonNode?>>, IEnumerable<KeyValuePair<string, JsonNode?>>> order)
    {
        if (node is JsonArray list)
            foreach (JsonNode? item in list)
                Reorder(item, order);
        if (node is not JsonObject map)
            return;
        List<KeyValuePair<string, JsonNode?>> pairs = [.. order([.. map])];
        map.Clear();
        foreach ((string name, JsonNode? value) in pairs)
        {
            map.Add(name, value);
            Reorder(value, order);
        }
    }

    private static IEnumerable<JsonObject> Code(JsonObject notebook) =>
        StoredForm.CellsOf(notebook).Where(cell => cell["cell_type"]!.GetValue<string>() == "code");

    private static IEnumerable<JsonObject> Some(JsonObject notebook, Random random) =>
        StoredForm.CellsOf(notebook).Where(_ => random.Next(3) == 0);
}
