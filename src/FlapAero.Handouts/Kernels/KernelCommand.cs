namespace FlapAero.Handouts.Kernels;

/// <summary>The command that runs <see cref="KernelServer"/> in a process of its own.</summary>
public sealed class KernelCommand
{
    /// <summary>Makes a command.</summary>
    /// <param name="program">The program's file.</param>
    /// <param name="arguments">Its arguments.</param>
    public KernelCommand(string program, IReadOnlyList<string> arguments)
    {
        ArgumentException.ThrowIfNullOrEmpty(program);
        ArgumentNullException.ThrowIfNull(arguments);
        Program = program;
        Arguments = arguments;
    }

    /// <summary>The program's file.</summary>
    public string Program { get; }

    /// <summary>The program's arguments.</summary>
    public IReadOnlyList<string> Arguments { get; }
}
