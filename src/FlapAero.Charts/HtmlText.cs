using System.Text.RegularExpressions;

namespace FlapAero.Charts;

/// <summary>Texts as they may stand in HTML: the only place that escapes.</summary>
internal static partial class HtmlText
{
    /// <summary>A text for an element or for an attribute in double quotation marks, without what <see cref="Visible"/> takes away.</summary>
    public static string Escape(string text) => Visible(text)
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal);

    /// <summary>
    /// A text without control characters and without what a terminal would read as a command: they say nothing on a page,
    /// and whoever copies them to a terminal gets more than was seen. Line ends and tabs stay.
    /// </summary>
    public static string Visible(string text) => text.Any(IsHidden) ? string.Concat(Commands().Replace(text, "").Where(c => !IsHidden(c))) : text;

    /// <summary>A script's text must not end its element early; inside a string or regular expression of JavaScript <c>\/</c> is <c>/</c>.</summary>
    public static string InScript(string script) => script
        .Replace("</script", "<\\/script", StringComparison.OrdinalIgnoreCase)
        .Replace("<!--", "<\\!--", StringComparison.Ordinal);

    private static bool IsHidden(char c) => char.IsControl(c) && c is not ('\n' or '\r' or '\t') || c is >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069';

    /// <summary>A terminal's commands: to its end a title or a link, else the letters of one command (ECMA-48, from memory).</summary>
    [GeneratedRegex("\\x1B\\][^\\x07\\x1B]*(?:\\x07|\\x1B\\\\)|(?:\\x1B\\[|\\x9B)[0-?]*[ -/]*[@-~]", RegexOptions.CultureInvariant)]
    private static partial Regex Commands();
}
