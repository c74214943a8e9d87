using System.Globalization;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Rules.AfterARun;

/// <summary>
/// Each question that wants a number knows a typical slip, and no slip leads to what is right: nobody would be told of it. A problem's numbers
/// are drawn anew for each class, and for one of them a slip may come near; there only the same number is a fault.
/// </summary>
internal sealed class MistakesOfAnswers : IRunRule
{
    private const double SameInAProblem = 0.1;

    public IEnumerable<LessonFault> Faults(RanLesson lesson, IReadOnlyList<RanLesson> before)
    {
        foreach (LessonCell cell in lesson.Notebook.Cells)
            foreach (AnswerKey key in lesson.KeysOf(cell).Where(key => key.Value is not null))
            {
                if (key.Mistakes.Count == 0)
                    yield return new LessonFault(lesson.Notebook.FileName, cell, $"knows no typical slip of \"{key.What}\"", "needed is at least one new Mistake(value, words)");
                double near = key.Tolerance!.Value * (cell.Role == CellRole.Problem ? SameInAProblem : 1);
                foreach (AnswerKey.Line mistake in key.Mistakes.Where(mistake => mistake.Value is { } slip && Math.Abs(slip - key.Value!.Value) <= near))
                    yield return new LessonFault(lesson.Notebook.FileName, cell,
                        $"has the mistake {mistake.Text} (\"{mistake.Because}\") of \"{key.What}\", which passes as the answer {key.Answer}",
                        string.Create(CultureInfo.InvariantCulture, $"a mistake is further from the answer than its tolerance, {key.Tolerance:0.####} {key.Sign}").TrimEnd());
            }
    }
}
