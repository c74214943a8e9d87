using System.Text.Json;
using System.Text.RegularExpressions;
using PuppeteerSharp.Media;

namespace FlapAero.Handouts.Tests;

/// <summary>A figure far below the reader costs nothing: it is drawn when it is about to be seen, and lacks nothing before.</summary>
[Collection<TestsOfMovingPages>]
[Trait("Speed", "slow")]
public sealed class ComingAliveTests(MovingPages pages, Browser browser)
{
    private const string Figure = MovingPages.Figure;

    /// <summary>Of a window so low that the figure is more than two of it away.</summary>
    private const int Low = 120;

    [Fact]
    public async Task Page_FarAboveItsFigure_HasItsStillDrawingAndItsControlAndNoPlotly()
    {
        await using Tab tab = await OpenFarAboveAsync();

        await AssertIsStillAsync(tab);
        Assert.True(await ShownAsync(tab, ".plot-drawing svg"));
        Assert.True(await ShownAsync(tab, ".plot-control"));
        Assert.Empty(tab.Complaints);
    }

    [Fact]
    public async Task Page_ReadDownToItsFigure_DrawsItInTheSamePlace()
    {
        await using Tab tab = await OpenFarAboveAsync();
        const string Ends = $"[{Figure}.offsetTop, {Figure}.querySelector('.plot-control').offsetTop, document.documentElement.scrollHeight]";
        double[] before = await tab.AskAsync<double[]>(Ends);

        await tab.WaitForFiguresAsync();

        Assert.True(await ShownAsync(tab, ".plot-live"));
        Assert.False(await ShownAsync(tab, ".plot-drawing"));
        Assert.Equal(before, await tab.AskAsync<double[]>(Ends));
        Assert.Equal("undefined undefined", await tab.AskAsync<string>("typeof Plotly + ' ' + typeof flapaeroPlotly"));
        Assert.Empty(tab.Complaints);
    }

    [Fact]
    public async Task Control_MovedBeforeItsFigureIsDrawn_SaysTheFindingAndIsDrawnThere()
    {
        await using Tab tab = await OpenFarAboveAsync();
        await tab.AskAsync<JsonElement?>($"(() => {{ const input = {Figure}.querySelector('input'); input.value = input.max; input.dispatchEvent(new Event('input')); return null; }})()");
        Assert.Equal("At 110 % the stall speed VS is 55.0 kt.", await tab.AskAsync<string>($"{Figure}.querySelector('.plot-finding').textContent"));
        await AssertIsStillAsync(tab);

        await tab.WaitForFiguresAsync();

        Assert.Equal((double[])[50, 55], await tab.AskAsync<double[]>($"{Figure}.querySelector('.plot-live').calcdata.map(line => line[0].y)"));
        Assert.Equal("At 110 % the stall speed VS is 55.0 kt.", await tab.AskAsync<string>($"{Figure}.querySelector('.plot-live').getAttribute('aria-label')"));
    }

    [Fact]
    public async Task Letters_AskedForBeforeAFigureIsDrawn_AreThoseItIsDrawnWith()
    {
        await using Tab tab = await OpenFarAboveAsync();
        await tab.AskAsync<JsonElement?>($"({Figure}.dispatchEvent(new CustomEvent('letters', {{ detail: 30 }})), null)");

        await tab.WaitForFiguresAsync();

        Assert.Equal(30, await tab.AskAsync<double>($"{Figure}.querySelector('.plot-live').layout.font.size"));
    }

    [Fact]
    public async Task Page_PrintedBeforeItWasRead_ShowsTheStillDrawing()
    {
        await using Tab tab = await OpenFarAboveAsync();
        await tab.Page.EmulateMediaTypeAsync(MediaType.Print);

        Assert.True(await ShownAsync(tab, ".plot-drawing svg"));
        Assert.True(await ShownAsync(tab, ".plot-range"));
        Assert.False(await ShownAsync(tab, ".plot-control"));
        string pdf = System.Text.Encoding.Latin1.GetString(await tab.Page.PdfDataAsync());
        Assert.Single(Regex.Matches(pdf, "/S /Figure\\s+/Alt"));
    }

    [Fact]
    public async Task Page_InABrowserThatCannotUnpack_KeepsItsStillDrawing()
    {
        await using Tab tab = await browser.OpenAsync("about:blank", 1280);
        await tab.Page.EvaluateExpressionOnNewDocumentAsync("delete window.DecompressionStream;");
        await tab.Page.GoToAsync(pages.Page);

        await AssertIsStillAsync(tab);
        Assert.True(await ShownAsync(tab, ".plot-drawing svg"));
        Assert.True(await ShownAsync(tab, ".plot-range"));
        Assert.False(await ShownAsync(tab, ".plot-control"));
        Assert.Empty(tab.Complaints);
    }

    [Fact]
    public async Task Page_WhosePlotlyIsDamaged_KeepsItsStillDrawing()
    {
        await using Tab tab = await browser.OpenAsync("about:blank", 1280);
        await tab.Page.EvaluateExpressionOnNewDocumentAsync("window.atob = () => 'damaged';");
        await tab.Page.GoToAsync(pages.Page);
        await tab.AskAsync<JsonElement?>($"({Figure}.scrollIntoView(), null)");
        await tab.Page.WaitForFunctionAsync($"() => {Figure}.querySelector('.plot-control').hidden");

        await AssertIsStillAsync(tab);
        Assert.True(await ShownAsync(tab, ".plot-drawing svg"));
        Assert.True(await ShownAsync(tab, ".plot-range"));
    }

    private async Task<Tab> OpenFarAboveAsync()
    {
        Tab tab = await browser.OpenAsync(pages.Page, 1280, Low);
        Assert.True(await tab.AskAsync<double>($"{Figure}.getBoundingClientRect().top") > 2.5 * Low);
        return tab;
    }

    /// <summary>For as long as a figure that is near takes to be drawn.</summary>
    private static async Task AssertIsStillAsync(Tab tab)
    {
        await Task.Delay(500, TestContext.Current.CancellationToken);
        Assert.Equal(0, await tab.AskAsync<int>("document.querySelectorAll('.plot-live, .js-plotly-plot, .is-drawn').length"));
    }

    private static Task<bool> ShownAsync(Tab tab, string selector) =>
        tab.AskAsync<bool>($"[...{Figure}.querySelectorAll('{selector}')].some(e => e.getClientRects().length > 0)");
}
