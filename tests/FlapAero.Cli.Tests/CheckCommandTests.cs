using FlapAero.Tests;

namespace FlapAero.Cli.Tests;

public sealed class CheckCommandTests : IDisposable
{
    private const string Lesson = "04-approach-speed.ipynb";

    private readonly string _root = Directory.CreateTempSubdirectory("flapaero-check-").FullName;
    private readonly StringWriter _output = new() { NewLine = "\n" };
    private readonly StringWriter _error = new() { NewLine = "\n" };

    private string Copy => Path.Combine(_root, "notebooks", Lesson);

    private string Committed { get; } = File.ReadAllText(RepositoryRoot.Path("notebooks/" + Lesson));

    public CheckCommandTests()
    {
        Directory.CreateDirectory(Path.Combine(_root, "notebooks"));
        File.WriteAllText(Path.Combine(_root, "FlapAero.sln"), "");
        File.WriteAllText(Copy, Committed);
    }

    public void Dispose()
    {
        Directory.Delete(_root, recursive: true);
        _output.Dispose();
        _error.Dispose();
    }

    [Fact]
    public async Task Check_Repository_IsFitToBeStored()
    {
        Assert.Equal(0, await RunAsync(RepositoryRoot.Path("."), "check"));
        Assert.Equal("", _error.ToString());
        Assert.EndsWith("fit to be stored.\n", _output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_Faults_AreOnStandardErrorAndNothingChanges()
    {
        string saved = Committed.Replace("\"execution_count\": null", "\"execution_count\": 3", StringComparison.Ordinal);
        File.WriteAllText(Copy, saved);

        Assert.Equal(1, await RunAsync(_root, "check"));

        Assert.Matches($"^{Lesson}: execution counts \\([0-9]+ places\\); check --fix puts them right and loses nothing that a person wrote.\n$", _error.ToString());
        Assert.Contains("check --fix puts", _output.ToString(), StringComparison.Ordinal);
        Assert.Equal(saved, File.ReadAllText(Copy));
    }

    [Fact]
    public async Task Check_OneCellThatWasRun_IsNamed()
    {
        int at = Committed.IndexOf("\"execution_count\": null", StringComparison.Ordinal);
        File.WriteAllText(Copy, Committed.Remove(at) + "\"execution_count\": 3" + Committed[(at + "\"execution_count\": null".Length)..]);

        Assert.Equal(1, await RunAsync(_root, "check"));

        Assert.Equal($"{Lesson}, cell \"Setup\" (setup) has the execution count 3; allowed is null.\n", _error.ToString());
    }

    [Fact]
    public async Task Check_NotebooksThatWereRun_TakeALineEachBesideWhatAHandMustMend()
    {
        string run = Committed.Replace("\"execution_count\": null", "\"execution_count\": 3", StringComparison.Ordinal) + "\n";
        File.WriteAllText(Copy, run.Replace("## The needle said so", "## /home/ada/x", StringComparison.Ordinal));
        File.WriteAllText(Path.Combine(Path.GetDirectoryName(Copy)!, "14-other.ipynb"), run);

        Assert.Equal(1, await RunAsync(_root, "check"));

        string[] lines = _error.ToString().TrimEnd().Split('\n');
        Assert.StartsWith($"{Lesson}: layout, execution counts (", lines[0], StringComparison.Ordinal);
        Assert.Contains("the machine's path /home/ada/x in its source", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("14-other.ipynb: layout, execution counts (", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_Fix_GivesBackTheCommittedFileAndIsDone()
    {
        File.WriteAllText(Copy, Committed.Replace("\"execution_count\": null", "\"execution_count\": 3", StringComparison.Ordinal) + "\n");

        Assert.Equal(0, await RunAsync(_root, "check", Copy, "--fix"));

        Assert.Equal("", _error.ToString());
        Assert.Contains("put right: ", _output.ToString(), StringComparison.Ordinal);
        Assert.Equal(Committed, File.ReadAllText(Copy));
        Assert.Equal([Copy], Directory.GetFileSystemEntries(Path.GetDirectoryName(Copy)!));
    }

    [Fact]
    public async Task Check_FixWithAPathInASource_SaysItIsLeftAndReturnsOne()
    {
        File.WriteAllText(Copy, Committed.Replace("## The needle said so", "## /home/ada/x", StringComparison.Ordinal) + "\n");

        Assert.Equal(1, await RunAsync(_root, "check", "--fix"));

        Assert.Contains("the machine's path /home/ada/x in its source", _error.ToString(), StringComparison.Ordinal);
        Assert.EndsWith("1 notebook checked: 1 fault, to be mended by hand.\n", _output.ToString(), StringComparison.Ordinal);
        Assert.Contains("## /home/ada/x", File.ReadAllText(Copy), StringComparison.Ordinal);
        Assert.EndsWith("}\n", File.ReadAllText(Copy), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-such.ipynb")]
    [InlineData("empty")]
    [InlineData("--fx")]
    public async Task Check_NothingToCheck_ReturnsTwoWithAMessage(string argument)
    {
        Directory.CreateDirectory(Path.Combine(_root, "empty"));

        Assert.Equal(2, await RunAsync(_root, "check", argument));
        Assert.NotEqual("", _error.ToString());
        Assert.DoesNotContain("   at ", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_OutsideTheRepository_AsksForAFolder()
    {
        File.Delete(Path.Combine(_root, "FlapAero.sln"));

        Assert.Equal(2, await RunAsync(_root, "check"));
        Assert.Contains("name one", _error.ToString(), StringComparison.Ordinal);
    }

    private Task<int> RunAsync(string workingFolder, params string[] arguments) =>
        CommandLine.RunAsync(arguments, _output, _error, workingFolder, TestContext.Current.CancellationToken);
}
