namespace FlapAero.Jupyter.Tests;

/// <summary>The student's notebook as <c>handouts</c> writes it, on a machine where the kernel is set up.</summary>
[Trait("Speed", "slow")]
public sealed class StudentNotebookTests(InstalledJupyter jupyter) : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("Schultasche mit Lücke ").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task StudentNotebook_WhereItIsWritten_RunsFromItsFirstCell()
    {
        await jupyter.SetUpAsync();
        // Its own: what other tests run beside it may leave such files until it ends.
        string temporary = Directory.CreateDirectory(Path.Combine(_folder, "tmp")).FullName;
        var environment = new Dictionary<string, string?>(jupyter.German) { ["TMPDIR"] = temporary };
        (await InstalledJupyter.RunCommandAsync(jupyter.Checkout, environment,
            "handouts", "--lesson", "1", "--edition", "notebook", "--out", Path.Combine(_folder, "Mappe"))).Succeeded();
        string notebook = Assert.Single(Directory.GetFiles(_folder, "*.ipynb", SearchOption.AllDirectories));

        SavedNotebook saved = await jupyter.RunAsync(notebook, environment);

        Assert.Contains("Lesson ready:", saved.Text, StringComparison.Ordinal);
        Assert.Contains("<figure class=\\\"plot\\\"", saved.Text, StringComparison.Ordinal);
        // The folder of the lessons' assembly is the machine's, not the notebook's.
        Machine.AssertNotIn(saved.Text, jupyter.Checkout, _folder);
        // Neither the kernel nor the process that ran the lesson for the handouts leaves the runtime's files for a debugger.
        Assert.Empty((string[])[.. Directory.GetFileSystemEntries(temporary, "clr-debug-pipe-*"), .. Directory.GetFileSystemEntries(temporary, "dotnet-diagnostic-*")]);
    }
}
