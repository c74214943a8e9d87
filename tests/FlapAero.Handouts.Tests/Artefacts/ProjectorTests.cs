using System.Text.Json;
using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using FlapAero.Notebooks;
using PuppeteerSharp.Media;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>The instructor's page on a projector, by keyboard: in order, in large type, nothing before its time.</summary>
[Collection<TestsOfArtefacts>]
[Trait("Speed", "slow")]
public sealed class ProjectorTests(ApproachSpeedArtefacts lesson, Browser browser)
{
    private const string Screen = "document.querySelector('.on-screen')";
    private const string Number = "location.hash";
    private const string Seen = "document.body.innerText";

    [Fact]
    public async Task Forward_ThroughTheLesson_ShowsAPredictionBeforeItsRevealAndNoNotes()
    {
        await using Tab tab = await StartAsync();
        int count = await tab.AskAsync<int>("Number(document.getElementById('screen-said').textContent.match(/of (\\d+)/)[1])");
        var screens = new List<string>();
        for (int n = 0; n < 400 && (screens.Count == 0 || !screens[^1].StartsWith($"#screen-{count}|", StringComparison.Ordinal)); n++)
        {
            string now = await tab.AskAsync<string>($"{Number} + '|' + {Screen}.className + '|' + {Seen}");
            if (screens.Count == 0 || screens[^1].Split('|')[0] != now.Split('|')[0])
                screens.Add(now);
            await tab.Page.Keyboard.PressAsync(n % 3 == 0 ? "ArrowRight" : n % 3 == 1 ? "PageDown" : "Space");
        }

        Assert.Equal(count, screens.Count);
        Assert.Equal(Enumerable.Range(1, count).Select(n => FormattableString.Invariant($"#screen-{n}")), screens.Select(s => s.Split('|')[0]));
        Assert.DoesNotContain(screens, s => s.Contains("teaching", StringComparison.Ordinal) || s.Contains("Lesson plan", StringComparison.Ordinal)
            || s.Contains("Usual guess", StringComparison.Ordinal) || s.Contains("What the class sees", StringComparison.Ordinal));
        // Minutes beside a section are for the instructor too.
        Assert.DoesNotContain(screens, s => Regex.IsMatch(s, @"(?m)(^|\|)[0-9]+ min$"));
        int predicted = screens.FindIndex(s => s.Contains("How much faster?", StringComparison.Ordinal));
        int told = screens.FindIndex(s => s.Contains("11.3\u00A0kt", StringComparison.Ordinal));
        Assert.InRange(told, predicted + 1, count);
        Assert.Contains("predict", screens[predicted].Split('|')[1], StringComparison.Ordinal);
        // When a screen of answers comes up, its answers are folded.
        Assert.DoesNotContain(screens, s => s.Contains('±', StringComparison.Ordinal) || s.Contains("is right, within", StringComparison.Ordinal));
        Assert.Empty(tab.Complaints);
        Assert.All(tab.Requests.Where(r => !r.StartsWith("data:", StringComparison.Ordinal)), r => Assert.StartsWith(lesson.Address(ApproachSpeedArtefacts.Instructor), r, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Forward_OnAProblem_OpensEachHintThenTheAnswerThenGoesOnAndBackUndoesIt()
    {
        await using Tab tab = await StartAsync();
        await GoToAsync(tab, "Stall in the turn");
        string at = await tab.AskAsync<string>(Number);
        var opened = new List<string>();
        for (int n = 0; n < 30 && await tab.AskAsync<string>(Number) == at; n++)
        {
            string now = await OpenAsync(tab);
            if (opened.Count == 0 || opened[^1] != now)
                opened.Add(now);
            Assert.Equal(now.Contains("Answer", StringComparison.Ordinal), (await tab.AskAsync<string>(Seen)).Contains("56.7 ± 1\u00A0kt", StringComparison.Ordinal));
            await tab.Page.Keyboard.PressAsync("PageDown");
        }

        Assert.Equal(["", "Hint 1 of 3", "Hint 1 of 3,Hint 2 of 3", "Hint 1 of 3,Hint 2 of 3,Hint 3 of 3", "Hint 1 of 3,Hint 2 of 3,Hint 3 of 3,Answer and worked solution"], opened);
        await tab.Page.Keyboard.PressAsync("ArrowLeft");
        Assert.Equal(at, await tab.AskAsync<string>(Number));
        Assert.Equal("", await OpenAsync(tab));
        await tab.Page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal("Hint 1 of 3", await OpenAsync(tab));
        Assert.Contains("Opened: Hint 1 of 3", await tab.AskAsync<string>("document.getElementById('screen-said').textContent"), StringComparison.Ordinal);
        await tab.Page.Keyboard.PressAsync("PageUp");
        Assert.Equal("", await OpenAsync(tab));
    }

    [Fact]
    public async Task Screen_Shown_TakesFocusToItsHeadingAndSaysWhereItIs()
    {
        await using Tab tab = await StartAsync();

        Assert.Equal("H1", await tab.AskAsync<string>("document.activeElement.localName.toUpperCase()"));
        await tab.Page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal("A lever, and nothing happens", await tab.AskAsync<string>("document.activeElement.textContent"));
        Assert.Matches("^Screen 2 of \\d+: A lever, and nothing happens$", await tab.AskAsync<string>("document.getElementById('screen-said').textContent"));
        Assert.Equal("polite", await tab.AskAsync<string>("document.getElementById('screen-said').getAttribute('aria-live')"));
        await tab.Page.Keyboard.PressAsync("End");
        Assert.Matches("^Screen (\\d+) of \\1", await tab.AskAsync<string>("document.getElementById('screen-said').textContent"));
        await tab.Page.Keyboard.PressAsync("Home");
        Assert.Equal("#screen-1", await tab.AskAsync<string>(Number));
        Assert.Contains(Caution.Text, await tab.AskAsync<string>(Seen), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Escape_FromAField_LeavesWithFocusOnTheButtonAndThePageAsItWas()
    {
        await using Tab tab = await StartAsync();
        await GoToAsync(tab, "How much faster?");
        string at = await tab.AskAsync<string>(Number);
        await tab.Page.FocusAsync(".on-screen input");
        await tab.Page.Keyboard.SendCharacterAsync("5");
        foreach (string key in (string[])["ArrowRight", "Home", "Space"])
            await tab.Page.Keyboard.PressAsync(key);
        Assert.Equal(at, await tab.AskAsync<string>(Number));

        await tab.Page.Keyboard.PressAsync("Escape");

        Assert.Equal("project", await tab.AskAsync<string>("document.activeElement.id"));
        Assert.Equal("", await tab.AskAsync<string>(Number));
        Assert.False(await tab.AskAsync<bool>("document.documentElement.matches('.is-projected')"));
        Assert.Equal(0, await tab.AskAsync<int>("[...document.querySelectorAll('main > .cell')].filter(c => c.offsetHeight === 0).length"));
        Assert.Equal(0, await tab.AskAsync<int>("document.querySelectorAll('details[open]').length"));
        await tab.Page.Keyboard.PressAsync("Enter");
        Assert.Equal(at, await tab.AskAsync<string>(Number));
    }

    [Fact]
    public async Task Reload_OnAScreen_StaysThereWithAnswersFolded()
    {
        await using Tab tab = await StartAsync();
        await GoToAsync(tab, "My bank limit");
        string at = await tab.AskAsync<string>(Number);
        await tab.Page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal("What the check says to the right answer", await OpenAsync(tab));

        await tab.Page.ReloadAsync();

        Assert.Equal(at, await tab.AskAsync<string>(Number));
        Assert.Equal("My bank limit", await tab.AskAsync<string>("document.activeElement.textContent"));
        Assert.Equal("", await OpenAsync(tab));
    }

    [Theory]
    [InlineData(1280, 720)]
    [InlineData(1920, 1080)]
    public async Task Screens_OnAProjector_HaveLargeLettersFiguresThatFillThemAndNothingWider(int width, int height)
    {
        await using Tab tab = await StartAsync(width, height);
        int count = await tab.AskAsync<int>("Number(document.getElementById('screen-said').textContent.match(/of (\\d+)/)[1])");
        for (int n = 1; n <= count; n++)
        {
            await tab.AskAsync<JsonElement?>($"(location.hash = '#screen-{n}', new Promise(r => requestAnimationFrame(() => setTimeout(() => r(null), 30))))");
            Assert.InRange(await tab.AskAsync<int>("document.documentElement.scrollWidth"), 1, width);
            Assert.True(await tab.AskAsync<double>("parseFloat(getComputedStyle(document.body).fontSize)") >= 28);
            Assert.Empty(await tab.AskAsync<string[]>($$"""
                [...{{Screen}}.querySelectorAll('*')].filter(e => e.getClientRects().length && !e.closest('math, sub, sup, tspan, .apart') && [...e.childNodes].some(c => c.nodeType === 3 && c.data.trim()))
                  .filter(e => parseFloat(getComputedStyle(e).fontSize) < 24).map(e => {{Number}} + ' ' + getComputedStyle(e).fontSize + ' ' + e.outerHTML.slice(0, 90))
                """));
            if (!await tab.AskAsync<bool>($"[...{Screen}.querySelectorAll('figure.plot')].some(f => f.checkVisibility())"))
                continue;
            await tab.WaitForFiguresAsync();
            await tab.AskAsync<JsonElement?>("new Promise(r => requestAnimationFrame(() => setTimeout(() => r(null), 30)))");
            // Nearly all of the width, or of the height beside a control, with the drawing as large as its place and no label on another.
            double[] box = await tab.AskAsync<double[]>($"(() => {{ const live = {Screen}.querySelector('.plot-live'), b = live.getBoundingClientRect(), s = live.querySelector('svg.main-svg').getBoundingClientRect(); return [b.width, b.height, s.width - b.width, s.height - b.height]; }})()");
            Assert.True((box[0] >= width * 0.9 && box[1] >= height * 0.55) || (box[0] >= width * 0.55 && box[1] >= height * 0.7), $"screen {n}: {box[0]} by {box[1]}");
            Assert.Equal("", string.Join('\n', await tab.AskAsync<string[]>($$"""
                [...{{Screen}}.querySelectorAll('.plot-live .annotation-text-g')].flatMap((g, i, all) => all.slice(i + 1)
                  .filter(o => { const a = g.getBoundingClientRect(), b = o.getBoundingClientRect(); return Math.min(a.right, b.right) - Math.max(a.left, b.left) > 2 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 6; })
                  .map(o => {{Number}} + ' ' + g.textContent + ' on ' + o.textContent))
                """)));
            Assert.All(box[2..], difference => Assert.InRange(difference, -2, 2));
        }
        Assert.Empty(tab.Complaints);
    }

    [Fact]
    public async Task MovingFigure_OnAProjector_KeepsItsArrowKeysAndItsLetters()
    {
        await using Tab tab = await StartAsync();
        await GoToAsync(tab, "The same turn, lighter");
        await tab.WaitForFiguresAsync();
        string at = await tab.AskAsync<string>(Number), before = await tab.AskAsync<string>($"{Screen}.querySelector('.plot-finding').textContent");
        double letters = await tab.AskAsync<double>($"{Screen}.querySelector('.plot-live').layout.font.size");
        await tab.Page.FocusAsync(".on-screen input[type=range]");

        await tab.Page.Keyboard.PressAsync("ArrowRight");
        await tab.Page.Keyboard.PressAsync("PageDown");

        Assert.Equal(at, await tab.AskAsync<string>(Number));
        Assert.NotEqual(before, await tab.AskAsync<string>($"{Screen}.querySelector('.plot-finding').textContent"));
        Assert.Equal(letters, await tab.AskAsync<double>($"{Screen}.querySelector('.plot-live').layout.font.size"));
        await tab.Page.Keyboard.PressAsync("Escape");
        Assert.Equal("project", await tab.AskAsync<string>("document.activeElement.id"));
        // Back on the page the figure keeps what was chosen, in the page's letters.
        Assert.Equal(18, await tab.AskAsync<double>("document.querySelector('figure:has(.plot-control) .plot-live').layout.font.size"));
    }

    [Fact]
    public async Task Screens_Projected_PassAxeAndPrintAsThePage()
    {
        await using Tab tab = await StartAsync();
        await tab.AskAsync<JsonElement?>(new BundledAxeScriptProvider().GetScript() + ";null");
        foreach (string title in (string[])["How much faster?", "The same turn, lighter", "Stall in the turn"])
        {
            await GoToAsync(tab, title);
            await tab.Page.Keyboard.PressAsync("ArrowRight");
            Assert.Empty(await tab.AskAsync<string[]>("axe.run().then(r => r.violations.flatMap(v => v.nodes.map(n => v.id + ': ' + n.html.slice(0, 200))))"));
        }

        await tab.Page.EmulateMediaTypeAsync(MediaType.Print);

        Assert.Equal(0, await tab.AskAsync<int>("[...document.querySelectorAll('main > .cell')].filter(c => c.offsetHeight === 0).length"));
        Assert.Equal(0, await tab.AskAsync<int>("[...document.querySelectorAll('.project, .screens')].filter(e => e.offsetHeight > 0).length"));
    }

    [Fact]
    public async Task Page_WithoutScript_HasNoWayIn()
    {
        await using Tab tab = await browser.OpenAsync("about:blank", 1280);
        await tab.Page.SetJavaScriptEnabledAsync(false);
        await tab.Page.GoToAsync(lesson.Address(ApproachSpeedArtefacts.Instructor) + "#screen-3");

        Assert.Equal(0, await tab.AskAsync<int>("[...document.querySelectorAll('.project, .screens')].filter(e => e.getClientRects().length > 0).length"));
    }

    [Theory]
    [InlineData(ApproachSpeedArtefacts.Student)]
    [InlineData(ApproachSpeedArtefacts.Key)]
    [InlineData(ApproachSpeedArtefacts.Sheet)]
    public void Page_ForOthers_CarriesNoneOfIt(string name)
    {
        Assert.DoesNotContain("is-projected", lesson.Text(name), StringComparison.Ordinal);
        Assert.Contains("is-projected", lesson.Text(ApproachSpeedArtefacts.Instructor), StringComparison.Ordinal);
    }

    private async Task<Tab> StartAsync(int width = 1280, int height = 720)
    {
        Tab tab = await browser.OpenAsync(lesson.Address(ApproachSpeedArtefacts.Instructor), width, height);
        await tab.WaitForFiguresAsync();
        await tab.Page.FocusAsync("#project");
        await tab.Page.Keyboard.PressAsync("Enter");
        return tab;
    }

    private static async Task GoToAsync(Tab tab, string title)
    {
        for (int n = 0; n < 200 && await tab.AskAsync<string>("document.activeElement.textContent") != title; n++)
            await tab.Page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal(title, await tab.AskAsync<string>("document.activeElement.textContent"));
    }

    private static Task<string> OpenAsync(Tab tab) =>
        tab.AskAsync<string>($"[...{Screen}.querySelectorAll('details[open] > summary')].filter(s => s.getClientRects().length).map(s => s.textContent).join()");
}
