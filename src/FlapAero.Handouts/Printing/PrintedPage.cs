using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace FlapAero.Handouts.Printing;

/// <summary>A page as the browser prints it: without its scripts, numbered, and so that alternative texts reach the PDF.</summary>
internal static class PrintedPage
{
    /// <summary>The page's own rules may add to it; the numbers are there in any case.</summary>
    private const string Numbers =
        "@page{@bottom-right{content:\"page \" counter(page) \" of \" counter(pages);font:8.5pt sans-serif;color:#000}}";

    public static string Of(string html)
    {
        using IHtmlDocument document = new HtmlParser().ParseDocument(html);
        foreach (IElement script in document.QuerySelectorAll("script").ToArray())
            script.Remove();
        // Chromium leaves a whole picture out of the tags where its drawing is hidden from readers, and its description with it.
        foreach (IElement drawing in document.QuerySelectorAll("[role=img] [aria-hidden]"))
            drawing.RemoveAttribute("aria-hidden");
        foreach (IElement formula in document.QuerySelectorAll("math[alttext]"))
            Describe(formula);
        IElement style = document.CreateElement("style");
        style.TextContent = Numbers;
        document.Head!.Append(style);
        return "<!DOCTYPE html>\n" + document.DocumentElement.OuterHtml;
    }

    /// <summary>MathML has no alternative text in a PDF of Chromium's; a picture round it has.</summary>
    private static void Describe(IElement formula)
    {
        IElement frame = formula.ParentElement!;
        if (frame.ChildElementCount != 1 || frame.TextContent.Trim() != formula.TextContent.Trim())
        {
            frame = formula.Owner!.CreateElement("span");
            formula.Replace(frame);
            frame.Append(formula);
        }
        frame.SetAttribute("role", "img");
        frame.SetAttribute("aria-label", formula.GetAttribute("alttext")!);
    }
}
