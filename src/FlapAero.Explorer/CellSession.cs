using System.Globalization;
using System.Reflection;
using System.Runtime.Loader;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.DotNet.Interactive.Formatting;

namespace FlapAero.Explorer;

/// <summary>Runs cells, each of which sees what those before it declare.</summary>
internal sealed class CellSession
{
    private readonly CellChain _chain = new();
    private readonly Dictionary<string, Assembly> _cells = new(StringComparer.Ordinal);
    private object?[] _states = [null];

    public CellSession()
    {
        Names = new CellNames(_chain);
        AssemblyLoadContext.Default.Resolving += (_, name) => _cells.GetValueOrDefault(name.Name ?? "");
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
    }

    /// <summary>Takes the bytes of an assembly that cells may refer to.</summary>
    public void Refer(byte[] assembly) => _chain.Refer(MetadataReference.CreateFromImage(assembly));

    /// <summary>The names that can stand in a cell, and what they mean.</summary>
    public CellNames Names { get; }

    /// <summary>Runs a cell.</summary>
    public async Task<CellReply> RunAsync(string code)
    {
        CSharpCompilation cell = _chain.Read(code);
        using var bytes = new MemoryStream();
        var emitted = cell.Emit(bytes);
        Diagnostic[] faults = [.. emitted.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error)];
        if (faults.Length > 0)
            return new CellReply([], ErrorWords.OfCompiler(faults, code));
        // Of usings and comments alone the compiler makes nothing that could run.
        if (!emitted.Success)
        {
            _chain.Keep(cell);
            return new CellReply([], "");
        }
        Assembly assembly = Assembly.Load(bytes.ToArray());
        _cells[cell.AssemblyName!] = assembly;
        _chain.Keep(cell);
        IMethodSymbol entry = cell.GetEntryPoint(CancellationToken.None)!;
        MethodInfo factory = assembly.GetType(entry.ContainingType.MetadataName, throwOnError: true)!
            .GetMethod(entry.MetadataName, BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public)!;
        Array.Resize(ref _states, _chain.Count + 1);
        return await RunAsync(factory, EndsInAValue(cell));
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

    /// <summary>Whether the last line is an expression with a value: null is one, too.</summary>
    private static bool EndsInAValue(CSharpCompilation cell) =>
        cell.SyntaxTrees[0].GetCompilationUnitRoot().Members.LastOrDefault() is GlobalStatementSyntax
        {
            Statement: ExpressionStatementSyntax { SemicolonToken.IsMissing: true } last,
        } && cell.GetSemanticModel(cell.SyntaxTrees[0]).GetTypeInfo(last.Expression).ConvertedType is { SpecialType: not SpecialType.System_Void };
}
