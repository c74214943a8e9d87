using FlapAero.Tests;

namespace FlapAero.Jupyter.Tests;

/// <summary>
/// A copy of the checkout in a folder with spaces and umlauts, set up once by the command, with Jupyter folders of its
/// own, on a system that writes numbers with a comma. Tests are skipped where there is no Jupyter, except in CI.
/// </summary>
public sealed class InstalledJupyter : IAsyncLifetime
{
    private readonly string _root = Directory.CreateTempSubdirectory("flapaero-").FullName;
    private readonly Lazy<Task> _setUp;

    public InstalledJupyter()
    {
        _setUp = new(async () => (await RunCommandAsync(Checkout, German, "jupyter")).Succeeded());
        FrontEnd = new FrontEnd(this);
    }

    /// <summary>The lessons in a browser, each run once for all tests.</summary>
    internal FrontEnd FrontEnd { get; }

    /// <summary>The copy of the checkout: what a lesson needs, and nothing to build from.</summary>
    public string Checkout => Path.Combine(_root, "Flügel über Land", "flap aero");

    public string Notebooks => Path.Combine(Checkout, "notebooks");

    public string Data => Path.Combine(_root, "Jupyter-Daten mit Lücke");

    /// <summary>A Jupyter folder without our kernel.</summary>
    internal string DataOf(string user) => Directory.CreateDirectory(Path.Combine(_root, "data " + user)).FullName;

    internal static string Command => Path.Combine(AppContext.BaseDirectory, "FlapAero.Cli.dll");

    /// <summary>The environment of a German user whose Jupyter keeps all it writes in our folder.</summary>
    internal IReadOnlyDictionary<string, string?> German => Environment(Data);

    public ValueTask InitializeAsync()
    {
        Copy("notebooks", "*.ipynb");
        Copy(Path.Combine("artifacts", "lessons"), "*.dll");
        Copy(".config", "*.json");
        Copy("", "FlapAero.sln");
        Directory.CreateDirectory(Path.Combine(_root, "tmp"));
        return ValueTask.CompletedTask;
    }

    public async ValueTask DisposeAsync()
    {
        await FrontEnd.DisposeAsync();
        Directory.Delete(_root, recursive: true);
    }

    /// <summary>Sets the copy up, once for all tests that need a kernel.</summary>
    internal Task SetUpAsync()
    {
        SkipWithoutJupyter();
        return _setUp.Value;
    }

    /// <summary>Runs a notebook from its first cell to its last in the real kernel and reads what Jupyter saved.</summary>
    internal Task<SavedNotebook> RunAsync(string notebook, params string[] options) => RunAsync(notebook, German, options);

    internal async Task<SavedNotebook> RunAsync(string notebook, IReadOnlyDictionary<string, string?> environment, params string[] options)
    {
        await SetUpAsync();
        string ran = Path.Combine(_root, "ran-" + Path.GetFileName(notebook));
        ProgramRun run = await ProgramRun.OfAsync("jupyter", Path.GetDirectoryName(notebook)!, environment,
            ["nbconvert", "--to", "notebook", "--execute", .. options, "--output", ran, notebook], TestContext.Current.CancellationToken);
        run.Succeeded();
        return SavedNotebook.Read(ran);
    }

    /// <summary>A folder of the copied checkout, as deep as that of the lessons, that holds them too.</summary>
    internal string CopyOfTheLessons(string folder)
    {
        Copy("notebooks", "*.ipynb", folder);
        return Path.Combine(Checkout, folder);
    }

    internal static Task<ProgramRun> RunCommandAsync(string folder, IReadOnlyDictionary<string, string?> environment, params string[] arguments) =>
        ProgramRun.OfAsync("dotnet", folder, environment, [Command, .. arguments], TestContext.Current.CancellationToken);

    internal IReadOnlyDictionary<string, string?> Environment(string data) => new Dictionary<string, string?>
    {
        ["JUPYTER_DATA_DIR"] = data,
        ["JUPYTER_CONFIG_DIR"] = Path.Combine(_root, "config"),
        ["JUPYTER_RUNTIME_DIR"] = Path.Combine(_root, "runtime"),
        ["TMPDIR"] = Path.Combine(_root, "tmp"),
        // Else kernels in the home of whoever runs the tests are found as well.
        ["PYTHONNOUSERSITE"] = "1",
        ["IPYTHONDIR"] = Path.Combine(_root, "ipython"),
        ["LC_ALL"] = "de_DE.UTF-8",
        ["LANG"] = "de_DE.UTF-8",
        ["PYTHONUTF8"] = "1",
    };

    internal static void SkipWithoutJupyter()
    {
        string[] folders = (System.Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        string name = OperatingSystem.IsWindows() ? "jupyter.exe" : "jupyter";
        if (folders.Any(folder => File.Exists(Path.Combine(folder, name))))
            return;
        const string Missing = "no Jupyter found";
        if (System.Environment.GetEnvironmentVariable("CI") == "true")
            Assert.Fail(Missing + "; CI needs one");
        Assert.Skip(Missing);
    }

    private void Copy(string folder, string pattern, string? toFolder = null)
    {
        string from = RepositoryRoot.Path(folder);
        string to = Path.Combine(Checkout, toFolder ?? folder);
        Directory.CreateDirectory(to);
        foreach (string file in Directory.GetFiles(from, pattern))
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
    }
}
