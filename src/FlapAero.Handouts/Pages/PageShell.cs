using System.Globalization;
using System.Text;
using FlapAero.Charts;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Pages;

/// <summary>What all pages share: the head, the caution, the foot, the scripts.</summary>
internal static class PageShell
{
    /// <summary>Two strokes, a wing and its flap: an icon inside the page keeps browsers from asking a server for one.</summary>
    private const string Icon = "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 16 16'%3E"
        + "%3Cpath d='M1 7h9l5 5' fill='none' stroke='%230072B2' stroke-width='3'/%3E%3C/svg%3E";

    /// <summary>Said to the browser as well: a page has all it needs and may ask nobody for anything.</summary>
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'; img-src data: blob:; font-src data:; base-uri 'none'; form-action 'none'";

    /// <summary>Of a page whose cells run in it: what lies beside it, a worker, and what keeps the folder. It may still ask nobody: no kind of request is allowed.</summary>
    private const string RunningPolicy = "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline' 'self' file: blob: 'wasm-unsafe-eval'; worker-src blob: 'self'; img-src data: blob:; font-src data:; base-uri 'none'; form-action 'none'";

    private static readonly Lazy<string> Figures = new(() => FigureScript.Start.Trim());
    private static readonly Lazy<string> Answers = Script(() => Assets.Answers);
    private static readonly Lazy<string> Predictions = Script(() => Assets.Predictions);
    private static readonly Lazy<string> Values = Script(() => Assets.Values);
    private static readonly Lazy<string> Kept = Script(() => Assets.Kept);
    private static readonly Lazy<string> Projecting = Script(() => Assets.Projector);
    private static readonly Lazy<string> Page = Script(() => Assets.Script);

    /// <summary>The scripts that pages carry alike, as they stand in them.</summary>
    public static IReadOnlyList<string> Scripts => [Figures.Value, Answers.Value, Predictions.Value, Values.Value, Kept.Value, Projecting.Value, Page.Value];

    /// <summary>What pages carry alike: the scripts, and the type face, whose letters are no words.</summary>
    public static IReadOnlyList<string> CarriedAlike => [Assets.Typeface.Trim(), .. Scripts];

    public static string FileName(LessonNotebook notebook, Edition edition) => notebook.Stem + edition switch
    {
        Edition.Student => ".html",
        Edition.Instructor => ".instructor.html",
        Edition.Key => ".key.html",
        Edition.Notebook => ".ipynb",
        _ => throw new ArgumentOutOfRangeException(nameof(edition), edition, "Sheets have numbers in their names."),
    };

    /// <summary>The name of a problem sheet or of its key.</summary>
    public static string SheetName(LessonNotebook notebook, int number, bool isKey) =>
        string.Create(CultureInfo.InvariantCulture, $"{notebook.Stem}.sheet-{number}{(isKey ? ".key" : "")}.html");

    public static string EditionName(Edition edition) => edition == Edition.Student ? "The student's page" : "The instructor's page";

    public static string Minutes(LessonNotebook notebook) =>
        string.Create(CultureInfo.InvariantCulture, $"{notebook.Minutes} minutes");

    /// <summary>A whole page.</summary>
    public static string ToHtml(PageFrame frame)
    {
        (string title, string kind, string skipTo, string header, string between, string main) = frame;
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $$"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="{{(frame.Beside.Count > 0 ? RunningPolicy : Policy)}}">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{{HtmlText.Escape(title)}}</title>
            <link rel="icon" href="{{Icon}}">
            <style>
            {{Assets.Typeface.Trim()}}
            {{Assets.Style.Trim()}}
            {{FigureScript.Style.Trim()}}
            {{(frame.IsProjected ? Assets.ProjectorStyle.Trim() : "")}}
            @page { size: {{frame.Paper}} }{{frame.School?.PaperCss()}}
            </style>
            </head>
            <body class="{{kind}}"{{KeptAs(frame)}}>
            <a class="skip" href="#content">{{HtmlText.Escape(skipTo)}}</a>
            <header>
            {{Line(frame.School?.HeadHtml())}}{{header.Trim()}}
            </header>
            <aside class="caution" aria-label="Caution"><p><strong>Caution.</strong> {{HtmlText.Escape(Caution.Text)}}</p>{{frame.School?.CautionHtml()}}</aside>
            {{between.Trim()}}
            <main id="content" tabindex="-1">
            {{main.Trim()}}
            </main>
            {{(frame.IsProjected ? Projector.Bar.Trim() : "")}}
            <footer>
            <p>{{HtmlText.Escape(Caution.Short)}}</p>
            {{frame.School?.FootHtml()}}<p>Each lesson ends with its sources, by the keys of FlapAero's list of references; what is common practice without a source is marked so.</p>
            <p>FlapAero, under the MIT licence: copy it, change it, hand it out.</p>
            </footer>

            """).Replace("\r\n", "\n");
        foreach (string script in ScriptsOf(frame))
            page.Append("<script>\n").Append(script).Append("\n</script>\n");
        foreach (string name in frame.Beside)
            page.Append(CultureInfo.InvariantCulture, $"<script src=\"{name}\"></script>\n");
        return page.Append("</body>\n</html>\n").ToString();
    }

    private static string Line(string? html) => html is null ? "" : html + "\n";

    private static string KeptAs(PageFrame frame) => frame.KeptAs.Length == 0 ? "" : $" data-kept-as=\"{HtmlText.Escape(frame.KeptAs)}\"";

    private static IEnumerable<string> ScriptsOf(PageFrame frame)
    {
        if (frame.HasFigure)
            yield return Figures.Value;
        if (frame.HasAnswers)
            yield return Answers.Value;
        if (frame.HasPredictions)
            yield return Predictions.Value;
        if (frame.HasValues)
            yield return Values.Value;
        // After all that listens to what is typed: what comes back is typed once more.
        if (frame.KeptAs.Length > 0)
            yield return Kept.Value;
        if (frame.IsProjected)
            yield return Projecting.Value;
        yield return Page.Value;
    }

    private static Lazy<string> Script(Func<string> text) => new(() => HtmlText.InScript(text()).Trim());
}
