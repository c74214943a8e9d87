using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules;

/// <summary>A check tests the answer right before it, by the variable that the answer declares last.</summary>
internal sealed class Answers : ILessonRule
{
    public IEnumerable<LessonFault> Faults(LessonNotebook lesson)
    {
        LessonCell[] cells = [.. lesson.Cells.Where(cell => cell.Role != CellRole.Instructor)];
        for (int at = 0; at < cells.Length; at++)
        {
            LessonCell cell = cells[at];
            LessonCell? before = at == 0 ? null : cells[at - 1];
            if (cell.Role == CellRole.Answer && (at + 1 == cells.Length || cells[at + 1].Role != CellRole.Check))
                yield return new LessonFault(lesson.FileName, cell, "is an answer that no check cell follows", "needed is one right behind it");
            if (cell.Role == CellRole.Check && before?.Role != CellRole.Answer)
                yield return new LessonFault(lesson.FileName, cell,
                    $"is a check that {(before is null ? "nothing" : before.ToString())} comes before, which is no answer", "needed is an answer cell right before it");
            if (cell.Role == CellRole.Answer && at + 1 < cells.Length && cells[at + 1].Role == CellRole.Check
                && CellNames.Of(cell.Source).LastVariable is { } variable && !CellNames.Of(cells[at + 1].Source).Used.Contains(variable))
                yield return new LessonFault(lesson.FileName, cells[at + 1], "does not test the variable of the answer before it", $"needed is {variable} in lesson.Check");
        }
    }
}
