using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules;

/// <summary>A title names one cell: the contents, the instructor's plan and messages find a cell by it.</summary>
internal sealed class Titles : ILessonRule
{
    public IEnumerable<LessonFault> Faults(LessonNotebook lesson) => lesson.Cells
        .GroupBy(cell => cell.Title, StringComparer.OrdinalIgnoreCase)
        .SelectMany(same => same.Skip(1).Select(cell => new LessonFault(lesson.FileName, cell,
            $"has the title \"{cell.Title}\" of {same.First()}", "each cell needs a title of its own")));
}
