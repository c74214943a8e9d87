using System.Diagnostics;

namespace FlapAero.Jupyter.Tests;

/// <summary>How a program ended and what it printed.</summary>
internal sealed record ProgramRun(int ExitCode, string Output, string Error)
{
    public static async Task<ProgramRun> OfAsync(
        string program, string folder, IReadOnlyDictionary<string, string?> environment, IEnumerable<string> arguments, CancellationToken cancellationToken)
    {
        using Process process = Start(program, folder, environment, arguments);
        try
        {
            Task<string> error = process.StandardError.ReadToEndAsync(cancellationToken);
            string output = await process.StandardOutput.ReadToEndAsync(cancellationToken);
            string words = await error;
            await process.WaitForExitAsync(cancellationToken);
            return new ProgramRun(process.ExitCode, output, words);
        }
        finally
        {
            if (!process.HasExited)
                process.Kill(entireProcessTree: true);
        }
    }

    /// <summary>Starts a program; a null in the environment takes a variable away.</summary>
    public static Process Start(
        string program, string folder, IReadOnlyDictionary<string, string?> environment, IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach ((string name, string? value) in environment)
            start.Environment[name] = value;
        return Process.Start(start)!;
    }

    public ProgramRun Succeeded()
    {
        Assert.True(ExitCode == 0, $"exit code {ExitCode}:\n{Error}\n{Output}");
        return this;
    }
}
