using System.Text.Json;
using PuppeteerSharp;
using PuppeteerSharp.Media;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>How a page looks: its own letters, dark where the reader's device is, and the whole width of a wide screen.</summary>
[Collection<TestsOfArtefacts>]
[Trait("Speed", "slow")]
public sealed class LooksTests(ApproachSpeedArtefacts lesson, Browser browser)
{
    [Theory]
    [InlineData(ApproachSpeedArtefacts.Student)]
    [InlineData(ApproachSpeedArtefacts.Instructor)]
    [InlineData(ApproachSpeedArtefacts.Sheet)]
    [InlineData(ApproachSpeedArtefacts.Index)]
    public async Task Page_InTheDark_IsDarkAndPassesAxe(string name)
    {
        await using Tab tab = await browser.OpenAsync("about:blank", 1280);
        await tab.Page.EmulateMediaFeaturesAsync([new MediaFeatureValue { MediaFeature = MediaFeature.PrefersColorScheme, Value = "dark" }]);
        await tab.Page.GoToAsync(lesson.Address(name));
        await tab.WaitForFiguresAsync();
        await tab.AskAsync<JsonElement?>("document.querySelectorAll('details').forEach(d => d.open = true)");

        Assert.Equal("rgb(21, 23, 26)", await tab.AskAsync<string>("getComputedStyle(document.body).backgroundColor"));
        Assert.Empty(await tab.AxeViolationsAsync());

        // Paper is white whatever the device prefers.
        await tab.Page.EmulateMediaTypeAsync(MediaType.Print);
        Assert.Equal("rgb(255, 255, 255)", await tab.AskAsync<string>("getComputedStyle(document.body).backgroundColor"));
    }

    [Theory]
    [InlineData(ApproachSpeedArtefacts.Student)]
    [InlineData(ApproachSpeedArtefacts.Key)]
    public async Task Page_Letters_AreOfThePagesOwnTypeFace(string name)
    {
        await using Tab tab = await browser.OpenAsync(lesson.Address(name), 1280);

        Assert.Equal(2, await tab.AskAsync<int>("document.fonts.ready.then(fonts => [...fonts].filter(f => f.family === 'Inter' && f.status === 'loaded').length)"));
        Assert.StartsWith("Inter", await tab.AskAsync<string>("getComputedStyle(document.querySelector('main p')).fontFamily"), StringComparison.Ordinal);
        Assert.Empty(tab.Complaints);
    }

    [Fact]
    public async Task Page_OnAWideScreen_HasItsContentsBesideTheText()
    {
        await using Tab tab = await browser.OpenAsync(lesson.Address(ApproachSpeedArtefacts.Student), 1920);
        const string Box = "(e => { const b = document.querySelector(e).getBoundingClientRect(); return [b.left, b.right, b.top]; })";

        double[] nav = await tab.AskAsync<double[]>(Box + "('body > nav.contents')"), main = await tab.AskAsync<double[]>(Box + "('main')");

        Assert.True(nav[0] > main[1], "The contents stand over the text.");
        Assert.InRange(nav[1], 1920 * 0.8, 1920);
        await tab.AskAsync<JsonElement?>("(scrollTo(0, 3000), null)");
        Assert.Equal(nav[2], (await tab.AskAsync<double[]>(Box + "('body > nav.contents')"))[2]);
    }

    [Fact]
    public async Task Table_ThatGoesOn_HasAShadeAtItsEdge()
    {
        await using Tab tab = await browser.OpenAsync(lesson.Address(ApproachSpeedArtefacts.Student), 320);
        await tab.AskAsync<JsonElement?>("(document.querySelectorAll('details.after').forEach(d => d.open = true), null)");

        Assert.True(await tab.AskAsync<bool>("[...document.querySelectorAll('.scroll')].some(t => t.scrollWidth > t.clientWidth + 1)"));
        Assert.Contains("local, local, scroll, scroll", await tab.AskAsync<string>("getComputedStyle(document.querySelector('.scroll')).backgroundAttachment"), StringComparison.Ordinal);
    }
}
