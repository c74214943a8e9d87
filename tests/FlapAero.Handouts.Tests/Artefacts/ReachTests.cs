using System.Text.Json;
using PuppeteerSharp;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>What axe cannot see, on every page: the way of the Tab key, where it is, large text, and stillness.</summary>
[Collection<TestsOfArtefacts>]
[Trait("Speed", "slow")]
public sealed class ReachTests(ApproachSpeedArtefacts lesson, Browser browser)
{
    private const string OpenAll = "(document.querySelectorAll('details').forEach(d => d.open = true), new Promise(r => setTimeout(() => r(null), 50)))";

    /// <summary>Everything the Tab key should stop at, in the order of reading; of a group of radio buttons the first.</summary>
    private const string Stops = """
        window.stops = [...document.querySelectorAll('a[href], button:enabled, input, select, textarea, summary, [tabindex="0"]')]
          .filter((e, i, all) => e.getClientRects().length && !(e.type === 'radio' && all.findIndex(o => o.name === e.name && o.type === 'radio') !== i));
        """;

    /// <summary>The number of the stop that has the focus, or -1, and what is wrong with how it is seen.</summary>
    private const string Look = """
        (() => {
          const e = document.activeElement;
          const at = window.stops.indexOf(e);
          if (at < 0) return e === document.body ? '-1' : '-1 ' + e.outerHTML.slice(0, 90);
          const light = (c) => { const [r, g, b] = c.match(/[\d.]+/g).map(v => v / 255).map(v => v <= .03928 ? v / 12.92 : ((v + .055) / 1.055) ** 2.4); return .2126 * r + .7152 * g + .0722 * b; };
          const clear = (c) => c === 'transparent' || /, 0\)$/.test(c);
          let under = e.parentElement;
          while (under && clear(getComputedStyle(under).backgroundColor)) under = under.parentElement;
          const style = getComputedStyle(e);
          const [a, b] = [light(style.outlineColor), under ? light(getComputedStyle(under).backgroundColor) : 1].sort((x, y) => y - x);
          const box = e.getClientRects()[0];
          const top = document.elementFromPoint(Math.min(innerWidth - 1, Math.max(0, box.left + Math.min(box.width / 2, 40))), box.top + Math.min(box.height / 2, 20));
          const wrong = [];
          if (style.outlineStyle === 'none' || parseFloat(style.outlineWidth) < 2) wrong.push('no outline');
          if ((a + .05) / (b + .05) < 3) wrong.push('outline too pale');
          if (box.bottom < 1 || box.top > innerHeight - 1 || box.right < 1 || box.left > innerWidth - 1) wrong.push('out of sight');
          else if (!top || !(e.contains(top) || top.contains(e) || (top.labels ? false : top.closest('label')?.contains(e)))) wrong.push('covered by ' + (top ? top.outerHTML.slice(0, 60) : 'nothing'));
          if (e.tabIndex > 0) wrong.push('positive tabindex');
          return at + (wrong.length ? ' ' + wrong.join(', ') + ': ' + e.outerHTML.slice(0, 90) : '');
        })()
        """;

    /// <summary>Text that its box cuts off, and pieces of text that lie on one another.</summary>
    private const string Crowded = """
        (() => {
          const isSeen = (e) => e.checkVisibility() && !e.closest('.skip, .apart, svg, .plot-live, math, script, style, .is-projected:not(.is-first) header');
          const words = (e) => e.outerHTML.replace(/\s+/g, ' ').slice(0, 90);
          const all = [...document.querySelectorAll('body *')].filter(isSeen);
          const cut = all.filter(e => {
            const s = getComputedStyle(e);
            return (['hidden', 'clip'].includes(s.overflowX) && e.scrollWidth > e.clientWidth + 1) || (['hidden', 'clip'].includes(s.overflowY) && e.scrollHeight > e.clientHeight + 2 && !e.matches('.math'));
          }).map(e => 'cut off: ' + words(e));
          const pieces = [];
          for (const e of all) for (const n of e.childNodes) if (n.nodeType === 3 && n.data.trim()) {
            const range = document.createRange();
            range.selectNodeContents(n);
            for (const r of range.getClientRects()) if (r.width > 1) pieces.push([r, e]);
          }
          for (const e of all) if (e.matches('input, textarea, button, .plot-live')) pieces.push([e.getBoundingClientRect(), e]);
          pieces.sort((p, q) => p[0].top - q[0].top);
          const over = [];
          pieces.forEach(([r, e], i) => {
            for (let k = i + 1; k < pieces.length && pieces[k][0].top < r.bottom - 4; k++) {
              const [q, f] = pieces[k];
              if (e.contains(f) || f.contains(e)) continue;
              // Letters' boxes are taller than letters: a third of a line is not yet an overlap.
              const deep = Math.min(r.bottom, q.bottom) - q.top;
              if (Math.min(r.right, q.right) - Math.max(r.left, q.left) > 2 && deep > Math.min(r.height, q.height) / 3) over.push('overlap: ' + words(e) + ' | ' + words(f));
            }
          });
          return [...cut, ...over];
        })()
        """;

    public static TheoryData<string> Pages => ArtefactBrowserTests.Pages;

    [Theory, MemberData(nameof(Pages))]
    public async Task Tab_ThroughAPage_StopsAtEveryControlInReadingOrderInSight(string name)
    {
        await using Tab tab = await OpenAsync(name, 1280);
        await tab.AskAsync<JsonElement?>(OpenAll);
        int count = await tab.AskAsync<int>(Stops + "window.stops.length");
        var seen = new List<string>();
        for (int n = 0; n < count; n++)
        {
            await tab.Page.Keyboard.PressAsync("Tab");
            seen.Add(await tab.AskAsync<string>(Look));
        }

        Assert.Equal(Enumerable.Range(0, count).Select(n => FormattableString.Invariant($"{n}")), seen);
        Assert.True(count > 1);
        await tab.Page.Keyboard.PressAsync("Tab");
        Assert.Equal("-1", (await tab.AskAsync<string>(Look))[..2]);
    }

    [Theory, MemberData(nameof(Pages))]
    public async Task Text_TwiceAsLargeOrOnANarrowScreen_IsNeitherCutOffNorCrowded(string name)
    {
        foreach ((int width, double enlarged) in ((int, double)[])[(1280, 2), (320, 1)])
        {
            await using Tab tab = await OpenAsync(name, width);
            await tab.AskAsync<JsonElement?>(FormattableString.Invariant($"(document.documentElement.style.fontSize = '{112.5 * enlarged}%', {OpenAll})"));

            Assert.Empty(await tab.AskAsync<string[]>(Crowded));
            Assert.InRange(await tab.AskAsync<int>("document.documentElement.scrollWidth"), 1, width);
            Assert.Empty(tab.Complaints);
        }
    }

    [Fact]
    public async Task Projector_TwiceAsLargeOrOnANarrowScreen_IsNeitherCutOffNorCrowded()
    {
        foreach ((int width, double enlarged) in ((int, double)[])[(1280, 2), (390, 1), (320, 1)])
        {
            await using Tab tab = await OpenAsync(ApproachSpeedArtefacts.Instructor + "#screen-1", width);
            if (enlarged > 1)
                await tab.AskAsync<JsonElement?>("(document.documentElement.style.fontSize = '350%', null)");
            int count = await tab.AskAsync<int>("Number(document.getElementById('screen-said').textContent.match(/of (\\d+)/)[1])");
            for (int n = 1; n <= count; n++)
            {
                await tab.AskAsync<JsonElement?>($"(location.hash = '#screen-{n}', new Promise(r => setTimeout(() => r(null), 60)))");
                await tab.AskAsync<JsonElement?>("(document.querySelectorAll('.on-screen details').forEach(d => d.open = true), null)");
                await tab.WaitForFiguresAsync();
                await tab.AskAsync<JsonElement?>("(scrollTo(0, 1e6), null)");
                Assert.Equal("", string.Join('\n', await tab.AskAsync<string[]>(Crowded)));
                Assert.InRange(await tab.AskAsync<int>("document.documentElement.scrollWidth"), 1, width);
                // What is last on a screen ends above the bar.
                Assert.True(await tab.AskAsync<bool>("document.querySelector('main').getBoundingClientRect().bottom <= document.getElementById('screens').getBoundingClientRect().top + 1"), $"screen {n} at {width}");
            }
        }
    }

    [Theory, MemberData(nameof(Pages))]
    public async Task Page_ForReadersWhoWantLessMotion_StandsStill(string name)
    {
        await using Tab tab = await OpenAsync(name, 1280);
        await tab.Page.EmulateMediaFeaturesAsync([new MediaFeatureValue { MediaFeature = MediaFeature.PrefersReducedMotion, Value = "reduce" }]);
        await tab.AskAsync<JsonElement?>("(document.getElementById('project')?.click(), null)");

        Assert.Empty(await tab.AskAsync<string[]>("""
            [...document.querySelectorAll('*')].flatMap(e => [null, '::before', '::after'].map(p => [e, getComputedStyle(e, p)]))
              .filter(([, s]) => s.animationName !== 'none' || s.transitionDuration.split(', ').some(t => parseFloat(t) > 0) || s.scrollBehavior !== 'auto')
              .map(([e]) => e.outerHTML.slice(0, 90))
            """));
        Assert.Equal(0, await tab.AskAsync<int>("document.getAnimations().length"));
    }

    private async Task<Tab> OpenAsync(string name, int width)
    {
        string[] parts = name.Split('#');
        Tab tab = await browser.OpenAsync(lesson.Address(parts[0]) + (parts.Length > 1 ? "#" + parts[1] : ""), width);
        await tab.WaitForFiguresAsync();
        return tab;
    }
}
