using System.Text.Json;
using Deque.AxeCore.Commons;

namespace FlapAero.Handouts.Tests;

/// <summary>What every page is looked at for.</summary>
internal static class PageChecks
{
    /// <summary>What axe finds against WCAG A and AA and its own best practice: the rule and the element.</summary>
    public static async Task<string[]> AxeViolationsAsync(this Tab tab)
    {
        await tab.AskAsync<JsonElement?>(new BundledAxeScriptProvider().GetScript() + ";null");
        return await tab.AskAsync<string[]>("""
            axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })
              .then(r => r.violations.flatMap(v => v.nodes.map(n => v.id + ': ' + n.html.slice(0, 200))))
            """);
    }

    /// <summary>With all folds open and its letters enlarged, nothing of a page reaches past its width.</summary>
    public static async Task DoesNotScrollSidewaysAsync(this Tab tab, int width, int enlarged)
    {
        await tab.AskAsync<JsonElement?>($"(document.documentElement.style.fontSize = '{112.5 * enlarged}%', document.querySelectorAll('details').forEach(d => d.open = true))");
        await tab.WaitForFiguresAsync();

        string[] wide = await tab.AskAsync<string[]>("""
            [...document.querySelectorAll('body *')].filter(e => !e.closest('.scroll, .plot-live, .skip, .apart, svg') && e.getBoundingClientRect().right > innerWidth + 1)
              .map(e => e.outerHTML.slice(0, 120))
            """);

        Assert.Empty(wide);
        Assert.InRange(await tab.AskAsync<int>("document.documentElement.scrollWidth"), 1, width);
    }
}
