using AngleSharp.Dom;

namespace FlapAero.Handouts.Pages;

/// <summary>
/// A figure as a notebook has it, made fit for a page: the still drawing as SVG in the page, with text that can be
/// searched and printed, and no script but its data.
/// </summary>
internal static class FigureMarkup
{
    private const string Svg = "data:image/svg+xml;charset=utf-8,";

    public static void ForPage(IElement root)
    {
        foreach (IElement figure in root.QuerySelectorAll("figure.plot"))
        {
            foreach (IElement script in figure.QuerySelectorAll("script:not([type])").ToArray())
                script.Remove();
            foreach (IElement picture in figure.QuerySelectorAll($".plot-drawing > img[src^='{Svg}']").ToArray())
                picture.ParentElement!.InnerHtml = Uri.UnescapeDataString(picture.GetAttribute("src")![Svg.Length..]);
        }
    }
}
