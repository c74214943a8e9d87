using System.Globalization;
using System.Reflection;
using System.Runtime.Loader;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.DotNet.Interactive.Formatting;

namespace FlapAero.Explorer;

/// <summary>
/// Compiles and runs cells, each of which sees what those before it declare. The compiler's own scripting refuses where
/// assemblies have no file, as in a browser: so its cells are chained here.
/// </summary>
internal sealed class CellSession
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    private static readonly CSharpCompilationOptions Options = new(
        OutputKind.DynamicallyLinkedLibrary, concurrentBuild: false, optimizationLevel: OptimizationLevel.Debug,
        usings: ["System", "System.Collections", "System.Collections.Generic", "System.Linq", "System.Text", "System.Threading.Tasks"]);

    private readonly List<MetadataReference> _references = [];
    private readonly Dictionary<string, Assembly> _cells = new(StringComparer.Ordinal);
    private CSharpCompilation? _last;
    private object?[] _states = [null];
    private int _slot;

    public CellSession()
    {
        AssemblyLoadContext.Default.Resolving += (_, name) => _cells.GetValueOrDefault(name.Name ?? "");
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
    }

    /// <summary>Takes the bytes of an assembly that cells may refer to.</summary>
    public void Refer(byte[] assembly) => _references.Add(MetadataReference.CreateFromImage(assembly));

    /// <summary>Runs a cell.</summary>
    public async Task<CellReply> RunAsync(string code)
    {
        SyntaxTree tree = CSharpSyntaxTree.ParseText(WithoutOwnReferences(code), Script);
        string name = string.Create(CultureInfo.InvariantCulture, $"cell-{_slot + 1}");
        var cell = CSharpCompilation.CreateScriptCompilation(
            name, tree, _references, Options.WithScriptClassName(string.Create(CultureInfo.InvariantCulture, $"Submission#{_slot}")),
            _last, typeof(object));
        using var bytes = new MemoryStream();
        var emitted = cell.Emit(bytes);
        if (!emitted.Success)
            return new CellReply([], ErrorWords.OfCompiler(emitted.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error), code));
        Assembly assembly = Assembly.Load(bytes.ToArray());
        _cells[name] = assembly;
        _last = cell;
        IMethodSymbol entry = cell.GetEntryPoint(CancellationToken.None)!;
        MethodInfo factory = assembly.GetType(entry.ContainingType.MetadataName, throwOnError: true)!
            .GetMethod(entry.MetadataName, BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public)!;
        Array.Resize(ref _states, ++_slot + 1);
        return await RunAsync(factory, EndsInAValue(cell, tree));
    }

    private async Task<CellReply> RunAsync(MethodInfo factory, bool endsInAValue)
    {
        var outputs = new List<CellOutput>();
        TextWriter before = Console.Out;
        using var console = new StringWriter(CultureInfo.InvariantCulture);
        string failure = "";
        Console.SetOut(console);
        try
        {
            object? value = await (Task<object>)factory.Invoke(null, [_states])!;
            AddConsole();
            if (value is not null || endsInAValue)
                outputs.Add(Shown(value));
        }
        catch (Exception e)
        {
            AddConsole();
            failure = ErrorWords.Of(e);
        }
        finally
        {
            Console.SetOut(before);
        }
        return new CellReply(outputs, failure);

        void AddConsole()
        {
            if (console.ToString().Trim().Length > 0)
                outputs.Add(new CellOutput(false, console.ToString().ReplaceLineEndings("\n").TrimEnd()));
        }
    }

    private static CellOutput Shown(object? value)
    {
        string type = value is null ? HtmlFormatter.MimeType : Formatter.GetPreferredMimeTypesFor(value.GetType()).First();
        return new CellOutput(type == HtmlFormatter.MimeType, value.ToDisplayString(type).ReplaceLineEndings("\n"));
    }

    /// <summary>The lessons' assembly is here already, wherever a cell looks for it.</summary>
    private static string WithoutOwnReferences(string code)
    {
        var root = (CompilationUnitSyntax)CSharpSyntaxTree.ParseText(code, Script).GetRoot();
        foreach (ReferenceDirectiveTriviaSyntax directive in root.GetReferenceDirectives().Where(d => d.File.ValueText.Contains("FlapAero.Notebooks", StringComparison.Ordinal)).Reverse())
            code = code.Remove(directive.SpanStart, directive.File.Span.End - directive.SpanStart);
        return code;
    }

    /// <summary>Whether the last line is an expression with a value: null is one, too.</summary>
    private static bool EndsInAValue(CSharpCompilation cell, SyntaxTree tree) =>
        ((CompilationUnitSyntax)tree.GetRoot()).Members.LastOrDefault() is GlobalStatementSyntax { Statement: ExpressionStatementSyntax { SemicolonToken.IsMissing: true } last }
            && cell.GetSemanticModel(tree).GetTypeInfo(last.Expression).ConvertedType is { SpecialType: not SpecialType.System_Void };
}
