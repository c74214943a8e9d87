using System.Globalization;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using UnitsNet;

namespace FlapAero.Charts.Tests;

public class FigureTests
{
    [Fact]
    public void Line_AddedToAFigure_LeavesTheFigureAsItWas()
    {
        Figure before = Examples.Empty;
        Figure after = before.Line("flaps up", Examples.Banks, bank => bank);
        Assert.Empty(before.Lines);
        Assert.Single(after.Lines);
    }

    [Fact]
    public void Line_UnequalLengths_IsRefusedWithBothCounts()
    {
        var refusal = Assert.Throws<RefusedInputException>(() => Examples.Empty.Line("flaps up", [1, 2, 3], [1.0, 2.0]));
        Assert.Contains("3 horizontal but 2 vertical", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("flaps up", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Line_NotFinite_IsRefusedWithThePoint(double bad)
    {
        var refusal = Assert.Throws<RefusedInputException>(() => Examples.Empty.Line("flaps up", [1, 2], [1.0, bad]));
        Assert.Contains("point 2", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<RefusedInputException>(() => Examples.Empty.Line("flaps up", [bad, 2], [1.0, 2.0]));
        Assert.Throws<RefusedInputException>(() => Examples.Empty.Level("level", bad));
        Assert.Throws<RefusedInputException>(() => Examples.Empty.Mark("mark", 1, bad));
    }

    [Fact]
    public void Line_SameNameTwice_IsRefused() => Assert.Contains("two lines",
        Assert.Throws<RefusedInputException>(() => Examples.Turn.Line("flaps up", [1, 2], [1.0, 2.0])).Message, StringComparison.Ordinal);

    [Fact]
    public void Line_OnePoint_IsRefused() =>
        Assert.Throws<RefusedInputException>(() => Examples.Empty.Line("flaps up", [1.0], [1.0]));

    [Fact]
    public void Line_MoreThanStyles_IsRefused()
    {
        Figure figure = Palette.Styles.Aggregate(Examples.Empty, (f, style) => f.Line("line " + f.Lines.Count, [1, 2], [1.0, 2.0]));
        Assert.Throws<RefusedInputException>(() => figure.Line("one more", [1, 2], [1.0, 2.0]));
    }

    [Fact]
    public void Bars_UnevenOrTwice_AreRefused()
    {
        Assert.Contains("bar 3", Assert.Throws<RefusedInputException>(() => Examples.Empty.Bars("b", [1, 2, 4], [1.0, 2, 3])).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedInputException>(() => Examples.Empty.Bars("b", [2, 1], [1.0, 2]));
        Assert.Throws<RefusedInputException>(() => Examples.Empty.Bars("b", [1, 2], [1.0, 2]).Bars("c", [1, 2], [1.0, 2]));
    }

    public static TheoryData<string, Figure> Incomplete => new()
    {
        { "line", Examples.Empty.Caption("Caption.").Finding("Finding.") },
        { "caption", Examples.Empty.Line("a", [1, 2], [1.0, 2.0]).Finding("Finding.") },
        { "finding", Examples.Empty.Line("a", [1, 2], [1.0, 2.0]).Caption("Caption.") },
        { "finding", Examples.Empty.Line("a", [1, 2], [1.0, 2.0]).Caption("Caption.").Finding("  ") },
    };

    [Theory]
    [MemberData(nameof(Incomplete), DisableDiscoveryEnumeration = true)]
    public void ToHtml_Incomplete_SaysWhatIsMissing(string missing, Figure figure)
    {
        Assert.Contains(missing, Assert.Throws<InvalidOperationException>(figure.ToHtml).Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(figure.ToSvg);
        Assert.Throws<InvalidOperationException>(figure.ToPlotlyJson);
    }

    [Fact]
    public void ToHtml_Figure_IsTheFragmentThatPagesExpect()
    {
        IElement figure = Parse(Examples.Turn.ToHtml()).QuerySelector("figure.plot")!;
        Assert.Equal("fig-stall-speed-in-a-level-turn", figure.Id);
        IElement drawing = figure.QuerySelector("div.plot-drawing[role=img]")!;
        Assert.Equal("At 60° the stall speed VS is 75.4\u00A0kt with flaps up.", drawing.GetAttribute("aria-label"));
        Assert.NotNull(drawing.QuerySelector("svg"));
        Assert.Equal("Stall speed in a level turn. Stall speed VS against bank at 2\u202F300\u00A0lb.", figure.QuerySelector("figcaption")!.TextContent);
        Assert.NotNull(figure.QuerySelector("figcaption sub"));
        Assert.Equal("The numbers in this figure", figure.QuerySelector("details.plot-numbers > summary")!.TextContent);
        Assert.Equal(3, figure.QuerySelectorAll("details.plot-numbers thead th[scope=col]").Length);
        Assert.DoesNotContain(" style=", Examples.Turn.ToHtml(), StringComparison.Ordinal);
    }

    [Fact]
    public void ToNotebookHtml_Figure_IsThePagesWithAPictureAndALineOfScript()
    {
        IElement page = Parse(Examples.Turn.ToHtml()).QuerySelector("figure.plot")!;
        IElement figure = Parse(Examples.Turn.ToNotebookHtml()).QuerySelector("figure.plot")!;
        IElement picture = Assert.Single(figure.QuerySelectorAll(".plot-drawing > img"));
        Assert.Equal(page.QuerySelector(".plot-drawing")!.GetAttribute("aria-label"), picture.GetAttribute("alt"));
        const string Svg = "data:image/svg+xml;charset=utf-8,";
        Assert.StartsWith(Svg, picture.GetAttribute("src"), StringComparison.Ordinal);
        string drawing = Uri.UnescapeDataString(picture.GetAttribute("src")![Svg.Length..]);
        Assert.Equal(Examples.Turn.ToSvg(), drawing.Replace('\'', '"'));
        Assert.Equal(page.QuerySelector("script.plot-data")!.TextContent, figure.QuerySelector("script.plot-data")!.TextContent);
        Assert.Equal("(window.flapaeroFigures ??= []).push(\"fig-stall-speed-in-a-level-turn\")", figure.QuerySelector("script:not([type])")!.TextContent);
        Assert.Equal(page.QuerySelector("details")!.OuterHtml, figure.QuerySelector("details")!.OuterHtml);
    }

    [Theory]
    [InlineData("50 % & more")]
    [InlineData("#1 \"quoted\" 'twice' <b>")]
    public void ToNotebookHtml_HostileLabel_StaysItself(string label)
    {
        IElement picture = Parse(Examples.Turn.Mark(label, 20, 60).ToNotebookHtml()).QuerySelector("img")!;
        string drawing = Uri.UnescapeDataString(picture.GetAttribute("src")!.Split(',', 2)[1]);
        IEnumerable<string> texts = System.Xml.Linq.XElement.Parse(drawing).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value);
        Assert.Contains(label, string.Join(' ', texts), StringComparison.Ordinal);
    }

    [Fact]
    public void FigureScript_Texts_AreWhatAPageNeedsAndFetchNothing()
    {
        Assert.Contains("plotly.js (basic - minified) v2.28.0", FigureScript.Plotly[..200], StringComparison.Ordinal);
        Assert.Contains(typeof(Plotly.NET.Chart).Assembly.GetManifestResourceNames(), name => name.EndsWith("plotly-2.28.0.min.js", StringComparison.Ordinal));
        Assert.StartsWith("// Draws figures", FigureScript.Figures, StringComparison.Ordinal);
        Assert.StartsWith(FigureScript.PlotlyNotice.Trim(), FigureScript.Start, StringComparison.Ordinal);
        Assert.InRange(FigureScript.Start.Length, 300_000, 500_000);
        Assert.DoesNotContain("</", FigureScript.Start[FigureScript.PlotlyNotice.Length..], StringComparison.Ordinal);
        Assert.DoesNotContain("http", FigureScript.Figures + FigureScript.Style, StringComparison.Ordinal);
        Assert.DoesNotContain("</", FigureScript.Figures + FigureScript.Style, StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_HostileText_StaysText()
    {
        Figure figure = new Figure("</script><b>x</b>", Axis.Of("<i>x</i>"), Axis.Of("y & z", "", "<u>"))
            .Line("</script><script>alert(1)</script>", [0, 1], [0.0, 1.0]).Mark("</script>", 0.5, 0.5).Level("\"<", 0.7)
            .Caption("<img src=x>").Finding("\"><img src=y>");
        var page = Parse(figure.ToHtml());
        Assert.Single(page.QuerySelectorAll("script"));
        Assert.Empty(page.QuerySelectorAll("img, b, u"));
        Assert.Equal("\"><img src=y>", page.QuerySelector("div.plot-drawing")!.GetAttribute("aria-label"));
        Assert.Contains("<img src=x>", page.QuerySelector("figcaption")!.TextContent, StringComparison.Ordinal);
        using var json = System.Text.Json.JsonDocument.Parse(page.QuerySelector("script")!.TextContent);
        Assert.Equal("</script><script>alert(1)</script>", json.RootElement.GetProperty("data")[0].GetProperty("name").GetString());
    }

    [Fact]
    public void ToHtml_GermanCulture_IsTheSame()
    {
        string expected = Examples.Turn.ToHtml();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal(expected, Examples.Turn.ToHtml());
            Assert.Equal("0.30 and 51.1\u00A0kt", Text($"{0.3:0.00} and {Speed.FromKnots(51.13)}"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Words_Values_AreFormattedByTheOneFormatter() => Assert.Equal(
        "3 turns, \u221212.0\u00A0kt, 0.476, text",
        Text($"{3} turns, {Speed.FromKnots(-12)}, {0.47612}, {"text"}"));

    [Fact]
    public void Between_Step_HoldsRoundValuesAndBothEnds()
    {
        IReadOnlyList<double> values = Samples.Between(0, 0.6, 0.1);
        Assert.Equal([0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6], values);
        Assert.Throws<RefusedInputException>(() => Samples.Between(1, 1, 0.1));
        Assert.Throws<RefusedInputException>(() => Samples.Between(0, 1, 0));
        Assert.Throws<RefusedInputException>(() => Samples.Between(0, 1, 1e-9));
    }

    private static string Text(Words words) => words.ToString();

    private static AngleSharp.Html.Dom.IHtmlDocument Parse(string html) =>
        new HtmlParser(new HtmlParserOptions { IsStrictMode = false }).ParseDocument(html);
}
