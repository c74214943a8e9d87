using System.Text.Json.Nodes;

namespace FlapAero.Jupyter.Tests;

/// <summary>The command that sets the lessons up, as a user calls it.</summary>
[Trait("Speed", "slow")]
public sealed class SetUpTests(InstalledJupyter jupyter) : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("flapaero-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Data => Path.Combine(_folder, "noch nicht da", "jupyter");

    private string Entry => Path.Combine(Data, "kernels", "flapaero-csharp");

    [Fact]
    public async Task Jupyter_Twice_GivesTheSameFilesAndTheSameWords()
    {
        InstalledJupyter.SkipWithoutJupyter();
        ProgramRun first = (await RunAsync()).Succeeded();
        Dictionary<string, byte[]> files = Files();

        ProgramRun second = (await RunAsync()).Succeeded();

        Assert.Equal(first.Output, second.Output);
        Assert.Equal(files, Files());
        Assert.Contains("Open the lessons with: jupyter ", second.Output, StringComparison.Ordinal);
        Assert.EndsWith("notebooks", second.Output.TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Jupyter_Entry_ListensOnLoopbackAloneAndKnowsTheLessonsAssembly()
    {
        InstalledJupyter.SkipWithoutJupyter();
        (await RunAsync()).Succeeded();

        string text = File.ReadAllText(Path.Combine(Entry, "kernel.json"));
        JsonNode spec = JsonNode.Parse(text)!;

        Assert.Contains("--http-local-only", spec["argv"]!.AsArray().Select(a => (string?)a));
        Assert.All(spec["argv"]!.AsArray().Select(a => (string)a!).Where(Path.IsPathRooted), path => Assert.True(File.Exists(path), path));
        Assert.StartsWith(Entry, (string?)spec["argv"]![1], StringComparison.Ordinal);
        // A student's notebook lies anywhere: of the checkout the entry knows this one folder.
        string lessons = (string)spec["env"]!["FLAPAERO_LESSONS"]!;
        Assert.True(File.Exists(Path.Combine(lessons, "FlapAero.Notebooks.dll")), lessons);
        spec["env"]!.AsObject().Remove("FLAPAERO_LESSONS");
        Assert.DoesNotContain(jupyter.Checkout, spec.ToJsonString(new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Jupyter_NothingToFetchOrBuild_SaysNothingOfIt()
    {
        InstalledJupyter.SkipWithoutJupyter();

        string said = (await RunAsync()).Succeeded().Output;

        Assert.StartsWith("Kernel \"", said, StringComparison.Ordinal);
        Assert.DoesNotContain("…", said, StringComparison.Ordinal);
    }

    /// <summary>As after "dotnet nuget locals all --clear": the entry is there, what it starts is not.</summary>
    [Fact]
    public async Task Kernel_ProgramGone_SaysWhatToRunAndStartsNothing()
    {
        InstalledJupyter.SkipWithoutJupyter();
        (await RunAsync()).Succeeded();
        string spec = Path.Combine(Entry, "kernel.json");
        JsonNode entry = JsonNode.Parse(await File.ReadAllTextAsync(spec, TestContext.Current.CancellationToken))!;
        entry["argv"]![2] = Path.Combine(_folder, "cleared", "Microsoft.DotNet.Interactive.App.dll");
        await File.WriteAllTextAsync(spec, entry.ToJsonString(), TestContext.Current.CancellationToken);
        string notebook = Path.Combine(_folder, "one.ipynb");
        await File.WriteAllTextAsync(notebook, Notebooks.Of(("one", "1 + 1")), TestContext.Current.CancellationToken);

        ProgramRun run = await ProgramRun.OfAsync("jupyter", _folder, jupyter.Environment(Data), ["nbconvert", "--to", "notebook", "--execute", notebook], TestContext.Current.CancellationToken);

        Assert.NotEqual(0, run.ExitCode);
        int words = run.Error.IndexOf("The kernel's program is not where it was set up", StringComparison.Ordinal);
        Assert.InRange(words, 0, run.Error.IndexOf("Traceback", StringComparison.Ordinal) is >= 0 and var stack ? stack : int.MaxValue);
        Assert.Contains("dotnet run --project src/FlapAero.Cli -- jupyter", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Undo_AfterTwoSetups_LeavesNothing()
    {
        InstalledJupyter.SkipWithoutJupyter();
        (await RunAsync()).Succeeded();
        (await RunAsync()).Succeeded();

        (await RunAsync("--undo")).Succeeded();

        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder));
        Assert.StartsWith("Nothing to undo", (await RunAsync("--undo")).Succeeded().Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Undo_OtherKernels_LeavesThem()
    {
        InstalledJupyter.SkipWithoutJupyter();
        string other = Path.Combine(Data, "kernels", "other", "kernel.json");
        Directory.CreateDirectory(Path.GetDirectoryName(other)!);
        await File.WriteAllTextAsync(other, "{}", TestContext.Current.CancellationToken);
        (await RunAsync()).Succeeded();

        (await RunAsync("--undo")).Succeeded();

        Assert.Equal([other], Files().Keys);
        Assert.False(Directory.Exists(Entry));
    }

    [Theory]
    [InlineData()]
    [InlineData("--undo")]
    public async Task Jupyter_EntryOfAnotherMaker_IsRefusedAndKept(params string[] options)
    {
        InstalledJupyter.SkipWithoutJupyter();
        string spec = Path.Combine(Entry, "kernel.json");
        Directory.CreateDirectory(Entry);
        await File.WriteAllTextAsync(spec, "{\"argv\": []}", TestContext.Current.CancellationToken);

        ProgramRun run = await RunAsync(options);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("not of this command's making", run.Error, StringComparison.Ordinal);
        Assert.Equal([spec], Files().Keys);
    }

    [Fact]
    public async Task Jupyter_Missing_SaysInOneLineWhatToInstall()
    {
        var environment = new Dictionary<string, string?>(jupyter.Environment(Data)) { ["PATH"] = _folder };

        ProgramRun run = await InstalledJupyter.RunCommandAsync(jupyter.Checkout, environment, "jupyter");

        Assert.Equal(1, run.ExitCode);
        string line = Assert.Single(run.Error.TrimEnd().Split('\n'));
        Assert.All(new[] { "Jupyter is missing", "Windows", "macOS", "Debian" }, word => Assert.Contains(word, line, StringComparison.Ordinal));
        Assert.Empty(Files());
    }

    [Fact]
    public async Task Jupyter_OutsideTheCheckout_SaysWhereToCall()
    {
        ProgramRun run = await InstalledJupyter.RunCommandAsync(_folder, jupyter.Environment(Data), "jupyter");

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("call from inside the project's folder", run.Error, StringComparison.Ordinal);
    }

    private Task<ProgramRun> RunAsync(params string[] options) =>
        InstalledJupyter.RunCommandAsync(jupyter.Checkout, jupyter.Environment(Data), ["jupyter", .. options]);

    private Dictionary<string, byte[]> Files() =>
        Directory.GetFiles(_folder, "*", SearchOption.AllDirectories).ToDictionary(file => file, File.ReadAllBytes);
}
