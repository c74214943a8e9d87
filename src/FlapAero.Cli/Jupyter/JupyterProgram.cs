using System.Text.RegularExpressions;

namespace FlapAero.Cli.Jupyter;

/// <summary>The installed Jupyter: where it keeps the user's kernels, and what opens a notebook.</summary>
internal sealed partial class JupyterProgram
{
    public const string Missing =
        "Jupyter is missing; install it, then run this again. Windows and macOS: pip install notebook. Debian and Ubuntu: sudo apt install jupyter-notebook.";

    // Where Python's scripts are not on the PATH, Python itself mostly is.
    private static readonly string[][] Calls = [["jupyter"], ["python3", "-m", "jupyter"], ["python", "-m", "jupyter"], ["py", "-m", "jupyter"]];

    private JupyterProgram(string dataFolder, string? frontEnd)
    {
        DataFolder = dataFolder;
        FrontEnd = frontEnd;
    }

    /// <summary>The folder for what Jupyter may use without an administrator.</summary>
    public string DataFolder { get; }

    /// <summary>The command that opens a folder of notebooks, or null where only Jupyter's core is installed.</summary>
    public string? FrontEnd { get; }

    /// <summary>Where Jupyter keeps the user's data if nobody has told it otherwise.</summary>
    public static string UsualDataFolder
    {
        get
        {
            if (Environment.GetEnvironmentVariable("JUPYTER_DATA_DIR") is { Length: > 0 } named)
                return named;
            if (OperatingSystem.IsWindows())
                return Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData), "jupyter");
            string home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
            return OperatingSystem.IsMacOS()
                ? Path.Combine(home, "Library", "Jupyter")
                : Path.Combine(Environment.GetEnvironmentVariable("XDG_DATA_HOME") is { Length: > 0 } data ? data : Path.Combine(home, ".local", "share"), "jupyter");
        }
    }

    /// <summary>Asks the installed Jupyter about itself.</summary>
    /// <returns>What it says, or null where none answers.</returns>
    public static async Task<JupyterProgram?> FindAsync(CancellationToken cancellationToken)
    {
        foreach (string[] call in Calls)
            if (await AskAsync(call, "--data-dir", cancellationToken) is { Length: > 0 } folder)
            {
                string versions = await AskAsync(call, "--version", cancellationToken) ?? "";
                return new JupyterProgram(folder, FrontEndOf(string.Join(' ', call), versions));
            }
        return null;
    }

    private static async Task<string?> AskAsync(string[] call, string question, CancellationToken cancellationToken)
    {
        ProgramRun? run = await ProgramRun.StartAsync(call[0], [.. call[1..], question], Environment.CurrentDirectory, cancellationToken);
        return run is { ExitCode: 0 } ? run.Output.Trim() : null;
    }

    private static string? FrontEndOf(string call, string versions)
    {
        HashSet<string> installed = [.. Versions().Matches(versions).Select(match => match.Groups["name"].Value)];
        return installed.Contains("notebook") ? call + " notebook" : installed.Contains("jupyterlab") ? call + " lab" : null;
    }

    [GeneratedRegex(@"^(?<name>\w+)\s*:\s*\d", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Versions();
}
