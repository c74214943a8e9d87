namespace FlapAero.Charts.Tests;

public class NumbersTableTests
{
    [Fact]
    public void Numbers_SharedSamples_AreAtRoundValues()
    {
        NumbersTable numbers = Examples.Turn.Numbers;
        Assert.Equal(["angle of bank (°)", "flaps up (kt CAS)", "flaps 35° (kt CAS)"], numbers.Headings);
        Assert.Equal(["0", "10", "20", "30", "40", "50", "60"], numbers.Rows.Select(r => r[0]));
        Assert.Equal(["60", "75.4", "65.2"], numbers.Rows[^1]);
    }

    [Fact]
    public void Numbers_UnevenSamples_AreASpreadOfThemWithBothEnds()
    {
        double[] xs = [.. Enumerable.Range(0, 101).Select(i => 0.0317 + i * 0.01713)];
        NumbersTable numbers = Complete(Examples.Empty.Line("a", xs, x => 2 * x)).Numbers;
        Assert.InRange(numbers.Rows.Count, 3, 10);
        Assert.Equal("0.032", numbers.Rows[0][0]);
        Assert.Equal("1.745", numbers.Rows[^1][0]);
    }

    [Fact]
    public void Numbers_RisingLinesOfUnequalLength_AreAtRoundValuesWithGaps()
    {
        NumbersTable numbers = Complete(Examples.Empty
            .Line("short", [0, 333, 1000], x => x / 10).Line("long", [0, 777, 2000], x => x / 20)).Numbers;
        IReadOnlyList<string> last = numbers.Rows[^1];
        Assert.Equal(["2\u202F000", "–", "100"], last);
        Assert.Contains(numbers.Rows, row => row[0] == "500" && row[1] == "50" && row[2] == "25");
    }

    [Fact]
    public void Numbers_LinesThatTurnBack_AreListedLineByLine()
    {
        NumbersTable numbers = Complete(Examples.Empty
            .Line("loop", [0, 1, 0], [0.0, 1, 2]).Line("other", [5, 4, 3], [0.0, 1, 2])).Numbers;
        Assert.Equal(6, numbers.Rows.Count);
        Assert.Equal("loop", numbers.Rows[0][0]);
        Assert.Equal("other", numbers.Rows[^1][0]);
    }

    [Fact]
    public void Numbers_Bars_HaveARowEach()
    {
        NumbersTable numbers = Complete(Examples.Empty
            .Bars("landings", Samples.Between(0, 1100, 100), x => 12 - x / 100)
            .Line("expected", [0, 2000], x => x / 100)).Numbers;
        Assert.Equal(12, numbers.Rows.Count);
        Assert.Equal(["1\u202F100", "1", "11"], numbers.Rows[^1]);
    }

    [Theory]
    [InlineData(0, 0.6, "0.0,0.2,0.4,0.6")]
    [InlineData(-1000, 1000, "−1 000,−500,0,500,1 000")]
    [InlineData(45.2, 59.9, "46,48,50,52,54,56,58")]
    public void Within_Range_GivesRoundLabels(double low, double high, string labels) =>
        Assert.Equal(labels, string.Join(',', LabelsOf(low, high)).Replace('\u202F', ' '));

    /// <summary>The labels as a reader of the drawing meets them.</summary>
    private static IEnumerable<string> LabelsOf(double low, double high)
    {
        using var json = System.Text.Json.JsonDocument.Parse(Complete(Examples.Empty.Line("a", [low, high], [0.0, 1])).ToPlotlyJson());
        return [.. json.RootElement.GetProperty("layout").GetProperty("xaxis").GetProperty("ticktext").EnumerateArray().Select(t => t.GetString()!)];
    }

    private static Figure Complete(Figure figure) => figure.Caption("Caption.").Finding("Finding.");
}
