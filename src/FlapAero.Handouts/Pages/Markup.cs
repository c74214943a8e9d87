using FlapAero.Charts;

namespace FlapAero.Handouts.Pages;

/// <summary>Small help for writing HTML by hand.</summary>
internal static class Markup
{
    public static string Escape(string text) => HtmlText.Escape(text);

    /// <summary>An id from words.</summary>
    public static string Slug(string words) => Charts.Slug.Of(words, otherwise: "part");

    public static string InScript(string script) => HtmlText.InScript(script);

    public static string Code(string source) => $"<pre><code>{Escape(source.TrimEnd())}</code></pre>\n";
}
