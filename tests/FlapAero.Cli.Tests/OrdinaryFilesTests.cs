using System.Diagnostics;
using System.Globalization;
using System.Text;
using FlapAero.Tests;

namespace FlapAero.Cli.Tests;

/// <summary>Only ordinary files are read and replaced, and what lies beside them is nobody's business.</summary>
public sealed class OrdinaryFilesTests : IDisposable
{
    private static readonly string[] Flight =
    [
        "brief", "--weight", "1050 kg", "--runway", "24", "--length", "900 m", "--surface", "grass", "--elevation", "450 ft", "--qnh", "1018 hPa",
        "--temperature", "22 C", "--wind", "210/12G20",
    ];

    private readonly string _root = Directory.CreateTempSubdirectory("flapaero-ordinary-").FullName;
    private readonly StringWriter _output = new() { NewLine = "\n" };
    private readonly StringWriter _error = new() { NewLine = "\n" };

    public void Dispose()
    {
        Directory.Delete(_root, recursive: true);
        _output.Dispose();
        _error.Dispose();
    }

    [Theory]
    [InlineData("pipe", "it is a device, a pipe or a socket; an ordinary file is wanted")]
    [InlineData("/dev/zero", "it is a device, a pipe or a socket; an ordinary file is wanted")]
    [InlineData("folder", "it is a folder; a file is wanted")]
    [InlineData("long", "it holds more than")]
    public async Task Input_NoOrdinaryFile_IsRefusedAtOnce(string name, string words)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such files");
        Pipe("pipe");
        Directory.CreateDirectory(At("folder"));
        using (FileStream file = File.Create(At("long")))
            file.SetLength(300L * 1024 * 1024);
        foreach (string[] call in (string[][])[[.. Flight, "--aeroplane", name], ["landings", name, "--out", "results.csv"], ["check", name], ["@" + name]])
        {
            if (call[0] == "check" && name == "folder" || call[0] == "@long")
                continue;
            _error.GetStringBuilder().Clear();
            Assert.Equal(2, await RunAsync(call).WaitAsync(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken));
            Assert.Contains(words, _error.ToString(), StringComparison.Ordinal);
        }

        Assert.Equal(["folder", "long", "pipe"], Names());
    }

    [Theory]
    [InlineData("pipe")]
    [InlineData("folder")]
    [InlineData("to-nothing")]
    [InlineData("to-device")]
    public async Task Out_NoOrdinaryFile_IsRefusedAndStays(string name)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such files");
        Pipe("pipe");
        Directory.CreateDirectory(At("folder"));
        File.CreateSymbolicLink(At("to-nothing"), At("nothing"));
        File.CreateSymbolicLink(At("to-device"), "/dev/null");
        string[] before = Names();

        Assert.Equal(2, await RunAsync([.. Flight, "--out", name]));
        Assert.Contains($"--out: {At(name)} is not written: it is a ", _error.ToString(), StringComparison.Ordinal);
        _error.GetStringBuilder().Clear();
        File.WriteAllText(At("cases.csv"), "case\n");
        Assert.Equal(2, await RunAsync("landings", "cases.csv", "--out", name));
        Assert.Contains($"--out: {At(name)} is not written: it is a ", _error.ToString(), StringComparison.Ordinal);
        File.Delete(At("cases.csv"));
        Assert.Equal(before, Names());
        Assert.True(Directory.Exists(At("folder")));
    }

    [Fact]
    public async Task Out_Link_LeadsToTheFileThatIsReplaced()
    {
        File.WriteAllText(At("old.html"), "old");
        File.CreateSymbolicLink(At("sheet.html"), At("old.html"));

        Assert.Equal(0, await RunAsync([.. Flight, "--out", "sheet.html"]));

        Assert.Equal(At("old.html"), new FileInfo(At("sheet.html")).LinkTarget);
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(At("old.html")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Out_FilesOfTheUsersBeside_AreNeitherFollowedNorRemoved()
    {
        File.WriteAllText(At("mine.txt"), "mine");
        File.WriteAllText(At("sheet.html.new"), "mine");
        File.CreateSymbolicLink(At("sheet.html.partial"), At("mine.txt"));
        string[] before = Names();

        Assert.Equal(0, await RunAsync([.. Flight, "--out", "sheet.html"]));

        Assert.Equal([.. before.Append("sheet.html").Order(StringComparer.Ordinal)], Names());
        Assert.Equal("mine", File.ReadAllText(At("mine.txt")));
        Assert.Equal(At("mine.txt"), new FileInfo(At("sheet.html.partial")).LinkTarget);
    }

    [Fact]
    public async Task Out_SecondPlaceCannotBeWritten_FirstIsNotWrittenEither()
    {
        File.WriteAllText(At("sheet.html"), "old");

        Assert.Equal(2, await RunAsync([.. Flight, "--out", "sheet.html", "--pdf", "."]));

        Assert.Equal("old", File.ReadAllText(At("sheet.html")));
        Assert.Equal(["sheet.html"], Names());
    }

    [Fact]
    public async Task Faults_Hundreds_AreCountedNotListed()
    {
        var file = new StringBuilder("{");
        for (int i = 0; i < 362; i++)
            file.Append(CultureInfo.InvariantCulture, $"\"{(i == 0 ? "first" : "again")}\": 1,\n");
        File.WriteAllText(At("aeroplane.json"), file.Append("\"last\": 1}").ToString());

        Assert.Equal(2, await RunAsync([.. Flight, "--aeroplane", "aeroplane.json"]));

        Assert.Matches("and [0-9]+ more\n$", _error.ToString());
        Assert.InRange(_error.ToString().Count(c => c == '\n'), 50, 60);
    }

    [Fact]
    public async Task Messages_CommandsToATerminalInAFile_AreSpeltOut()
    {
        File.WriteAllText(At("evil\u001b[2J.csv"), "case\n1;\u009b2J\n");

        await RunAsync("landings", "evil\u001b[2J.csv", "--out", "results.csv");
        await RunAsync([.. Flight, "--aeroplane", "no\u001b[2J\u202Ename.json"]);
        await RunAsync([.. Flight, "--surface", "\u001b[31mgrass\u2066"]);

        Assert.Contains("evil\\u001b[2J.csv", _error.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(_error.ToString() + _output, c => char.IsControl(c) && c != '\n' || c is '\u202E' or '\u2066');
    }

    [Fact]
    public async Task Handouts_LinkAmongTheCommandsOwnFiles_IsRefusedAndItsTargetStays()
    {
        File.WriteAllText(At("mine.txt"), "mine");
        Directory.CreateDirectory(At("pages/.flapaero"));
        File.CreateSymbolicLink(At("pages/.flapaero/lock"), At("mine.txt"));

        Assert.Equal(1, await RunAsync("handouts", "--notebooks", RepositoryRoot.Path("notebooks"), "--lesson", "1", "--out", "pages"));

        Assert.Contains("is a link, a device or a pipe", _error.ToString(), StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(At("mine.txt")));
    }

    private string At(string name) => Path.Combine(_root, name);

    private string[] Names() => [.. Directory.GetFileSystemEntries(_root).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    private void Pipe(string name)
    {
        using var made = Process.Start("mkfifo", [At(name)]);
        made.WaitForExit();
    }

    private Task<int> RunAsync(params string[] arguments) =>
        Task.Run(() => CommandLine.RunAsync(arguments, _output, _error, _root, TestContext.Current.CancellationToken));
}
