using System.Globalization;
using System.Text;

namespace FlapAero.Handouts.Pages;

/// <summary>Small help for writing HTML by hand.</summary>
internal static class Markup
{
    public static string Escape(string text) => text
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
}
