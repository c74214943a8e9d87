using AngleSharp.Dom;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Pages;

/// <summary>A problem cell's outputs, as each edition shows them.</summary>
internal sealed class ProblemPart
{
    private readonly string _where;

    public ProblemPart(LessonNotebook notebook, LessonCell cell, IReadOnlyList<CellOutput> outputs)
    {
        Cell = cell;
        _where = LessonRunner.Where(notebook, cell);
        Keys = LessonKey.In(outputs, _where);
        Parts = [.. outputs.Select(o => Fragment.Parse(o.IsHtml ? o.Text : $"<pre class=\"text\">{Markup.Escape(o.Text)}</pre>", _where)).Where(p => !p.IsEmpty)];
    }

    public LessonCell Cell { get; }

    /// <summary>The keys of the cell's problems; none where a cell made its HTML by hand.</summary>
    public IReadOnlyList<AnswerKey> Keys { get; }

    private List<Fragment> Parts { get; }

    public bool HasHeading => Parts.Any(p => p.Headings.Any());

    /// <summary>Question, hints and a place for the answer; nothing of the solution.</summary>
    public void WriteForStudent(PageBody body)
    {
        bool hasPlace = false;
        foreach (Fragment part in Parts)
        {
            foreach (IElement problem in part.All(".problem").ToArray())
            {
                AnswerKey? key = problem.HasAttribute("data-key") ? LessonKey.Of(problem) : null;
                string id = body.ClaimId(TryIt.NameOf(Cell.Id));
                if (key is { Choices.Count: > 0 })
                    TryIt.Choice(problem, id, key);
                else
                    AddPlace(problem, key is null ? TryIt.Line("Your answer", problem.GetAttribute("data-unit") ?? "") : TryIt.Number(id, "Your answer", key));
                hasPlace = true;
            }
            part.RemoveAnswers();
            body.Add(part, _where);
        }
        if (!hasPlace)
            body.Add(TryIt.Line("Your answer", ""));
    }

    /// <summary>All of it, the solution behind a summary.</summary>
    public void WriteForInstructor(PageBody body)
    {
        foreach (Fragment part in Parts)
        {
            part.Hide(".solution", "answer", "Answer and worked solution");
            AddMistakes(part);
            part.RemoveKeys();
            body.Add(part, _where);
        }
    }

    /// <summary>Question, answer, worked solution and common mistakes; no hints.</summary>
    public void WriteForKey(PageBody body)
    {
        foreach (Fragment part in Parts)
        {
            part.Remove(".hint, p.reason");
            AddMistakes(part);
            part.RemoveKeys();
            body.Add(part, _where);
        }
    }

    /// <summary>The hints alone, as a list of steps, or nothing.</summary>
    public IReadOnlyList<Fragment> TakeHints()
    {
        var hints = new List<Fragment>();
        foreach (Fragment part in Parts)
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

    private static void AddMistakes(Fragment part)
    {
        foreach (IElement problem in part.All(".problem[data-key]"))
        {
            AnswerKey key = LessonKey.Of(problem);
            if (key.Mistakes.Count > 0 && problem.QuerySelector(".solution") is { } solution)
                solution.InnerHtml += KeyPage.Mistakes(key);
        }
    }
}
