using System.Globalization;
using FlapAero.Charts;
using FlapAero.Handouts.InPage;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Pages;

/// <summary>One page of a lesson in one edition. An instance makes one page.</summary>
/// <remarks>
/// Headings: the opening gives the only h1. A cell that starts with a heading of its own keeps it. Else its title becomes an h2
/// for a cell that opens a part of the lesson, and an h3 for a computation, which belongs to the part before it; a commit
/// and a check belong to the cell before them and have none. Problems stand as h3 under one h2.
/// </remarks>
internal sealed class LessonPage(RanLesson lesson, Edition edition, Mathematics mathematics, PageLook look, bool hasEngine = false)
{
    private readonly PageBody _body = new(mathematics);
    /// <summary>Paper folds nothing: it says so.</summary>
    private const string OnPaper =
        "<aside class=\"facts on-paper\" aria-label=\"On paper\"><p>On paper, what the model says follows each prediction: cover it until yours is written.</p></aside>\n";

    /// <summary>Opens what a prediction's answer is folded into.</summary>
    internal const string AfterPrediction = "I have written my prediction: show what the model says";

    private bool _isFolded;
    private bool _hasFold;
    private bool _hasAnswers;
    private bool _hasPredictions;
    private bool _hasValues;

    private LessonNotebook Notebook => lesson.Notebook;

    private bool ForInstructor => edition == Edition.Instructor;

    public string ToHtml()
    {
        LessonCell? before = null;
        foreach (LessonCell cell in Notebook.Cells.Where(IsOnPage))
        {
            Write(cell, before);
            before = cell;
        }
        if (before is not null)
            _body.Add("</div>\n");
        Unfold();
        string number = string.Create(CultureInfo.InvariantCulture, $"Lesson {Notebook.Number}");
        string header = $"""
            <p class="course"><a href="index.html">FlapAero</a> · {number}</p>
            <h1>{HtmlText.Escape(Notebook.Title)}</h1>
            <p class="facts">{PageShell.Minutes(Notebook)} · {PageShell.EditionName(edition)}</p>
            """;
        return PageShell.ToHtml(new PageFrame(
            $"{number}: {Notebook.Title} ({(ForInstructor ? "instructor's page" : "student's page")})", ForInstructor ? "instructor" : "student",
            "Skip to the lesson", header, Note() + _body.Contents(), _body.ToHtml())
        {
            HasFigure = _body.HasFigure,
            HasAnswers = _hasAnswers || _hasPredictions,
            HasPredictions = _hasPredictions,
            HasValues = _hasValues,
            KeptAs = ForInstructor ? "" : string.Create(
                CultureInfo.InvariantCulture, $"{Notebook.Stem} {lesson.Input.Seed} {lesson.Input.Units} {lesson.Input.Aeroplane?.Name} {lesson.Input.School?.Name}").Trim(),
            IsProjected = ForInstructor,
            Paper = look.Paper,
            School = look.School,
        });
    }

    private bool IsOnPage(LessonCell cell) =>
        cell.Role != CellRole.Setup && (ForInstructor || cell.Role != CellRole.Instructor);

    private string Note() => ForInstructor
        ? "<aside class=\"for-instructor\" aria-label=\"For the instructor\"><p><strong>This is the instructor's page.</strong> "
            + "It holds the answers, the worked solutions and the notes for teaching: it is not for handing out. "
            + "On a screen the answers stay folded until you open them; on paper they are printed.</p></aside>\n" + Projector.Start
        : (_hasAnswers ? TryIt.Note : "") + TryIt.Kept + RunPage.WayThere(Notebook.Stem, hasEngine) + (_hasFold ? OnPaper : "");

    private void Write(LessonCell cell, LessonCell? before)
    {
        // A prediction is one box with its question, and a check one with its answer.
        bool joins = (cell.Role, before?.Role) is (CellRole.Commit, CellRole.Predict) or (CellRole.Check, CellRole.Answer)
            || InstructorPart.Joins(cell, before);
        if (!joins)
        {
            if (before is not null)
                _body.Add("</div>\n");
            if (!TeachesResult(cell.Role))
                Unfold();
            else if (before?.Role == CellRole.Commit)
                FoldResult();
            string place = ForInstructor ? $" id=\"{_body.ClaimId(InstructorPart.PlaceOf(cell))}\"" : "";
            _body.Add($"<div class=\"cell {CssClass(cell.Role)}\"{place}>\n");
            if (ForInstructor)
                _body.Add(InstructorPart.MinutesOf(cell));
            Tag(cell);
        }
        switch (cell.Role)
        {
            case CellRole.Commit:
                _body.Add(TryIt.Prediction(_body.ClaimId("prediction-" + cell.Id), cell.Label, UnitOf(cell), CellNames.Of(cell.Source).LastVariable ?? ""));
                _hasPredictions = true;
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
            case CellRole.Instructor:
                new InstructorPart(lesson, _body).Write(cell, before);
                break;
            default:
                WriteContent(cell);
                break;
        }
    }

    internal static bool TeachesResult(CellRole role) => role is CellRole.Explain or CellRole.Compute or CellRole.Commit or CellRole.Check;

    /// <summary>What follows a prediction tells its answer: on the student's screen it stays folded until the prediction is made.</summary>
    private void FoldResult()
    {
        if (ForInstructor || _isFolded)
            return;
        _body.Add($"<details class=\"after\"><summary>{AfterPrediction}</summary>\n");
        _isFolded = true;
        _hasFold = true;
    }

    private void Unfold()
    {
        if (_isFolded)
            _body.Add("</details>\n");
        _isFolded = false;
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
            _body.Add($"<p class=\"tag\">{words}</p>\n");
    }

    private void WriteContent(LessonCell cell)
    {
        List<Fragment> parts = cell.IsCode ? Outputs(cell) : [Parse(cell, LessonMarkdown.ToHtml(cell.Source))];
        if (cell.Role == CellRole.Opening)
            // The title and the caution, a quotation there, stand in the page's header.
            parts[0].Remove("h1, blockquote");
        else if (parts.Count == 0 || !parts[0].StartsWithHeading)
            _body.Heading(cell.Title, cell.Role == CellRole.Compute ? 3 : 2);
        if (cell.Values.Count > 0)
            WriteValues(cell);
        else
            foreach (Fragment part in parts)
                Append(cell, part);
        if (cell.Role is CellRole.Compute or CellRole.Change)
            Code(cell.Source);
    }

    /// <summary>What the cell puts out with each of its values, one of them in sight.</summary>
    private void WriteValues(LessonCell cell)
    {
        string id = _body.ClaimId("change-" + cell.Id);
        // The number stands in the cell's code: its unit is the code's, whatever units the lesson shows.
        _body.Add(TryIt.Values(id, cell.Label, cell.Unit, [.. cell.Values.Select(value => value.Text)], cell.Values.Index().First(v => v.Item.IsOwn).Index));
        foreach (ChangedNumber value in cell.Values)
        {
            _body.Add($"<div class=\"changed\" data-of=\"{id}\"{(value.IsOwn ? "" : " hidden")}>\n");
            foreach (Fragment part in Fragments(cell, lesson.OutputsOf(cell, value)))
                Append(cell, part);
            _body.Add("</div>\n");
        }
        _hasValues = true;
    }

    private string UnitOf(LessonCell cell) => lesson.Input.Units.UnitFor(cell.Unit).Unit;

    private void WriteAnswer(LessonCell cell)
    {
        _body.Heading(cell.Title, 2);
        if (ForInstructor)
        {
            _body.Add(TryIt.Line(_body.ClaimId(TryIt.NameOf(cell.Id)), cell.Label, UnitOf(cell)));
            Fold("The answer, and how it is computed", () =>
            {
                _body.Add(Markup.Code(cell.Source));
                foreach (Fragment part in Outputs(cell))
                    Append(cell, part);
            });
            return;
        }
        _body.Add($"<div class=\"in-notebook\">\n<p>In the notebook:</p>\n{Markup.Code(cell.StudentSource)}</div>\n");
        if (lesson.KeyBehind(cell) is { } key)
        {
            _hasAnswers = true;
            _body.Add(TryIt.Number(_body.ClaimId(TryIt.NameOf(cell.Id)), cell.Label, key));
        }
        else
        {
            _body.Add(TryIt.Line(_body.ClaimId(TryIt.NameOf(cell.Id)), cell.Label, UnitOf(cell)));
        }
    }

    private void WriteCheck(LessonCell cell)
    {
        if (!ForInstructor)
        {
            if (lesson.KeysOf(cell).Count == 0)
                _body.Add("<p class=\"check-line\">Check it in the notebook.</p>\n");
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
        ProblemPart problem = ForInstructor ? ProblemPart.ForInstructor(Notebook, cell, lesson.OutputsOf(cell)) : ProblemPart.ForStudents(Notebook, cell, lesson.OutputsOf(cell));
        if (!_body.LastPart.StartsWith("Problem", StringComparison.OrdinalIgnoreCase))
            _body.Heading("Problems", 2);
        if (!problem.HasHeading)
            _body.Heading(cell.Title, 3);
        if (ForInstructor)
        {
            problem.WriteForInstructor(_body);
            Code(cell.Source);
            return;
        }
        _hasAnswers |= problem.HasKeys;
        problem.WriteForStudent(_body);
    }

    private List<Fragment> Outputs(LessonCell cell) => Fragments(cell, lesson.OutputsOf(cell));

    private List<Fragment> Fragments(LessonCell cell, IReadOnlyList<CellOutput> outputs)
    {
        string where = LessonRunner.Where(Notebook, cell);
        return [.. outputs.Select(o => ForInstructor ? Fragment.ForInstructor(o, where) : Fragment.ForStudents(o, where)).Where(part => !part.IsEmpty)];
    }

    private Fragment Parse(LessonCell cell, string html) => Fragment.Parse(html, LessonRunner.Where(Notebook, cell));

    private void Append(LessonCell cell, Fragment part) => _body.Add(part, LessonRunner.Where(Notebook, cell));

    private void Code(string source) =>
        _body.Add($"<details class=\"code\"><summary>How this is computed</summary>\n{Markup.Code(source)}</details>\n");

    private void Fold(string summary, Action inside)
    {
        _body.Add($"<details class=\"answer\"><summary>{summary}</summary>\n");
        inside();
        _body.Add("</details>\n");
    }
}
