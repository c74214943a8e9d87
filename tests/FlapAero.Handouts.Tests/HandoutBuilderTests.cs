using System.Globalization;

namespace FlapAero.Handouts.Tests;

[Trait("Speed", "slow")]
public sealed class HandoutBuilderTests
{
    [Fact]
    public async Task BuildAsync_FailingCell_LeavesOldPagesUntouched()
    {
        using Folder folder = new Folder().With("01-turn.ipynb", NotebookText.Sound());
        await folder.BuildAsync();
        byte[] before = await File.ReadAllBytesAsync(folder.Page("01-turn.html"), TestContext.Current.CancellationToken);
        folder.With("01-turn.ipynb", NotebookText.Sound().Markdown("explain", "more", "More", "New words.")
            .Code("compute", "bad", "A sum that fails", "throw new Exception(\"no such speed\");"));

        string message = (await Assert.ThrowsAsync<HandoutException>(() => folder.BuildAsync())).Message;

        Assert.Equal("Lesson 1, turn, cell \"A sum that fails\" (bad) failed: no such speed (Exception)", message);
        Assert.Equal(before, await File.ReadAllBytesAsync(folder.Page("01-turn.html"), TestContext.Current.CancellationToken));
        Assert.Equal(["01-turn.html", "01-turn.instructor.html", "01-turn.ipynb", "01-turn.key.html", "index.html"], Directory.GetFiles(folder.Output).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task BuildAsync_WithTheEngineAndWithout_MakesTheStudentsPageAnew()
    {
        using Folder folder = new Folder().With("01-turn.ipynb", NotebookText.Sound());
        const string Way = "href=\"engine/01-turn.html\"";
        foreach (bool hasEngine in (bool[])[false, true, false])
        {
            await folder.BuildAsync(hasEngine);
            Assert.Equal(hasEngine, folder.Read("01-turn.html").Contains(Way, StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task BuildAsync_SecondLessonFails_WritesNothingOfTheFirst()
    {
        using Folder folder = new Folder().With("01-turn.ipynb", NotebookText.Sound())
            .With("02-lull.ipynb", NotebookText.Sound(lesson: 2).Code("compute", "bad", "Bad", "int x = 1.5;"));

        await Assert.ThrowsAsync<HandoutException>(() => folder.BuildAsync());

        Assert.False(Directory.Exists(folder.Output));
    }

    [Theory]
    [InlineData("wrong", "Too low: did the bank count?")]
    [InlineData("open", "not answered yet")]
    [InlineData("by hand", "checked nothing")]
    public async Task BuildAsync_CheckThatDoesNotPass_FailsWithItsWords(string outcome, string words)
    {
        using Folder folder = new Folder().With("04-stall-in-turn.ipynb", WholeLesson.Make(outcome));

        string message = (await Assert.ThrowsAsync<HandoutException>(() => folder.BuildAsync())).Message;

        Assert.Contains("cell \"Check the slowest turn\" (check)", message, StringComparison.Ordinal);
        Assert.Contains(words, message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Output));
    }

    [Fact]
    public async Task BuildAsync_CheckWithoutOutput_Fails()
    {
        using Folder folder = new Folder().With("01-turn.ipynb", NotebookText.Sound().Code("check", "check", "Nothing", "var x = 1;"));

        Assert.Contains("checked nothing", (await Assert.ThrowsAsync<HandoutException>(() => folder.BuildAsync())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task BuildAsync_Twice_GivesTheSameBytesInAnyCulture()
    {
        using Folder folder = new Folder().With("04-stall-in-turn.ipynb", WholeLesson.Make());
        IReadOnlyList<string> names = await folder.BuildAsync();
        Dictionary<string, string> first = names.ToDictionary(n => n, folder.Read);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            await folder.BuildAsync();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.All(names, name => Assert.Equal(first[name], folder.Read(name)));
        Assert.All(names, name => Assert.DoesNotContain("\r", first[name], StringComparison.Ordinal));
        Assert.All(names, name => Assert.DoesNotContain(Path.GetTempPath() + "flapaero", first[name], StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2")]
    [InlineData("02")]
    [InlineData("lull")]
    [InlineData("02-lull")]
    [InlineData("02-lull.ipynb")]
    public async Task BuildAsync_OneLesson_MakesItsPagesAndTheIndex(string name)
    {
        using Folder folder = new Folder().With("01-turn.ipynb", NotebookText.Sound()).With("02-lull.ipynb", NotebookText.Sound("A lull", 2));

        Assert.Equal(["02-lull.html", "02-lull.instructor.html", "02-lull.key.html", "02-lull.ipynb", "index.html"], await folder.BuildAsync(null, name));
        Assert.Contains("A turn to final (not made yet)", folder.Read("index.html"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task BuildAsync_UnknownLesson_NamesThoseThereAre()
    {
        using Folder folder = new Folder().With("01-turn.ipynb", NotebookText.Sound());

        string message = (await Assert.ThrowsAsync<UnknownLessonException>(() => folder.BuildAsync(null, "flare"))).Message;

        Assert.Equal("No lesson is called \"flare\"; there are: turn.", message);
    }

    [Fact]
    public async Task BuildAsync_OutputIsAFile_SaysItCannotBeWritten()
    {
        using Folder folder = new Folder().With("01-turn.ipynb", NotebookText.Sound());
        await File.WriteAllTextAsync(folder.Output, "in the way", TestContext.Current.CancellationToken);

        Assert.Contains("cannot be written", (await Assert.ThrowsAsync<HandoutException>(() => folder.BuildAsync())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task BuildAsync_Progress_CountsEveryCell()
    {
        using Folder folder = new Folder().With("01-turn.ipynb", NotebookText.Sound());
        var seen = new Seen();

        await folder.BuildAsync(seen);

        Assert.Equal(Enumerable.Range(0, 4).Select(done => new HandoutProgress("turn", done, 3, done == 3 ? 0 : 1)), seen.Reports);
    }

    [Theory]
    [InlineData("$\\nonsense{x}$", "the formula \"\\nonsense{x}\" cannot be set")]
    [InlineData("![wing](wing.png)", "src=\"wing.png\"")]
    [InlineData("#### Too deep", "level 4; allowed here are 2 to 3")]
    public async Task BuildAsync_MarkdownThatNoPageTakes_FailsNamingTheCell(string markdown, string words)
    {
        using Folder folder = new Folder().With("01-turn.ipynb", NotebookText.Sound().Markdown("explain", "odd", "An odd one", markdown));

        string message = (await Assert.ThrowsAsync<HandoutException>(() => folder.BuildAsync())).Message;

        Assert.Contains("Lesson 1, turn, cell \"An odd one\" (odd)", message, StringComparison.Ordinal);
        Assert.Contains(words, message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("<script src=\"https://example.org/a.js\" type=\"application/json\"></script>")]
    [InlineData("<img src=\"https://example.org/a.png\">")]
    [InlineData("<link rel=\"stylesheet\" href=\"a.css\">")]
    [InlineData("<style>@import 'a.css';</style>")]
    [InlineData("<p style=\"background: url(a.png)\">x</p>")]
    public async Task BuildAsync_OutputThatFetchesOrRuns_Fails(string html)
    {
        using Folder folder = new Folder().With("01-turn.ipynb", NotebookText.Sound().Html("compute", "odd", "An odd one", html));

        Assert.Contains("(odd)", (await Assert.ThrowsAsync<HandoutException>(() => folder.BuildAsync())).Message, StringComparison.Ordinal);
    }

    private sealed class Seen : IProgress<HandoutProgress>
    {
        public List<HandoutProgress> Reports { get; } = [];

        public void Report(HandoutProgress value) => Reports.Add(value);
    }
}
