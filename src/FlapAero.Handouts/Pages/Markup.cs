using FlapAero.Charts;

namespace FlapAero.Handouts.Pages;

/// <summary>Small help for writing HTML by hand.</summary>
internal static class Markup
{
    /// <summary>An id from words.</summary>
    public static string Slug(string words) => Charts.Slug.Of(words, otherwise: "part");

    public static string Code(string source) => $"<pre><code>{HtmlText.Escape(source.TrimEnd())}</code></pre>\n";
}
