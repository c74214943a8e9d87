using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace FlapAero.Tests.Aeroplanes;

/// <summary>Good files from the library's own data, and edits that spoil them.</summary>
internal static class AeroplaneText
{
    private static readonly JsonSerializerOptions Indented =
        new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static IReadOnlyList<string> DemoFiles { get; } = ["trainer-h4.json", "trainer-l2.json"];

    public static string Embedded(string name)
    {
        using Stream stream = typeof(AeroplaneFile).Assembly.GetManifestResourceStream($"aeroplanes/{name}")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    public static JsonNode Good(string name = "trainer-h4.json") => JsonNode.Parse(Embedded(name))!;

    public static string Written(JsonNode root) => root.ToJsonString(Indented);

    public static string Edited(Action<JsonNode> edit)
    {
        JsonNode root = Good();
        edit(root);
        return Written(root);
    }

    public static AeroplaneFileException Refused(string text) =>
        Assert.Throws<AeroplaneFileException>(() => AeroplaneFile.Parse(text, "trainer.json"));

    /// <summary>The node at a path such as <c>flapSettings[2].name</c>.</summary>
    public static JsonNode At(this JsonNode root, string path) =>
        Steps(path).Aggregate(root, (node, step) =>
            int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out int index) ? node[index]! : node[step]!);

    public static void Set(this JsonNode root, string path, string json)
    {
        JsonNode? value = JsonNode.Parse(json);
        (JsonNode parent, string last) = Parent(root, path);
        if (parent is JsonArray list) list[int.Parse(last, CultureInfo.InvariantCulture)] = value;
        else parent[last] = value;
    }

    public static void Remove(this JsonNode root, string path)
    {
        (JsonNode parent, string last) = Parent(root, path);
        if (parent is JsonArray list) list.RemoveAt(int.Parse(last, CultureInfo.InvariantCulture));
        else parent.AsObject().Remove(last);
    }

    public static void Rename(this JsonNode root, string path, string name)
    {
        (JsonNode parent, string last) = Parent(root, path);
        JsonObject owner = parent.AsObject();
        int index = owner.IndexOf(last);
        JsonNode? value = owner[last];
        owner.RemoveAt(index);
        owner.Insert(index, name, value);
    }

    /// <summary>The path of every key in a file.</summary>
    public static IEnumerable<string> Keys(JsonNode? node, string place = "") => node switch
    {
        JsonObject owner => owner.SelectMany(pair =>
        {
            string inside = place.Length == 0 ? pair.Key : $"{place}.{pair.Key}";
            return Keys(pair.Value, inside).Prepend(inside);
        }),
        JsonArray list => list.SelectMany((item, index) => Keys(item, FormattableString.Invariant($"{place}[{index}]"))),
        _ => [],
    };

    /// <summary>The one line, from 1, that holds a piece of text.</summary>
    public static int LineOf(string text, string piece)
    {
        string[] lines = text.Split('\n');
        return 1 + Array.IndexOf(lines, Assert.Single(lines, line => line.Contains(piece, StringComparison.Ordinal)));
    }

    private static (JsonNode Parent, string Last) Parent(JsonNode root, string path)
    {
        string[] steps = Steps(path);
        JsonNode parent = steps.Length == 1 ? root : root.At(string.Join('.', steps[..^1]));
        return (parent, steps[^1]);
    }

    private static string[] Steps(string path) =>
        path.Split(['.', '[', ']'], StringSplitOptions.RemoveEmptyEntries);
}
