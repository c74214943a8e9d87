using FlapAero.Notebooks;
using FlapAero.Tests;

namespace FlapAero.Cli.Tests;

/// <summary>A flight from a school, an aeroplane and a METAR.</summary>
public sealed class SchoolBriefTests : IDisposable
{
    private const string Report = "METAR XQAA 291450Z 24008KT 9999 SCT030 14/07 Q1016";
    private const string Dot = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

    private readonly string _root = Directory.CreateTempSubdirectory("flapaero-school-").FullName;
    private readonly StringWriter _output = new() { NewLine = "\n" };
    private readonly StringWriter _error = new() { NewLine = "\n" };

    private static string Example { get; } = RepositoryRoot.Path("data/schools/quillmere.json");

    private static string Aeroplane { get; } = RepositoryRoot.Path("data/aeroplanes/trainer-h4.json");

    public void Dispose()
    {
        Directory.Delete(_root, recursive: true);
        _output.Dispose();
        _error.Dispose();
    }

    [Fact]
    public async Task Brief_SchoolAeroplaneAndMetarAlone_PrintTheSheet()
    {
        Assert.Equal(0, await RunAsync("brief", "--school", Example, "--aeroplane", Aeroplane, "--metar", Report));

        string sheet = _output.ToString();
        Assert.Equal("", _error.ToString());
        foreach (string said in new[]
        {
            "Quillmere Flying School", "24 is proposed: it has the most headwind.", "METAR of XQAA", "1 090 kg", "the greatest of Trainer H4",
            "displaced by 80 m", "Solo students land without flaps only after", "Bring this sheet", "flying order",
            BriefingSheet.Caution.Split('.')[0],
        })
            Assert.Contains(said, Unwrapped(sheet), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--runway", "06", "Runway 06, 860 m")]
    [InlineData("--length", "900 m", "900 m")]
    [InlineData("--length", "1500 m", "landmark: the white gate on the right, 240 m")]
    [InlineData("--weight", "1000 kg", "1 000 kg")]
    [InlineData("--wind", "060/10", "06 is proposed")]
    [InlineData("--surface", "wet-grass", "wet grass")]
    [InlineData("--aerodrome", "Brackmere", "Brackmere has the METAR of XQBB, not of XQAA")]
    public async Task Brief_OptionBesideASchool_GoesBeforeIt(string option, string value, string said)
    {
        Assert.Equal(0, await RunAsync("brief", "--school", Example, "--aeroplane", Aeroplane, "--metar", Report, option, value));
        Assert.Contains(said, Unwrapped(_output.ToString()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Brief_RulesOfASchool_MoveItsNumbers()
    {
        Assert.Equal(0, await RunAsync("brief", "--school", School("""{ "name": "A", "rules": { "referenceMultiples": { "flapsUp": 1.4 }, "stableHeight": "400 ft", "headwindShare": 0 }"""), "--day", "d"));
        string sheet = Unwrapped(_output.ToString());
        Assert.Contains("at 400 ft", sheet, StringComparison.Ordinal);
        Assert.Contains("1.4 with flaps up", sheet, StringComparison.Ordinal);
        Assert.Contains("0 % of the headwind (0.0 kt)", sheet, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("XQAA 291450Z /////KT 9999 14/07 Q1016", "the station measured no wind")]
    [InlineData("XQAA 291450Z VRB15KT 9999 14/07 Q1016", "variable and not light")]
    [InlineData("XQAA 291450Z NIL", "NIL")]
    [InlineData("\u001b[2Jboo <script>", "stands in no METAR")]
    [InlineData("XQAA 291450Z 24008KT 9999 ///// Q1016", "--temperature is needed")]
    [InlineData("XQAA 291450Z 24008KT 9999 14/07 Q////", "--qnh is needed")]
    public async Task Brief_MetarThatCannotBeUsed_IsRefusedInWords(string report, string said)
    {
        Assert.Equal(2, await RunAsync("brief", "--school", Example, "--metar", report));
        Assert.Contains(said, _error.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b", _error.ToString(), StringComparison.Ordinal);
        Assert.Equal("", _output.ToString());
    }

    [Theory]
    [InlineData("--runway", "09", "is no runway of Quillmere; allowed is 24, 06, 33")]
    [InlineData("--aerodrome", "Nowhere", "is none of the school's; allowed is Quillmere, Brackmere")]
    [InlineData("--circuit", "700 ft", "800 ft or more. The school flies no lower circuit.")]
    [InlineData("--school", "nowhere.json", "nowhere.json: 1 fault")]
    public async Task Brief_NameThatTheSchoolHasNot_IsRefusedWithThoseItHas(string option, string value, string said)
    {
        string[] school = option == "--school" ? [] : ["--school", Example];
        Assert.Equal(2, await RunAsync(["brief", .. school, "--metar", Report, option, value]));
        Assert.Contains(said, _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Brief_MetarWithoutASchool_GivesWindTemperatureAndPressure()
    {
        string[] place = ["--weight", "1050 kg", "--runway", "24", "--length", "900 m", "--surface", "grass", "--elevation", "450 ft"];
        Assert.Equal(0, await RunAsync(["brief", .. place, "--wind", "210/12G20", "--temperature", "22 C", "--qnh", "1018 hPa"]));
        string typed = _output.ToString();
        _output.GetStringBuilder().Clear();
        Assert.Equal(0, await RunAsync(["brief", .. place, "--metar", "XQAA 291450Z 21012G20KT CAVOK 22/10 Q1018"]));
        Assert.Equal(typed[typed.IndexOf("Aeroplane", StringComparison.Ordinal)..], _output.ToString()[_output.ToString().IndexOf("Aeroplane", StringComparison.Ordinal)..]);
    }

    [Fact]
    public async Task Brief_NameWithMarkupAndALogo_AreShownAndNothingRuns()
    {
        await File.WriteAllBytesAsync(Path.Combine(_root, "logo.svg"), Convert.FromBase64String(Dot), TestContext.Current.CancellationToken);
        string school = School("""{ "name": "<img src=x onerror=alert(1)>", "footLine": "</style><script>alert(2)</script>", "logo": "logo.svg" """);
        Assert.Equal(0, await RunAsync("brief", "--school", school, "--day", "d", "--out", "sheet.html"));
        string html = await File.ReadAllTextAsync(Path.Combine(_root, "sheet.html"), TestContext.Current.CancellationToken);
        Assert.Contains("&lt;img src=x onerror=alert(1)&gt;", html, StringComparison.Ordinal);
        Assert.Contains("src=\"data:image/png;base64," + Dot, html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<img src=x", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("link")]
    [InlineData("linked folder")]
    [InlineData("text")]
    [InlineData("missing")]
    [InlineData("large")]
    [InlineData("grows")]
    public async Task Brief_LogoThatIsNone_IsRefusedAndNothingIsWritten(string kind)
    {
        string outside = Directory.CreateTempSubdirectory("flapaero-outside-").FullName;
        try
        {
            await File.WriteAllBytesAsync(Path.Combine(outside, "logo.png"), Convert.FromBase64String(Dot), TestContext.Current.CancellationToken);
            string logo = Path.Combine(_root, "logo.png");
            if (kind == "link") File.CreateSymbolicLink(logo, Path.Combine(outside, "logo.png"));
            if (kind == "linked folder") Directory.CreateSymbolicLink(Path.Combine(_root, "marks"), outside);
            if (kind == "text") await File.WriteAllTextAsync(logo, "<html><script>alert(1)</script></html>", TestContext.Current.CancellationToken);
            if (kind == "large") await File.WriteAllBytesAsync(logo, [.. Convert.FromBase64String(Dot), .. new byte[300_000]], TestContext.Current.CancellationToken);
            if (kind == "grows")
                await File.WriteAllTextAsync(logo, "<!DOCTYPE svg [<!ENTITY a \"aaaa\">]><svg xmlns=\"http://www.w3.org/2000/svg\">&a;</svg>", TestContext.Current.CancellationToken);
            string school = School($$"""{ "name": "A", "logo": "{{(kind == "linked folder" ? "marks/logo.png" : "logo.png")}}" """);
            Assert.NotEqual(0, await RunAsync("brief", "--school", school, "--day", "d", "--out", "sheet.html"));
            Assert.Contains("The school's logo", _error.ToString(), StringComparison.Ordinal);
            Assert.False(File.Exists(Path.Combine(_root, "sheet.html")));
        }
        finally
        {
            Directory.Delete(outside, recursive: true);
        }
    }

    /// <summary>A school with an aerodrome and a day, begun as given.</summary>
    private string School(string begun)
    {
        string file = Path.Combine(_root, "school.json");
        File.WriteAllText(file, begun.TrimEnd() + """
            , "aerodromes": [{ "name": "P", "runways": [{ "name": "27", "heading": "270 deg", "length": "1400 m" }] }],
            "weather": [{ "name": "d", "wind": "270/8", "temperature": "15 C", "qnh": "1013 hPa" }] }
            """);
        return file;
    }

    private static string Unwrapped(string sheet) =>
        string.Join(' ', sheet.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private Task<int> RunAsync(params string[] args) =>
        CommandLine.RunAsync(args, _output, _error, _root, TestContext.Current.CancellationToken);
}
