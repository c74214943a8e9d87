using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FlapAero.Handouts.Lessons;

/// <summary>
/// The names that a cell hands to later cells, and those that it takes from earlier ones. By syntax alone; where that is
/// unsure a name counts as used, which at worst refuses an export.
/// </summary>
internal sealed class CellNames
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    private readonly List<(string Name, SyntaxNode At)> _variables;

    private CellNames(CompilationUnitSyntax root)
    {
        _variables = [.. Variables(root).OrderBy(v => v.At.SpanStart)];
        Declared = _variables.Select(v => v.Name).Concat(FunctionsAndTypes(root)).ToHashSet(StringComparer.Ordinal);
        Used = NamesUsed(root);
    }

    /// <summary>The names that the cell declares for the cells after it.</summary>
    public IReadOnlySet<string> Declared { get; }

    /// <summary>The names that the cell uses and does not only mention as a member of something.</summary>
    public IReadOnlySet<string> Used { get; }

    /// <summary>The variable that the cell declares last, or null.</summary>
    public string? LastVariable => _variables.Count == 0 ? null : _variables[^1].Name;

    public static CellNames Of(string source) => new(Parsed(source));

    public static CellNames Of(CompilationUnitSyntax root) => new(root);

    /// <summary>A cell as the compiler reads it.</summary>
    public static CompilationUnitSyntax Parsed(string source) => (CompilationUnitSyntax)CSharpSyntaxTree.ParseText(source, Script).GetRoot();

    /// <summary>The statements that declare a variable, each as it stands.</summary>
    public IEnumerable<string> StatementsOf(string variable) =>
        _variables.Where(v => v.Name == variable).Select(v => v.At.AncestorsAndSelf().OfType<MemberDeclarationSyntax>().First().ToString());

    private static IEnumerable<(string Name, SyntaxNode At)> Variables(CompilationUnitSyntax root)
    {
        foreach (BaseFieldDeclarationSyntax field in root.Members.OfType<BaseFieldDeclarationSyntax>())
            foreach (VariableDeclaratorSyntax variable in field.Declaration.Variables)
                yield return (variable.Identifier.ValueText, variable);
        foreach (SyntaxNode node in Outside(root))
            if (node is SingleVariableDesignationSyntax variable)
                yield return (variable.Identifier.ValueText, variable);
            else if (node is LocalDeclarationStatementSyntax local)
                foreach (VariableDeclaratorSyntax declared in local.Declaration.Variables)
                    yield return (declared.Identifier.ValueText, declared);
    }

    private static IEnumerable<string> FunctionsAndTypes(CompilationUnitSyntax root) => root.Members
        .Select(member => member switch
        {
            MethodDeclarationSyntax function => function.Identifier.ValueText,
            PropertyDeclarationSyntax property => property.Identifier.ValueText,
            BaseTypeDeclarationSyntax type => type.Identifier.ValueText,
            _ => null,
        })
        .Concat(Outside(root).OfType<LocalFunctionStatementSyntax>().Select(function => function.Identifier.ValueText))
        .OfType<string>();

    /// <summary>What is not inside a function, a block or a type: names declared in there stay there.</summary>
    private static IEnumerable<SyntaxNode> Outside(CompilationUnitSyntax root) => root.DescendantNodes(
        node => node is not (AnonymousFunctionExpressionSyntax or MethodDeclarationSyntax or LocalFunctionStatementSyntax or BlockSyntax or BaseTypeDeclarationSyntax));

    private static HashSet<string> NamesUsed(CompilationUnitSyntax root) => root.DescendantNodes()
        .OfType<SimpleNameSyntax>()
        .Where(name => name.Parent is not (NameColonSyntax or NameEqualsSyntax)
            && !(name.Parent is MemberAccessExpressionSyntax access && access.Name == name)
            && !IsParameter(name))
        .Select(name => name.Identifier.ValueText)
        .ToHashSet(StringComparer.Ordinal);

    private static bool IsParameter(SimpleNameSyntax name)
    {
        string text = name.Identifier.ValueText;
        return name.Ancestors().Any(ancestor => ancestor switch
        {
            SimpleLambdaExpressionSyntax lambda => lambda.Parameter.Identifier.ValueText == text,
            ParenthesizedLambdaExpressionSyntax lambda => lambda.ParameterList.Parameters.Any(p => p.Identifier.ValueText == text),
            BaseMethodDeclarationSyntax method => method.ParameterList.Parameters.Any(p => p.Identifier.ValueText == text),
            LocalFunctionStatementSyntax function => function.ParameterList.Parameters.Any(p => p.Identifier.ValueText == text),
            _ => false,
        });
    }
}
