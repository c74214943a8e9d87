using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;

namespace FlapAero.KernelStart;

/// <summary>
/// A cell that fails leaves what an earlier run of it declared, and a check would judge that old answer. So a check of a
/// name whose last cell failed is refused in words.
/// </summary>
internal sealed class AnswersThatFailed : IObserver<KernelEvent>
{
    private static readonly CSharpParseOptions Script = CSharpParseOptions.Default.WithKind(SourceCodeKind.Script).WithLanguageVersion(LanguageVersion.Latest);

    private readonly HashSet<string> _failed = [];

    /// <summary>Watches over the cells of a kernel.</summary>
    public static void Watch(Kernel root, CSharpKernel kernel)
    {
        var watch = new AnswersThatFailed();
        root.KernelEvents.Subscribe(watch);
        kernel.AddMiddleware(watch.HandleAsync);
    }

    public void OnNext(KernelEvent value)
    {
        if (value.Command is not SubmitCode cell)
            return;
        if (value is CommandFailed { Exception: not OldAnswerException })
            _failed.UnionWith(SetBy(cell.Code));
        else if (value is CommandSucceeded)
            _failed.ExceptWith(SetBy(cell.Code));
    }

    public void OnCompleted()
    {
    }

    public void OnError(Exception error)
    {
    }

    /// <summary>The names whose old values a cell would judge.</summary>
    internal IEnumerable<string> OldIn(string cell) => _failed.Count == 0
        ? []
        : Root(cell).DescendantNodes().OfType<InvocationExpressionSyntax>()
            .Where(call => call.Expression is MemberAccessExpressionSyntax { Name.Identifier.Text: "Check" or "CheckSealed" })
            .SelectMany(call => call.ArgumentList.DescendantNodes().OfType<IdentifierNameSyntax>())
            .Select(name => name.Identifier.Text)
            .Where(_failed.Contains);

    private Task HandleAsync(KernelCommand command, KernelInvocationContext context, KernelPipelineContinuation next)
    {
        if (command is SubmitCode cell && OldIn(cell.Code).FirstOrDefault() is { } name)
        {
            context.Fail(command, new OldAnswerException(name));
            return Task.CompletedTask;
        }
        return next(command, context);
    }

    private static IEnumerable<string> SetBy(string cell)
    {
        SyntaxNode root = Root(cell);
        return root.DescendantNodes().OfType<VariableDeclaratorSyntax>().Select(variable => variable.Identifier.Text)
            .Concat(root.DescendantNodes().OfType<AssignmentExpressionSyntax>().Select(set => set.Left).OfType<IdentifierNameSyntax>().Select(name => name.Identifier.Text));
    }

    private static SyntaxNode Root(string cell) => CSharpSyntaxTree.ParseText(cell, Script).GetRoot();
}
