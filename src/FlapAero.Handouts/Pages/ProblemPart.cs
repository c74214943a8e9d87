using AngleSharp.Dom;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Pages;

/// <summary>A problem cell's outputs for one page. Of what students do not get, a student's page has the seals alone.</summary>
internal sealed class ProblemPart
{
    private readonly List<(Fragment Html, AnswerKey? Key)> _parts;
    private readonly LessonCell _cell;
    private readonly string _where;

    private ProblemPart(LessonNotebook notebook, LessonCell cell, IReadOnlyList<CellOutput> outputs, Func<CellOutput, string, Fragment> edition)
    {
        _cell = cell;
        _where = LessonRunner.Where(notebook, cell);
        _parts = [.. outputs.Select(o => (Html: edition(o, _where), o.Kept?.Key)).Where(p => !p.Html.IsEmpty)];
    }

    public static ProblemPart ForStudents(LessonNotebook notebook, LessonCell cell, IReadOnlyList<CellOutput> outputs) =>
        new(notebook, cell, outputs, Fragment.ForStudents);

    public static ProblemPart ForInstructor(LessonNotebook notebook, LessonCell cell, IReadOnlyList<CellOutput> outputs) =>
        new(notebook, cell, outputs, Fragment.ForInstructor);

    /// <summary>Whether an answer is checked; a cell that makes its HTML by hand has nothing to check against.</summary>
    public bool HasKeys => _parts.Exists(p => p.Key is not null);

    public bool HasHeading => _parts.Exists(p => p.Html.Headings.Any());

    /// <summary>Question, hints and a place for the answer.</summary>
    public void WriteForStudent(PageBody body)
    {
        bool hasPlace = false;
        foreach ((Fragment part, AnswerKey? key) in _parts)
        {
            foreach (IElement problem in part.All(".problem").ToArray())
            {
                string id = body.ClaimId(TryIt.NameOf(_cell.Id));
                if (key is { Choices.Count: > 0 })
                    TryIt.Choice(problem, id, key);
                else
                    AddPlace(problem, key is null ? TryIt.Line(id, "Your answer", problem.GetAttribute("data-unit") ?? "") : TryIt.Number(id, "Your answer", key));
                hasPlace = true;
            }
            body.Add(part, _where);
        }
        if (!hasPlace)
            body.Add(TryIt.Line(body.ClaimId(TryIt.NameOf(_cell.Id)), "Your answer", ""));
    }

    /// <summary>All of it, the solution behind a summary.</summary>
    public void WriteForInstructor(PageBody body)
    {
        foreach ((Fragment part, AnswerKey? key) in _parts)
        {
            part.Hide(".solution", "answer", "Answer and worked solution");
            AddMistakes(part, key);
            body.Add(part, _where);
        }
    }

    /// <summary>Question, answer, worked solution and common mistakes; no hints.</summary>
    public void WriteForKey(PageBody body)
    {
        foreach ((Fragment part, AnswerKey? key) in _parts)
        {
            part.Remove(".hint, p.reason");
            AddMistakes(part, key);
            body.Add(part, _where);
        }
    }

    /// <summary>The hints alone, as a list of steps, or nothing.</summary>
    public IReadOnlyList<Fragment> TakeHints()
    {
        var hints = new List<Fragment>();
        foreach ((Fragment part, _) in _parts)
            foreach (IElement hint in part.All("details.hint").ToArray())
            {
                hint.QuerySelector("summary")?.Remove();
                hints.Add(Fragment.Parse($"<li>{hint.InnerHtml}</li>", _where));
                hint.Remove();
            }
        return hints;
    }

    /// <summary>The answer's place comes after the question and before the hints, where a reader looks for it.</summary>
    private static void AddPlace(IElement problem, string html)
    {
        IElement holder = problem.Owner!.CreateElement("div");
        holder.InnerHtml = html;
        IElement? after = problem.QuerySelector(".question");
        foreach (IElement element in holder.Children.ToArray().Reverse())
            if (after is null)
                problem.Prepend(element);
            else
                after.After(element);
    }

    private static void AddMistakes(Fragment part, AnswerKey? key)
    {
        if (key is { Mistakes.Count: > 0 })
            foreach (IElement solution in part.All(".problem .solution").ToArray())
                solution.InnerHtml += KeyPage.Mistakes(key);
    }
}
