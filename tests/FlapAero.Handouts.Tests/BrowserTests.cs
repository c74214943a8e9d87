using System.Text.Json;
using System.Text.RegularExpressions;
using FlapAero.Notebooks;
using PuppeteerSharp.Media;

namespace FlapAero.Handouts.Tests;

[Collection<TestsOfWholePages>]
[Trait("Speed", "slow")]
public sealed class BrowserTests(WholePages pages, Browser browser)
{
    public static TheoryData<string> All => [WholePages.Student, WholePages.Instructor, WholePages.Index];

    [Theory]
    [MemberData(nameof(All))]
    public async Task Page_Offline_AsksForNothingAndComplainsOfNothing(string name)
    {
        await using Tab tab = await browser.OpenAsync(pages.Address(name), 1280);
        await tab.WaitForFiguresAsync();

        Assert.Empty(tab.Complaints);
        Assert.All(tab.Requests.Where(r => !r.StartsWith("data:", StringComparison.Ordinal)), r => Assert.Equal(pages.Address(name), r));
    }

    [Theory, InlineData("#%"), InlineData("#%E0%A4"), InlineData("#no-such-part")]
    public async Task Page_AddressCutShort_ComplainsOfNothing(string part)
    {
        await using Tab tab = await browser.OpenAsync(pages.Address(WholePages.Student) + part, 1280);

        Assert.Empty(tab.Complaints);
    }

    [Fact]
    public async Task Page_WithScript_DrawsEachFigureInPlaceOfItsStillDrawing()
    {
        await using Tab tab = await browser.OpenAsync(pages.Address(WholePages.Student), 1280);
        await tab.OpenFiguresFoldsAsync();
        await tab.WaitForFiguresAsync();

        Assert.Equal(2, await tab.AskAsync<int>("document.querySelectorAll('.plot-live[role=img].js-plotly-plot').length"));
        Assert.Equal(0, await tab.AskAsync<int>("[...document.querySelectorAll('.plot-drawing')].filter(d => d.offsetHeight > 0).length"));
        Assert.Equal(0, await tab.AskAsync<int>("document.querySelectorAll('.modebar').length"));
        Assert.True(await tab.AskAsync<bool>("[...document.querySelectorAll('.plot-live')].every(d => d.getAttribute('aria-label') === d.parentElement.querySelector('.plot-drawing').getAttribute('aria-label'))"));
    }

    [Fact]
    public async Task Page_WithoutScript_ShowsTheStillDrawings()
    {
        await using Tab tab = await browser.OpenAsync("about:blank", 1280);
        await tab.Page.SetJavaScriptEnabledAsync(false);
        await tab.Page.GoToAsync(pages.Address(WholePages.Student));

        Assert.Equal(2, await tab.AskAsync<int>("[...document.querySelectorAll('.plot-drawing')].filter(d => d.offsetHeight > 100).length"));
    }

    [Theory]
    [InlineData(WholePages.Student, 1280)]
    [InlineData(WholePages.Student, 390)]
    [InlineData(WholePages.Instructor, 1280)]
    [InlineData(WholePages.Index, 390)]
    public async Task Page_Opened_PassesAxe(string name, int width)
    {
        await using Tab tab = await browser.OpenAsync(pages.Address(name), width);
        await tab.WaitForFiguresAsync();
        await tab.AskAsync<JsonElement?>("document.querySelectorAll('details').forEach(d => d.open = true)");

        Assert.Empty(await tab.AxeViolationsAsync());
    }

    [Theory]
    [InlineData(WholePages.Student, 390, 1)]
    [InlineData(WholePages.Student, 320, 1)]
    [InlineData(WholePages.Instructor, 320, 1)]
    [InlineData(WholePages.Index, 320, 1)]
    [InlineData(WholePages.Student, 1280, 2)]
    [InlineData(WholePages.Instructor, 390, 2)]
    public async Task Page_NarrowOrEnlarged_DoesNotScrollSideways(string name, int width, int enlarged)
    {
        await using Tab tab = await browser.OpenAsync(pages.Address(name), width);

        await tab.DoesNotScrollSidewaysAsync(width, enlarged);
    }

    [Fact]
    public async Task Page_OnAProjector_HasLettersOfEighteenPixelsAtLeast()
    {
        await using Tab tab = await browser.OpenAsync(pages.Address(WholePages.Student), 1280);
        await tab.WaitForFiguresAsync();

        string[] small = await tab.AskAsync<string[]>("""
            [...document.querySelectorAll('header, aside, nav, main, footer')].flatMap(l => [...l.querySelectorAll('*')])
              .filter(e => !e.closest('math, .plot-drawing, script') && [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim()))
              .filter(e => parseFloat(getComputedStyle(e).fontSize) < 18 && !(e.closest('svg') && e.matches('tspan')))
              .map(e => getComputedStyle(e).fontSize + ' ' + e.outerHTML.slice(0, 100))
            """);

        Assert.Empty(small);
    }

    [Fact]
    public async Task Page_ByKeyboard_ReachesSkipLinkAndFoldsWithVisibleFocus()
    {
        await using Tab tab = await browser.OpenAsync(pages.Address(WholePages.Student), 1280);
        await tab.WaitForFiguresAsync();
        var stops = new List<string>();
        for (int n = 0; n < 60 && !stops.Contains("end"); n++)
        {
            await tab.Page.Keyboard.PressAsync("Tab");
            stops.Add(await tab.AskAsync<string>("""
                (() => {
                  const e = document.activeElement;
                  if (!e || e === document.body) return 'end';
                  const box = e.getBoundingClientRect();
                  const seen = getComputedStyle(e).outlineStyle !== 'none' && box.left >= 0 && box.width > 0;
                  return (seen ? '' : 'unseen ') + (e.className === 'skip' ? 'skip' : e.localName);
                })()
                """));
        }

        Assert.Equal("skip", stops[0]);
        Assert.Contains("summary", stops);
        Assert.Contains("input", stops);
        Assert.DoesNotContain(stops, stop => stop.StartsWith("unseen", StringComparison.Ordinal));
        // Every table fits at this width, so no region needs a stop of its own.
        Assert.DoesNotContain("div", stops);
    }

    [Fact]
    public async Task Page_WideTableOnAPhone_IsAStopOfTheKeyboard()
    {
        await using Tab tab = await browser.OpenAsync(pages.Address(WholePages.Student), 320);

        Assert.True(await tab.AskAsync<bool>("[...document.querySelectorAll('.scroll')].some(e => e.scrollWidth > e.clientWidth + 1)"));
        Assert.True(await tab.AskAsync<bool>("[...document.querySelectorAll('.scroll')].every(e => e.hasAttribute('tabindex') === (e.scrollWidth > e.clientWidth + 1))"));
    }

    [Theory]
    [InlineData(WholePages.Student)]
    [InlineData(WholePages.Instructor)]
    public async Task Page_Printed_HasEachFigureOnceAndAnswersAsTheEditionWants(string name)
    {
        await using Tab tab = await browser.OpenAsync(pages.Address(name), 1280);
        await tab.OpenFiguresFoldsAsync();
        await tab.WaitForFiguresAsync();
        await tab.Page.EmulateMediaTypeAsync(MediaType.Print);

        Assert.Equal(2, await tab.AskAsync<int>("[...document.querySelectorAll('.plot-drawing, .plot-live')].filter(d => d.offsetHeight > 0).length"));
        Assert.Equal(0, await tab.AskAsync<int>("[...document.querySelectorAll('.plot-live')].filter(d => d.offsetHeight > 0).length"));
        string printed = await tab.AskAsync<string>("document.body.innerText");
        Assert.Equal(name == WholePages.Instructor, printed.Contains(WholeLesson.Solution, StringComparison.Ordinal));
        Assert.Contains(Caution.Text, printed, StringComparison.Ordinal);
        Assert.Equal(0, await tab.AskAsync<int>("[...document.querySelectorAll('.plot-numbers')].filter(d => d.offsetHeight > 0).length"));
        Assert.DoesNotContain("How this is computed", printed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task Page_ToPdf_HasEachFigureOnce(string paper)
    {
        await using Tab tab = await browser.OpenAsync(pages.Address(WholePages.Student), 1280);
        await tab.OpenFiguresFoldsAsync();
        await tab.WaitForFiguresAsync();

        byte[] pdf = await tab.Page.PdfDataAsync(new PuppeteerSharp.PdfOptions { Format = paper == "A4" ? PaperFormat.A4 : PaperFormat.Letter, PreferCSSPageSize = false });
        string text = System.Text.Encoding.Latin1.GetString(pdf);

        Assert.StartsWith("%PDF-", text, StringComparison.Ordinal);
        // Each drawing is one tagged figure with its alternative; the live copy would be a second one.
        Assert.Equal(2, Regex.Count(text, "/S /Figure\\s+/Alt"));
    }
}
