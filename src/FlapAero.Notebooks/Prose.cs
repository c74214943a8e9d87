using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.Charts;

namespace FlapAero.Notebooks;

/// <summary>
/// Markdown with values in it, as HTML. Values never reach the Markdown reader: they are put in afterwards, escaped, so
/// that none of them can become markup, in text as in maths.
/// </summary>
internal static partial class Prose
{
    // From Unicode's private use area: no reader of Markdown gives them a meaning.
    private const char Open = '\uE000';
    private const char Close = '\uE001';

    internal static string Html(Words words)
    {
        var values = new List<string>();
        string markdown = words.Join(
            literal => literal.Replace(Open, ' ').Replace(Close, ' '),
            value =>
            {
                values.Add(value);
                return $"{Open}{(values.Count - 1).ToString(CultureInfo.InvariantCulture)}{Close}";
            });
        string html = LessonMarkdown.ToHtml(markdown).Trim();
        if (html.Contains("%EE%80%80", StringComparison.OrdinalIgnoreCase))
            throw Require.RefusedWhole(
                nameof(words),
                "A value stands in the address of a link: only text and maths take values.");
        html = Maths().Replace(html, maths => Placeholder().Replace(maths.Value, match => HtmlText.Escape(Tex(Value(match)))));
        return Placeholder().Replace(html, match => HtmlText.Escape(Value(match)));

        string Value(Match match) => values[int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)];
    }

    /// <summary>The words as Markdown, with no sign of a value read as markup; in maths values stand as TeX.</summary>
    internal static string Markdown(Words words)
    {
        bool isMaths = false;
        return words.Join(
            literal =>
            {
                isMaths ^= literal.Count(c => c == '$') % 2 == 1;
                return literal;
            },
            value => isMaths ? Tex(value) : MarkdownSigns().Replace(value, "\\$0"));
    }

    /// <summary>A value inside maths: digits as they are, all else as upright text.</summary>
    private static string Tex(string value)
    {
        if (PlainNumber().IsMatch(value))
            return value.Replace(QuantityText.Minus, '-').Replace(QuantityText.NarrowNoBreakSpace.ToString(), "\\,", StringComparison.Ordinal);
        string text = string.Concat(value.Select(c => c switch
        {
            QuantityText.NoBreakSpace or QuantityText.NarrowNoBreakSpace => "~",
            '%' or '#' or '&' or '_' or '$' or '{' or '}' => "\\" + c,
            '\\' => "\\backslash ",
            '^' or '~' => "\\" + c + "{}",
            _ => c.ToString(),
        }));
        return "\\text{" + text + "}";
    }

    [GeneratedRegex("<(span|div) class=\"math\">.*?</\\1>", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Maths();

    [GeneratedRegex("\uE000(\\d+)\uE001", RegexOptions.CultureInvariant)]
    private static partial Regex Placeholder();

    [GeneratedRegex(@"[\\`*_\[\]<>$#|]", RegexOptions.CultureInvariant)]
    private static partial Regex MarkdownSigns();

    [GeneratedRegex("^[\u2212+]?[0-9\u202F]+(\\.[0-9]+)?$", RegexOptions.CultureInvariant)]
    private static partial Regex PlainNumber();
}
