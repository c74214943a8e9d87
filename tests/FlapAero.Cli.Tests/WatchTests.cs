using System.Text;

namespace FlapAero.Cli.Tests;

/// <summary>An author saves, and the page changes; nothing here is timed but by a generous limit.</summary>
[Trait("Speed", "slow")]
public sealed class WatchTests : IDisposable
{
    private static readonly TimeSpan Limit = TimeSpan.FromMinutes(3);

    private readonly HandoutsFolder _folder = new();
    private readonly Lines _output = new(), _error = new();

    private string Page => Path.Combine(_folder.Pages, "01-turn.html");

    private string List => Path.Combine(_folder.Pages, ".flapaero", "watched.js");

    public void Dispose()
    {
        _folder.Dispose();
        _output.Dispose();
        _error.Dispose();
    }

    [Fact]
    public async Task Watch_NotebookSavedThenBrokenThenMended_ShowsEachGoodStateAndSaysWhatIsBroken()
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        Save("HTML(\"<p>first state</p>\")");
        _folder.Put("02-lull.ipynb", 2, "A lull", "1");
        Task<int> watching = CommandLine.RunAsync(["handouts", "--watch"], _output, _error, _folder.Root, stop.Token);
        await UntilAsync(() => _output.ToString().Contains("Watching ", StringComparison.Ordinal));
        Assert.Contains("first state", File.ReadAllText(Page), StringComparison.Ordinal);
        string first = StateOf(Page), other = File.ReadAllText(Path.Combine(_folder.Pages, "02-lull.html"));

        Save("HTML(\"<p>second state</p>\")");
        await UntilAsync(() => File.ReadAllText(List).Contains(StateOf(Page), StringComparison.Ordinal) && StateOf(Page) != first);
        Assert.Contains("second state", File.ReadAllText(Page), StringComparison.Ordinal);
        Assert.Contains("\n3 cells run, pages written in ", _output.ToString(), StringComparison.Ordinal);
        string second = File.ReadAllText(Page);

        Save("throw new InvalidOperationException(\"the wing is off\");");
        await UntilAsync(() => _error.ToString().Contains("The last good pages stay", StringComparison.Ordinal));
        Assert.Contains("cell \"Step 1\" (step-1) failed: the wing is off", _error.ToString(), StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(_folder.Root, "notebooks", "01-turn.ipynb"), "{");
        await UntilAsync(() => _error.ToString().Contains("is not valid JSON", StringComparison.Ordinal));
        Assert.Equal(second, File.ReadAllText(Page));

        Save("HTML(\"<p>third state</p>\")");
        await UntilAsync(() => File.ReadAllText(Page).Contains("third state", StringComparison.Ordinal) && File.ReadAllText(List).Contains(StateOf(Page), StringComparison.Ordinal));
        Assert.Equal(other, File.ReadAllText(Path.Combine(_folder.Pages, "02-lull.html")));

        await stop.CancelAsync();
        Assert.Equal(130, await watching.WaitAsync(Limit, TestContext.Current.CancellationToken));
        Assert.False(File.Exists(List));
        Assert.Empty(Directory.GetFiles(_folder.Pages, "*.partial", SearchOption.AllDirectories));

        Assert.Equal(0, await _folder.RunAsync());
        Assert.DoesNotContain("flapaeroWatched", File.ReadAllText(Page), StringComparison.Ordinal);
        Assert.DoesNotContain("file:", File.ReadAllText(Page), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--pdf")]
    [InlineData("--fresh")]
    [InlineData("--engine")]
    public async Task Watch_WithWhatTakesLong_IsRefused(string option)
    {
        Assert.Equal(2, await _folder.RunAsync("--watch", option));
        Assert.Contains("--watch", _folder.Error.ToString(), StringComparison.Ordinal);
    }

    private void Save(string step) => _folder.Put("01-turn.ipynb", 1, "A turn", step);

    /// <summary>The state that a page says it was made in.</summary>
    private static string StateOf(string page)
    {
        string text = File.ReadAllText(page);
        const string Mark = "data-made=\"";
        int at = text.IndexOf(Mark, StringComparison.Ordinal);
        return at < 0 ? "" : text.Substring(at + Mark.Length, 16);
    }

    private static async Task UntilAsync(Func<bool> isSo)
    {
        DateTime end = DateTime.UtcNow + Limit;
        while (!isSo())
        {
            Assert.True(DateTime.UtcNow < end, "waited in vain");
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }
    }

    /// <summary>What the command says, read while it says it.</summary>
    private sealed class Lines : StringWriter
    {
        private readonly StringBuilder _text = new();

        public override void Write(string? value)
        {
            lock (_text)
                _text.Append(value);
        }

        public override string ToString()
        {
            lock (_text)
                return _text.ToString();
        }
    }
}
