using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace FlapAero.Charts.Tests;

public class DrawingTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void ToSvg_Figure_IsWellFormedAndNamesEverySeriesLevelAndMark()
    {
        XElement svg = XElement.Parse(Examples.Turn.ToSvg());
        string[] texts = [.. svg.Descendants(Svg + "text").Select(t => t.Value)];
        foreach (string label in (string[])["flaps up", "flaps 35°", "reference speed", "base to final", "stall speed VS (kt CAS)", "angle of bank φ (°)"])
            Assert.Contains(label, texts);
        Assert.NotNull(svg.Attribute("viewBox"));
        Assert.Null(svg.Attribute("width"));
        Assert.DoesNotContain(svg.DescendantsAndSelf(), e => e.Attribute("id") is not null || e.Attribute("style") is not null);
    }

    [Fact]
    public void ToSvg_Lines_EndWhereTheDataEnd()
    {
        XElement svg = XElement.Parse(Examples.Turn.ToSvg());
        double[][] ends = [.. svg.Descendants(Svg + "polyline").Select(p => Numbers(p.Attribute("points")!.Value)[^2..])];
        double[] ticks = [.. svg.Descendants(Svg + "text").Where(t => t.Parent!.Attribute("text-anchor")?.Value == "end" && t.Value is ("50" or "75")).Select(t => Number(t, "y"))];
        Assert.Equal(2, ends.Length);
        // 75 kt and 50 kt stand at the ticks, so 75.38 kt and 65.20 kt follow by proportion.
        double perKnot = (ticks.Max() - ticks.Min()) / 25;
        Assert.Equal((75.378 - 65.195) * perKnot, ends[1][1] - ends[0][1], 0.3);
    }

    [Fact]
    public void ToSvg_Labels_DoNotOverlap()
    {
        var figure = new Figure("Many", Axis.Of("x"), Axis.Of("y"));
        for (int i = 0; i < 5; i++) figure = figure.Line("line number " + i, [0, 1], [i, 10 + 0.01 * i]);
        XElement svg = XElement.Parse(figure.Caption("c").Finding("f").ToSvg());
        var tops = svg.Descendants(Svg + "g").Where(g => g.Attribute("paint-order") is not null)
            .SelectMany(g => g.Elements(Svg + "text")).Select(t => Number(t, "y")).Order().ToArray();
        Assert.True(tops.Length >= 5);
        Assert.All(tops.Zip(tops.Skip(1)), pair => Assert.True(pair.Second - pair.First > 14, $"{pair}"));
        Assert.All(tops, top => Assert.InRange(top, 10, 350));
    }

    [Fact]
    public void ToSvg_ManyPoints_StaysSmall() => Assert.InRange(Examples.Turn.ToSvg().Length, 1500, 4500);

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(0.2)]
    public void ToScale_InBothDrawings_ASquareIsSquare(double width)
    {
        Figure figure = new Figure("From above", Axis.Of("along", "", "m"), Axis.Of("across", "", "m")).ToScale()
            .Line("wide or tall", [0, width], [0, 1]).Line("square", [0, 0.1, 0.1, 0], [0, 0, 0.1, 0.1]).Caption("c").Finding("f");
        XElement svg = XElement.Parse(figure.ToSvg());
        double[] square = Numbers(svg.Descendants(Svg + "polyline").Last().Attribute("points")!.Value);
        Assert.True(square.Max() > 0);
        Assert.Equal(square[2] - square[0], square[3] - square[5], 0.2);
        Assert.InRange(square[2] - square[0], 3, 60);
        Assert.InRange(Numbers(svg.Attribute("viewBox")!.Value)[3], 100, 350);
        using JsonDocument json = JsonDocument.Parse(figure.ToPlotlyJson());
        JsonElement y = json.RootElement.GetProperty("layout").GetProperty("yaxis");
        Assert.Equal("x", y.GetProperty("scaleanchor").GetString());
        Assert.Equal(1, y.GetProperty("scaleratio").GetDouble());
    }

    [Fact]
    public void ToScale_DifferentUnits_IsRefused() => Assert.Contains(
        "no common scale", Assert.Throws<RefusedInputException>(Examples.Empty.ToScale).Message, StringComparison.Ordinal);

    [Fact]
    public void ToScale_InOtherUnits_StaysToScale() =>
        Assert.True(new Figure("a", Axis.Of("x", "", "ft"), Axis.Of("y", "", "ft")).ToScale().Line("l", [0, 1], [0, 1]).In(DisplayUnits.SI).IsToScale);

    [Fact]
    public void Bars_InBothDrawings_StandOnZero()
    {
        Figure figure = Examples.Empty.Bars("landings", [100, 200, 300], [3.0, 8, 5]).Caption("c").Finding("f");
        XElement bars = XElement.Parse(figure.ToSvg()).Elements(Svg + "path").Single(p => p.Attribute("class")?.Value == "bars");
        double[][] corners = [.. bars.Attribute("d")!.Value.Split('Z', StringSplitOptions.RemoveEmptyEntries).Select(bar => Numbers(Regex.Replace(bar, "[MVHL]", " ").Trim()))];
        double[] heights = [.. corners.Select(c => c[1] - c[2])];
        Assert.Equal(3, heights.Length);
        Assert.Equal(8.0 / 3, heights[1] / heights[0], 0.02);
        using JsonDocument json = JsonDocument.Parse(figure.ToPlotlyJson());
        JsonElement trace = json.RootElement.GetProperty("data")[0];
        Assert.Equal("bar", trace.GetProperty("type").GetString());
        Assert.Equal([100, 200, 300], Values(trace, "x"));
        Assert.Equal([3, 8, 5], Values(trace, "y"));
        Assert.Equal(0, json.RootElement.GetProperty("layout").GetProperty("yaxis").GetProperty("range")[0].GetDouble());
    }

    [Fact]
    public void ToPlotlyJson_Data_AreTheFiguresData()
    {
        Figure figure = Examples.Turn;
        using JsonDocument json = JsonDocument.Parse(figure.ToPlotlyJson());
        JsonElement data = json.RootElement.GetProperty("data");
        Assert.Equal(3, data.GetArrayLength());
        for (int i = 0; i < 2; i++)
        {
            Assert.Equal(figure.Lines[i].Name, data[i].GetProperty("name").GetString());
            Assert.Equal(figure.Lines[i].X, Values(data[i], "x"), (a, b) => Math.Abs(a - b) <= 5e-6 * Math.Abs(a));
            Assert.Equal(figure.Lines[i].Y, Values(data[i], "y"), (a, b) => Math.Abs(a - b) <= 5e-6 * Math.Abs(a));
            Assert.Equal(Palette.Styles[i].Line, data[i].GetProperty("line").GetProperty("color").GetString());
        }
        Assert.NotEqual(data[0].GetProperty("line").GetProperty("dash").GetString(), data[1].GetProperty("line").GetProperty("dash").GetString());
        Assert.Equal(figure.Marks[0].Y, Values(data[2], "y").Single(), 1e-3);
        Assert.Equal(69.3, json.RootElement.GetProperty("layout").GetProperty("shapes")[0].GetProperty("y0").GetDouble());
    }

    [Fact]
    public void ToPlotlyJson_Layout_IsReadableAndCannotBeZoomedByAccident()
    {
        string text = Examples.Turn.ToPlotlyJson();
        using JsonDocument json = JsonDocument.Parse(text);
        JsonElement layout = json.RootElement.GetProperty("layout");
        Assert.True(layout.GetProperty("font").GetProperty("size").GetDouble() >= 14);
        Assert.True(layout.GetProperty("xaxis").GetProperty("fixedrange").GetBoolean());
        Assert.True(layout.GetProperty("yaxis").GetProperty("fixedrange").GetBoolean());
        Assert.False(layout.GetProperty("showlegend").GetBoolean());
        Assert.False(layout.TryGetProperty("template", out _));
        string[] labels = [.. layout.GetProperty("annotations").EnumerateArray().Select(a => a.GetProperty("text").GetString()!)];
        Assert.Contains("stall speed <i>V</i><sub>S</sub> (kt CAS)", labels);
        Assert.Contains("flaps up", labels);
        Assert.Contains("flaps 35°", labels);
        Assert.DoesNotContain('<', text);
        Assert.True(json.RootElement.GetProperty("config").GetProperty("responsive").GetBoolean());
    }

    [Fact]
    public void ToPlotlyJson_Twice_IsTheSameTextInAlphabeticalOrder()
    {
        Assert.Equal(Examples.Turn.ToPlotlyJson(), Examples.Turn.ToPlotlyJson());
        using JsonDocument json = JsonDocument.Parse(Examples.Turn.ToPlotlyJson());
        string[] keys = [.. json.RootElement.GetProperty("layout").EnumerateObject().Select(p => p.Name)];
        Assert.Equal(keys.Order(StringComparer.Ordinal), keys);
    }

    [Fact]
    public void Styles_OnWhite_ReachTheContrastOfLinesAndOfText()
    {
        Assert.All(Palette.Styles, style => Assert.True(ContrastOnWhite(style.Line) >= 3, style.Line));
        Assert.All(Palette.Styles, style => Assert.True(ContrastOnWhite(style.Text) >= 4.5, style.Text));
        Assert.Equal(Palette.Styles.Count, Palette.Styles.Select(s => s.Dash).Distinct().Count());
        Assert.Equal(Palette.Styles.Count, Palette.Styles.Select(s => s.Line).Distinct().Count());
    }

    [Fact]
    public void ContrastOnWhite_Grey_IsTheKnownRatio() => Assert.Equal(4.54, ContrastOnWhite("#767676"), 0.01);

    /// <summary>WCAG 2.2's relative luminance and contrast ratio.</summary>
    private static double ContrastOnWhite(string color)
    {
        double[] linear = [.. Enumerable.Range(0, 3)
            .Select(i => int.Parse(color.AsSpan(1 + 2 * i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)
            .Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4))];
        return 1.05 / (0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2] + 0.05);
    }

    private static double[] Values(JsonElement trace, string name) => [.. trace.GetProperty(name).EnumerateArray().Select(v => v.GetDouble())];

    private static double[] Numbers(string text) =>
        [.. Regex.Split(text, "[ ,]+").Select(t => double.Parse(t, CultureInfo.InvariantCulture))];

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
