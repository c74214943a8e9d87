using System.Text.RegularExpressions;
using FlapAero.Handouts.Lessons;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FlapAero.Handouts.Rules;

/// <summary>Two slips in a text that compiles all the same: a hole that is none, and TeX with a backslash too many.</summary>
internal sealed partial class TextsInCode : ILessonRule
{
    public IEnumerable<LessonFault> Faults(LessonNotebook lesson)
    {
        var declared = new HashSet<string>(StringComparer.Ordinal) { "lesson" };
        foreach (LessonCell cell in lesson.Cells)
        {
            if (!cell.IsCode)
            {
                foreach (string tex in DoubledBackslash().Matches(cell.Source).Select(match => match.Value).Distinct())
                    yield return Doubled(lesson, cell, tex);
                continue;
            }
            CompilationUnitSyntax code = CellNames.Parsed(cell.Source);
            declared.UnionWith(CellNames.Of(code).Declared);
            foreach (SyntaxToken token in code.DescendantTokens().Where(IsText))
            {
                foreach (string name in HoleThatIsNone().Matches(token.ValueText).Select(match => match.Groups["name"].Value).Where(declared.Contains).Distinct())
                    yield return new LessonFault(lesson.FileName, cell, $"has {{{name}}} as mere words in a text: a $ before the quotation marks is missing",
                        $"needed are as many $ as there are braces around {name}");
                if (IsRaw(token))
                    foreach (string tex in DoubledBackslash().Matches(token.Text).Select(match => match.Value).Distinct())
                        yield return Doubled(lesson, cell, tex);
            }
        }
    }

    private static LessonFault Doubled(LessonNotebook lesson, LessonCell cell, string tex) => new(lesson.FileName, cell,
        $"has {tex} with two backslashes", $"needed is {tex[1..]}: Markdown and a text between three quotation marks take a backslash as it is");

    private static bool IsText(SyntaxToken token) => token.Kind() is SyntaxKind.StringLiteralToken or SyntaxKind.InterpolatedStringTextToken
        or SyntaxKind.SingleLineRawStringLiteralToken or SyntaxKind.MultiLineRawStringLiteralToken;

    private static bool IsRaw(SyntaxToken token) =>
        token.Kind() is SyntaxKind.SingleLineRawStringLiteralToken or SyntaxKind.MultiLineRawStringLiteralToken
        || token.Parent?.Parent is InterpolatedStringExpressionSyntax text && text.StringStartToken.Text.Contains("\"\"\"", StringComparison.Ordinal);

    /// <summary>A name in braces; after a letter or a sign of TeX, braces belong to TeX.</summary>
    [GeneratedRegex(@"(?<![\w{}^\\])\{+(?<name>[A-Za-z]\w*)(?=[^{}]*\})", RegexOptions.CultureInvariant)]
    private static partial Regex HoleThatIsNone();

    [GeneratedRegex(@"\\\\[A-Za-z]+", RegexOptions.CultureInvariant)]
    private static partial Regex DoubledBackslash();
}
