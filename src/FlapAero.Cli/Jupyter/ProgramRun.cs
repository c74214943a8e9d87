using System.ComponentModel;
using System.Diagnostics;

namespace FlapAero.Cli.Jupyter;

/// <summary>How a program ended and what it printed.</summary>
internal sealed record ProgramRun(int ExitCode, string Output, string Words)
{
    /// <summary>Runs a program to its end.</summary>
    /// <returns>How it ended, or null where there is no such program.</returns>
    public static async Task<ProgramRun?> StartAsync(
        string program, IEnumerable<string> arguments, string folder, CancellationToken cancellationToken)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = new Process { StartInfo = start };
        try
        {
            process.Start();
        }
        catch (Win32Exception)
        {
            return null;
        }
        try
        {
            Task<string> error = process.StandardError.ReadToEndAsync(cancellationToken);
            string output = await process.StandardOutput.ReadToEndAsync(cancellationToken);
            string words = $"{await error}\n{output}";
            await process.WaitForExitAsync(cancellationToken);
            return new ProgramRun(process.ExitCode, output, words.ReplaceLineEndings(" ").Trim());
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            throw;
        }
    }
}
