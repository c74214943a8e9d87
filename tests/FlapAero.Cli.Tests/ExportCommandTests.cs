using FlapAero.Tests;

namespace FlapAero.Cli.Tests;

public sealed class ExportCommandTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("flapaero-export-").FullName;
    private readonly StringWriter _output = new() { NewLine = "\n" };
    private readonly StringWriter _error = new() { NewLine = "\n" };

    private string Apps => Path.Combine(_root, "artifacts", "lessons-as-apps");

    public ExportCommandTests()
    {
        Directory.CreateDirectory(Path.Combine(_root, "notebooks"));
        File.WriteAllText(Path.Combine(_root, "FlapAero.sln"), "");
        File.Copy(RepositoryRoot.Path("notebooks/04-approach-speed.ipynb"), Path.Combine(_root, "notebooks", "04-approach-speed.ipynb"));
    }

    public void Dispose()
    {
        Directory.Delete(_root, recursive: true);
        _output.Dispose();
        _error.Dispose();
    }

    [Fact]
    public async Task Export_WithoutOptions_WritesInstructorsCopiesToTheStandardFolder()
    {
        Assert.Equal(0, await RunAsync(_root, "export"));

        string program = await File.ReadAllTextAsync(Path.Combine(Apps, "04-approach-speed.cs"), TestContext.Current.CancellationToken);
        Assert.Contains("#:project ../../src/FlapAero.Notebooks/FlapAero.Notebooks.csproj\n", program, StringComparison.Ordinal);
        Assert.Contains("For the instructor: it holds the answers.", program, StringComparison.Ordinal);
        Assert.DoesNotContain(_root, program, StringComparison.Ordinal);
        Assert.Equal("", _error.ToString());
        Assert.StartsWith("1 lesson written; start with: dotnet run ", _output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Export_EverythingNamedOutsideTheRepository_TakesThePackage()
    {
        string elsewhere = Path.Combine(_root, "elsewhere");
        string notebooks = Path.Combine(_root, "notebooks");

        Assert.Equal(0, await RunAsync(Path.GetTempPath(), "export", "--packages", "--notebooks", notebooks, "--out", elsewhere, "--lesson", "4"));

        string program = await File.ReadAllTextAsync(Path.Combine(elsewhere, "04-approach-speed.cs"), TestContext.Current.CancellationToken);
        Assert.Contains("\n#:package FlapAero.Notebooks@0.", program, StringComparison.Ordinal);
        Assert.Contains("names the folder with FlapAero's packages", program, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "--packages")]
    [InlineData(1)]
    public async Task Export_OutsideTheRepository_SaysWhatToName(int code, params string[] arguments)
    {
        File.Delete(Path.Combine(_root, "FlapAero.sln"));

        Assert.Equal(code, await RunAsync(_root, ["export", .. arguments]));
        Assert.Contains("No FlapAero.sln", _error.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--lesson", "flare")]
    [InlineData("--no-such-thing", "1")]
    public async Task Export_WrongUsage_ReturnsTwoAndWritesNothing(params string[] arguments)
    {
        Assert.Equal(2, await RunAsync(_root, ["export", .. arguments]));
        Assert.NotEqual("", _error.ToString());
        Assert.False(Directory.Exists(Apps));
    }

    [Theory]
    [InlineData("student")]
    [InlineData("instructor")]
    public async Task Export_Edition_IsRefusedInOneSentenceThatNamesPageAndNotebook(string edition)
    {
        Assert.Equal(2, await RunAsync(_root, "export", "--edition", edition));
        Assert.Contains("a student uses the page or the notebook that \"flapaero handouts\" makes.", _error.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Apps));
    }

    [Fact]
    public async Task Export_CellThatNoProgramCanHave_SaysWhichAndWritesNothing()
    {
        string lesson = Path.Combine(_root, "notebooks", "04-approach-speed.ipynb");
        string text = await File.ReadAllTextAsync(lesson, TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(lesson, text.Replace("var bankGuess =", "var air =", StringComparison.Ordinal), TestContext.Current.CancellationToken);

        Assert.Equal(1, await RunAsync(_root, "export"));
        Assert.Contains("cell \"My prediction: bank at the stall\" (my-prediction-bank-at-the-stall) declares \"air\"", _error.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Apps));
    }

    private Task<int> RunAsync(string workingFolder, params string[] arguments) =>
        CommandLine.RunAsync(arguments, _output, _error, workingFolder, TestContext.Current.CancellationToken);
}
