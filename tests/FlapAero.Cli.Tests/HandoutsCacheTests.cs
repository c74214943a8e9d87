namespace FlapAero.Cli.Tests;

/// <summary>What has not changed is not run again, and what is kept never shows in the files.</summary>
[Trait("Speed", "slow")]
public sealed class HandoutsCacheTests : IDisposable
{
    private readonly HandoutsFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Handouts_NothingChanged_RunsAndWritesNothing()
    {
        PutBoth();
        await _folder.BeginAsync();
        Dictionary<string, DateTime> times = Directory.GetFiles(_folder.Pages).ToDictionary(f => f, File.GetLastWriteTimeUtc);

        Assert.Equal(0, await _folder.RunAsync());

        Assert.Contains("turn: unchanged; 1 lesson left\nlull: unchanged\n", _folder.Output.ToString(), StringComparison.Ordinal);
        Assert.All(times, file => Assert.Equal(file.Value, File.GetLastWriteTimeUtc(file.Key)));
    }

    [Fact]
    public async Task Handouts_FreshOrFromTheCacheOrSideBySide_GivesTheSameBytes()
    {
        PutBoth();
        Assert.Equal(0, await _folder.RunAsync("--processes", "2"));
        Dictionary<string, string> first = _folder.Hashes();

        Assert.Equal(0, await _folder.RunAsync("--fresh", "--processes", "1", "--out", "fresh"));
        Assert.Contains("0 of 3 cells", _folder.Output.ToString(), StringComparison.Ordinal);
        Assert.Equal(first, _folder.Hashes(Path.Combine(_folder.Root, "fresh")));

        Assert.Equal(0, await _folder.RunAsync("--out", "kept"));
        Assert.DoesNotContain("0 of 3 cells", _folder.Output.ToString(), StringComparison.Ordinal);
        Assert.Equal(first, _folder.Hashes(Path.Combine(_folder.Root, "kept")));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Handouts_CacheCorruptOrCutShort_IsNotBelieved(bool cutShort)
    {
        _folder.Put("01-turn.ipynb", 1, "A turn", "HTML(\"<p>fine</p>\")");
        await _folder.BeginAsync();
        Dictionary<string, string> first = _folder.Hashes();
        string entry = Assert.Single(Directory.GetFiles(_folder.Cache));
        byte[] bytes = File.ReadAllBytes(entry);
        bytes[^20] ^= 1;
        File.WriteAllBytes(entry, cutShort ? bytes[..(bytes.Length / 2)] : bytes);

        Assert.Equal(0, await _folder.RunAsync("--out", "other"));

        Assert.Contains("0 of 3 cells", _folder.Output.ToString(), StringComparison.Ordinal);
        Assert.Equal(first, _folder.Hashes(Path.Combine(_folder.Root, "other")));
    }

    [Fact]
    public async Task Handouts_PageOverwrittenByHand_IsMadeAgain()
    {
        _folder.Put("01-turn.ipynb", 1, "A turn", "1");
        await _folder.BeginAsync();
        Dictionary<string, string> first = _folder.Hashes();
        File.WriteAllText(Path.Combine(_folder.Pages, "01-turn.html"), "half a page of FlapAero");

        Assert.Equal(0, await _folder.RunAsync());
        Assert.Equal(first, _folder.Hashes());
    }

    [Fact]
    public async Task Handouts_CodeChanged_RunsAgainThatLessonAlone()
    {
        PutBoth();
        await _folder.BeginAsync();
        _folder.Put("02-lull.ipynb", 2, "A lull", "HTML(\"<p>new</p>\")");

        Assert.Equal(0, await _folder.RunAsync());

        Assert.Contains("turn: unchanged", _folder.Output.ToString(), StringComparison.Ordinal);
        Assert.Contains("lull: 0 of 3 cells", _folder.Output.ToString(), StringComparison.Ordinal);
        Assert.Contains("<p>new</p>", File.ReadAllText(Path.Combine(_folder.Pages, "02-lull.html")), StringComparison.Ordinal);
    }

    private void PutBoth()
    {
        _folder.Put("01-turn.ipynb", 1, "A turn", "HTML(\"<p>fine</p>\")");
        _folder.Put("02-lull.ipynb", 2, "A lull", "HTML(\"<p>fair</p>\")");
    }
}
