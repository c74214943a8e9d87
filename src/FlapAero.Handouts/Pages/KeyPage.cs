using System.Globalization;
using System.Text;
using FlapAero.Charts;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Pages;

/// <summary>The answer key of a lesson or of one problem sheet. An instance makes one page.</summary>
internal sealed class KeyPage(LessonNotebook notebook, Mathematics mathematics, PageLook look)
{
    private readonly PageBody _body = new(mathematics);

    /// <summary>The key of a whole lesson.</summary>
    public static string Of(RanLesson lesson, Mathematics mathematics, PageLook look)
    {
        var page = new KeyPage(lesson.Notebook, mathematics, look);
        page.WritePredictions(lesson);
        page.WriteAnswers(lesson);
        page.WriteProblems(cell => lesson.OutputsOf(cell));
        return page.ToHtml($"Answer key: {lesson.Notebook.Title}", "Answer key", lesson.Notebook.Cells.Any(cell => cell.Role == CellRole.Problem) ? lesson.Input.Seed : null);
    }

    /// <summary>The key of a problem sheet.</summary>
    public static string Of(LessonNotebook notebook, RanSheet sheet, Mathematics mathematics, PageLook look)
    {
        var page = new KeyPage(notebook, mathematics, look);
        page.WriteProblems(cell => sheet.Outputs.GetValueOrDefault(cell.Id, []));
        string name = string.Create(CultureInfo.InvariantCulture, $"Key to problem sheet {sheet.Number}");
        return page.ToHtml($"{name}: {notebook.Title}", name, sheet.Seed);
    }

    /// <summary>The common mistakes of an answer, a line each; nothing where there are none.</summary>
    public static string Mistakes(AnswerKey key)
    {
        if (key.Mistakes.Count == 0)
            return "";
        var table = new StringBuilder("<table class=\"mistakes\"><caption>Common mistakes</caption><thead><tr><th scope=\"col\">who answers</th><th scope=\"col\">has done this</th></tr></thead><tbody>");
        foreach (AnswerKey.Line line in key.Mistakes)
            table.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{HtmlText.Escape(line.Text)}</th><td>{HtmlText.Escape(line.Because)}</td></tr>");
        return table.Append("</tbody></table>").ToString();
    }

    private void WritePredictions(RanLesson lesson)
    {
        List<string> results = [.. notebook.Cells.Where(c => c.IsCode).SelectMany(cell => lesson.OutputsOf(cell))
            .SelectMany(o => o.Read.QuerySelectorAll(".compared").Select(e => e.TextContent))];
        if (results.Count == 0)
            return;
        _body.Heading("What the model gives for the predictions", 2);
        _body.Add("<ul>\n" + string.Concat(results.Select(r => $"<li>{HtmlText.Escape(r)}</li>\n")) + "</ul>\n");
    }

    private void WriteAnswers(RanLesson lesson)
    {
        List<LessonCell> answers = [.. notebook.Cells.Where(c => c.Role == CellRole.Answer)];
        if (answers.Count == 0)
            return;
        _body.Heading("Answers in the lesson", 2);
        foreach (LessonCell cell in answers)
        {
            _body.Add("<div class=\"cell entry\">\n");
            _body.Heading(cell.Title, 3);
            AnswerKey? key = lesson.KeyBehind(cell);
            if (key is not null)
                _body.Add($"<p>{HtmlText.Escape(cell.Label)}: <strong class=\"kept\">{HtmlText.Escape(key.Answer)}</strong></p>\n");
            _body.Add(Markup.Code(cell.Source));
            if (key is { Mistakes.Count: > 0 })
                _body.Add(Fragment.Parse(Mistakes(key), LessonRunner.Where(notebook, cell)), LessonRunner.Where(notebook, cell));
            _body.Add("</div>\n");
        }
    }

    private void WriteProblems(Func<LessonCell, IReadOnlyList<CellOutput>> outputs)
    {
        List<LessonCell> problems = [.. notebook.Cells.Where(c => c.Role == CellRole.Problem)];
        if (problems.Count == 0)
            return;
        _body.Heading("Problems", 2);
        foreach (LessonCell cell in problems)
        {
            ProblemPart problem = ProblemPart.ForInstructor(notebook, cell, outputs(cell));
            _body.Add("<div class=\"cell entry\">\n");
            if (!problem.HasHeading)
                _body.Heading(cell.Title, 3);
            problem.WriteForKey(_body);
            _body.Add("</div>\n");
        }
    }

    private string ToHtml(string title, string kind, int? seed)
    {
        string number = string.Create(CultureInfo.InvariantCulture, $"Lesson {notebook.Number}");
        string header = string.Create(CultureInfo.InvariantCulture, $"""
            <p class="course"><a href="index.html">FlapAero</a> · {number}</p>
            <h1>{HtmlText.Escape(title)}</h1>
            <p class="facts">{HtmlText.Escape(kind)}{(seed is { } s ? $" · seed {s}" : "")}</p>
            """);
        const string Warning = "<aside class=\"for-instructor\" aria-label=\"For the instructor\"><p><strong>For the instructor.</strong> This page holds the answers: it is not for handing out.</p></aside>\n";
        return PageShell.ToHtml(new PageFrame($"{number}: {title}", "key", "Skip to the answers", header, Warning, _body.ToHtml()) { HasFigure = _body.HasFigure, Paper = look.Paper, School = look.School });
    }
}
