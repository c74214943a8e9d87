using FlapAero.Tests;

namespace FlapAero.Explorer.Tests;

/// <summary>The students' notebooks and the folder <c>engine</c> beside them, made once by the command as a person calls it.</summary>
public sealed class MadeEngine : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("flapaero-engine-").FullName;

    /// <summary>The lessons' names, as their files have them.</summary>
    public static TheoryData<string> Lessons =>
        [.. Directory.GetFiles(RepositoryRoot.Path("notebooks"), "*.ipynb").Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];

    public async ValueTask InitializeAsync()
    {
        (int code, string output, string error) = await Command.RunAsync(RepositoryRoot.Path(""), "dotnet",
            [Path.Combine(AppContext.BaseDirectory, "FlapAero.Cli.dll"), "handouts", "--edition", "student", "--engine", "--out", _folder]);
        Assert.True(code == 0, $"{output}\n{error}");
    }

    public ValueTask DisposeAsync()
    {
        Directory.Delete(_folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    /// <summary>A student's notebook.</summary>
    public string Notebook(string lesson) => File.ReadAllText(Path.Combine(_folder, lesson + ".ipynb"));

    /// <summary>The address of its page for students.</summary>
    public string StudentPage(string lesson) => new Uri(Path.Combine(_folder, lesson + ".html")).AbsoluteUri;

    /// <summary>The address of the page in which it runs.</summary>
    public string Page(string lesson) => new Uri(Path.Combine(_folder, "engine", lesson + ".html")).AbsoluteUri;

    /// <summary>The size of a file of the engine.</summary>
    public long Size(string file) => new FileInfo(Path.Combine(_folder, "engine", file)).Length;
}
