using FlapAero.Charts;
using FlapAero.Handouts.Pages;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Manuals;

/// <summary>The report on a manual's numbers as a page of its own: no script, nothing fetched.</summary>
public static class ManualPage
{
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; base-uri 'none'; form-action 'none'";

    /// <summary>The page.</summary>
    /// <param name="sheet">The report.</param>
    /// <returns>A whole HTML page, the same bytes for the same report.</returns>
    public static string ToHtml(ManualSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        string html = $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="{Policy}">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{HtmlText.Escape(sheet.Title)}</title>
            <link rel="icon" href="data:,">
            <style>
            {Assets.Typeface.Trim()}
            {Assets.BriefingStyle.Trim()}
            </style>
            </head>
            <body>
            <main>
            {sheet.ToHtmlFragment(headingLevel: 1)}
            </main>
            </body>
            </html>

            """;
        return html.Replace("\r\n", "\n", StringComparison.Ordinal);
    }
}
