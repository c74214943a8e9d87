using System.Diagnostics;

namespace FlapAero.Cli.Tests;

/// <summary>Whatever goes wrong: a clear message, an exit code, and the pages that were there before.</summary>
[Trait("Speed", "slow")]
public sealed class NothingLostTests : IDisposable
{
    private readonly HandoutsFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("while (true) ;", "failed: It did not end within 5 s and was stopped")]
    [InlineData("for (int i = 0; i < 100; i++) Console.WriteLine(new string('x', 1_000_000));", "failed: It put out more than 4000000 characters")]
    [InlineData("int x = ;", "failed: It does not compile: line 1: ")]
    [InlineData("Environment.Exit(7);", "failed: It ended the process that runs the lesson (exit code 7)")]
    [InlineData("Console.OpenStandardOutput().Write(new byte[] { 1, 2, 3, 77, 5, 6 });", "failed: It wrote to the process's own output")]
    public async Task Handouts_CellThatMisbehaves_IsNamedAndOldPagesStay(string code, string words)
    {
        _folder.Put("01-turn.ipynb", 1, "A turn", "1");
        await _folder.BeginAsync();
        Dictionary<string, string> before = _folder.Hashes();
        _folder.Put("01-turn.ipynb", 1, "A turn", "2", code);

        Assert.Equal(1, await _folder.RunAsync("--time-limit", code.StartsWith("while", StringComparison.Ordinal) ? "5" : "120"));

        Assert.StartsWith("Lesson 1, turn, cell \"Step 2\" (step-2) " + words, _folder.Error.ToString(), StringComparison.Ordinal);
        Assert.Equal(before, _folder.Hashes());
    }

    // What the process says is told to where its stack begins, and not to the first word that looks like one.
    [Fact]
    public async Task Handouts_CellThatBreaksTheProcess_IsToldInItsWordsWithoutTheStack()
    {
        _folder.Put("01-turn.ipynb", 1, "A turn", "Environment.FailFast(\"Look at that\");");

        Assert.Equal(1, await _folder.RunAsync());

        string error = _folder.Error.ToString();
        Assert.Contains("It ended the process that runs the lesson", error, StringComparison.Ordinal);
        Assert.Contains("Look at that", error, StringComparison.Ordinal);
        Assert.DoesNotContain("System.Environment", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handouts_TwoLessonsFail_NamesBothAndWritesNothing()
    {
        _folder.Put("01-turn.ipynb", 1, "A turn", "throw new Exception(\"one\");");
        _folder.Put("02-lull.ipynb", 2, "A lull", "throw new Exception(\"two\");");
        _folder.Put("03-gust.ipynb", 3, "A gust", "3");

        Assert.Equal(1, await _folder.RunAsync());

        Assert.Equal(
            "Lesson 1, turn, cell \"Step 1\" (step-1) failed: one (Exception)\nLesson 2, lull, cell \"Step 1\" (step-1) failed: two (Exception)\n",
            _folder.Error.ToString());
        Assert.False(Directory.Exists(_folder.Pages));
    }

    [Fact]
    public async Task Handouts_FileOfTheUsersUnderAPagesName_IsRefusedAndKept()
    {
        _folder.Put("01-turn.ipynb", 1, "A turn", "1");
        Directory.CreateDirectory(_folder.Pages);
        File.WriteAllText(Path.Combine(_folder.Pages, "index.html"), "my own start page");

        Assert.Equal(1, await _folder.BeginAsync());

        Assert.Contains("holds index.html, not made by this command", _folder.Error.ToString(), StringComparison.Ordinal);
        Assert.Equal(["index.html"], _folder.Names());
        Assert.Equal("my own start page", File.ReadAllText(Path.Combine(_folder.Pages, "index.html")));
        Assert.Empty(Directory.GetDirectories(_folder.Pages));
    }

    [Fact]
    public async Task Handouts_ReadOnlyFolder_SaysSoAndOldPagesStay()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && File.Exists("/usr/bin/setpriv"), "needs Linux and setpriv");
        Dictionary<string, string> before = await TwoSetsAsync();
        Chmod("555");
        try
        {
            // Root may write anywhere; root without its capabilities may not.
            (int code, string error) = await EndAsync(_folder.Start(["/usr/bin/setpriv", "--inh-caps=-all", "--bounding-set=-all"]));

            Assert.Equal(1, code);
            Assert.Contains($"The folder {_folder.Pages} cannot be written", error, StringComparison.Ordinal);
            Assert.Contains("still does", error, StringComparison.Ordinal);
        }
        finally
        {
            Chmod("755");
        }
        Assert.Equal(before, _folder.Hashes());
    }

    [Fact]
    public async Task Handouts_NoRoomForThePages_SaysSoAndOldPagesStay()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && File.Exists("/bin/bash"), "needs Linux and bash");
        Dictionary<string, string> before = await TwoSetsAsync();

        // A file may grow to 8 kB and no further: what a full disk does, at a page's first half.
        (int code, string error) = await EndAsync(_folder.Start(["/bin/bash", "-c", "trap '' XFSZ; ulimit -f 8; exec \"$@\"", "bash"]));

        Assert.Equal(1, code);
        Assert.Contains($"The folder {_folder.Pages} cannot be written", error, StringComparison.Ordinal);
        Assert.Equal(before, _folder.Hashes());
        Assert.Equal(["lock", "pages.json"], Directory.GetFileSystemEntries(Path.Combine(_folder.Pages, ".flapaero")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(0, await _folder.RunAsync());
        Assert.NotEqual(before["01-turn.html"], _folder.Hashes()["01-turn.html"]);
    }

    [Fact]
    public async Task Handouts_TwoRunsIntoOneFolder_TheSecondIsRefused()
    {
        _folder.Put("01-turn.ipynb", 1, "A turn", "1");
        string own = Directory.CreateDirectory(Path.Combine(_folder.Pages, ".flapaero")).FullName;
        using (new FileStream(Path.Combine(own, "lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None))
        {
            Assert.Equal(1, await _folder.RunAsync());
            Assert.Contains("Another run is writing to the folder", _folder.Error.ToString(), StringComparison.Ordinal);
        }
        Assert.Equal(0, await _folder.BeginAsync());
    }

    [Fact]
    public async Task Handouts_KilledAtAnyMoment_LeavesWholePagesOfOneOrTheOtherSet()
    {
        Dictionary<string, string>[] sets = new Dictionary<string, string>[2];
        string[] notebooks = ["one", "two"];
        for (int set = 0; set < 2; set++)
        {
            for (int lesson = 1; lesson <= 2; lesson++)
                _folder.PutInto(notebooks[set], FormattableString.Invariant($"0{lesson}-turn.ipynb"), lesson, $"The set {notebooks[set]}", "1");
            Assert.Equal(0, await _folder.RunAsync("--notebooks", notebooks[set], "--out", notebooks[set] + "-pages"));
            sets[set] = _folder.Hashes(Path.Combine(_folder.Root, notebooks[set] + "-pages"));
        }
        Assert.All(sets[0], file => Assert.NotEqual(file.Value, sets[1][file.Key]));
        Assert.Equal(0, await _folder.RunAsync("--notebooks", "one"));

        // Runs come from the cache, so that a good part of each is the writing.
        var watch = Stopwatch.StartNew();
        (int whole, _) = await EndAsync(_folder.Start([], "--notebooks", "two"));
        Assert.Equal(0, whole);
        TimeSpan usual = watch.Elapsed;
        var random = new Random(20);
        for (int round = 0; round < 15; round++)
        {
            using Process process = _folder.Start([], "--notebooks", notebooks[round % 2]);
            // Most of the writing is near the end.
            await Task.Delay(usual * (0.4 + 0.65 * random.NextDouble()), TestContext.Current.CancellationToken);
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);

            Dictionary<string, string> there = _folder.Hashes();
            Assert.Equal(sets[0].Keys.Order(StringComparer.Ordinal), there.Keys.Order(StringComparer.Ordinal));
            Assert.All(there, file => Assert.True(file.Value == sets[0][file.Key] || file.Value == sets[1][file.Key], $"{file.Key} is of neither set"));
        }

        Assert.Equal(0, await _folder.RunAsync("--notebooks", "two"));
        Assert.Equal(sets[1], _folder.Hashes());
        Assert.Equal(["lock", "pages.json"], Directory.GetFileSystemEntries(Path.Combine(_folder.Pages, ".flapaero")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    /// <summary>A set on the disk, and a changed notebook that would replace it and has been run.</summary>
    private async Task<Dictionary<string, string>> TwoSetsAsync()
    {
        _folder.Put("01-turn.ipynb", 1, "A turn", "1");
        Assert.Equal(0, await _folder.BeginAsync());
        _folder.Put("01-turn.ipynb", 1, "A turn", "2");
        Assert.Equal(0, await _folder.BeginAsync("--out", "elsewhere"));
        return _folder.Hashes();
    }

    private void Chmod(string mode)
    {
        foreach (string folder in new[] { _folder.Pages, Path.Combine(_folder.Pages, ".flapaero") })
            using (var chmod = Process.Start("chmod", [mode, folder]))
                chmod.WaitForExit();
        foreach (string file in Directory.GetFiles(Path.Combine(_folder.Pages, ".flapaero")))
            using (var chmod = Process.Start("chmod", [mode == "555" ? "444" : "644", file]))
                chmod.WaitForExit();
    }

    private static async Task<(int Code, string Error)> EndAsync(Process started)
    {
        using Process process = started;
        Task<string> output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        string error = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await output;
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, error);
    }
}
