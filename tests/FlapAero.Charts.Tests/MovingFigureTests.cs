using System.Globalization;
using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace FlapAero.Charts.Tests;

public class MovingFigureTests
{
    private static readonly Axis Weight = Axis.Of("weight", "W", "% of maximum");

    private static Figure Base => Examples.Empty
        .Line("maximum weight", Examples.Banks, bank => Examples.InTurn(53.3, bank))
        .Level("speed kept", 69.3)
        .Caption("Stall speed V_S against bank.");

    private static MovingFigure Lighter => Base.Moving(Weight, Samples.Between(60, 110, 5), 85, AtShare);

    private static Figure AtShare(Figure figure, double share) => figure
        .Line("this weight", Examples.Banks, bank => At(share, bank))
        .Mark("at 30°", 30, At(share, 30))
        .Finding($"At {share:0} % the stall speed V_S is {At(share, 0):0.0} kt.");

    private static double At(double share, double bank) => Examples.InTurn(53.3 * Math.Sqrt(share / 100), bank);

    [Fact]
    public void Moving_Frames_AreAllComputedInTheLibrary()
    {
        MovingFigure figure = Lighter;
        Assert.Equal(11, figure.Frames.Count);
        Assert.Equal(85, figure.Start);
        Assert.All(figure.Values.Zip(figure.Frames), pair =>
        {
            Assert.Equal(["maximum weight", "this weight"], pair.Second.Lines.Select(line => line.Name));
            Assert.Equal(At(pair.First, 30), pair.Second.Marks.Single().Y, 1e-9);
            Assert.StartsWith(FormattableString.Invariant($"At {pair.First:0} %"), pair.Second.FindingText, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void ToPlotlyJson_Frames_LaidOverTheStartAreTheFiguresOfEachValue()
    {
        MovingFigure figure = Lighter;
        using JsonDocument json = JsonDocument.Parse(figure.ToPlotlyJson());
        JsonElement moving = json.RootElement.GetProperty("moving"), data = json.RootElement.GetProperty("data");
        Assert.Equal(5, moving.GetProperty("start").GetInt32());
        JsonElement[] frames = [.. moving.GetProperty("frames").EnumerateArray()];
        Assert.Equal(11, frames.Length);
        Assert.False(frames[5].TryGetProperty("data", out _));
        for (int i = 0; i < frames.Length; i++)
        {
            Assert.Equal(figure.Frames[i].Lines[1].Y, Values(Over(data, frames[i], 1)), (a, b) => Math.Abs(a - b) <= 5e-6 * a);
            Assert.Equal(figure.Frames[i].Marks[0].Y, Values(Over(data, frames[i], 2)).Single(), 1e-3);
            Assert.Equal(FormattableString.Invariant($"{figure.Values[i]:0}\u00A0% of maximum"), frames[i].GetProperty("value").GetString());
            Assert.Contains("<i>V</i><sub>S</sub>", frames[i].GetProperty("finding").GetString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void ToPlotlyJson_WhatStandsStill_IsStoredOnce()
    {
        using JsonDocument json = JsonDocument.Parse(Lighter.ToPlotlyJson());
        JsonElement frame = json.RootElement.GetProperty("moving").GetProperty("frames")[0];
        Assert.Empty(frame.GetProperty("data")[0].EnumerateObject());
        Assert.Equal(["y"], frame.GetProperty("data")[1].EnumerateObject().Select(p => p.Name));
        Assert.False(frame.TryGetProperty("shapes", out _));
        Assert.DoesNotContain('<', json.RootElement.GetRawText());
        Assert.InRange(json.RootElement.GetRawText().Length, 5000, 16_500);
    }

    [Fact]
    public void ToPlotlyJson_Axes_HoldTheFiguresOfAllValues()
    {
        MovingFigure figure = Lighter;
        using JsonDocument json = JsonDocument.Parse(figure.ToPlotlyJson());
        double[] range = [.. json.RootElement.GetProperty("layout").GetProperty("yaxis").GetProperty("range").EnumerateArray().Select(v => v.GetDouble())];
        Assert.True(range[0] <= At(60, 0) && range[1] >= At(110, 60), $"{range[0]} to {range[1]}");
        Assert.All(json.RootElement.GetProperty("moving").GetProperty("frames").EnumerateArray(), frame =>
            Assert.Empty(frame.EnumerateObject().Select(p => p.Name).Except(["annotations", "data", "finding", "shapes", "value"])));
        // The still drawing too: the start alone would not need as much room.
        Assert.Contains(">80<", figure.ToSvg(), StringComparison.Ordinal);
        Assert.DoesNotContain(">80<", AtShare(Examples.Empty.Caption("c"), 85).ToSvg(), StringComparison.Ordinal);
    }

    [Fact]
    public void ToPlotlyJson_MarksAndLevelsThatComeAndGo_AreListedAnew()
    {
        MovingFigure figure = Base.Moving(Weight, [80, 90, 100], 100, (f, share) =>
            (share < 100 ? f.Mark("light", 10, 60).Mark("lighter", 20, 60).Level("more", 70 + share / 10) : f.Mark("light", 10, 60)).Finding($"At {share:0}."));
        using JsonDocument json = JsonDocument.Parse(figure.ToPlotlyJson());
        JsonElement frame = json.RootElement.GetProperty("moving").GetProperty("frames")[0];
        Assert.Equal([10, 20], frame.GetProperty("data")[1].GetProperty("x").EnumerateArray().Select(v => v.GetDouble()));
        Assert.Equal(2, frame.GetProperty("shapes").GetArrayLength());
        Assert.Equal(1, json.RootElement.GetProperty("layout").GetProperty("shapes").GetArrayLength());
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void ToHtml_Control_IsHiddenLabelledAndSaysItsValueInWords(bool forNotebook)
    {
        IElement figure = Parse(forNotebook ? Lighter.ToNotebookHtml() : Lighter.ToHtml());
        IElement control = Assert.Single(figure.QuerySelectorAll(".plot-control"));
        Assert.True(control.HasAttribute("hidden"));
        IElement input = control.QuerySelector("label > input[type=range]")!;
        Assert.Equal(("0", "10", "1", "5"), (input.GetAttribute("min"), input.GetAttribute("max"), input.GetAttribute("step"), input.GetAttribute("value")));
        Assert.Equal("85\u00A0% of maximum", input.GetAttribute("aria-valuetext"));
        Assert.Equal("weight W", control.QuerySelector("label")!.TextContent.Trim());
        Assert.Equal("85\u00A0% of maximum", control.QuerySelector("output")!.TextContent);
        Assert.Equal("At 85 % the stall speed VS is 49.1 kt.", control.QuerySelector(".plot-finding[aria-live=polite]")!.TextContent);
        Assert.Equal(
            "In the live figure, weight W moves from 60\u00A0% of maximum to 110\u00A0% of maximum; this drawing has it at 85\u00A0% of maximum.",
            figure.QuerySelector("figcaption > .plot-range")!.TextContent);
    }

    [Fact]
    public void Numbers_LinesThatMove_StandAtFirstStartAndLastValue()
    {
        NumbersTable numbers = Lighter.Numbers, readings = Lighter.Readings;
        Assert.Equal(["weight (% of maximum)", "angle of bank (°)", "maximum weight (kt CAS)", "this weight (kt CAS)"], numbers.Headings);
        Assert.Equal(["60", "85", "110"], numbers.Rows.Select(row => row[0]).Distinct());
        Assert.Contains(numbers.Rows, row => row is ["60", "0", "53.3", "41.3"]);
        Assert.Equal(["reading", "at 60\u00A0% of maximum", "at 85\u00A0% of maximum", "at 110\u00A0% of maximum"], readings.Headings);
        Assert.Contains(readings.Rows, row => row[0] == "speed kept" && row.Skip(1).All(cell => cell == "69.3\u00A0kt CAS"));
        Assert.Contains(readings.Rows, row => row[0] == "at 30°" && row[1] == "30°, 44.4\u00A0kt CAS");
        Assert.Equal(2, Parse(Lighter.ToHtml()).QuerySelectorAll("details.plot-numbers > table").Length);
    }

    [Fact]
    public void Numbers_OnlyMarksMove_LinesStandOnceAndChangingNamesWithTheValues()
    {
        MovingFigure figure = Base.Moving(Axis.Of("bank", "φ", "°"), [0, 30, 60], 30, (f, bank) =>
            f.Mark($"at {bank.ToString("0", CultureInfo.InvariantCulture)}°", bank, Examples.InTurn(53.3, bank)).Finding($"At {bank:0}."));
        Assert.Equal("angle of bank (°)", figure.Numbers.Headings[0]);
        Assert.Equal(["at 60°", "–", "–", "60°, 75.4\u00A0kt CAS"], figure.Readings.Rows.Single(row => row[0] == "at 60°"));
    }

    [Fact]
    public void ToString_MovingFigure_SaysWhatMovesAndTheNumbers()
    {
        string text = Lighter.ToString();
        Assert.Contains("weight W moves from 60\u00A0% of maximum", text, StringComparison.Ordinal);
        Assert.Contains("At 85 % the stall speed VS is 49.1 kt.", text, StringComparison.Ordinal);
        Assert.Contains("at 30°\t30°, 44.4", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_HostileControl_StaysText()
    {
        MovingFigure figure = Base.Moving(Axis.Of("</label><b>x</b>", "", "\"><b>y</b>"), [1, 2], 1, (f, v) => f.Mark("m", 10, 60 + v).Finding($"</script><b>{v:0}</b>"));
        IElement page = Parse(figure.ToHtml());
        Assert.Empty(page.QuerySelectorAll("b"));
        Assert.Contains("\"><b>y</b>", page.QuerySelector("input")!.GetAttribute("aria-valuetext"), StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(page.QuerySelector("script.plot-data")!.TextContent);
        Assert.Equal("&lt;/script&gt;&lt;b&gt;1&lt;/b&gt;", json.RootElement.GetProperty("moving").GetProperty("frames")[0].GetProperty("finding").GetString());
    }

    public static TheoryData<double[], double, string> BadValues => new()
    {
        { [], 1, "0 value(s)" },
        { [85], 85, "1 value(s); allowed are 2 to 50" },
        { [.. Enumerable.Range(0, 51).Select(i => (double)i)], 1, "51 value(s)" },
        { [80, 90, 90], 80, "value 3 of its control \"weight\" is 90" },
        { [80, double.NaN], 80, "value 2" },
        { [80, 90], 85, "starts at 85; allowed are its values 80, 90" },
    };

    [Theory]
    [MemberData(nameof(BadValues))]
    public void Moving_BadValues_AreRefusedInWords(double[] values, double start, string words)
    {
        string message = Assert.Throws<RefusedInputException>(() => Base.Moving(Weight, values, start, AtShare)).Message;
        Assert.Contains("The figure \"Stall speed in a level turn\" is refused", message, StringComparison.Ordinal);
        Assert.Contains(words, message, StringComparison.Ordinal);
    }

    public static TheoryData<string, Func<Figure, double, Figure>> BadFrames => new()
    {
        { "its lines are \"maximum weight\", \"light\" at weight 80\u00A0% of maximum but \"maximum weight\", \"full\" at 100\u00A0% of maximum", (f, w) => f.Line(w < 100 ? "light" : "full", [0, 1], [1, w]).Finding("f") },
        { "is the same at every value of its control \"weight\"", (f, w) => f.Finding($"At {w:0}.") },
        { "refused at weight 80\u00A0% of maximum: The figure \"Stall speed in a level turn\" is not drawn: it lacks a finding", (f, w) => f.Mark("m", 1, w) },
        { "refused at weight 100\u00A0% of maximum: The figure \"Stall speed in a level turn\" is refused: the mark", (f, w) => f.Mark("m", 1, w < 100 ? 1 : double.NaN).Finding("f") },
        { "gives another figure", (f, w) => Examples.Turn },
        { "gives no figure", (f, w) => null! },
        { "its caption at weight 100\u00A0% of maximum differs", (f, w) => f.Mark("m", 1, w).Caption($"At {w:0}.").Finding("f") },
    };

    [Theory]
    [MemberData(nameof(BadFrames), DisableDiscoveryEnumeration = true)]
    public void Moving_BadFigureAtSomeValue_IsRefusedWithTheValue(string words, Func<Figure, double, Figure> at) =>
        Assert.Contains(words, Assert.Throws<RefusedInputException>(() => Base.Moving(Weight, [80, 100], 100, at)).Message, StringComparison.Ordinal);

    private static JsonElement Over(JsonElement data, JsonElement frame, int trace) =>
        frame.TryGetProperty("data", out JsonElement changes) && changes[trace].TryGetProperty("y", out JsonElement y) ? y : data[trace].GetProperty("y");

    private static double[] Values(JsonElement list) => [.. list.EnumerateArray().Select(v => v.GetDouble())];

    private static IElement Parse(string html) => new HtmlParser().ParseDocument(html).QuerySelector("figure.plot")!;
}
