using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FlapAero.Handouts.Lessons;

/// <summary>
/// What a student sees as code, cell by cell, on a page or in the student's notebook: worked examples, places for predictions
/// and answers, numbers to change. Problems and checks are sealed there, prose with numbers is prose, and the setup is the same
/// in every lesson.
/// </summary>
internal static class SeenCode
{
    /// <summary>What is seen of each cell's code; nothing of a cell that is left out.</summary>
    public static IReadOnlyDictionary<LessonCell, string> Of(LessonNotebook notebook)
    {
        var seen = new Dictionary<LessonCell, string>();
        var needed = new HashSet<string>(StringComparer.Ordinal);
        foreach (LessonCell cell in notebook.Cells.Reverse().Where(cell => cell.IsCode))
        {
            if (cell.Role is CellRole.Setup or CellRole.Problem or CellRole.Check or CellRole.Instructor)
                continue;
            string code = cell.Role == CellRole.Answer ? cell.StudentSource : IsProse(cell) ? Numbers(cell, needed) : cell.Source;
            // What the right answer takes, the student's needs too.
            foreach (string source in cell.Role == CellRole.Answer ? new[] { code, cell.Source } : [code])
                needed.UnionWith(CellNames.Of(source).Used);
            if (code.Length > 0)
                seen.Add(cell, code);
        }
        return seen;
    }

    /// <summary>Prose with numbers: it ends in what <c>lesson.Say</c> says, and all before that only serves to say it.</summary>
    public static bool IsProse(LessonCell cell) => cell.IsCode && cell.Role is CellRole.Explain or CellRole.Scenario
        && CellNames.Parsed(cell.Source).Members.LastOrDefault() is GlobalStatementSyntax
        {
            Statement: ExpressionStatementSyntax { Expression: InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Name.Identifier.ValueText: "Say" } } },
        };

    /// <summary>What comes before the prose, where a later cell takes a name from it.</summary>
    private static string Numbers(LessonCell cell, HashSet<string> needed)
    {
        string before = cell.Source[..CellNames.Parsed(cell.Source).Members[^1].SpanStart].TrimEnd();
        return CellNames.Of(before).Declared.Any(needed.Contains) ? before : "";
    }
}
