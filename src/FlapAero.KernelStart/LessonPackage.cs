using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;

namespace FlapAero.KernelStart;

/// <summary>
/// A student's notebook asks for the lessons' package by its name, from whatever folder. Here it gets the assembly that
/// the kernel's entry knows, so that no package is looked for; a kernel that is not ours finds it in a feed.
/// </summary>
internal sealed class LessonPackage
{
    /// <summary>The variable of the entry that carries the folder; the entry's writer spells it likewise.</summary>
    private const string FolderVariable = "FLAPAERO_LESSONS";

    private const string Package = "FlapAero.Notebooks";

    /// <summary>The kernel's own type for a directive without a command of its own; it is not public.</summary>
    private const string RestoreCommand = "DirectiveCommand";

    private readonly CSharpKernel _kernel;
    private readonly string _assembly;

    private bool _isServed;
    private bool _isOtherWanted;

    private LessonPackage(CSharpKernel kernel, string assembly) => (_kernel, _assembly) = (kernel, assembly);

    /// <summary>The lessons' assembly that the entry names, or null where none is there.</summary>
    public static string? KnownAssembly =>
        Environment.GetEnvironmentVariable(FolderVariable) is { Length: > 0 } folder && Path.Combine(folder, Package + ".dll") is var file && File.Exists(file)
            ? file
            : null;

    /// <summary>Answers for the package where the entry's folder holds the assembly.</summary>
    public static void Serve(CSharpKernel kernel)
    {
        if (KnownAssembly is { } assembly)
            kernel.AddMiddleware(new LessonPackage(kernel, assembly).HandleAsync);
    }

    private Task HandleAsync(KernelCommand command, KernelInvocationContext context, KernelPipelineContinuation next)
    {
        if (command is AddPackage wanted)
        {
            if (!string.Equals(wanted.PackageName, Package, StringComparison.OrdinalIgnoreCase))
            {
                _isOtherWanted = true;
                return next(command, context);
            }
            _isServed = true;
            // As a lesson's own reference: what the assembly needs in turn is found beside it.
            return _kernel.SendAsync(new SubmitCode($"#r \"{_assembly}\""));
        }
        if (command.GetType().Name != RestoreCommand)
            return next(command, context);
        // The kernel puts it behind the packages of a cell: with nothing to fetch it would only take its time.
        bool isIdle = _isServed && !_isOtherWanted;
        _isServed = _isOtherWanted = false;
        return isIdle ? Task.CompletedTask : next(command, context);
    }
}
