using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace FlapAero.Handouts.NotebookForm;

/// <summary>What tells on whose machine a notebook was saved: its folders and its addresses.</summary>
internal static partial class MachineTraces
{
    /// <summary>Each trace in a text once, as words for a message: what it is, and the trace itself.</summary>
    public static IEnumerable<string> In(string text) =>
        Paths().Matches(text).Select(found => $"the machine's path {found.Value}")
            .Concat(Addresses().Matches(text).Select(found => $"the host's address {found.Value}"))
            .Distinct(StringComparer.Ordinal);

    /// <summary>Each trace in any text or name under a node.</summary>
    public static IEnumerable<string> In(JsonNode? node) => Texts(node).SelectMany(In).Distinct(StringComparer.Ordinal);

    private static IEnumerable<string> Texts(JsonNode? node) => node switch
    {
        JsonObject map => map.SelectMany(pair => Texts(pair.Value).Prepend(pair.Key)),
        // A list of strings is a text by its lines, and a path does not end at a line.
        JsonArray list => StoredForm.TextOf(list) is { } text ? [text] : list.SelectMany(Texts),
        JsonValue value when value.TryGetValue(out string? text) => [text],
        _ => [],
    };

    /// <summary>Folders that stand at the root of a Unix machine, drives and shares of a Windows one; a single slash alone is prose.</summary>
    [GeneratedRegex(
        """
        (?<![\w./\\:-])/(home|Users|root|tmp|var|mnt|opt|usr|etc|private|media|srv|work|workspaces?|Volumes|builds?|content|app)/[^\s"'`<>|;,)\]}]+
        | (?<!\w)[A-Za-z]:(\\\\?|/)(Users|Documents[ ]and[ ]Settings|Windows|Program[ ]Files|ProgramData|Temp|tmp)\b[^\s"'`<>|;,)\]}]*
        | (?<!\w)[A-Z]:\\{1,2}[\w. -]+\\[^\s"'`<>|;,)\]}]*
        | (?<![\\\w])\\\\[A-Za-z][\w.-]+\\[A-Za-z][\w.$-]+\\[^\s"'`<>|;,)\]}]*
        | (?<!\w)file://[^\s"'`<>|;,)\]}]+
        | (?<![\w~])~[\w.-]*/[\w.][^\s"'`<>|;,)\]}]*
        """, RegexOptions.CultureInvariant | RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex Paths();

    [GeneratedRegex(
        """
        (?<![\w.])((25[0-5]|2[0-4]\d|1\d\d|[1-9]?\d)\.){3}(25[0-5]|2[0-4]\d|1\d\d|[1-9]?\d)(?![\w.]*\d)(:\d+)?
        | (?<!\w)(https?|wss?)://(localhost|\[[0-9A-Fa-f:.%]+\])(:\d+)?
        | (?<![\w.])localhost:\d+
        | (?<![\w:])fe80::[0-9A-Fa-f:%]+
        """, RegexOptions.CultureInvariant | RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex Addresses();
}
