using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FlapAero.Explorer;

/// <summary>
/// Cells as the compiler sees them, each behind those before it. The compiler's own scripting refuses where assemblies have no
/// file, as in a browser: so its cells are chained here.
/// </summary>
internal sealed class CellChain
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    private static readonly CSharpCompilationOptions Options = new(
        OutputKind.DynamicallyLinkedLibrary, concurrentBuild: false, optimizationLevel: OptimizationLevel.Debug,
        usings: ["System", "System.Collections", "System.Collections.Generic", "System.Linq", "System.Text", "System.Threading.Tasks"]);

    private readonly List<MetadataReference> _references = [];
    private CSharpCompilation? _last;

    /// <summary>How many cells stand in the chain.</summary>
    public int Count { get; private set; }

    /// <summary>Takes an assembly that cells may refer to.</summary>
    public void Refer(MetadataReference assembly) => _references.Add(assembly);

    /// <summary>The code as a cell behind the others. It joins the chain when it is kept.</summary>
    public CSharpCompilation Read(string code) => CSharpCompilation.CreateScriptCompilation(
        string.Create(CultureInfo.InvariantCulture, $"cell-{Count + 1}"),
        CSharpSyntaxTree.ParseText(WithoutOwnReferences(code), Script), _references,
        Options.WithScriptClassName(string.Create(CultureInfo.InvariantCulture, $"Submission#{Count}")), _last, typeof(object));

    /// <summary>Puts a cell at the chain's end: what it declares is seen by the next.</summary>
    public void Keep(CSharpCompilation cell)
    {
        _last = cell;
        Count++;
    }

    /// <summary>The lessons' assembly is here already, wherever a cell looks for it. Blanks keep each place where it was.</summary>
    private static string WithoutOwnReferences(string code)
    {
        var root = (CompilationUnitSyntax)CSharpSyntaxTree.ParseText(code, Script).GetRoot();
        foreach (ReferenceDirectiveTriviaSyntax own in root.GetReferenceDirectives()
            .Where(d => d.File.ValueText.Contains("FlapAero.Notebooks", StringComparison.Ordinal)))
            code = code[..own.SpanStart] + new string(' ', own.File.Span.End - own.SpanStart) + code[own.File.Span.End..];
        return code;
    }
}
