using FlapAero.Handouts.Lessons;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FlapAero.Handouts.Rules;

/// <summary>What an author has written as prose into a cell: its Markdown, or the texts of <c>lesson.Say</c>.</summary>
internal static class ProseOfACell
{
    /// <summary>What stands for a computed value; no author writes it.</summary>
    public const char Value = '\uFFFC';

    /// <summary>The texts of a cell, a computed value in each as <see cref="Value"/>.</summary>
    public static IEnumerable<string> Texts(LessonCell cell) => !cell.IsCode ? [cell.Source]
        : CellNames.Parsed(cell.Source).DescendantNodes().OfType<InvocationExpressionSyntax>()
            .Where(call => NameOf(call) == "Say")
            .SelectMany(call => call.ArgumentList.DescendantNodes().OfType<ExpressionSyntax>())
            .Select(TextOf).OfType<string>();

    /// <summary>Whether a student reads the cell as part of the lesson.</summary>
    public static bool IsForAStudent(LessonCell cell) => cell.Role is not (CellRole.Instructor or CellRole.Sources);

    /// <summary>The name of what is called, without what it is called on.</summary>
    public static string NameOf(InvocationExpressionSyntax call) =>
        call.Expression is MemberAccessExpressionSyntax member ? member.Name.Identifier.ValueText : call.Expression.ToString();

    private static string? TextOf(ExpressionSyntax expression) => expression switch
    {
        InterpolatedStringExpressionSyntax text => string.Concat(text.Contents.Select(part =>
            part is InterpolatedStringTextSyntax words ? words.TextToken.ValueText : Value.ToString())),
        LiteralExpressionSyntax literal when literal.IsKind(SyntaxKind.StringLiteralExpression) => literal.Token.ValueText,
        _ => null,
    };
}
