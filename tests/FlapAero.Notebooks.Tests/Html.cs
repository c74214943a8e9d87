using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace FlapAero.Notebooks.Tests;

internal static class Html
{
    internal static IHtmlDocument Parse(string html) => new HtmlParser().ParseDocument(html);
}
