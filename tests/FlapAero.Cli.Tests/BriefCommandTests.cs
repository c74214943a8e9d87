using FlapAero.Notebooks;

namespace FlapAero.Cli.Tests;

public sealed class BriefCommandTests : IDisposable
{
    private static readonly string[] Demo =
    [
        "brief", "--weight", "1050 kg", "--runway", "24", "--length", "900 m", "--surface", "grass", "--elevation", "450 ft", "--qnh", "1018 hPa",
        "--temperature", "22 C", "--wind", "210/12G20",
    ];

    private readonly string _root = Directory.CreateTempSubdirectory("flapaero-brief-").FullName;
    private readonly StringWriter _output = new() { NewLine = "\n" };
    private readonly StringWriter _error = new() { NewLine = "\n" };

    public void Dispose()
    {
        Directory.Delete(_root, recursive: true);
        _output.Dispose();
        _error.Dispose();
    }

    [Fact]
    public async Task Brief_Steps_PrintsAndWritesTheExerciseInPlaceOfTheSheet()
    {
        string page = Path.Combine(_root, "exercise.html");

        Assert.Equal(0, await RunAsync([.. Demo, "--steps", "--out", page]));

        Assert.Equal(ExerciseSheet.Of(Briefing.For(DemoBriefings.Flight).Value) + $"Written: {page}\n", _output.ToString());
        Assert.Contains("<h1 class=\"sheet-title\">Landing without flaps: the exercise, step by step</h1>", await File.ReadAllTextAsync(page, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Brief_Drills_PrintsAndWritesThemInPlaceOfTheSheet()
    {
        string page = Path.Combine(_root, "drills.html");

        Assert.Equal(0, await RunAsync([.. Demo, "--drills", "--out", page]));

        Assert.Equal(DrillSheet.Of(Briefing.For(DemoBriefings.Flight).Value) + $"Written: {page}\n", _output.ToString());
        Assert.Contains("<h1 class=\"sheet-title\">Landing without flaps: correction drills</h1>", await File.ReadAllTextAsync(page, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Brief_StepsAndDrills_AreRefusedTogether()
    {
        Assert.Equal(2, await RunAsync([.. Demo, "--steps", "--drills"]));
        Assert.Contains("--steps, --drills: one of them", _error.ToString(), StringComparison.Ordinal);
        Assert.Equal("", _output.ToString());
    }

    [Fact]
    public async Task Brief_DemoFlight_PrintsTheSheet()
    {
        Assert.Equal(0, await RunAsync(Demo));

        Assert.Equal(BriefingSheet.Of(Briefing.For(DemoBriefings.Flight).Value).ToString(), _output.ToString());
        Assert.Equal("", _error.ToString());
    }

    [Theory]
    [InlineData("--weight", "2314.85375 lb")]
    [InlineData("--wind", "21012G20KT")]
    [InlineData("--wind", "210/12g20")]
    [InlineData("--temperature", "22 °C")]
    [InlineData("--temperature", "71.6F")]
    [InlineData("--length", "0.9 km")]
    [InlineData("--slope", "level")]
    [InlineData("--spacing", "0.9 nmi")]
    [InlineData("--spacing", "0.9 NM")]
    [InlineData("--circuit", "1000 ft")]
    [InlineData("--over-threshold", "50ft")]
    [InlineData("--surface", "GRASS")]
    public async Task Brief_SameFlightWrittenOtherwise_GivesTheSameSheet(string option, string value)
    {
        Assert.Equal(0, await RunAsync(With(option, value)));
        Assert.Equal(BriefingSheet.Of(Briefing.For(DemoBriefings.Flight).Value).ToString(), _output.ToString());
    }

    [Theory]
    [InlineData("paved", "asphalt", "tarmac", "concrete", "Tarmac")]
    [InlineData("wet-paved", "wet-asphalt", "wet-tarmac", "wet-concrete", "WET-ASPHALT")]
    public async Task Brief_OneSurfaceUnderItsNames_GivesOneSheet(string first, params string[] others)
    {
        await RunAsync(With("--surface", first));
        string sheet = _output.ToString();
        Assert.NotEmpty(sheet);
        foreach (string other in others)
        {
            _output.GetStringBuilder().Clear();
            await RunAsync(With("--surface", other));
            Assert.Equal(sheet, _output.ToString());
        }
    }

    [Fact]
    public async Task Brief_Out_WritesThePageAndNothingElse()
    {
        Assert.Equal(0, await RunAsync([.. Demo, "--out", "sheet.html", "--paper", "letter"]));

        string html = await File.ReadAllTextAsync(Path.Combine(_root, "sheet.html"), TestContext.Current.CancellationToken);
        Assert.Contains("size: Letter", html, StringComparison.Ordinal);
        Assert.Contains("Do not land here without flaps.", html, StringComparison.Ordinal);
        Assert.Equal(["sheet.html"], Directory.GetFileSystemEntries(_root).Select(Path.GetFileName));
        Assert.Contains("Written: ", _output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Brief_NoFlight_NamesEveryMissingOption()
    {
        Assert.Equal(2, await RunAsync("brief"));
        foreach (string option in new[] { "--weight", "--runway", "--length", "--surface", "--elevation", "--temperature", "--wind" })
            Assert.Contains($"'{option}'", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Brief_EverythingWrong_ListsAllFaultsAtOnce()
    {
        Assert.Equal(2, await RunAsync(
            "brief", "--weight", "1150", "--runway", "37", "--length", "900", "--surface", "mud", "--elevation", "450", "--temperature", "22",
            "--wind", "VRB05", "--slope", "3", "--margin", "0.5", "--aeroplane", "nowhere.json", "--out", "sheet.html"));

        string said = _error.ToString();
        Assert.StartsWith("The flight is refused, and nothing was written (11 reasons):\n", said, StringComparison.Ordinal);
        foreach (string fault in new[]
        {
            "--aeroplane: nowhere.json: 1 fault", "--weight: \"1150\" is refused; allowed is a number and kg or lb", "--runway: \"37\" names no runway",
            "--length: \"900\" is refused", "--elevation: \"450\" is refused", "--surface: \"mud\" is no surface known here; allowed is paved, ",
            "--slope: \"3\" is no slope", "--qnh, --pressure-altitude: exactly one is needed", "--temperature: \"22\" is refused",
            "--wind: \"VRB05\" is no wind; a variable wind has no direction", "--margin: margin factor: 0.5 is refused; allowed is 1 to 3",
        })
            Assert.Contains("\n  " + fault, said, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(_root));
        Assert.Equal("", _output.ToString());
    }

    [Theory]
    [InlineData("--weight", "1091 kg", "--weight: mass: 1091 kg is refused; allowed is 700 kg to 1090 kg.")]
    [InlineData("--weight", "1,050 kg", "--weight: \"1,050 kg\" is refused")]
    [InlineData("--wind", "210/12G10", "--wind: gust: 10 kt is refused; allowed is 12 kt to 72 kt.")]
    [InlineData("--wind", "400/12", "--wind: wind direction: 400° is refused")]
    [InlineData("--qnh", "700 hPa", "--qnh, --temperature: altimeter setting: 700 hPa is refused")]
    [InlineData("--pressure-altitude", "300 ft", "exactly one is needed")]
    [InlineData("--length", "90 m", "landing distance available: 90 m is refused; allowed is 100 m to 6000 m.")]
    [InlineData("--slope", "30 % up", "runway slope: 0.3 is refused")]
    [InlineData("--over-threshold", "3 ft", "height over the threshold: 3 ft is refused")]
    [InlineData("--weight", "١٠٥٠ kg", "--weight: \"١٠٥٠ kg\" is refused; allowed is a number and kg or lb")]
    [InlineData("--weight", "NaN kg", "--weight: \"NaN kg\" is refused")]
    [InlineData("--weight", "1e400 kg", "--weight: \"1e400 kg\" is refused")]
    [InlineData("--weight", "-Infinity kg", "--weight: \"-Infinity kg\" is refused")]
    [InlineData("--temperature", "٢٢ C", "--temperature: \"٢٢ C\" is refused")]
    [InlineData("--temperature", "1e999 C", "--temperature: \"1e999 C\" is refused")]
    [InlineData("--runway", "٢٤", "--runway: \"٢٤\" names no runway")]
    [InlineData("--wind", "٢١٠/١٢", "--wind: \"٢١٠/١٢\" is no wind")]
    [InlineData("--slope", "١ % up", "--slope: \"١ % up\" is no slope")]
    [InlineData("--margin", "abc", "--margin: \"abc\" is no number; allowed is a factor from 1 to 3, such as 1.43.")]
    [InlineData("--margin", "١.٥", "--margin: \"١.٥\" is no number")]
    [InlineData("--margin", "NaN", "--margin: \"NaN\" is no number")]
    [InlineData("--crosswind-limit", "NaN kt", "--crosswind-limit: \"NaN kt\" is refused")]
    [InlineData("--crosswind-limit", "90 kt", "crosswind limit: 90 kt is refused; allowed is 1 kt to 60 kt.")]
    [InlineData("--circuit", "300 ft", "circuit height: 300 ft is refused")]
    public async Task Brief_OneValueOutside_NamesOptionValueAndLimit(string option, string value, string message)
    {
        Assert.Equal(2, await RunAsync(With(option, value)));
        Assert.Contains("(1 reason)", _error.ToString(), StringComparison.Ordinal);
        Assert.Contains(message, _error.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Parameter", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Brief_CrosswindAboveTheInstructorsLimit_SaysSoFirst()
    {
        Assert.Equal(0, await RunAsync([.. With("--wind", "210/12G20"), "--crosswind-limit", "9 kt"]));
        Assert.Contains(">> DO NOT LAND HERE IN THIS WIND. The crosswind is 10 kt in the gusts; the limit is 9 kt (the", _output.ToString(), StringComparison.Ordinal);
    }

    [Theory, InlineData("brief", "--out", ""), InlineData("brief", "--aeroplane", ""), InlineData("check", ""), InlineData("export", "--out", ""),
     InlineData("handouts", "--out", " "), InlineData("handouts", "--aeroplane", ""), InlineData("landings", "", "--out", "x.csv"), InlineData("landings", "x.csv", "--out", "")]
    public async Task AnyCommand_EmptyPath_IsRefusedInASentence(string command, params string[] rest)
    {
        Assert.Equal(2, await RunAsync([.. command == "brief" ? Demo : [command], .. rest]));
        Assert.Contains(" is empty; allowed is the path of a file or folder.", _error.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Unexpected", _error.ToString(), StringComparison.Ordinal);
    }

    [Theory, InlineData("brief"), InlineData("check", "--help"), InlineData("--help")]
    public async Task AnyCommand_ClosedOutput_IsTwoAndASentence(params string[] call)
    {
        int code = await CommandLine.RunAsync(
            call[0] == "brief" ? Demo : call, new ClosedWriter(), _error, _root, TestContext.Current.CancellationToken);
        Assert.Equal(2, code);
        Assert.Equal("The standard output is closed or full, so nothing can be said there; give the command one that takes text.\n", _error.ToString());
    }

    [Fact]
    public async Task AnyCommand_ClosedErrorStream_StillHasItsExitCode() => Assert.Equal(2, await CommandLine.RunAsync(
        ["handouts", "--seed", "abc"], _output, new ClosedWriter(), _root, TestContext.Current.CancellationToken));

    /// <summary>As a standard stream that the caller has closed.</summary>
    private sealed class ClosedWriter : StringWriter
    {
        public override void Write(char value) => throw new UnauthorizedAccessException("Access to the path is denied.");

        public override void Write(string? value) => Write(' ');

        public override void Write(char[] buffer, int index, int count) => Write(' ');
    }

    [Fact]
    public async Task Brief_FlightThatCannotBe_GivesReasonsAndThree()
    {
        Assert.Equal(3, await RunAsync(With("--wind", "060/45")));
        Assert.Contains("This flight cannot be briefed, and nothing was written", _error.ToString(), StringComparison.Ordinal);
        Assert.Contains("Landing without flaps: path-steeper-than-idle-glide", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Brief_FolderThatIsNotThere_KeepsQuietAboutTheSheetAndSaysWhy()
    {
        Assert.Equal(1, await RunAsync([.. Demo, "--out", "no/such/sheet.html"]));
        Assert.StartsWith("The sheet cannot be written", _error.ToString(), StringComparison.Ordinal);
        Assert.Equal("", _output.ToString());
    }

    [Fact]
    public async Task Brief_OptionsInAFile_ReadsThem()
    {
        string file = Path.Combine(_root, "flight.txt");
        await File.WriteAllLinesAsync(file, Demo.Skip(1).Select(word => word.Contains(' ', StringComparison.Ordinal) ? $"\"{word}\"" : word), TestContext.Current.CancellationToken);
        Assert.Equal(0, await RunAsync("brief", "@" + file));
        Assert.Equal(BriefingSheet.Of(Briefing.For(DemoBriefings.Flight).Value).ToString(), _output.ToString());
    }

    /// <summary>The demo flight with one option set otherwise.</summary>
    private static string[] With(string option, string value)
    {
        int at = Array.IndexOf(Demo, option);
        return at < 0 ? [.. Demo, option, value] : [.. Demo[..(at + 1)], value, .. Demo[(at + 2)..]];
    }

    private Task<int> RunAsync(params string[] args) =>
        CommandLine.RunAsync(args, _output, _error, _root, TestContext.Current.CancellationToken);
}
