using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FlapAero.Handouts.Exporting;

/// <summary>
/// The names that a cell hands to later cells, and those that it takes from earlier ones. By syntax alone; where that is
/// unsure a name counts as used, which at worst refuses an export.
/// </summary>
internal static class CellNames
{
    public static IReadOnlySet<string> Declared(CompilationUnitSyntax root)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (MemberDeclarationSyntax member in root.Members)
            switch (member)
            {
                case BaseFieldDeclarationSyntax field:
                    names.UnionWith(field.Declaration.Variables.Select(v => v.Identifier.ValueText));
                    break;
                case MethodDeclarationSyntax function:
                    names.Add(function.Identifier.ValueText);
                    break;
                case PropertyDeclarationSyntax property:
                    names.Add(property.Identifier.ValueText);
                    break;
                case BaseTypeDeclarationSyntax type:
                    names.Add(type.Identifier.ValueText);
                    break;
            }
        foreach (SyntaxNode node in root.DescendantNodes(node => node is not (AnonymousFunctionExpressionSyntax or MethodDeclarationSyntax or LocalFunctionStatementSyntax or BlockSyntax or BaseTypeDeclarationSyntax)))
            switch (node)
            {
                case SingleVariableDesignationSyntax variable:
                    names.Add(variable.Identifier.ValueText);
                    break;
                case LocalDeclarationStatementSyntax local:
                    names.UnionWith(local.Declaration.Variables.Select(v => v.Identifier.ValueText));
                    break;
                case LocalFunctionStatementSyntax function:
                    names.Add(function.Identifier.ValueText);
                    break;
            }
        return names;
    }

    public static IReadOnlySet<string> Used(CompilationUnitSyntax root) => root.DescendantNodes()
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
