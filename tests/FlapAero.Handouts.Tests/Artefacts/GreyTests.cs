using System.Globalization;
using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>Every figure of the lesson as a printer without colours gives it, and as its script draws it.</summary>
[Collection<TestsOfArtefacts>]
[Trait("Speed", "slow")]
public sealed class GreyTests(ApproachSpeedArtefacts lesson)
{
    public static TheoryData<string> Pages => [ApproachSpeedArtefacts.Student, ApproachSpeedArtefacts.Instructor];

    [Theory, MemberData(nameof(Pages))]
    public void Drawing_WithoutColour_HasADashOfItsOwnAndALabelForEachLine(string name)
    {
        IElement[] drawings = [.. Figures(name).Select(f => f.QuerySelector(".plot-drawing svg")!)];

        Assert.NotEmpty(drawings);
        Assert.All(drawings, drawing =>
        {
            IElement[] lines = [.. drawing.QuerySelectorAll("polyline")];
            Assert.Equal(lines.Length, lines.Select(l => l.GetAttribute("stroke-dasharray") ?? "").Distinct().Count());
            Assert.All(lines, line => Assert.True(ContrastOnWhite(line.GetAttribute("stroke")!) >= 3, line.GetAttribute("stroke")));
            Assert.True(drawing.QuerySelectorAll("g[paint-order]").Length >= lines.Length, drawing.TextContent);
            // Only the lines of the grid, which nothing is read from, may be paler.
            Assert.All(drawing.QuerySelectorAll("path[stroke]:not([stroke='#DDDDDD'])"), path => Assert.True(ContrastOnWhite(path.GetAttribute("stroke")!) >= 3, path.OuterHtml));
        });
    }

    [Theory, MemberData(nameof(Pages))]
    public void LiveFigure_WithoutColour_HasADashOfItsOwnForEachLine(string name) =>
        Assert.All(Figures(name), figure =>
        {
            using var plot = JsonDocument.Parse(figure.QuerySelector("script.plot-data")!.TextContent);
            JsonElement[] lines = [.. plot.RootElement.GetProperty("data").EnumerateArray().Where(t => t.TryGetProperty("mode", out JsonElement mode) && mode.GetString() == "lines")];
            Assert.NotEmpty(lines);
            Assert.Equal(lines.Length, lines.Select(l => l.GetProperty("line").TryGetProperty("dash", out JsonElement dash) ? dash.GetString() : "solid").Distinct().Count());
            Assert.All(lines, line => Assert.True(ContrastOnWhite(line.GetProperty("line").GetProperty("color").GetString()!) >= 3));
            Assert.False(plot.RootElement.GetProperty("layout").TryGetProperty("showlegend", out JsonElement legend) && legend.GetBoolean());
            Assert.True(plot.RootElement.GetProperty("layout").GetProperty("annotations").GetArrayLength() >= lines.Length);
        });

    [Theory]
    [InlineData("#FFFFFF", 1)]
    [InlineData("#767676", 4.54)]
    [InlineData("#000000", 21)]
    public void ContrastOnWhite_KnownColour_IsTheKnownRatio(string color, double ratio) => Assert.Equal(ratio, ContrastOnWhite(color), 0.01);

    private IElement[] Figures(string name)
    {
        IHtmlDocument page = new HtmlParser().ParseDocument(lesson.LightText(name));
        return [.. page.QuerySelectorAll("figure.plot")];
    }

    /// <summary>WCAG 2.2's contrast ratio: of luminance alone, as a grey printer has it.</summary>
    private static double ContrastOnWhite(string color)
    {
        double[] parts = [.. new[] { 1, 3, 5 }.Select(at => int.Parse(color.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)
            .Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4))];
        return 1.05 / (0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2] + 0.05);
    }
}
