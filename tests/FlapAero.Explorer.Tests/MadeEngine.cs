using FlapAero.Tests;

namespace FlapAero.Explorer.Tests;

/// <summary>
/// The students' notebooks and the folder <c>engine</c> beside them, made once by the command as a person calls it; or those in the folder that the
/// environment's <c>FLAPAERO_ENGINE</c> names, made there where they are missing.
/// </summary>
public sealed class MadeEngine : IAsyncLifetime
{
    private static readonly string? Kept = Environment.GetEnvironmentVariable("FLAPAERO_ENGINE");

    /// <summary>The folder of the handouts.</summary>
    public string Folder { get; } = Kept is { Length: > 0 } ? Directory.CreateDirectory(Kept).FullName : Directory.CreateTempSubdirectory("flapaero-engine-").FullName;

    /// <summary>The lessons' names, as their files have them.</summary>
    public static TheoryData<string> Lessons =>
        [.. Directory.GetFiles(RepositoryRoot.Path("notebooks"), "*.ipynb").Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];

    public async ValueTask InitializeAsync()
    {
        if (File.Exists(Path.Combine(Folder, "engine", "runtime.js")))
            return;
        (int code, string output, string error) = await Command.RunAsync(RepositoryRoot.Path(""), "dotnet",
            [Path.Combine(AppContext.BaseDirectory, "FlapAero.Cli.dll"), "handouts", "--edition", "student", "--engine", "--out", Folder]);
        Assert.True(code == 0, $"{output}\n{error}");
    }

    public ValueTask DisposeAsync()
    {
        if (Kept is not { Length: > 0 })
            Directory.Delete(Folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    /// <summary>A student's notebook.</summary>
    public string Notebook(string lesson) => File.ReadAllText(Path.Combine(Folder, lesson + ".ipynb"));

    /// <summary>The address of its page for students.</summary>
    public string StudentPage(string lesson) => new Uri(Path.Combine(Folder, lesson + ".html")).AbsoluteUri;

    /// <summary>The address of the page in which it runs.</summary>
    public string Page(string lesson) => new Uri(Path.Combine(Folder, "engine", lesson + ".html")).AbsoluteUri;

    /// <summary>The size of a file of the engine.</summary>
    public long Size(string file) => new FileInfo(Path.Combine(Folder, "engine", file)).Length;
}
