using FlapAero.Handouts.Lessons;
using static System.FormattableString;

namespace FlapAero.Handouts.Rules;

/// <summary>
/// A section's minutes hold what is done in them: its prose read aloud, its predictions written down, its figures looked at,
/// its answers worked. They are the least that any class takes; a discussion comes on top.
/// </summary>
internal sealed class MinutesOfASection : ILessonRule
{
    /// <summary>Words a minute, read aloud to listeners whose first language is another.</summary>
    public const int WordsAMinute = 120;

    public IEnumerable<LessonFault> Faults(LessonNotebook lesson)
    {
        foreach ((LessonCell section, double least) in LeastOf(lesson).Where(part => part.Least > part.Section.Minutes))
            yield return new LessonFault(lesson.FileName, section, Invariant($"has {section.Minutes} minutes for its section"),
                Invariant($"needed are {Math.Ceiling(least)}, for it takes {least:0.0} to read it aloud, to predict and to work: give it more, or cut it"));
    }

    /// <summary>The fewest minutes that each section takes.</summary>
    private static IEnumerable<(LessonCell Section, double Least)> LeastOf(LessonNotebook lesson)
    {
        LessonCell[] cells = [.. lesson.Cells.SkipWhile(cell => cell.Minutes == 0)];
        while (cells.Length > 0)
        {
            LessonCell[] section = [cells[0], .. cells.Skip(1).TakeWhile(cell => cell.Minutes == 0)];
            yield return (section[0], section.Sum(MinutesOf));
            cells = cells[section.Length..];
        }
    }

    private static double MinutesOf(LessonCell cell) => ProseOfACell.IsForAStudent(cell)
        ? ((double)WordsForAStudent.Count(cell) / WordsAMinute) + cell.Role switch
        {
            CellRole.Commit => 1,
            CellRole.Change => 1.5,
            CellRole.Answer => 2,
            CellRole.Compute or CellRole.Problem => 0.5,
            _ => 0,
        }
        : 0;
}
