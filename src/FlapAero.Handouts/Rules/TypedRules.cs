using System.Text.RegularExpressions;
using FlapAero.Handouts.Lessons;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FlapAero.Handouts.Rules;

/// <summary>
/// The reference multiple is the school's: typed, it is wrong in the next school. It is looked for in words beside a stall or a reference
/// speed, as a multiplier in them, and in code where it multiplies, divides or asks for a reference speed. Sources cite the regulation's.
/// </summary>
internal sealed partial class TypedRules : ILessonRule
{
    private static readonly double Usual = BriefingTechnique.FinalMultiple;

    public IEnumerable<LessonFault> Faults(LessonNotebook lesson) =>
        from cell in lesson.Cells
        where cell.Role != CellRole.Sources
        from found in (cell.IsCode ? InCode(CellNames.Parsed(cell.Source)) : InWords(cell.Source)).Distinct()
        select new LessonFault(lesson.FileName, cell, $"has the reference multiple typed, \"{found}\"",
            "it is the school's rule: needed is {lesson.Multiples()} or {up.Multiple()} in a text, up.ReferenceMultiple in code, "
            + "or the words \"reference speed\"; only sources cite the regulation's number");

    private static IEnumerable<string> InCode(SyntaxNode code) =>
        code.DescendantTokens(descendIntoTrivia: false).SelectMany(token => token.Kind() switch
        {
            SyntaxKind.NumericLiteralToken => token.Value is double value && value == Usual && IsMultiple(token.Parent!) ? [token.Parent!.Parent!.ToString()] : [],
            SyntaxKind.StringLiteralToken or SyntaxKind.InterpolatedStringTextToken or SyntaxKind.SingleLineRawStringLiteralToken
                or SyntaxKind.MultiLineRawStringLiteralToken => InWords(token.ValueText),
            _ => Array.Empty<string>(),
        });

    private static bool IsMultiple(SyntaxNode number) => number.Parent switch
    {
        BinaryExpressionSyntax sum => sum.IsKind(SyntaxKind.MultiplyExpression) || sum.IsKind(SyntaxKind.DivideExpression),
        ArgumentSyntax { Parent.Parent: InvocationExpressionSyntax call } => ProseOfACell.NameOf(call) == nameof(Configuration.ReferenceSpeed),
        _ => false,
    };

    private static string[] InWords(string text) => [.. Multiple().Matches(text).Select(match => match.Value.ReplaceLineEndings(" ").Trim())];

    [GeneratedRegex(@"(?<![\w.,\u2212-])\$?1\.3\$?(?=\s+(?:times|here|of the stall)|\s*(?:×|\\times|V_))(?:\s+\w+)?|\*\s*1\.3(?!\d)", RegexOptions.CultureInvariant)]
    private static partial Regex Multiple();
}
