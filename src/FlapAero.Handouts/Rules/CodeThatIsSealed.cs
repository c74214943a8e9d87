using System.Globalization;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules;

/// <summary>Problems and checks are read by the next author: plumbing in them belongs in the library.</summary>
internal sealed class CodeThatIsSealed : ILessonRule
{
    public const int MostLines = 12;

    public IEnumerable<LessonFault> Faults(LessonNotebook lesson) => lesson.Cells
        .Where(cell => cell.Role is CellRole.Problem or CellRole.Check && Lines(cell) > MostLines)
        .Select(cell => new LessonFault(lesson.FileName, cell,
            string.Create(CultureInfo.InvariantCulture, $"has {Lines(cell)} lines"),
            string.Create(CultureInfo.InvariantCulture, $"allowed in a problem or a check are {MostLines}: what lessons need again and again belongs in the library")));

    private static int Lines(LessonCell cell) => cell.Source.Split('\n').Length;
}
