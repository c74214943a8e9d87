using FlapAero.Handouts.Lessons;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FlapAero.Handouts.Rules;

/// <summary>Each question has a box right behind it, and each box is compared with the result, once and later.</summary>
internal sealed class Predictions : ILessonRule
{
    public IEnumerable<LessonFault> Faults(LessonNotebook lesson)
    {
        LessonCell[] cells = [.. lesson.Cells.Where(cell => cell.Role != CellRole.Instructor)];
        for (int at = 0; at < cells.Length; at++)
        {
            LessonCell cell = cells[at];
            if (cell.Role == CellRole.Predict && (at + 1 == cells.Length || cells[at + 1].Role != CellRole.Commit))
                yield return new LessonFault(lesson.FileName, cell, "asks for a prediction and no commit cell follows",
                    "needed is one right behind it, with the variable that takes the prediction");
            if (cell.Role != CellRole.Commit)
                continue;
            if (at == 0 || cells[at - 1].Role != CellRole.Predict)
                yield return new LessonFault(lesson.FileName, cell, "has no predict cell before it", "needed is one right before it, with the question");
            if (CellNames.Of(cell.Source).LastVariable is not { } variable)
            {
                yield return new LessonFault(lesson.FileName, cell, "declares no variable", "needed is one that takes the prediction, such as var marginGuess = Ratio.FromPercent(0)");
                continue;
            }
            int compared = cells[(at + 1)..].Sum(later => Compares(later, variable));
            if (compared != 1)
                yield return new LessonFault(lesson.FileName, cell, $"takes the prediction {variable}, and {compared} later cells compare it",
                    $"needed is exactly 1: lesson.Compare(what, {variable}, result)");
        }
    }

    private static int Compares(LessonCell cell, string variable) => !cell.IsCode ? 0
        : CellNames.Parsed(cell.Source).DescendantNodes().OfType<InvocationExpressionSyntax>()
            .Count(call => ProseOfACell.NameOf(call) == "Compare" && call.ArgumentList.Arguments.Any(argument => argument.Expression.ToString() == variable));
}
