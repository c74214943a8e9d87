using System.Globalization;
using FlapAero.Handouts.Lessons;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FlapAero.Handouts.Rules;

/// <summary>Of code a student sees no more than a person reads at a time, and little of it is about the language.</summary>
internal sealed class CodeThatIsSeen : ILessonRule
{
    /// <summary>A student reads no more lines at a time.</summary>
    public const int MostLines = 8;

    /// <summary>A line is no longer.</summary>
    public const int MostColumns = 100;

    /// <summary>Functions and lambdas of a cell, besides the columns of a table.</summary>
    public const int MostFunctions = 3;

    public IEnumerable<LessonFault> Faults(LessonNotebook lesson)
    {
        IReadOnlyDictionary<LessonCell, string> seen = SeenCode.Of(lesson);
        return lesson.Cells.Where(seen.ContainsKey).SelectMany(cell => Faults(lesson, cell, seen[cell]));
    }

    private static IEnumerable<LessonFault> Faults(LessonNotebook lesson, LessonCell cell, string code)
    {
        LessonFault Fault(FormattableString found, FormattableString allowed) =>
            new(lesson.FileName, cell, found.ToString(CultureInfo.InvariantCulture), allowed.ToString(CultureInfo.InvariantCulture));
        string[] lines = code.Split('\n');
        if (lines.Length > MostLines)
            yield return Fault($"shows a student {lines.Length} lines of code", $"allowed are {MostLines}: what lessons need again and again belongs in the library");
        foreach ((int at, string line) in lines.Index().Where(line => line.Item.Length > MostColumns))
            yield return Fault($"shows a student a line of {line.Length} columns, line {at + 1}", $"allowed are {MostColumns}: break it, or name a part of it");
        SyntaxNode[] functions = [.. CellNames.Parsed(code).DescendantNodes().Where(node => IsFunction(node) && !node.Ancestors().Any(above => above is TupleExpressionSyntax))];
        if (functions.Length > MostFunctions)
            yield return Fault($"shows a student {functions.Length} functions and lambdas besides a table's columns", $"allowed are {MostFunctions}: write a calculation out, or move it into the library");
    }

    /// <summary>A table's columns are tuples of a heading and a lambda.</summary>
    private static bool IsFunction(SyntaxNode node) => node is LambdaExpressionSyntax or LocalFunctionStatementSyntax or MethodDeclarationSyntax;
}
