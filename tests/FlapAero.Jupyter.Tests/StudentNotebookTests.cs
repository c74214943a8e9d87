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
        (await InstalledJupyter.RunCommandAsync(jupyter.Checkout, jupyter.German,
            "handouts", "--lesson", "1", "--edition", "notebook", "--out", _folder)).Succeeded();
        string notebook = Assert.Single(Directory.GetFiles(_folder, "*.ipynb", SearchOption.AllDirectories));

        SavedNotebook saved = await jupyter.RunAsync(notebook);

        Assert.Contains("Lesson ready:", saved.Text, StringComparison.Ordinal);
        Assert.Contains("<figure class=\\\"plot\\\"", saved.Text, StringComparison.Ordinal);
        // The folder of the lessons' assembly is the machine's, not the notebook's.
        Machine.AssertNotIn(saved.Text, jupyter.Checkout, _folder);
        // Neither the kernel nor the process that ran the lesson for the handouts leaves the runtime's files for a debugger.
        Assert.Empty((string[])[.. Directory.GetFileSystemEntries(jupyter.Temporary, "clr-debug-pipe-*"), .. Directory.GetFileSystemEntries(jupyter.Temporary, "dotnet-diagnostic-*")]);
    }
}
