using System.Text.Json;
using FlapAero.Handouts.Tests;
using Browser = FlapAero.Handouts.Tests.Browser;
using PuppeteerSharp;

namespace FlapAero.Explorer.Tests;

/// <summary>The engine's pages for whoever sees little, sees it large, or has a small screen.</summary>
public sealed class ReachTests(MadeEngine made, Browser browser)
{
    [Theory]
    [InlineData("04-approach-speed", 390, false)]
    [InlineData("04-approach-speed", 1280, true)]
    [InlineData("what-if", 390, true)]
    [InlineData("what-if", 1920, false)]
    public async Task Page_WithItsAnswers_PassesAxeInLightAndDark(string page, int width, bool isDark)
    {
        await using Tab tab = await OpenAnsweredAsync(page, width);
        await tab.Page.EmulateMediaFeaturesAsync([new() { MediaFeature = MediaFeature.PrefersColorScheme, Value = isDark ? "dark" : "light" }]);

        Assert.Empty(await tab.AxeViolationsAsync());
    }

    [Theory]
    [InlineData("04-approach-speed", 320, 1)]
    [InlineData("04-approach-speed", 640, 2)]
    [InlineData("what-if", 320, 1)]
    [InlineData("what-if", 640, 2)]
    [InlineData("what-if", 1920, 1)]
    public async Task Page_NarrowOrEnlarged_DoesNotScrollSideways(string page, int width, int enlarged)
    {
        await using Tab tab = await OpenAnsweredAsync(page, width);

        await tab.DoesNotScrollSidewaysAsync(width, enlarged);
    }

    private async Task<Tab> OpenAnsweredAsync(string page, int width)
    {
        Tab tab = await browser.OpenAsync(made.Page(page), width);
        if (page == "what-if")
            await tab.UntilAsync("document.querySelectorAll('table td').length > 20");
        else
        {
            await tab.AskAsync<JsonElement?>("(document.querySelector('[data-do=all]').click(), null)");
            await tab.UntilAsync("[...document.querySelectorAll('.run-code')].every(c => c.dataset.ran)");
        }
        return tab;
    }
}
