using FlapAero.Handouts.Leaks;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;
using FlapAero.Notebooks.Seals;

namespace FlapAero.Handouts.Rules.AfterARun;

/// <summary>The prose above an answer's box asks; a number in it, with a unit of the answer's kind, that passes as the answer tells it.</summary>
internal sealed class AnswersInQuestions : IRunRule
{
    public IEnumerable<LessonFault> Faults(RanLesson lesson, IReadOnlyList<RanLesson> before)
    {
        LessonCell? question = null;
        foreach (LessonCell cell in lesson.Notebook.Cells)
        {
            if (cell.Role is CellRole.Explain or CellRole.Scenario)
                question = cell;
            if (cell.Role != CellRole.Answer || question is null || lesson.KeyBehind(cell) is not { Value: { } value, Tolerance: { } tolerance } key)
                continue;
            string said = question.IsCode ? string.Join('\n', lesson.OutputsOf(question).Select(ArtefactText.Of)) : question.Source;
            foreach (string number in new WrittenNumbers(said).PassingWithUnit(value, tolerance, NumberSeal.Parse(key.Seal).Units).Distinct())
                yield return new LessonFault(lesson.Notebook.FileName, question,
                    $"says \"{number}\" above the box of {cell}, and that passes as its answer {key.Answer}", "the question gives what the answer is worked from, never the answer");
        }
    }
}
