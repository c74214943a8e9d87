using System.Globalization;
using System.Text;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Pages;

/// <summary>The page that leads to all others.</summary>
internal static class IndexPage
{
    private const string Header = """
        <h1>FlapAero</h1>
        <p class="lead">The approach and landing of a light aeroplane, with its flaps and without them: lessons for student pilots and for those who teach them, to read, project and print.</p>
        """;

    /// <summary>The page.</summary>
    /// <param name="notebooks">All lessons.</param>
    /// <param name="isThere">Whether a page of that name is there to be linked to.</param>
    public static string ToHtml(IReadOnlyList<LessonNotebook> notebooks, Func<string, bool> isThere)
    {
        var list = new StringBuilder("<h2 id=\"lessons\">Lessons</h2>\n<ol class=\"lessons\">\n");
        foreach (LessonNotebook notebook in notebooks)
        {
            string title = Markup.Escape(notebook.Title);
            list.Append(CultureInfo.InvariantCulture, $"""
                <li value="{notebook.Number}">
                <h3>{Link(notebook, Edition.Student, title, isThere)}</h3>
                <p>{Markup.Escape(notebook.Summary)}</p>
                <p class="facts">{PageShell.Minutes(notebook)} · {Link(notebook, Edition.Instructor, $"the instructor's page<span class=\"apart\"> of {title}</span>", isThere)}</p>
                </li>

                """);
        }
        list.Append("</ol>\n");
        return PageShell.ToHtml("FlapAero: lessons", "index", "Skip to the lessons", Header, "", list.ToString(), hasFigure: false);
    }

    private static string Link(LessonNotebook notebook, Edition edition, string words, Func<string, bool> isThere)
    {
        string name = PageShell.FileName(notebook, edition);
        return isThere(name) ? $"<a href=\"{name}\">{words}</a>" : $"{words} (not made yet)";
    }
}
