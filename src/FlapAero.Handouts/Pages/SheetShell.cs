using FlapAero.Charts;

namespace FlapAero.Handouts.Pages;

/// <summary>What is round a sheet that is a page of its own: no script, nothing fetched.</summary>
internal static class SheetShell
{
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; base-uri 'none'; form-action 'none'";

    /// <summary>A whole HTML page, the same bytes for the same sheet.</summary>
    /// <param name="title">The page's title, as text.</param>
    /// <param name="styles">Its styles, a later one counts more than an earlier one.</param>
    /// <param name="main">What it shows, as HTML.</param>
    public static string Of(string title, IEnumerable<string> styles, string main)
    {
        string html = $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="{Policy}">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{HtmlText.Escape(title)}</title>
            <link rel="icon" href="data:,">
            <style>
            {string.Join('\n', styles.Select(style => style.Trim()))}
            </style>
            </head>
            <body>
            <main>
            {main}
            </main>
            </body>
            </html>

            """;
        return html.Replace("\r\n", "\n", StringComparison.Ordinal);
    }
}
