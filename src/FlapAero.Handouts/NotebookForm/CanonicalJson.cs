using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace FlapAero.Handouts.NotebookForm;

/// <summary>
/// Writes JSON as the repository stores notebooks: one space a level, LF, characters as themselves, one line end at the
/// end. The serializer's own writer escapes other characters than notebook editors do, and would rewrite every file.
/// </summary>
internal static class CanonicalJson
{
    /// <exception cref="InvalidOperationException">A text holds half of a surrogate pair, which is no character.</exception>
    public static string Write(JsonNode node)
    {
        var text = new StringBuilder();
        Write(text, node, 0);
        return text.Append('\n').ToString();
    }

    private static void Write(StringBuilder text, JsonNode? node, int level)
    {
        switch (node)
        {
            case null:
                text.Append("null");
                break;
            case JsonObject map:
                Items(text, '{', map, '}', level, pair =>
                {
                    Quote(text, pair.Key);
                    text.Append(": ");
                    Write(text, pair.Value, level + 1);
                });
                break;
            case JsonArray list:
                Items(text, '[', list, ']', level, item => Write(text, item, level + 1));
                break;
            default:
                if (node.GetValueKind() == JsonValueKind.String)
                    Quote(text, node.GetValue<string>());
                else
                    text.Append(node.ToJsonString());
                break;
        }
    }

    private static void Items<T>(StringBuilder text, char open, ICollection<T> items, char close, int level, Action<T> write)
    {
        text.Append(open);
        bool isFirst = true;
        foreach (T item in items)
        {
            text.Append(isFirst ? "" : ",").Append('\n').Append(' ', level + 1);
            write(item);
            isFirst = false;
        }
        if (items.Count > 0)
            text.Append('\n').Append(' ', level);
        text.Append(close);
    }

    private static void Quote(StringBuilder text, string value)
    {
        text.Append('"');
        foreach (char c in value)
            _ = c switch
            {
                '"' => text.Append("\\\""),
                '\\' => text.Append("\\\\"),
                '\n' => text.Append("\\n"),
                '\r' => text.Append("\\r"),
                '\t' => text.Append("\\t"),
                '\b' => text.Append("\\b"),
                '\f' => text.Append("\\f"),
                < ' ' => text.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}"),
                _ => text.Append(c),
            };
        text.Append('"');
    }
}
