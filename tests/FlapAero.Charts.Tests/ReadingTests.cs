using AngleSharp.Html.Parser;
using UnitsNet;

namespace FlapAero.Charts.Tests;

/// <summary>What one reads off a figure, against closed forms.</summary>
public class ReadingTests
{
    private static Figure Plain => new Figure("Plain", Axis.Of("across", "x", "m"), Axis.Of("up", "y", "kt")).Caption("c").Finding("f");

    private static IReadOnlyList<double> Ten => Samples.Between(0, 10, 0.5);

    [Fact]
    public void Readings_LineAndLevel_SayWhereTheyMeet() =>
        // cos φ = (53.3 / 69.3)².
        Assert.Equal("53.7°", ValueOf(Examples.Turn, "flaps up meets reference speed"));

    [Fact]
    public void Readings_TwoLines_SayWhereTheyCross() =>
        Assert.Equal("3.3\u00A0m, 6.7\u00A0kt", ValueOf(Plain.Line("rising", Ten, x => 2 * x).Line("falling", Ten, x => 10 - x).Mark("end", 10, 0), "rising and falling meet"));

    [Fact]
    public void Readings_PeakAndDip_StandWithTheirPlaces()
    {
        Figure figure = Plain.Line("hill", Ten, x => 25 - (x - 5) * (x - 5)).Line("hollow", Ten, x => 30 + (x - 4) * (x - 4)).Line("slope", Ten, x => x);
        Assert.Equal("25.0\u00A0kt at 5.0\u00A0m", ValueOf(figure, "highest of hill"));
        Assert.Equal("30.0\u00A0kt at 4.0\u00A0m", ValueOf(figure, "lowest of hollow"));
        Assert.DoesNotContain(figure.Readings, reading => reading.Name.EndsWith("of slope", StringComparison.Ordinal) || reading.Name == "lowest of hill");
    }

    [Fact]
    public void Readings_LineThatPassesZero_SayWhere() =>
        Assert.Equal("4.0\u00A0m", ValueOf(Plain.Line("left", Ten, x => 8 - 2 * x), "left is zero"));

    [Fact]
    public void Readings_MarksLevelsAndEnds_AreSaid()
    {
        Assert.Equal("30°, 57.3\u00A0kt CAS", ValueOf(Examples.Turn, "base to final"));
        Assert.Equal("69.3\u00A0kt CAS", ValueOf(Examples.Turn, "reference speed"));
        Assert.Equal("from 0°, 53.3\u00A0kt CAS to 60°, 75.4\u00A0kt CAS", ValueOf(Examples.Turn, "flaps up"));
        Assert.Equal("5.0\u00A0m", ValueOf(Plain.Line("post", [5, 5], [0.0, 9]).Line("ground", Ten, _ => 0), "post"));
        Assert.Equal("0.00\u00A0kt from 0\u00A0m to 10\u00A0m", ValueOf(Plain.Line("ground", Ten, _ => 0).Mark("up", 0, 9), "ground"));
    }

    [Theory]
    [InlineData("touch")]
    [InlineData("lie on each other")]
    [InlineData("part")]
    [InlineData("begin together")]
    public void Readings_LinesThatDoNotCross_MeetNowhere(string how)
    {
        Figure figure = Plain.Line("one", Ten, x => 20 + x);
        figure = how switch
        {
            "touch" => figure.Line("other", Ten, x => 20 + x + (x - 5) * (x - 5)),
            "lie on each other" => figure.Line("other", Samples.Between(0, 10, 0.3), x => 20 + x),
            "part" => figure.Line("other", Ten, x => 20 + x + Math.Max(0, x - 5)),
            _ => figure.Line("other", Ten, x => 20 - x),
        };
        Assert.DoesNotContain(figure.Readings, reading => reading.Name.Contains("meet", StringComparison.Ordinal));
    }

    [Fact]
    public void Readings_LinesThatWaver_SayTheFirstAndTheLast() =>
        Assert.StartsWith("first at 1.0\u00A0m", ValueOf(Plain.Line("wave", Samples.Between(0, 10, 0.25), x => 20 + 5 * Math.Cos(Math.PI * x / 2)).Level("mean", 20), "wave meets mean"), StringComparison.Ordinal);

    [Fact]
    public void Readings_InOtherUnits_SayTheSameThere()
    {
        Figure figure = Plain.Line("a", Ten, x => x).Reading("speed", $"{Speed.FromKnots(10)}");
        Assert.Equal("10.0\u00A0kt", figure.Readings[0].Value);
        Assert.Equal("5.1\u00A0m/s", figure.In(DisplayUnits.SI).Readings[0].Value);
    }

    [Fact]
    public void WithoutReading_OfAKnownName_LeavesThatOneOutEverywhere()
    {
        Figure figure = Examples.Turn.WithoutReading("flaps up meets reference speed");
        Assert.Equal(Examples.Turn.Readings.Count - 1, figure.Readings.Count);
        Assert.DoesNotContain("53.7°", figure.ToHtml() + figure.ToNotebookHtml() + figure, StringComparison.Ordinal);
        Assert.Contains("it has no reading \"flaps\" to leave out", Assert.Throws<RefusedInputException>(() => Examples.Turn.WithoutReading("flaps")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Reading_Empty_IsRefused()
    {
        Assert.Contains("says nothing", Assert.Throws<RefusedInputException>(() => Examples.Turn.Reading("stop", " ")).Message, StringComparison.Ordinal);
        Assert.ThrowsAny<ArgumentException>(() => Examples.Turn.Reading(" ", "9"));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void ToHtml_Readings_StandAboveTheSamples(bool forNotebook)
    {
        Figure figure = Examples.Turn.Reading("<b>", "</ul><i>");
        var details = new HtmlParser().ParseDocument(forNotebook ? figure.ToNotebookHtml() : figure.ToHtml()).QuerySelector("details.plot-numbers")!;
        Assert.Equal(["SUMMARY", "UL", "TABLE"], details.Children.Select(child => child.TagName));
        Assert.Equal(figure.Readings.Select(reading => reading.ToString()), details.QuerySelectorAll("ul > li").Select(item => item.TextContent));
        Assert.Contains("flaps up meets reference speed: 53.7°", figure.ToString(), StringComparison.Ordinal);
    }

    private static string ValueOf(Figure figure, string name) =>
        Assert.Single(figure.Readings, reading => reading.Name == name).Value;
}
