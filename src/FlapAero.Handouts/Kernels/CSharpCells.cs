using FlapAero.Notebooks;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;

namespace FlapAero.Handouts.Kernels;

/// <summary>
/// C# in .NET Interactive with nothing but what it takes to run cells: no completion and no help for an editor, so no workspace
/// to keep up to date. Cells that are expected are compiled while earlier ones run. One call at a time.
/// </summary>
internal sealed class CSharpCells : Kernel
{
    /// <summary>A notebook's own helpers, such as display.</summary>
    private const string Helpers = "using static Microsoft.DotNet.Interactive.Kernel;";

    private static readonly ScriptOptions Options = ScriptOptions.Default
        .WithLanguageVersion(LanguageVersion.Latest)
        .WithImports("System", "System.Collections", "System.Collections.Generic", "System.Linq", "System.Text", "System.Threading.Tasks")
        .AddReferences(typeof(Enumerable).Assembly, typeof(Kernel).Assembly, typeof(Formatter).Assembly)
        .WithMetadataResolver(KnownReferences.OfThisProcess);

    private readonly Queue<(string Code, Task<Script<object>> Compiled)> _expected = new();
    private Task<Script<object>> _last = Task.Run(() => Compiled(CSharpScript.Create(Helpers, Options)));
    private ScriptState<object>? _state;

    public CSharpCells()
        : base("csharp") => RegisterCommandHandler<RunCell>(RunAsync);

    /// <summary>Compiles cells in this order from now on, in the background; each sees what those before it declare.</summary>
    public void Expect(IEnumerable<string> cells)
    {
        _expected.Clear();
        Task<Script<object>> previous = _last;
        foreach (string code in cells)
            _expected.Enqueue((code, previous = CompileAsync(previous, code)));
    }

    /// <summary>Runs a cell, the next expected one or another; after another nothing is expected any more.</summary>
    public Task<KernelCommandResult> RunAsync(string code, CancellationToken cancellationToken)
    {
        if (_expected.TryPeek(out (string Code, Task<Script<object>> Compiled) next) && next.Code == code)
            return SendAsync(new RunCell(_expected.Dequeue().Compiled), cancellationToken);
        _expected.Clear();
        return SendAsync(new RunCell(CompileAsync(_last, code)), cancellationToken);
    }

    private static async Task<Script<object>> CompileAsync(Task<Script<object>> previous, string code)
    {
        Script<object> before = await previous.ConfigureAwait(false);
        return await Task.Run(() => Compiled(before.ContinueWith(code, Options))).ConfigureAwait(false);
    }

    /// <summary>Script.Compile would look for warnings, as long again.</summary>
    private static Script<object> Compiled(Script<object> script)
    {
        script.CreateDelegate();
        return script;
    }

    private async Task RunAsync(RunCell command, KernelInvocationContext context)
    {
        Script<object> script;
        try
        {
            script = await command.Compiled.ConfigureAwait(false);
        }
        catch (CompilationErrorException e)
        {
            _expected.Clear();
            context.Fail(command, e);
            return;
        }
        _last = command.Compiled;
        _state = _state is null
            ? await script.RunAsync(catchException: _ => true, cancellationToken: context.CancellationToken).ConfigureAwait(false)
            : await script.RunFromAsync(_state, catchException: _ => true, context.CancellationToken).ConfigureAwait(false);
        if (_state.Exception is { } exception)
            context.Fail(command, exception);
        else if (_state.ReturnValue is not null || EndsInAValue(script))
            context.Publish(new ReturnValueProduced(_state.ReturnValue, command, Formatted(_state.ReturnValue)));
    }

    /// <summary>A value as it is shown first, and its key beside it where it has one.</summary>
    private static FormattedValue[] Formatted(object? value) =>
        value is not null && Formatter.GetPreferredMimeTypesFor(value.GetType()).Contains(KeyOutput.MimeType)
            ? [FormattedValue.CreateSingleFromObject(value), FormattedValue.CreateSingleFromObject(value, KeyOutput.MimeType)]
            : [FormattedValue.CreateSingleFromObject(value)];

    /// <summary>Whether the last line is an expression with a value: null is one, too.</summary>
    private static bool EndsInAValue(Script script)
    {
        Compilation compilation = script.GetCompilation();
        SyntaxTree tree = compilation.SyntaxTrees.Single();
        return ((CompilationUnitSyntax)tree.GetRoot()).Members.LastOrDefault() is GlobalStatementSyntax { Statement: ExpressionStatementSyntax { SemicolonToken.IsMissing: true } last }
            && compilation.GetSemanticModel(tree).GetTypeInfo(last.Expression).ConvertedType is { SpecialType: not SpecialType.System_Void };
    }

    private sealed class RunCell(Task<Script<object>> compiled) : Microsoft.DotNet.Interactive.Commands.KernelCommand
    {
        public Task<Script<object>> Compiled { get; } = compiled;
    }
}
