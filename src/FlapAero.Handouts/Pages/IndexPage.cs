using System.Globalization;
using System.Text;
using FlapAero.Charts;
using FlapAero.Handouts.InPage;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Printing;

namespace FlapAero.Handouts.Pages;

/// <summary>The page that leads to all others.</summary>
internal static class IndexPage
{
    private const string Header = $"""
        <h1>FlapAero</h1>
        <p class="lead">The approach and landing of a light aeroplane, with its flaps and without them: lessons for student pilots and for those who teach them, to read, project and print.</p>
        <p>A student works in the student's notebook: it opens in Jupyter from any folder, with the kernel {LessonNotebook.KernelDisplayName}.</p>
        """;

    /// <summary>The page.</summary>
    /// <param name="notebooks">All lessons.</param>
    /// <param name="isThere">Whether a file of that name is there to be linked to.</param>
    /// <param name="look">Paper and school; A4 and none where nothing is said.</param>
    /// <param name="hasEngine">Whether the what-if page is made beside.</param>
    public static string ToHtml(
        IReadOnlyList<LessonNotebook> notebooks, Func<string, bool> isThere, PageLook? look = null, bool hasEngine = false)
    {
        var list = new StringBuilder(FlightMap.ToHtml(notebooks, isThere));
        if (hasEngine) list.Append(WhatIfPage.WayThere("Two landings side by side, with everything to be moved: for one question, or for a class."));
        list.Append("<h2 id=\"lessons\">Lessons</h2>\n<ol class=\"lessons\">\n");
        foreach (LessonNotebook notebook in notebooks)
        {
            string title = HtmlText.Escape(notebook.Title), page = PageShell.FileName(notebook, Edition.Student);
            string place = FlightPlace.Of(notebook.Slug) is { } at ? $" · {at.Words}" : "";
            list.Append(CultureInfo.InvariantCulture, $"""
                <li value="{notebook.Number}">
                <h3>{(isThere(page) ? $"<a href=\"{page}\">{title}</a>" : title + " (not made yet)")}</h3>
                <p>{HtmlText.Escape(notebook.Summary)}</p>
                <p class="facts">{PageShell.Minutes(notebook)}{place}</p>
                {Files("For students", notebook, ForStudents(notebook, isThere), isThere)}</li>

                """);
        }
        list.Append("</ol>\n").Append(Instructors(notebooks, isThere));
        return PageShell.ToHtml(new PageFrame("FlapAero: lessons", "index", "Skip to the lessons", Header, "", list.ToString()) { Paper = look?.Paper ?? Paper.A4, School = look?.School });
    }

    /// <summary>Answers stand apart: whoever looks for a lesson does not come across its key.</summary>
    private static string Instructors(IReadOnlyList<LessonNotebook> notebooks, Func<string, bool> isThere)
    {
        string entries = string.Concat(notebooks
            .Select(notebook => Files(
                string.Create(CultureInfo.InvariantCulture, $"{notebook.Number}. {notebook.Title}"), notebook, ForInstructor(notebook, isThere), isThere))
            .Where(files => files.Length > 0).Select(files => $"<li>{files.Trim()}</li>\n"));
        return entries.Length == 0 ? "" : $"""
            <section class="instructors" aria-labelledby="for-the-instructor">
            <h2 id="for-the-instructor">For the instructor</h2>
            <p>These files hold answers, worked solutions and notes for teaching: they are not for handing out. The notebooks in the project's folder <code>notebooks</code> hold them too.</p>
            <ul>
            {entries.Trim()}
            </ul>
            </section>

            """;
    }

    private static IEnumerable<(string Name, string Words)> ForStudents(LessonNotebook notebook, Func<string, bool> isThere) =>
    [
        (PageShell.FileName(notebook, Edition.Student), "student's page"),
        (PageShell.FileName(notebook, Edition.Notebook), "student's notebook"),
        .. Sheets(notebook, isThere, isKey: false).Select((name, i) => (name, string.Create(CultureInfo.InvariantCulture, $"problem sheet {i + 1}"))),
    ];

    private static IEnumerable<(string Name, string Words)> ForInstructor(LessonNotebook notebook, Func<string, bool> isThere) =>
    [
        (PageShell.FileName(notebook, Edition.Instructor), "instructor's page"),
        (PageShell.FileName(notebook, Edition.Key), "answer key"),
        .. Sheets(notebook, isThere, isKey: true).Select((name, i) => (name, string.Create(CultureInfo.InvariantCulture, $"key to sheet {i + 1}"))),
    ];

    private static IEnumerable<string> Sheets(LessonNotebook notebook, Func<string, bool> isThere, bool isKey)
    {
        for (int number = 1; isThere(PageShell.SheetName(notebook, number, isKey)); number++)
            yield return PageShell.SheetName(notebook, number, isKey);
    }

    /// <summary>The files of one reader; a PDF stands beside its page.</summary>
    private static string Files(string reader, LessonNotebook notebook, IEnumerable<(string Name, string Words)> files, Func<string, bool> isThere)
    {
        string apart = $"<span class=\"apart\"> of {HtmlText.Escape(notebook.Title)}</span>";
        var links = new List<string>();
        foreach ((string name, string words) in files.Where(f => isThere(f.Name)))
        {
            string pdf = Path.ChangeExtension(name, ".pdf");
            links.Add($"<a href=\"{name}\">{words}{apart}</a>" + (name.EndsWith(".html", StringComparison.Ordinal) && isThere(pdf) ? $" (<a href=\"{pdf}\">PDF<span class=\"apart\">: {words}</span>{apart}</a>)" : ""));
        }
        return links.Count == 0 ? "" : $"<p class=\"files\"><strong>{HtmlText.Escape(reader)}:</strong> {string.Join(", ", links)}</p>\n";
    }
}
