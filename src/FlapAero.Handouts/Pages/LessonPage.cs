using System.Globalization;
using System.Text;
using AngleSharp.Dom;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Pages;

/// <summary>One page of a lesson in one edition. An instance makes one page.</summary>
/// <remarks>
/// Headings: the opening gives the only h1. A cell that starts with a heading of its own keeps it. Else its title becomes an h2
/// for a cell that opens a part of the lesson, and an h3 for a computation, which belongs to the part before it; a commit
/// and a check belong to the cell before them and have none. Problems stand as h3 under one h2.
/// </remarks>
internal sealed class LessonPage(RanLesson lesson, Edition edition, Mathematics mathematics)
{
    private readonly IdRegistry _ids = new();
    private readonly StringBuilder _main = new();
    private readonly List<(string Id, string Text)> _contents = [];
    private int _level = 1;
    private bool _hasFigure;

    private LessonNotebook Notebook => lesson.Notebook;

    private bool ForInstructor => edition == Edition.Instructor;

    public string ToHtml()
    {
        _ids.Claim("content");
        LessonCell? before = null;
        foreach (LessonCell cell in Notebook.Cells.Where(IsOnPage))
        {
            Write(cell, before);
            before = cell;
        }
        if (before is not null)
            _main.Append("</div>\n");
        string number = string.Create(CultureInfo.InvariantCulture, $"Lesson {Notebook.Number}");
        string header = $"""
            <p class="course"><a href="index.html">FlapAero</a> · {number}</p>
            <h1>{Markup.Escape(Notebook.Title)}</h1>
            <p class="facts">{PageShell.Minutes(Notebook)} · {PageShell.EditionName(edition)}</p>
            """;
        return PageShell.ToHtml(
            $"{number}: {Notebook.Title} ({(ForInstructor ? "instructor's page" : "student's page")})", ForInstructor ? "instructor" : "student",
            "Skip to the lesson", header, Note() + Contents(), _main.ToString(), _hasFigure);
    }

    private bool IsOnPage(LessonCell cell) =>
        cell.Role != CellRole.Setup && (ForInstructor || cell.Role != CellRole.Instructor);

    private string Note() => !ForInstructor ? "" :
        "<aside class=\"for-instructor\" aria-label=\"For the instructor\"><p><strong>This is the instructor's page.</strong> "
        + "It holds the answers, the worked solutions and the notes for teaching: it is not for handing out. "
        + "On a screen the answers stay folded until you open them; on paper they are printed.</p></aside>\n";

    private string Contents()
    {
        var nav = new StringBuilder("<nav aria-labelledby=\"contents\">\n<p id=\"contents\">Contents</p>\n<ol>\n");
        foreach ((string id, string text) in _contents)
            nav.Append(CultureInfo.InvariantCulture, $"<li><a href=\"#{id}\">{Markup.Escape(text)}</a></li>\n");
        return nav.Append("</ol>\n</nav>\n").ToString();
    }

    private void Write(LessonCell cell, LessonCell? before)
    {
        // A prediction is one box with its question, and a check one with its answer.
        bool joins = (cell.Role, before?.Role) is (CellRole.Commit, CellRole.Predict) or (CellRole.Check, CellRole.Answer);
        if (!joins)
        {
            if (before is not null)
                _main.Append("</div>\n");
            _main.Append(CultureInfo.InvariantCulture, $"<div class=\"cell {CssClass(cell.Role)}\">\n");
            Tag(cell);
        }
        switch (cell.Role)
        {
            case CellRole.Commit:
                WriteIn(cell);
                break;
            case CellRole.Answer:
                WriteAnswer(cell);
                break;
            case CellRole.Check:
                WriteCheck(cell);
                break;
            case CellRole.Problem:
                WriteProblem(cell);
                break;
            default:
                WriteContent(cell);
                break;
        }
    }

    /// <summary>The role's name, but where the class would meet that of a page or of an output.</summary>
    private static string CssClass(CellRole role) => role switch
    {
        CellRole.Answer => "reply",
        CellRole.Instructor => "teaching",
        CellRole.Problem => "exercise",
        _ => CellRules.Name(role),
    };

    private void Tag(LessonCell cell)
    {
        string? words = cell.Role switch
        {
            CellRole.Predict or CellRole.Commit => "Predict before you compute",
            CellRole.Answer => "Your answer",
            CellRole.Change => "Change one number",
            CellRole.Instructor => "For the instructor",
            _ => null,
        };
        if (words is not null && words != cell.Title)
            _main.Append(CultureInfo.InvariantCulture, $"<p class=\"tag\">{words}</p>\n");
    }

    private void WriteContent(LessonCell cell)
    {
        List<Fragment> parts = cell.IsCode ? Outputs(cell) : [Parse(cell, Prose.ToHtml(cell.Source))];
        if (cell.Role == CellRole.Opening)
            // The title and the caution, a quotation there, stand in the page's header.
            parts[0].Remove("h1, blockquote");
        else if (parts.Count == 0 || !parts[0].StartsWithHeading)
            Heading(cell.Title, cell.Role == CellRole.Compute ? 3 : 2);
        foreach (Fragment part in parts)
            Append(cell, part);
        if (cell.Role is CellRole.Compute or CellRole.Change)
            Code(cell.Source);
    }

    private void WriteAnswer(LessonCell cell)
    {
        Heading(cell.Title, 2);
        if (ForInstructor)
        {
            WriteIn(cell);
            Fold("The answer, and how it is computed", () =>
            {
                _main.Append(Markup.Code(cell.Source));
                foreach (Fragment part in Outputs(cell))
                    Append(cell, part);
            });
            return;
        }
        _main.Append("<div class=\"in-notebook\">\n<p>In the notebook:</p>\n").Append(Markup.Code(cell.StudentSource)).Append("</div>\n");
        WriteIn(cell);
    }

    private void WriteCheck(LessonCell cell)
    {
        if (!ForInstructor)
        {
            _main.Append("<p class=\"check-line\">Check it in the notebook.</p>\n");
            return;
        }
        Fold("What the check says to the right answer", () =>
        {
            foreach (Fragment part in Outputs(cell))
                Append(cell, part);
            Code(cell.Source);
        });
    }

    private void WriteProblem(LessonCell cell)
    {
        List<Fragment> parts = Outputs(cell);
        if (!(_contents.Count > 0 && _contents[^1].Text.StartsWith("Problem", StringComparison.OrdinalIgnoreCase)))
            Heading("Problems", 2);
        if (parts.Count == 0 || !parts.Any(p => p.Headings.Any()))
            Heading(cell.Title, 3);
        foreach (Fragment part in parts)
        {
            if (ForInstructor)
                part.Hide(".solution", "answer", "Answer and worked solution");
            Append(cell, part);
        }
        if (ForInstructor)
            Code(cell.Source);
        else
            WriteIn("Your answer", parts.SelectMany(p => p.All(".problem")).FirstOrDefault()?.GetAttribute("data-unit") ?? "");
    }

    private List<Fragment> Outputs(LessonCell cell)
    {
        var parts = new List<Fragment>();
        foreach (CellOutput output in lesson.OutputsOf(cell))
        {
            Fragment part = Parse(cell, output.IsHtml ? output.Text : $"<pre class=\"text\">{Markup.Escape(output.Text)}</pre>");
            // A check or a solution may only reach students through its own role's rules, whatever cell puts it out.
            if (!ForInstructor)
                part.Remove(".check, .solution");
            if (!part.IsEmpty)
                parts.Add(part);
        }
        return parts;
    }

    private Fragment Parse(LessonCell cell, string html) => Fragment.Parse(html, LessonRunner.Where(Notebook, cell));

    private void Append(LessonCell cell, Fragment part)
    {
        string html = part.ToHtml(_ids, mathematics);
        foreach (IElement heading in part.Headings)
        {
            int level = heading.LocalName[1] - '0';
            if (level == 1 || level > _level + 1)
                throw new HandoutException(string.Create(CultureInfo.InvariantCulture,
                    $"{LessonRunner.Where(Notebook, cell)}: its heading \"{heading.TextContent.Trim()}\" has level {level}; allowed here are 2 to {_level + 1}, since a heading may go only one level deeper than the one before."));
            Note(level, heading.Id!, heading.TextContent.Trim());
        }
        _hasFigure |= part.HasFigure;
        _main.Append(html);
    }

    private void Heading(string text, int level)
    {
        level = Math.Min(level, _level + 1);
        string id = _ids.Claim(Markup.Slug(text));
        Note(level, id, text);
        _main.Append(CultureInfo.InvariantCulture, $"<h{level} id=\"{id}\">{Markup.Escape(text)}</h{level}>\n");
    }

    private void Note(int level, string id, string text)
    {
        _level = level;
        if (level == 2)
            _contents.Add((id, text));
    }

    private void Code(string source) =>
        _main.Append("<details class=\"code\"><summary>How this is computed</summary>\n").Append(Markup.Code(source)).Append("</details>\n");

    private void Fold(string summary, Action inside)
    {
        _main.Append(CultureInfo.InvariantCulture, $"<details class=\"answer\"><summary>{summary}</summary>\n");
        inside();
        _main.Append("</details>\n");
    }

    private void WriteIn(LessonCell cell) => WriteIn(cell.Label, cell.Unit);

    private void WriteIn(string label, string unit) => _main.Append(CultureInfo.InvariantCulture,
        $"<p class=\"write-in\"><label>{Markup.Escape(label)} <input type=\"text\" inputmode=\"decimal\" autocomplete=\"off\"> {Markup.Escape(unit)}</label></p>\n");
}
