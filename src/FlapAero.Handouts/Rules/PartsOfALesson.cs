using System.Globalization;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Rules;

/// <summary>What every lesson has: it asks before it tells, checks, lets change, gives problems, names its sources, and warns.</summary>
internal sealed class PartsOfALesson : ILessonRule
{
    public const int FewestPredictions = 2, FewestProblems = 5;

    private static readonly (CellRole Role, int Fewest)[] Needed =
    [
        (CellRole.Scenario, 1), (CellRole.Predict, FewestPredictions), (CellRole.Compute, 1), (CellRole.Change, 1),
        (CellRole.Answer, 1), (CellRole.Check, 1), (CellRole.Problem, FewestProblems),
    ];

    private static readonly string[] PlanElements = ["Objective", "Content", "Equipment", "Instructor's actions", "Students' actions", "Completion standards"];

    public IEnumerable<LessonFault> Faults(LessonNotebook lesson)
    {
        if (!LessonRules.AsksSomething(lesson))
            yield break;
        foreach ((CellRole role, int fewest) in Needed)
            if (Count(lesson, role) < fewest)
                yield return Fault(lesson, $"has {Count(lesson, role)} cells of the role {CellRules.Name(role)}", $"needed {(fewest == 1 ? "is at least 1" : $"are at least {fewest}")}");
        if (Count(lesson, CellRole.Sources) != 1)
            yield return Fault(lesson, $"has {Count(lesson, CellRole.Sources)} cells of the role sources", $"needed is exactly 1, with a key of docs/references.md for each source, and what is common practice");
        if (lesson.Cells.FirstOrDefault() is { Role: CellRole.Opening } opening && !opening.Source.Contains(Caution.Text, StringComparison.Ordinal))
            yield return new LessonFault(lesson.FileName, opening, "does not hold the caution", $"needed is, as a quotation: \"**Caution.** {Caution.Text}\"");
        foreach (LessonCell plan in lesson.Cells.Where(cell => cell.Note == InstructorNote.Plan))
            if (PlanElements.Where(element => !plan.Source.Contains($"**{element}.**", StringComparison.Ordinal)).ToArray() is { Length: > 0 } missing)
                yield return new LessonFault(lesson.FileName, plan, $"is a lesson plan without {string.Join(", ", missing)}", $"needed are, each as **Name.**: {string.Join(", ", PlanElements)}");
    }

    private static int Count(LessonNotebook lesson, CellRole role) => lesson.Cells.Count(cell => cell.Role == role);

    private static LessonFault Fault(LessonNotebook lesson, FormattableString found, FormattableString needed) =>
        new(lesson.FileName, null, found.ToString(CultureInfo.InvariantCulture), needed.ToString(CultureInfo.InvariantCulture));
}
