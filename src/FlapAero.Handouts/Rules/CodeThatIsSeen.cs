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

    /// <summary>Tuples and lambdas of a cell, together: a pair of names with a pair of values is a tuple.</summary>
    public const int MostTuplesAndLambdas = 1;

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
        SyntaxNode[] nodes = [.. CellNames.Parsed(code).DescendantNodes()];
        int functions = nodes.Count(node => node is LocalFunctionStatementSyntax or MethodDeclarationSyntax);
        if (functions > 0)
            yield return Fault($"shows a student functions of its own: {functions}", $"allowed are none: write a calculation out, or move it into the library");
        int tuplesAndLambdas = nodes.Count(IsTupleOrLambda);
        if (tuplesAndLambdas > MostTuplesAndLambdas)
            yield return Fault(
                $"shows a student {tuplesAndLambdas} tuples and lambdas",
                $"allowed are {MostTuplesAndLambdas}: give each name a line of its own, write a calculation out, or move it into the library");
    }

    /// <summary>Of a pair of names with a pair of values only the names count, and of a tuple in a tuple the outer one.</summary>
    private static bool IsTupleOrLambda(SyntaxNode node) => node switch
    {
        AnonymousFunctionExpressionSyntax or TupleTypeSyntax => true,
        ParenthesizedVariableDesignationSyntax => node.Parent is not ParenthesizedVariableDesignationSyntax,
        TupleExpressionSyntax => !node.Ancestors().Any(above => above is TupleExpressionSyntax)
            && !(node.Parent is AssignmentExpressionSyntax { Left: TupleExpressionSyntax or DeclarationExpressionSyntax } pair && pair.Right == node),
        _ => false,
    };
}
