using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts.Leaks;

/// <summary>All that a file says: its text, attributes, comments, data and scripts, and what stands in it in base 64.</summary>
internal static partial class ArtefactText
{
    private const string Picture = "data:image/svg+xml";

    /// <summary>A page without the scripts that every page of this project carries alike: they are long, and say nothing.</summary>
    public static string WithoutScripts(string page) => Without(PageShell.Scripts, page);

    /// <summary>A page without all that every page carries alike: what is left is its own.</summary>
    public static string Own(string page) => Without(PageShell.CarriedAlike, page);

    private static string Without(IReadOnlyList<string> parts, string page) =>
        parts.Aggregate(page, (rest, part) => rest.Replace(part, "", StringComparison.Ordinal));

    /// <summary>What an element says, with all in it.</summary>
    public static string Of(INode node)
    {
        var text = new StringBuilder();
        Walk(node, text);
        return WithDecoded(text.ToString());
    }

    /// <summary>What an output says.</summary>
    public static string Of(CellOutput output) => output.IsHtml ? Of(output.Read) : output.Text;

    /// <summary>What a fragment of HTML says.</summary>
    public static string OfHtml(string html) => Of(new HtmlParser().ParseDocument("<body>" + html).Body!);

    /// <summary>What a piece of JSON says: names and values, a text a line.</summary>
    public static string Of(JsonNode? node)
    {
        var text = new StringBuilder();
        Walk(node, text);
        return WithDecoded(text.ToString());
    }

    /// <summary>One writing of a text, so that two can be compared: spaces, dashes, marks of Markdown, entities.</summary>
    public static string Normal(string text)
    {
        // A PDF joins letters: its "fl" is one sign.
        string plain = Marks().Replace(text.Normalize(NormalizationForm.FormKC), "").Replace('\u2212', '-').Replace('\u2019', '\'').ToLowerInvariant();
        return BeforePoint().Replace(Spaces().Replace(plain, " "), "$1").Trim();
    }

    /// <summary>What a drawing inside an attribute says.</summary>
    private static string Drawn(string address) => OfHtml(Uri.UnescapeDataString(address[(address.IndexOf(',', StringComparison.Ordinal) + 1)..]));

    private static void Walk(INode node, StringBuilder text)
    {
        if (node is IElement element)
            foreach (IAttr attribute in element.Attributes)
                text.Append('\n').Append(attribute.Value.StartsWith(Picture, StringComparison.Ordinal) ? Drawn(attribute.Value) : attribute.Value).Append('\n');
        if (node is ICharacterData data)
            text.Append(Data(node, data.Data)).Append(' ');
        foreach (INode child in node.ChildNodes)
            Walk(child, text);
        if (node is IHtmlParagraphElement or IHtmlListItemElement or IHtmlHeadingElement or IHtmlTableRowElement or IHtmlDivElement)
            text.Append('\n');
    }

    /// <summary>Data scripts are JSON: their texts without escapes.</summary>
    private static string Data(INode node, string data)
    {
        if (node.Parent is not IHtmlScriptElement { Type: "application/json" })
            return data;
        try
        {
            return Of(JsonNode.Parse(data));
        }
        catch (System.Text.Json.JsonException)
        {
            return data;
        }
    }

    private static void Walk(JsonNode? node, StringBuilder text)
    {
        switch (node)
        {
            case JsonObject parts:
                foreach ((string name, JsonNode? value) in parts)
                {
                    text.Append(name).Append(' ');
                    Walk(value, text);
                }
                break;
            case JsonArray { Count: > 0 } lines when lines.All(l => l?.GetValueKind() == System.Text.Json.JsonValueKind.String):
                // A cell's source is a list of its lines, each with its end.
                text.AppendJoin("", lines.Select(l => l!.GetValue<string>())).Append('\n');
                break;
            case JsonArray list:
                foreach (JsonNode? value in list)
                    Walk(value, text);
                break;
            case JsonValue value:
                text.Append(value.ToString()).Append('\n');
                break;
            default:
                break;
        }
    }

    /// <summary>Base 64 hides nothing: what it says is searched, and not its letters.</summary>
    private static string WithDecoded(string text)
    {
        var decoded = new StringBuilder();
        string rest = Base64().Replace(text, match =>
        {
            if (Decoded(match.Value) is not { } words)
                return match.Value;
            decoded.Append('\n').Append(words).Append('\n');
            return " ";
        });
        return rest + decoded;
    }

    /// <summary>The text that base 64 holds; null for a long word that only looks like it.</summary>
    private static string? Decoded(string letters)
    {
        byte[] bytes = new byte[letters.Length];
        if (!Convert.TryFromBase64String(letters, bytes, out int written))
            return null;
        string text = Encoding.UTF8.GetString(bytes, 0, written);
        return text.Any(c => c == '\uFFFD' || char.IsControl(c) && !char.IsWhiteSpace(c)) ? null : text;
    }

    [GeneratedRegex("(?<![A-Za-z0-9+/=])[A-Za-z0-9+/]{16,}={0,2}(?![A-Za-z0-9+/=])", RegexOptions.CultureInvariant)]
    private static partial Regex Base64();

    [GeneratedRegex(@"[*`$]|</?(?:strong|em)>", RegexOptions.CultureInvariant)]
    private static partial Regex Marks();

    [GeneratedRegex(@"[\s\u00a0\u202f]+", RegexOptions.CultureInvariant)]
    private static partial Regex Spaces();

    [GeneratedRegex(" ([.,;:?!)])", RegexOptions.CultureInvariant)]
    private static partial Regex BeforePoint();
}
