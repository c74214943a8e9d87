namespace FlapAero.Handouts.Tests;

/// <summary>A notebooks folder and an output folder, gone after the test.</summary>
internal sealed class Folder : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("flapaero-").FullName;

    public Folder() => Directory.CreateDirectory(Notebooks);

    public string Notebooks => Path.Combine(_root, "notebooks");

    public string Output => Path.Combine(_root, "pages");

    public Folder With(string name, NotebookText notebook)
    {
        File.WriteAllText(Path.Combine(Notebooks, name), notebook.ToString());
        return this;
    }

    public string Page(string name) => Path.Combine(Output, name);

    public string Read(string name) => File.ReadAllText(Page(name));

    public async Task BuildAsync(bool hasEngine)
    {
        using KernelTurn turn = await KernelTurn.TakeAsync();
        using var builder = new HandoutBuilder();
        var options = new HandoutOptions(Notebooks, Output, []) { HasEngine = hasEngine, CacheFolder = Path.Combine(_root, "cache") };
        await builder.BuildAsync(options, null, TestContext.Current.CancellationToken);
    }

    public async Task<IReadOnlyList<string>> BuildAsync(IProgress<HandoutProgress>? progress = null, params string[] lessons)
    {
        using KernelTurn turn = await KernelTurn.TakeAsync();
        using var builder = new HandoutBuilder();
        return (await builder.BuildAsync(new HandoutOptions(Notebooks, Output, lessons), progress, TestContext.Current.CancellationToken)).Files;
    }

    public void Dispose() => Directory.Delete(_root, recursive: true);
}
