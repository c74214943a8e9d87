namespace FlapAero.Charts.Tests;

public class LineStyleTests
{
    private static readonly Figure Empty = new Figure("Styles", Axis.Of("x"), Axis.Of("y")).Caption("c").Finding("f");

    [Fact]
    public void As_FullFlapDrawnFirst_KeepsEachFlapSettingsColourAndDash()
    {
        Figure figure = Empty.Line("full flap", [0, 1], [0, 1]).As(Palette.FullFlap).Line("path", [0, 1], [1, 2])
            .Line("flaps up", [0, 1], [2, 3]).As(Palette.FlapsUp);
        string svg = figure.ToSvg(), plotly = figure.ToPlotlyJson();
        int At(string text, string what) => text.IndexOf(what, StringComparison.Ordinal);
        Assert.True(At(svg, "stroke=\"#D55E00\"") < At(svg, "stroke=\"#0072B2\""));
        Assert.True(At(plotly, "#D55E00") < At(plotly, "#0072B2"));
        // What is no flap setting keeps off the styles of the flap settings.
        Assert.Contains("stroke=\"#000000\"", svg, StringComparison.Ordinal);
        Assert.Equal(figure.ToSvg().Length, figure.In(DisplayUnits.SI).ToSvg().Length);
    }

    [Fact]
    public void As_NoStyleGiven_TakesThemInTheirOrder()
    {
        string svg = Empty.Line("a", [0, 1], [0, 1]).Line("b", [0, 1], [1, 2]).ToSvg();
        Assert.True(
            svg.IndexOf("#0072B2", StringComparison.Ordinal) < svg.IndexOf("#D55E00", StringComparison.Ordinal));
    }

    [Fact]
    public void As_ThatCannotBe_IsRefused()
    {
        Assert.Contains(
            "before there is a line", Assert.Throws<RefusedInputException>(() => Empty.As(Palette.FlapsUp)).Message,
            StringComparison.Ordinal);
        Figure one = Empty.Line("a", [0, 1], [0, 1]).As(Palette.FlapsUp).Line("b", [0, 1], [1, 2]);
        Assert.Contains(
            "would look like \"a\"", Assert.Throws<RefusedInputException>(() => one.As(Palette.FlapsUp)).Message,
            StringComparison.Ordinal);
        Assert.Contains(
            "not one of the palette's",
            Assert.Throws<RefusedInputException>(() => one.As(new SeriesStyle("#FF0000", "#FF0000", ""))).Message,
            StringComparison.Ordinal);
    }
}
