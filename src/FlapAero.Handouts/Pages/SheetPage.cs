using System.Globalization;
using FlapAero.Charts;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Pages;

/// <summary>One problem sheet: a name, a date, the problems with room to work, and the hints at its end.</summary>
internal static class SheetPage
{
    public static string Of(LessonNotebook notebook, RanSheet sheet, Mathematics mathematics, PageLook look)
    {
        var body = new PageBody(mathematics);
        var hints = new List<(string Title, IReadOnlyList<Fragment> Steps, string Where)>();
        int number = 0;
        foreach (LessonCell cell in notebook.Cells.Where(c => c.Role == CellRole.Problem))
        {
            ProblemPart problem = ProblemPart.ForStudents(notebook, cell, sheet.Outputs.GetValueOrDefault(cell.Id, []));
            hints.Add((cell.Title, problem.TakeHints(), LessonRunner.Where(notebook, cell)));
            body.Add("<div class=\"cell exercise\">\n");
            if (++number == 1)
                body.Heading("Problems", 2);
            if (!problem.HasHeading)
                body.Heading(cell.Title, 3);
            problem.WriteForStudent(body);
            body.Add("</div>\n");
        }
        WriteHints(body, hints);

        string lesson = string.Create(CultureInfo.InvariantCulture, $"Lesson {notebook.Number}");
        string title = string.Create(CultureInfo.InvariantCulture, $"Problem sheet {sheet.Number}: {notebook.Title}");
        // The seed is small, but there: with it a key is matched to a sheet.
        string header = string.Create(CultureInfo.InvariantCulture, $"""
            <p class="course"><a href="index.html">FlapAero</a> · {lesson}</p>
            <h1>{HtmlText.Escape(title)}</h1>
            <p class="signed"><label>Name <input type="text" class="name" autocomplete="off"></label> <label>Date <input type="text" class="date" autocomplete="off"></label></p>
            <p class="facts">Sheet {sheet.Number}, seed {sheet.Seed}</p>
            """);
        return PageShell.ToHtml(new PageFrame($"{lesson}: {title}", "sheet", "Skip to the problems", header, TryIt.Note, body.ToHtml())
        {
            HasFigure = body.HasFigure,
            HasAnswers = true,
            Paper = look.Paper,
            School = look.School,
        });
    }

    private static void WriteHints(PageBody body, List<(string Title, IReadOnlyList<Fragment> Steps, string Where)> hints)
    {
        if (hints.TrueForAll(h => h.Steps.Count == 0))
            return;
        body.Add("<div class=\"cell steps\">\n");
        body.Heading("Hints, step by step", 2);
        body.Add("<p>Read one step, try again, and only then the next.</p>\n");
        foreach ((string title, IReadOnlyList<Fragment> steps, string where) in hints.Where(h => h.Steps.Count > 0))
        {
            body.Add($"<details class=\"hint\"><summary>{HtmlText.Escape(title)}</summary>\n<ol>\n");
            foreach (Fragment step in steps)
                body.Add(step, where);
            body.Add("</ol></details>\n");
        }
        body.Add("</div>\n");
    }
}
