using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using FlapAero.Equations;

namespace FlapAero.Cli.Tests;

public sealed class LandingsCommandTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("flapaero-landings-").FullName;
    private readonly StringWriter _output = new() { NewLine = "\n" };
    private readonly StringWriter _error = new() { NewLine = "\n" };

    public void Dispose()
    {
        Directory.Delete(_root, recursive: true);
        _output.Dispose();
        _error.Dispose();
    }

    [Fact]
    public async Task Landings_ReferenceCases_WriteTheThirteenColumns()
    {
        await AssertReference("landing-cases.csv", 60);
        await AssertReference("landing-cases-idle.csv", 40);
    }

    private async Task AssertReference(string file, int landings)
    {
        _output.GetStringBuilder().Clear();
        Assert.Equal(0, await RunAsync("landings", Reference(file), "--out", "results.csv"));

        string[][] expected = Rows(File.ReadAllText(Reference(file)));
        int before = Array.IndexOf(expected[0], ResultColumns.Names[0]);
        string[][] actual = Rows(Read("results.csv"));
        Assert.Equal([.. ResultColumns.Names.Prepend("case"), "error"], actual[0]);
        Assert.Equal(expected.Length, actual.Length);
        for (int i = 1; i < expected.Length; i++)
        {
            Assert.Equal(expected[i][0], actual[i][0]);
            Assert.Equal("", actual[i][14]);
            for (int j = 0; j < ResultColumns.Count; j++)
            {
                double wanted = double.Parse(expected[i][before + j], CultureInfo.InvariantCulture);
                Assert.Equal(wanted, double.Parse(actual[i][1 + j], CultureInfo.InvariantCulture), 2e-4 * Math.Abs(wanted));
            }
        }

        Assert.Equal("", _error.ToString());
        Assert.StartsWith($"{landings} landings, of which 0 cannot happen, written to ", _output.ToString(), StringComparison.Ordinal);
    }

    // Each row meets its own gust, as the library's landing in that gust; a column that is left out is what it says.
    [Fact]
    public async Task Landings_GustsInATable_AreFlownRowByRow()
    {
        string[][] rows = [.. Rows(File.ReadAllText(Reference("landing-cases.csv"))).Take(3).Select(r => r[..25])];
        string[][] gusty = [[.. rows[0], "gust_change", "gust_start"], [.. rows[1], "-4", "6"], [.. rows[1], "0", "0"]];
        Assert.Equal(0, await RunAsync("landings", Put("gusty.csv", string.Join('\n', gusty.Select(r => string.Join(',', r)))), "--out", "gusty-results.csv"));
        await RunAsync("landings", Put("calm.csv", string.Join('\n', rows.Select(r => string.Join(',', r)))), "--out", "calm-results.csv");

        double[] stop = [.. Rows(Read("gusty-results.csv"))[1..].Select(row => double.Parse(row[12], CultureInfo.InvariantCulture))];
        LandingOutcome inGust = LandingSolver.Solve(Input(rows[1]) with { GustChange = -4, GustStart = 6, GustLength = LandingInput.CalmGustLength });
        Assert.Equal(inGust.StopDistance, stop[0], 1e-9 * stop[0]);
        Assert.Equal(double.Parse(Rows(Read("calm-results.csv"))[1][12], CultureInfo.InvariantCulture), stop[1], 1e-9 * stop[1]);
        Assert.NotEqual(stop[1], stop[0], 1.0);
    }

    [Theory]
    [InlineData("gust_length", "0.01", "columns gust_change, gust_start, gust_length: length of the gust: 0.01 s is refused")]
    [InlineData("idle_thrust_slope", "1e9", "columns idle_thrust, idle_thrust_slope, idle_thrust_curvature: change of the idle thrust with airspeed: 1e+09 is refused")]
    [InlineData("slip_drag", "0.5", "column slip_drag: slip drag coefficient: 0.5 is refused")]
    [InlineData("runway_slope", "-0.3", "column runway_slope: runway slope: -0.3 is refused; allowed is -0.2 to 0.2.")]
    [InlineData("headwind", "60", "column threshold_speed: threshold speed: 36.802 m/s is refused; allowed is more than the headwind, 60 m/s.")]
    public async Task Landings_WhatTheLibraryRefuses_IsSaidWithItsColumns(string column, string cell, string expected)
    {
        string[][] rows = [.. Rows(File.ReadAllText(Reference("landing-cases.csv"))).Take(2).Select(r => r[..25])];
        int place = Array.IndexOf(rows[0], column);
        rows = place < 0 ? [[.. rows[0], column], [.. rows[1], cell]] : [rows[0], [.. rows[1].Select((old, i) => i == place ? cell : old)]];
        Assert.Equal(2, await RunAsync("landings", Put("bad.csv", string.Join('\n', rows.Select(r => string.Join(',', r)))), "--out", "results.csv"));
        Assert.Contains($"(1 fault):\n  row 2, {expected}", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Landings_Results_AreThoseOfTheLibraryToTheLastDigit()
    {
        await RunAsync("landings", Reference("landing-cases.csv"), "--out", "results.csv");
        string[] first = Rows(File.ReadAllText(Reference("landing-cases.csv")))[1];
        LandingInput input = Input(first);
        var outcomes = new LandingOutcome[4];
        LandingSolver.Solve([input, input, input, input], outcomes);
        double written = double.Parse(Rows(Read("results.csv"))[1][12], CultureInfo.InvariantCulture);
        Assert.Equal(outcomes[0].StopDistance, written, 1e-12 * written);
        Assert.True(Rows(Read("results.csv"))[1][12].Length > 14);
    }

    [Fact]
    public async Task Landings_ReferenceRefusals_WriteTheReasonAndReturnThree()
    {
        Assert.Equal(3, await RunAsync("landings", Reference("landing-refusals.csv"), "--out", "results.csv"));

        string[][] expected = Rows(File.ReadAllText(Reference("landing-refusals.csv")));
        string[][] actual = Rows(Read("results.csv"));
        for (int i = 1; i < expected.Length; i++)
        {
            Assert.Equal(expected[i][^1], actual[i][^1]);
            Assert.All(actual[i][1..^1], cell => Assert.Equal("", cell));
        }

        Assert.Contains("case 16: round-out-above-threshold-height: at this sink rate", _error.ToString(), StringComparison.Ordinal);
        Assert.Contains("2.682 m. Cross the threshold higher, or round out later.\n", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Landings_OtherOrderOthersIgnoredQuotedBomCrlf_ReadsTheSame()
    {
        string[][] rows = [.. Rows(File.ReadAllText(Reference("landing-cases.csv"))).Take(4)];
        await RunAsync("landings", Put("plain.csv", string.Join('\n', rows.Select(r => string.Join(',', r)))), "--out", "plain-results.csv");

        IEnumerable<string> turned = rows.Select((r, i) => string.Join(',', r[..25].Reverse().Select((c, j) => j % 2 == 0 ? $"\"{c}\"" : $" {c} ")
            .Append(i == 0 ? "\"remark, mine\"" : "\"a \"\"b\"\",\nc\"")));
        string path = Path.Combine(_root, "turned.csv");
        File.WriteAllText(path, string.Join("\r\n", turned) + "\r\n\r\n", new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
        int code = await RunAsync("landings", path, "--out", "turned-results.csv");

        Assert.Equal("", _error.ToString());
        Assert.Equal(0, code);
        Assert.Equal(Read("plain-results.csv"), Read("turned-results.csv").Replace(" 1,", "1,").Replace(" 2,", "2,").Replace(" 3,", "3,"));
    }

    [Fact]
    public async Task Landings_NoCaseColumn_CountsRows_AndNamesAreCarriedThrough()
    {
        string[][] rows = [.. Rows(File.ReadAllText(Reference("landing-cases.csv"))).Take(3)];
        await RunAsync("landings", Put("a.csv", string.Join('\n', rows.Select(r => string.Join(',', r[1..25])))), "--out", "a-results.csv");
        Assert.Equal(["case", "1", "2"], Rows(Read("a-results.csv")).Select(r => r[0]));

        rows[1][0] = "\"fast, high\"";
        await RunAsync("landings", Put("b.csv", string.Join('\n', rows.Select(r => string.Join(',', r)))), "--out", "b-results.csv");
        Assert.Contains("\n\"fast, high\",", Read("b-results.csv"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Landings_ManyFaults_AreSaidAllAtOnceAndNothingIsWritten()
    {
        string[][] rows = [.. Rows(File.ReadAllText(Reference("landing-cases.csv"))).Take(6).Select(r => r[..25])];
        rows[1][1] = "heavy";
        rows[1][9] = "";
        rows[2][3] = "NaN";
        rows[3][8] = "\"1,2\"";
        rows[4][13] = "-2";
        rows[4][8] = "3";
        rows[4][23] = "1.5";
        rows[5] = rows[5][..20];
        Put("results.csv", "what stood there");
        string path = Put("bad.csv", string.Join('\n', rows.Select(r => string.Join(',', r))));

        Assert.Equal(2, await RunAsync("landings", path, "--out", "results.csv"));

        Assert.Equal("what stood there", Read("results.csv"));
        Assert.Equal(["bad.csv", "results.csv"], Directory.GetFiles(_root).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        string[] said = _error.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(9, said.Length);
        Assert.Contains("is refused, and nothing was written (8 faults):", said[0], StringComparison.Ordinal);
        Assert.StartsWith("  row 2, column mass: 'heavy' is not a finite number", said[1], StringComparison.Ordinal);
        Assert.StartsWith("  row 2, column headwind: the cell is empty", said[2], StringComparison.Ordinal);
        Assert.StartsWith("  row 3, column span: 'NaN' is not a finite number", said[3], StringComparison.Ordinal);
        Assert.StartsWith("  row 4, column density: '1,2' is not a finite number", said[4], StringComparison.Ordinal);
        Assert.StartsWith("  row 5, column density: density: 3 kg/m³ is refused; allowed is 0.088035 kg/m³ to 1.347 kg/m³.", said[5], StringComparison.Ordinal);
        Assert.StartsWith("  row 5, columns rolling_friction, braking_friction: braking friction: 1.5 is refused", said[6], StringComparison.Ordinal);
        Assert.StartsWith(
            "  row 5, column flare_time_constant: flare time constant: -2 s is refused; allowed is a finite value above 0 s.", said[7], StringComparison.Ordinal);
        Assert.StartsWith("  row 6: 20 cells stand under 25 names", said[8], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "the file is empty")]
    [InlineData("\n\n", "the file is empty")]
    [InlineData("mass;span\n1;2\n", "separated by semicolons")]
    [InlineData("mass,mass,span\n", "the column mass stands there 2 times")]
    [InlineData("mass,span\n1,2\n", "row 1: the column runway_slope is missing.")]
    public async Task Landings_NoTable_SaysWhatIsWrong(string text, string expected)
    {
        Assert.Equal(2, await RunAsync("landings", Put("bad.csv", text), "--out", "results.csv"));
        Assert.Contains(expected, _error.ToString(), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_root, "results.csv")));
    }

    [Fact]
    public async Task Landings_NamesOnly_SaysThatNoLandingIsThere()
    {
        Assert.Equal(2, await RunAsync("landings", Put("bad.csv", string.Join(',', LandingsTable.Needed)), "--out", "results.csv"));
        Assert.Contains("no landing under it", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Landings_WrongCallsAndPlaces_SayWhatAndReturnTheirCode()
    {
        Assert.Equal(2, await RunAsync("landings"));
        Assert.Equal(2, await RunAsync("landings", "none.csv", "--out", "results.csv"));
        Assert.Contains("none.csv: there is no such file.", _error.ToString(), StringComparison.Ordinal);
        Assert.Equal(1, await RunAsync("landings", Reference("landing-cases.csv"), "--out", Path.Combine("no", "such", "folder.csv")));
        Assert.Contains("cannot be written, and what stood there before still does", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Landings_GermanCulture_WritesPoints()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(0, await RunAsync("landings", Reference("landing-cases.csv"), "--out", "german.csv"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        await RunAsync("landings", Reference("landing-cases.csv"), "--out", "plain.csv");
        Assert.Equal(Read("plain.csv"), Read("german.csv"));
    }

    private static string Reference(string name, [CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../data/reference", name));

    private static LandingInput Input(string[] cells) => LandingInput.FromRow(
    [
        .. cells[1..25].Select(c => double.Parse(c, CultureInfo.InvariantCulture)), .. LandingColumn.All.Skip(24).Select(column => column.LeftOut!.Value),
    ]);

    private static string[][] Rows(string text) =>
        [.. text.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(','))];

    private string Put(string name, string text)
    {
        string path = Path.Combine(_root, name);
        File.WriteAllText(path, text);
        return path;
    }

    private string Read(string name) => File.ReadAllText(Path.Combine(_root, name));

    private Task<int> RunAsync(params string[] args) =>
        CommandLine.RunAsync(args, _output, _error, _root, TestContext.Current.CancellationToken);
}
