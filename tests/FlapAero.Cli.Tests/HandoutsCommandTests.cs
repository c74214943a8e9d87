using System.Text.Json.Nodes;

namespace FlapAero.Cli.Tests;

public sealed class HandoutsCommandTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("flapaero-cli-").FullName;
    private readonly StringWriter _output = new() { NewLine = "\n" };
    private readonly StringWriter _error = new() { NewLine = "\n" };

    public HandoutsCommandTests()
    {
        Directory.CreateDirectory(Path.Combine(_root, "notebooks"));
        File.WriteAllText(Path.Combine(_root, "FlapAero.sln"), "");
    }

    public void Dispose()
    {
        Directory.Delete(_root, recursive: true);
        _output.Dispose();
        _error.Dispose();
    }

    [Fact]
    public async Task Handouts_FromBelowTheRoot_WritesToTheStandardFolder()
    {
        Put("01-turn.ipynb", 1, "A turn", "HTML(\"<p>fine</p>\")");
        string below = Directory.CreateDirectory(Path.Combine(_root, "src", "deep")).FullName;

        Assert.Equal(0, await RunAsync(below, "handouts"));

        string pages = Path.Combine(_root, "artifacts", "handouts");
        Assert.Equal(["01-turn.html", "01-turn.instructor.html", "index.html"], Directory.GetFiles(pages).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal("", _error.ToString());
        Assert.StartsWith("turn: 0 of 3 cells\n", _output.ToString(), StringComparison.Ordinal);
        Assert.Contains("turn: 3 of 3 cells\n3 files made; start with ", _output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handouts_FoldersAndLessonNamed_TakesThose()
    {
        Put("01-turn.ipynb", 1, "A turn", "1");
        Put("02-lull.ipynb", 2, "A lull", "1");

        Assert.Equal(0, await RunAsync(Path.GetTempPath(), "handouts", "--notebooks", Path.Combine(_root, "notebooks"), "--out", Path.Combine(_root, "here"), "--lesson", "lull"));

        Assert.Equal(["02-lull.html", "02-lull.instructor.html", "index.html"], Directory.GetFiles(Path.Combine(_root, "here")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Handouts_LongLesson_SaysAFewLinesOnly()
    {
        Put("01-turn.ipynb", 1, "A turn", [.. Enumerable.Repeat("1", 29)]);

        await RunAsync(_root, "handouts");

        Assert.Equal(
            ["turn: 0 of 31 cells", "turn: 11 of 31 cells", "turn: 22 of 31 cells", "turn: 31 of 31 cells"],
            _output.ToString().Split('\n').Where(l => l.StartsWith("turn:", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Handouts_FailingCell_SaysWhereOnStandardErrorAndReturnsOne()
    {
        Put("01-turn.ipynb", 1, "A turn", "throw new Exception(\"no such speed\");");

        Assert.Equal(1, await RunAsync(_root, "handouts"));

        Assert.Equal("Lesson 1, turn, cell \"Step 1\" (step-1) failed: no such speed (Exception)\n", _error.ToString());
        Assert.False(Directory.Exists(Path.Combine(_root, "artifacts", "handouts")));
    }

    [Fact]
    public async Task Handouts_FaultyNotebook_ListsFaultsAndReturnsOne()
    {
        Put("01-turn.ipynb", 7, "A turn", "1");

        Assert.Equal(1, await RunAsync(_root, "handouts"));
        Assert.Contains("01-turn.ipynb says it is lesson 7", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handouts_NoNotebooks_SaysSoAndReturnsOne()
    {
        Assert.Equal(1, await RunAsync(_root, "handouts"));
        Assert.Contains("holds no notebook", _error.ToString(), StringComparison.Ordinal);

        Assert.Equal(1, await RunAsync(_root, "handouts", "--notebooks", "elsewhere"));
        Assert.Contains($"{Path.Combine(_root, "elsewhere")} does not exist", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handouts_OutsideTheRepository_SaysWhatToDoAndReturnsOne()
    {
        File.Delete(Path.Combine(_root, "FlapAero.sln"));

        Assert.Equal(1, await RunAsync(_root, "handouts"));
        Assert.Contains("No FlapAero.sln", _error.ToString(), StringComparison.Ordinal);
        Assert.Contains("--out", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handouts_OutIsAFile_SaysItCannotBeWrittenAndReturnsOne()
    {
        Put("01-turn.ipynb", 1, "A turn", "1");

        Assert.Equal(1, await RunAsync(_root, "handouts", "--out", "FlapAero.sln"));
        Assert.Contains("cannot be written", _error.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--lesson", "flare")]
    [InlineData("--lessn", "turn")]
    [InlineData("--out")]
    public async Task Handouts_WrongUsage_ReturnsTwoWithOneMessage(params string[] arguments)
    {
        Put("01-turn.ipynb", 1, "A turn", "1");

        Assert.Equal(2, await RunAsync(_root, ["handouts", .. arguments]));
        Assert.NotEqual("", _error.ToString());
        Assert.DoesNotContain("   at ", _error.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_root, "artifacts")));
    }

    [Fact]
    public async Task Command_UnknownOrNone_ReturnsTwo()
    {
        Assert.Equal(2, await RunAsync(_root, "sheets"));
        Assert.Equal(2, await RunAsync(_root));
    }

    [Fact]
    public async Task Handouts_Help_TellsEveryOptionInWords()
    {
        Assert.Equal(0, await RunAsync(_root, "handouts", "--help"));
        Assert.All(new[] { "--out", "--lesson", "--notebooks", "nothing is written" }, word => Assert.Contains(word, _output.ToString(), StringComparison.Ordinal));
    }

    [Fact]
    public async Task Handouts_Cancelled_WritesNothingAndSaysSo()
    {
        Put("01-turn.ipynb", 1, "A turn", "1");
        using var source = new CancellationTokenSource();
        await source.CancelAsync();

        int code = await CommandLine.RunAsync(["handouts"], _output, _error, _root, source.Token);

        Assert.Equal(130, code);
        Assert.Equal("Stopped; nothing was written.\n", _error.ToString());
        Assert.False(Directory.Exists(Path.Combine(_root, "artifacts", "handouts")));
    }

    private Task<int> RunAsync(string workingFolder, params string[] arguments) =>
        CommandLine.RunAsync(arguments, _output, _error, workingFolder, TestContext.Current.CancellationToken);

    private void Put(string name, int number, string title, params string[] steps)
    {
        var cells = new JsonArray
        {
            Cell("markdown", "opening", "opening", "Opening", $"# {title}"),
            Cell("code", "setup", "setup", "Setup", FlapAero.Notebooks.Lesson.SetupCell),
        };
        for (int n = 1; n <= steps.Length; n++)
            cells.Add(Cell("code", "compute", FormattableString.Invariant($"step-{n}"), FormattableString.Invariant($"Step {n}"), steps[n - 1]));
        var notebook = new JsonObject
        {
            ["cells"] = cells,
            ["metadata"] = new JsonObject
            {
                ["flapaero"] = new JsonObject { ["lesson"] = number, ["title"] = title, ["summary"] = "A small one.", ["minutes"] = 10 },
                ["kernelspec"] = new JsonObject { ["name"] = "flapaero-csharp" },
                ["language_info"] = new JsonObject { ["name"] = "C#" },
            },
            ["nbformat"] = 4,
            ["nbformat_minor"] = 5,
        };
        File.WriteAllText(Path.Combine(_root, "notebooks", name), notebook.ToJsonString());
    }

    private static JsonObject Cell(string kind, string role, string id, string title, string source)
    {
        var cell = new JsonObject
        {
            ["cell_type"] = kind,
            ["id"] = id,
            ["metadata"] = new JsonObject { ["flapaero"] = new JsonObject { ["role"] = role, ["title"] = title } },
            ["source"] = source,
        };
        if (kind == "code")
        {
            cell["execution_count"] = null;
            cell["outputs"] = new JsonArray();
        }
        return cell;
    }
}
