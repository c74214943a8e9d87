using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace FlapAero.Handouts.Lessons;

/// <summary>What a <c>#r</c> of a cell refers to: a package by its name and version, or an assembly by its path.</summary>
internal sealed class CellReference
{
    private const string PackageMark = "nuget:";

    private CellReference(ReferenceDirectiveTriviaSyntax directive)
    {
        Quoted = directive.File.Span;
        string value = directive.File.ValueText;
        if (!value.StartsWith(PackageMark, StringComparison.Ordinal))
        {
            Assembly = value.Split('/', '\\')[^1];
            return;
        }
        string[] parts = [.. value[PackageMark.Length..].Split(',').Select(part => part.Trim())];
        if (parts.Length > 2 || !parts.All(IsName))
            return;
        Package = parts[0];
        Version = parts.Length > 1 ? parts[1] : null;
    }

    /// <summary>The package's name; null of an assembly, and of a line that names no package in order.</summary>
    public string? Package { get; }

    /// <summary>The version that is asked for; null where any will do.</summary>
    public string? Version { get; }

    /// <summary>The file's name without its folder; null of a package.</summary>
    public string? Assembly { get; }

    /// <summary>Where it stands in the cell, with its quotation marks.</summary>
    public TextSpan Quoted { get; }

    /// <summary>The references of a cell in their order.</summary>
    public static IReadOnlyList<CellReference> In(CompilationUnitSyntax root) =>
        [.. root.DescendantTrivia().Where(t => t.IsDirective).Select(t => t.GetStructure()).OfType<ReferenceDirectiveTriviaSyntax>().Select(Of).OfType<CellReference>()];

    /// <summary>Of one line; null where its quotation marks are missing.</summary>
    public static CellReference? Of(ReferenceDirectiveTriviaSyntax directive) => directive.File.IsMissing ? null : new(directive);

    private static bool IsName(string text) => text.Length > 0 && text.All(c => char.IsLetterOrDigit(c) || c is '.' or '-' or '_' or '*' or '+');
}
