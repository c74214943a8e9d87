namespace FlapAero.Cli.Jupyter;

/// <summary>The project's folder, where the pinned tools, the sources and the lessons are.</summary>
internal sealed class Checkout
{
    private readonly string _root;

    private Checkout(string root) => _root = root;

    public string Notebooks => Path.Combine(_root, "notebooks");

    public string LessonAssemblies => Path.Combine(_root, "artifacts", "lessons");

    public string ToolManifest => Path.Combine(_root, ".config", "dotnet-tools.json");

    public static Checkout Above(string workingFolder) => RepositoryFolder.Find(workingFolder) is { } root
        ? new Checkout(root)
        : throw new SetupException($"No FlapAero.sln stands in {workingFolder} or above it; call from inside the project's folder, where the lessons are.");

    /// <summary>Building this command built it already, unless someone cleaned up since.</summary>
    public async Task BuildLessonAssemblyAsync(TextWriter output, CancellationToken cancellationToken)
    {
        if (File.Exists(Path.Combine(LessonAssemblies, "FlapAero.Notebooks.dll")))
            return;
        await output.WriteLineAsync("Building what the lessons reference, once: about half a minute …");
        await DotnetAsync(cancellationToken, "build", Path.Combine("src", "FlapAero.Notebooks"), "--verbosity", "quiet");
    }

    /// <summary>Builds what runs cells in a page.</summary>
    /// <returns>The folder that holds it.</returns>
    public async Task<string> PublishEngineAsync(CancellationToken cancellationToken)
    {
        string folder = Path.Combine(_root, "artifacts", "explorer");
        await DotnetAsync(cancellationToken, "publish", Path.Combine("src", "FlapAero.Explorer"), "-c", "Release", "-o", folder, "--verbosity", "quiet");
        return folder;
    }

    /// <summary>Runs a dotnet command in the project's folder.</summary>
    /// <returns>What it printed.</returns>
    public async Task<string> DotnetAsync(CancellationToken cancellationToken, params string[] arguments)
    {
        ProgramRun run = await ProgramRun.StartAsync(Dotnet.Path, arguments, _root, cancellationToken)
            ?? throw new SetupException($"{Dotnet.Path} cannot be started; install the .NET SDK 10.");
        return run.ExitCode == 0
            ? run.Output
            : throw new SetupException($"\"dotnet {string.Join(' ', arguments)}\" failed: {run.Words}");
    }
}
