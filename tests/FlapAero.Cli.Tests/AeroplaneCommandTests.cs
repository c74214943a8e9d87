using FlapAero.Tests;

namespace FlapAero.Cli.Tests;

public sealed class AeroplaneCommandTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("flapaero-aeroplane-").FullName;
    private readonly StringWriter _output = new() { NewLine = "\n" };
    private readonly StringWriter _error = new() { NewLine = "\n" };

    private static string Example { get; } = RepositoryRoot.Path("data/manuals/trainer-h4.json");

    public void Dispose()
    {
        Directory.Delete(_root, recursive: true);
        _output.Dispose();
        _error.Dispose();
    }

    [Fact]
    public async Task Fit_Example_WritesAnAeroplaneThatLandsAndAPage()
    {
        Assert.Equal(0, await RunAsync("fit", Example, "--out", "fitted.json", "--page", "report.html"));

        Aeroplane fitted = AeroplaneFile.Read(In("fitted.json"));
        Assert.True(Landing.Fly(LandingSetup.For(fitted.Configure(fitted.FlapsUp))).Happened);
        string report = _output.ToString();
        Assert.Contains("yes for speeds", report, StringComparison.Ordinal);
        Assert.Contains("no for attitude", report, StringComparison.Ordinal);
        Assert.Contains("C_Lmax, flaps 35°", report, StringComparison.Ordinal);
        string page = File.ReadAllText(In("report.html"));
        Assert.StartsWith("<!DOCTYPE html>", page, StringComparison.Ordinal);
        Assert.Contains("no for attitude", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
        Assert.Contains("<svg", page, StringComparison.Ordinal);
        Assert.Contains("numbers 46 are within one step of the manual's rounding, 0 are further away.", page.Replace("&#39;", "'", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(2, Directory.GetFiles(_root).Length);
    }

    [Fact]
    public async Task Fit_FaultyManual_ListsAllFaultsAndWritesNothing()
    {
        File.WriteAllText(In("bad.json"), File.ReadAllText(Example)
            .Replace("\"ratio\": 9.5", "\"ratio\": 24", StringComparison.Ordinal).Replace("\"groundRoll\": \"530 ft\"", "\"groundRoll\": \"162 ft\"", StringComparison.Ordinal));
        File.WriteAllText(In("fitted.json"), "what stood here before");

        Assert.Equal(2, await RunAsync("fit", "bad.json", "--out", "fitted.json"));

        Assert.Contains("bad.json: 2 faults", _error.ToString(), StringComparison.Ordinal);
        Assert.Contains("glides[0].ratio: 24 is more than a span of 35.8 ft allows", _error.ToString(), StringComparison.Ordinal);
        Assert.Contains("landings[0].groundRoll: 162 ft is shorter than any braking could make it", _error.ToString(), StringComparison.Ordinal);
        Assert.Equal("what stood here before", File.ReadAllText(In("fitted.json")));
        Assert.Equal("", _output.ToString());
    }

    [Fact]
    public async Task Fit_OutIsTheManual_IsRefused()
    {
        File.Copy(Example, In("manual.json"));

        Assert.Equal(2, await RunAsync("fit", "manual.json", "--out", "manual.json"));

        Assert.Contains("three files", _error.ToString(), StringComparison.Ordinal);
        Assert.Equal(File.ReadAllText(Example), File.ReadAllText(In("manual.json")));
    }

    [Fact]
    public async Task Fit_OutIsAFolder_IsRefusedBeforeTheFit()
    {
        Assert.Equal(2, await RunAsync("fit", Example, "--out", "."));
        Assert.Contains("is not written", _error.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("data/manuals/trainer-h4.json", "a manual without faults")]
    [InlineData("data/aeroplanes/trainer-h4.json", "an aeroplane without faults")]
    public async Task Check_GoodFile_SaysWhatItIs(string file, string words)
    {
        Assert.Equal(0, await RunAsync("check", RepositoryRoot.Path(file)));
        Assert.Contains(words, _output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_AeroplaneWithAFault_IsCheckedAsAnAeroplane()
    {
        File.WriteAllText(In("a.json"), File.ReadAllText(RepositoryRoot.Path("data/aeroplanes/trainer-h4.json"))
            .Replace("\"value\": 1090, \"unit\": \"kg\"", "\"value\": 2403, \"unit\": \"kg\"", StringComparison.Ordinal));

        Assert.Equal(2, await RunAsync("check", "a.json"));

        Assert.Contains("did you mean 2403 lb", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_NoSuchFile_IsRefused()
    {
        Assert.Equal(2, await RunAsync("check", "nothing.json"));
        Assert.Contains("there is no file", _error.ToString(), StringComparison.Ordinal);
    }

    private string In(string name) => Path.Combine(_root, name);

    private Task<int> RunAsync(params string[] args) =>
        CommandLine.RunAsync(["aeroplane", .. args], _output, _error, _root, TestContext.Current.CancellationToken);
}
