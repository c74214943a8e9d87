namespace FlapAero.Cli.Tests;

[Trait("Speed", "slow")]
public sealed class HandoutsCommandTests : IDisposable
{
    private readonly HandoutsFolder _folder = new();

    private string Root => _folder.Root;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Handouts_FromBelowTheRoot_WritesToTheStandardFolder()
    {
        Put("01-turn.ipynb", 1, "A turn", "HTML(\"<p>fine</p>\")");
        string below = Directory.CreateDirectory(Path.Combine(Root, "src", "deep")).FullName;

        Assert.Equal(0, await RunAsync(below, "handouts"));

        string pages = Path.Combine(Root, "artifacts", "handouts");
        Assert.Equal(["01-turn.html", "01-turn.instructor.html", "01-turn.ipynb", "01-turn.key.html", "index.html"], _folder.Names(pages));
        Assert.Equal("", _folder.Error.ToString());
        Assert.StartsWith("turn: 0 of 3 cells\n", _folder.Output.ToString(), StringComparison.Ordinal);
        Assert.Contains("turn: 3 of 3 cells\n5 files made, 3 cells run; start with ", _folder.Output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handouts_FoldersAndLessonNamed_TakesThose()
    {
        Put("01-turn.ipynb", 1, "A turn", "1");
        Put("02-lull.ipynb", 2, "A lull", "1");

        Assert.Equal(0, await RunAsync(Path.GetTempPath(), "handouts", "--notebooks", Path.Combine(Root, "notebooks"), "--out", Path.Combine(Root, "here"), "--lesson", "lull", "--edition", "student"));

        Assert.Equal(["02-lull.html", "index.html"], _folder.Names(Path.Combine(Root, "here")));
    }

    [Fact]
    public async Task Handouts_LongLesson_SaysAFewLinesOnly()
    {
        Put("01-turn.ipynb", 1, "A turn", [.. Enumerable.Repeat("1", 29)]);

        await RunAsync(Root, "handouts");

        Assert.Equal(
            ["turn: 0 of 31 cells", "turn: 11 of 31 cells", "turn: 22 of 31 cells", "turn: 31 of 31 cells"],
            _folder.Output.ToString().Split('\n').Where(l => l.StartsWith("turn:", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Handouts_FailingCell_SaysWhereOnStandardErrorAndReturnsOne()
    {
        Put("01-turn.ipynb", 1, "A turn", "throw new Exception(\"no such speed\");");

        Assert.Equal(1, await RunAsync(Root, "handouts"));

        Assert.Equal("Lesson 1, turn, cell \"Step 1\" (step-1) failed: no such speed (Exception)\n", _folder.Error.ToString());
        Assert.False(Directory.Exists(Path.Combine(Root, "artifacts", "handouts")));
    }

    [Fact]
    public async Task Handouts_FaultyNotebook_ListsFaultsAndReturnsOne()
    {
        Put("01-turn.ipynb", 7, "A turn", "1");

        Assert.Equal(1, await RunAsync(Root, "handouts"));
        Assert.Contains("01-turn.ipynb says it is lesson 7", _folder.Error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handouts_NoNotebooks_SaysSoAndReturnsOne()
    {
        Assert.Equal(1, await RunAsync(Root, "handouts"));
        Assert.Contains("holds no notebook", _folder.Error.ToString(), StringComparison.Ordinal);

        Assert.Equal(1, await RunAsync(Root, "handouts", "--notebooks", "elsewhere"));
        Assert.Contains($"{Path.Combine(Root, "elsewhere")} does not exist", _folder.Error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handouts_OutsideTheRepository_SaysWhatToDoAndReturnsOne()
    {
        File.Delete(Path.Combine(Root, "FlapAero.sln"));

        Assert.Equal(1, await RunAsync(Root, "handouts"));
        Assert.Contains("No FlapAero.sln", _folder.Error.ToString(), StringComparison.Ordinal);
        Assert.Contains("--out", _folder.Error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handouts_OutIsAFile_SaysItCannotBeWrittenAndReturnsOne()
    {
        Put("01-turn.ipynb", 1, "A turn", "1");

        Assert.Equal(1, await RunAsync(Root, "handouts", "--out", "FlapAero.sln"));
        Assert.Contains("cannot be written", _folder.Error.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--lesson", "flare")]
    [InlineData("--lessn", "turn")]
    [InlineData("--out")]
    [InlineData("--edition", "teacher")]
    [InlineData("--seed", "-1")]
    [InlineData("--seed", "1.5")]
    [InlineData("--sheets", "0")]
    [InlineData("--sheets", "100")]
    [InlineData("--paper", "a5")]
    [InlineData("--time-limit", "0")]
    [InlineData("--processes", "none")]
    public async Task Handouts_WrongUsage_ReturnsTwoWithOneMessage(params string[] arguments)
    {
        Put("01-turn.ipynb", 1, "A turn", "1");

        Assert.Equal(2, await RunAsync(Root, ["handouts", .. arguments]));
        Assert.NotEqual("", _folder.Error.ToString());
        Assert.DoesNotContain("   at ", _folder.Error.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(Root, "artifacts")));
    }

    [Fact]
    public async Task Command_UnknownOrNone_ReturnsTwo()
    {
        Assert.Equal(2, await RunAsync(Root, "sheets"));
        Assert.Equal(2, await RunAsync(Root));
    }

    [Fact]
    public async Task Handouts_Help_TellsEveryOptionInWords()
    {
        Assert.Equal(0, await RunAsync(Root, "handouts", "--help"));
        Assert.All(new[] { "--out", "--lesson", "--notebooks", "--edition", "--seed", "--sheets", "--aeroplane", "--paper", "--pdf", "--fresh", "--time-limit", "--processes", "nothing is written", "instructor decide" }, word => Assert.Contains(word, _folder.Output.ToString(), StringComparison.Ordinal));
    }

    [Fact]
    public async Task Handouts_Cancelled_WritesNothingAndSaysSo()
    {
        Put("01-turn.ipynb", 1, "A turn", "1");
        using var source = new CancellationTokenSource();
        await source.CancelAsync();

        int code = await CommandLine.RunAsync(["handouts"], _folder.Output, _folder.Error, Root, source.Token);

        Assert.Equal(130, code);
        Assert.Equal("Stopped; nothing was written.\n", _folder.Error.ToString());
        Assert.False(Directory.Exists(Path.Combine(Root, "artifacts", "handouts")));
    }

    private Task<int> RunAsync(string workingFolder, params string[] arguments) =>
        CommandLine.RunAsync(arguments, _folder.Output, _folder.Error, workingFolder, TestContext.Current.CancellationToken);

    private void Put(string name, int number, string title, params string[] steps) => _folder.Put(name, number, title, steps);
}
