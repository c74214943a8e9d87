using System.Globalization;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules;

/// <summary>A lesson is read in one sitting: so many words of prose, a computed value counted as one.</summary>
internal sealed class WordsForAStudent : ILessonRule
{
    /// <summary>The most words of prose that a student reads in a lesson.</summary>
    public const int Most = 900;

    public static int Count(LessonNotebook lesson) => lesson.Cells.Where(ProseOfACell.IsForAStudent).Sum(Count);

    public IEnumerable<LessonFault> Faults(LessonNotebook lesson)
    {
        int words = Count(lesson);
        if (words <= Most)
            yield break;
        LessonCell longest = lesson.Cells.Where(ProseOfACell.IsForAStudent).MaxBy(Count)!;
        yield return new LessonFault(lesson.FileName, null,
            string.Create(CultureInfo.InvariantCulture, $"has {words} words of prose for a student"),
            string.Create(CultureInfo.InvariantCulture, $"allowed are {Most}: say less, or say it to the instructor (the longest is {longest}, {Count(longest)} words)"));
    }

    /// <summary>The words of one cell.</summary>
    public static int Count(LessonCell cell) => ProseOfACell.Texts(cell)
        .Sum(text => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Count(word => word.Any(c => char.IsLetter(c) || c == ProseOfACell.Value)));
}
