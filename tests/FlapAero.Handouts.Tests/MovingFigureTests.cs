using System.Text.Json;
using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using FlapAero.Notebooks;
using PuppeteerSharp.Media;

namespace FlapAero.Handouts.Tests;

/// <summary>A figure that moves, by keyboard, on paper, without scripts, and in a notebook's outputs.</summary>
[Collection<TestsOfMovingPages>]
[Trait("Speed", "slow")]
public sealed class MovingFigureTests(MovingPages pages, Browser browser)
{
    private const string Figure = MovingPages.Figure;

    [Fact]
    public async Task Control_ByKeyboard_ShowsTheFigureAndSaysTheFindingOfEachValue()
    {
        await using Tab tab = await browser.OpenAsync(pages.Page, 1280);
        await ReadyAsync(tab);
        for (int n = 0; n < 40 && !await tab.AskAsync<bool>($"document.activeElement === {Figure}.querySelector('input')"); n++)
            await tab.Page.Keyboard.PressAsync("Tab");
        double[] range = await tab.AskAsync<double[]>($"{Figure}.querySelector('.plot-live').layout.yaxis.range");

        foreach ((string key, int share) in ((string, int)[])[("ArrowRight", 90), ("ArrowLeft", 85), ("End", 110), ("Home", 60), ("ArrowUp", 65)])
        {
            await tab.Page.Keyboard.PressAsync(key);

            string value = $"{share}\u00A0%";
            Assert.Equal(value, await tab.AskAsync<string>($"{Figure}.querySelector('input').getAttribute('aria-valuetext')"));
            Assert.Equal(value, await tab.AskAsync<string>($"{Figure}.querySelector('output').textContent"));
            string finding = FormattableString.Invariant($"At {share} % the stall speed VS is {share / 2.0:0.0} kt.");
            Assert.Equal(finding, await tab.AskAsync<string>($"{Figure}.querySelector('.plot-finding').textContent"));
            Assert.Equal(finding, await tab.AskAsync<string>($"{Figure}.querySelector('.plot-live').getAttribute('aria-label')"));
            Assert.Equal([50, share / 2.0], await tab.AskAsync<double[]>($"{Figure}.querySelector('.plot-live').calcdata.map(line => line[0].y)"));
            Assert.Equal(range, await tab.AskAsync<double[]>($"{Figure}.querySelector('.plot-live').layout.yaxis.range"));
        }
        Assert.Empty(tab.Complaints);
    }

    [Theory]
    [InlineData(1280)]
    [InlineData(320)]
    public async Task Control_OnScreen_IsLargeEnoughWithVisibleFocusAndPassesAxe(int width)
    {
        await using Tab tab = await browser.OpenAsync(pages.Page, width);
        await ReadyAsync(tab);
        await tab.Page.FocusAsync(".plot-control input");
        await tab.Page.Keyboard.PressAsync("ArrowRight");

        Assert.True(await tab.AskAsync<double>($"{Figure}.querySelector('input').getBoundingClientRect().height") >= 24);
        Assert.Equal("solid", await tab.AskAsync<string>($"getComputedStyle({Figure}.querySelector('input')).outlineStyle"));
        Assert.InRange(await tab.AskAsync<int>("document.documentElement.scrollWidth"), 1, width);
        await tab.AskAsync<JsonElement?>("document.querySelectorAll('details').forEach(d => d.open = true)");
        await tab.AskAsync<JsonElement?>(new BundledAxeScriptProvider().GetScript() + ";null");
        Assert.Empty(await tab.AskAsync<string[]>("axe.run().then(r => r.violations.flatMap(v => v.nodes.map(n => v.id + ': ' + n.html.slice(0, 200))))"));
    }

    [Fact]
    public async Task Page_PrintedAfterMoving_ShowsTheStartOnceAndHowFarItMoves()
    {
        await using Tab tab = await browser.OpenAsync(pages.Page, 1280);
        await ReadyAsync(tab);
        await tab.Page.FocusAsync(".plot-control input");
        await tab.Page.Keyboard.PressAsync("End");
        Assert.False(await ShownAsync(tab, ".plot-range"));
        await tab.Page.EmulateMediaTypeAsync(MediaType.Print);

        Assert.False(await ShownAsync(tab, ".plot-live"));
        Assert.False(await ShownAsync(tab, ".plot-control"));
        Assert.True(await ShownAsync(tab, ".plot-drawing svg"));
        Assert.True(await ShownAsync(tab, ".plot-range"));
        Assert.Equal("At 85 % the stall speed VS is 42.5 kt.", await tab.AskAsync<string>($"{Figure}.querySelector('.plot-drawing').getAttribute('aria-label')"));
        string pdf = System.Text.Encoding.Latin1.GetString(await tab.Page.PdfDataAsync());
        Assert.Single(Regex.Matches(pdf, "/S /Figure\\s+/Alt"));
    }

    [Fact]
    public async Task Page_WithoutScript_ShowsTheStartAndNoControl()
    {
        await using Tab tab = await browser.OpenAsync("about:blank", 1280);
        await tab.Page.SetJavaScriptEnabledAsync(false);
        await tab.Page.GoToAsync(pages.Page);

        Assert.True(await ShownAsync(tab, ".plot-drawing svg"));
        Assert.True(await ShownAsync(tab, ".plot-range"));
        Assert.False(await ShownAsync(tab, ".plot-control"));
    }

    [Fact]
    public async Task Outputs_BesideAModuleLoader_AreDrawnBeforeAfterAndWithASecondStart()
    {
        string start = Lesson.Begin().ToHtml(), figure = MovingPages.Lighter.ToNotebookHtml();
        await using Tab tab = await browser.OpenAsync(pages.Outputs("", figure, start, figure, start), 1280);
        await tab.WaitForFiguresAsync();
        await tab.AskAsync<JsonElement?>("(() => { const more = document.createElement('div'); window.flapaeroFigures.push('x'); more.innerHTML = document.querySelector('.output').innerHTML;"
            + " for (const old of more.querySelectorAll('.plot-live')) old.remove(); more.querySelector('figure').classList.remove('is-drawn'); document.body.append(more); return null; })()");
        await tab.WaitForFiguresAsync();
        await tab.Page.WaitForFunctionAsync("() => document.querySelectorAll('figure.is-drawn .plot-control:not([hidden])').length === 3");

        Assert.Equal(3, await tab.AskAsync<int>("document.querySelectorAll('.plot-live').length"));
        Assert.Equal(0, await tab.AskAsync<int>("[...document.querySelectorAll('.plot-drawing')].filter(d => d.offsetHeight > 0).length"));
        Assert.Equal("undefined undefined", await tab.AskAsync<string>("typeof Plotly + ' ' + typeof wasDefined"));
        Assert.Empty(tab.Complaints);
        Assert.Single(tab.Requests, request => !request.StartsWith("data:", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Outputs_InABrowserThatCannotUnpack_SaySoAndShowThePicture()
    {
        await using Tab tab = await browser.OpenAsync(pages.Outputs("delete window.DecompressionStream;", Lesson.Begin().ToHtml(), MovingPages.Lighter.ToNotebookHtml()), 1280);
        await tab.Page.WaitForFunctionAsync("() => document.querySelector('.lesson-ready').textContent.includes('still pictures')");

        Assert.True(await tab.AskAsync<bool>("document.querySelector('.plot-drawing img').naturalWidth > 0 && document.querySelector('.plot-drawing img').offsetHeight > 100"));
        Assert.False(await ShownAsync(tab, ".plot-control"));
        Assert.Empty(tab.Complaints);
    }

    private static async Task ReadyAsync(Tab tab)
    {
        await tab.WaitForFiguresAsync();
        await tab.Page.WaitForFunctionAsync("() => document.querySelector('figure.is-drawn .plot-control:not([hidden])')");
    }

    private static Task<bool> ShownAsync(Tab tab, string selector) =>
        tab.AskAsync<bool>($"{Figure}.querySelector('{selector}').getClientRects().length > 0");
}
