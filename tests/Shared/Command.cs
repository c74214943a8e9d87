using System.Diagnostics;

namespace FlapAero.Tests;

/// <summary>Runs a command as a person would in a shell of their own.</summary>
internal static class Command
{
    public static async Task<(int Code, string Output, string Error)> RunAsync(
        string folder, string file, IReadOnlyList<string> arguments, IReadOnlyDictionary<string, string>? environment = null)
    {
        var start = new ProcessStartInfo(file, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        // A command that a test host started would otherwise take over the settings of the host's own build.
        foreach (string name in start.Environment.Keys.Where(name => name.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase)).ToList())
            start.Environment.Remove(name);
        start.Environment["DOTNET_CLI_UI_LANGUAGE"] = "en";
        start.Environment["DOTNET_NOLOGO"] = "1";
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        foreach ((string name, string value) in environment ?? new Dictionary<string, string>())
            start.Environment[name] = value;
        CancellationToken cancellationToken = Xunit.TestContext.Current.CancellationToken;
        using Process process = Process.Start(start)!;
        try
        {
            Task<string> output = process.StandardOutput.ReadToEndAsync(cancellationToken);
            Task<string> error = process.StandardError.ReadToEndAsync(cancellationToken);
            await process.WaitForExitAsync(cancellationToken);
            return (process.ExitCode, await output, await error);
        }
        finally
        {
            if (!process.HasExited)
                process.Kill(entireProcessTree: true);
        }
    }
}
