using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace FlapAero.Handouts.Pages;

/// <summary>Small help for writing HTML by hand.</summary>
internal static partial class Markup
{
    /// <summary>
    /// A text without control characters and without what a terminal would read as a command: they say nothing on a page,
    /// and whoever copies them to a terminal gets more than was seen. Line ends and tabs stay.
    /// </summary>
    public static string Visible(string text) => text.Any(IsHidden) ? string.Concat(Commands().Replace(text, "").Where(c => !IsHidden(c))) : text;

    private static bool IsHidden(char c) => char.IsControl(c) && c is not ('\n' or '\r' or '\t') || c is >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069';

    public static string Escape(string text) => Visible(text)
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal);

    /// <summary>An id from words: small ASCII letters and digits with single hyphens.</summary>
    public static string Slug(string words)
    {
        var slug = new StringBuilder();
        foreach (char c in words.Normalize(NormalizationForm.FormD).ToLowerInvariant())
            if (char.IsAsciiLetterOrDigit(c))
                slug.Append(c);
            else if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark && slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
        string trimmed = slug.ToString().Trim('-');
        return trimmed.Length == 0 ? "part" : trimmed;
    }

    /// <summary>A script's text must not end its element early; inside a string or regular expression of JavaScript <c>\/</c> is <c>/</c>.</summary>
    public static string InScript(string script) => script
        .Replace("</script", "<\\/script", StringComparison.OrdinalIgnoreCase)
        .Replace("<!--", "<\\!--", StringComparison.Ordinal);

    public static string Code(string source) => $"<pre><code>{Escape(source.TrimEnd())}</code></pre>\n";

    /// <summary>A terminal's commands: to its end a title or a link, else the letters of one command (ECMA-48, from memory).</summary>
    [GeneratedRegex("\\x1B\\][^\\x07\\x1B]*(?:\\x07|\\x1B\\\\)|(?:\\x1B\\[|\\x9B)[0-?]*[ -/]*[@-~]", RegexOptions.CultureInvariant)]
    private static partial Regex Commands();
}
