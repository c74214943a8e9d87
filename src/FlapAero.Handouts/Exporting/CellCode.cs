using System.Text;
using FlapAero.Handouts.Lessons;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace FlapAero.Handouts.Exporting;

/// <summary>
/// One code cell taken apart for a program of its own: directives and usings go to the top, types to the end, and the
/// value that the cell ends in is shown by a call.
/// </summary>
internal sealed class CellCode
{
    private readonly List<(TextSpan Span, string By)> _edits = [];
    private readonly List<string> _usings = [];
    private readonly List<string> _types = [];
    private readonly List<(string Line, CellReference? Reference)> _directives = [];

    private CellCode(string source)
    {
        CompilationUnitSyntax root = CellNames.Parsed(source);
        TakeDirectives(root);
        foreach (UsingDirectiveSyntax use in root.Usings)
            Take(use, _usings);
        foreach (MemberDeclarationSyntax member in root.Members.Where(m => m is BaseTypeDeclarationSyntax or DelegateDeclarationSyntax))
            Take(member, _types);
        ShowLastValue(root);
        Statements = Edited(source).Trim();
        Names = CellNames.Of(root);
    }

    /// <summary>The usings, each as it stands.</summary>
    public IReadOnlyList<string> Usings => _usings;

    /// <summary>What runs, in its own lines; may be empty.</summary>
    public string Statements { get; }

    /// <summary>The types that the cell declares.</summary>
    public IReadOnlyList<string> Types => _types;

    /// <summary>The lines for the kernel, such as magic commands and references; of these, what they refer to.</summary>
    public IReadOnlyList<(string Line, CellReference? Reference)> Directives => _directives;

    /// <summary>The names that the cell declares and uses.</summary>
    public CellNames Names { get; }

    public static CellCode Of(string source) => new(source);

    private void TakeDirectives(CompilationUnitSyntax root)
    {
        foreach (SyntaxTrivia trivia in root.DescendantTrivia(descendIntoTrivia: false).Where(t => t.IsDirective))
            if (trivia.GetStructure() is ReferenceDirectiveTriviaSyntax or LoadDirectiveTriviaSyntax or BadDirectiveTriviaSyntax or ShebangDirectiveTriviaSyntax)
            {
                _directives.Add((trivia.ToFullString().Trim(), trivia.GetStructure() is ReferenceDirectiveTriviaSyntax reference ? CellReference.Of(reference) : null));
                _edits.Add((trivia.FullSpan, ""));
            }
    }

    private void Take(SyntaxNode node, List<string> into)
    {
        into.Add(node.ToString());
        _edits.Add((node.Span, ""));
    }

    /// <summary>In a notebook an expression without a semicolon at the very end is the cell's value.</summary>
    private void ShowLastValue(CompilationUnitSyntax root)
    {
        if (root.Members.LastOrDefault() is not GlobalStatementSyntax { Statement: ExpressionStatementSyntax { SemicolonToken.IsMissing: true } last })
            return;
        _edits.Add((new TextSpan(last.Expression.SpanStart, 0), "Terminal.Show("));
        _edits.Add((new TextSpan(last.Expression.Span.End, 0), ");"));
    }

    private string Edited(string source)
    {
        var text = new StringBuilder(source);
        foreach ((TextSpan span, string by) in _edits.OrderByDescending(edit => edit.Span.Start))
            text.Remove(span.Start, span.Length).Insert(span.Start, by);
        return text.ToString();
    }
}
