using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Rules;

/// <summary>Every rule that is known without a run. A new one is a class beside the others and a line here.</summary>
internal static class LessonRules
{
    private static readonly ILessonRule[] All =
    [
        new PartsOfALesson(),
        new OrderOfParts(),
        new Predictions(),
        new Answers(),
        new NumbersToChange(),
        new Titles(),
        new WordsForAStudent(),
        new MinutesOfASection(),
        new CodeThatIsSeen(),
        new CodeThatIsSealed(),
        new TypedNumbers(),
        new TypedRules(),
        new TextsInCode(),
        new SourceKeys(),
    ];

    /// <summary>All faults at once, rule by rule. A student's copy is made, and keeps no rule of an author.</summary>
    public static IEnumerable<LessonFault> Faults(LessonNotebook lesson) =>
        IsStudentsCopy(lesson) ? [] : All.SelectMany(rule => rule.Faults(lesson));

    /// <summary>Whether a notebook asks something of a class. Prose alone is no lesson yet, and lacks no part.</summary>
    public static bool AsksSomething(LessonNotebook lesson) =>
        lesson.Cells.Any(cell => cell.Role is CellRole.Predict or CellRole.Commit or CellRole.Problem);

    /// <summary>Whether a notebook is the copy that students get: it comes from the package, and nobody writes it or teaches from it.</summary>
    public static bool IsStudentsCopy(LessonNotebook lesson) => lesson.Cells.Any(
        cell => cell.Role == CellRole.Setup && cell.Source.Contains(Lesson.PackageReference, StringComparison.Ordinal));
}
