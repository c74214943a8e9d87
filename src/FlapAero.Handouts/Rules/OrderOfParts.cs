using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules;

/// <summary>
/// A lesson asks, tells, checks and then practises. Notes to the instructor keep a rule of their own, and prose and worked examples
/// stand wherever they are needed before the problems.
/// </summary>
internal sealed class OrderOfParts : ILessonRule
{
    private const string Order = "scenario, predictions and numbers to change, answers and checks, problems, sources";

    public IEnumerable<LessonFault> Faults(LessonNotebook lesson)
    {
        LessonCell? furthest = null;
        foreach (LessonCell cell in lesson.Cells)
        {
            if (PlaceOf(cell.Role) is not { } place)
                continue;
            if (furthest is not null && PlaceOf(furthest.Role) > place)
                yield return new LessonFault(lesson.FileName, cell,
                    $"has the role {CellRules.Name(cell.Role)} and comes after {furthest}, which has the role {CellRules.Name(furthest.Role)}", $"the order is {Order}");
            else
                furthest = cell;
        }
    }

    private static int? PlaceOf(CellRole role) => role switch
    {
        CellRole.Opening => 0,
        CellRole.Scenario => 1,
        CellRole.Predict or CellRole.Commit or CellRole.Change => 2,
        CellRole.Answer or CellRole.Check => 3,
        CellRole.Problem => 4,
        CellRole.Sources => 5,
        _ => null,
    };
}
