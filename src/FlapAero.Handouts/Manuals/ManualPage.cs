using FlapAero.Charts;
using FlapAero.Handouts.Pages;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Manuals;

/// <summary>The report on a manual's numbers as a page of its own: no script, nothing fetched.</summary>
public static class ManualPage
{
    /// <summary>Words and tables of words: one below the other, from the left.</summary>
    private const string Style = """
        .briefing { display: block; }
        .briefing > * { margin-block: .9rem; }
        th:nth-last-child(n), td:nth-last-child(n) { text-align: left; }
        figure { margin: 1.4rem 0; }
        figure svg { width: 100%; height: auto; max-width: 52rem; }
        """;

    /// <summary>The page.</summary>
    /// <param name="sheet">The report.</param>
    /// <returns>A whole HTML page, the same bytes for the same report.</returns>
    public static string ToHtml(ManualSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        Figure differences = sheet.Differences;
        string main = $"""
            {sheet.ToHtmlFragment(headingLevel: 1)}
            <figure>
            {differences.ToSvg()}
            <figcaption>{HtmlText.Escape(differences.CaptionText)} {HtmlText.Escape(differences.FindingText)}</figcaption>
            </figure>
            """;
        return SheetShell.Of(sheet.Title, [Assets.Typeface, Assets.BriefingStyle, Style], main);
    }
}
