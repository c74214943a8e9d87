using System.Text;
using System.Text.Json;
using FlapAero.Handouts.Tests;

namespace FlapAero.Explorer.Tests;

/// <summary>The engine from a static server below a path: it runs, asks only there, and stays when the server is gone.</summary>
public sealed class WebSpaceTests(MadeEngine made, Browser browser)
{
    private const string Lesson = "engine/00-start-here.html", WhatIf = "engine/what-if.html";

    private const string IsKept = "navigator.serviceWorker.getRegistration().then(r => Boolean(r?.active))";

    [Fact]
    public async Task RunAll_LessonBelowAPath_RunsAndAsksOnlyThere()
    {
        using var space = new WebSpace(made.Folder);
        await using Tab tab = await browser.OpenAsync(space.Address(Lesson), 1280, isOnLoopback: true);

        await tab.AskAsync<JsonElement?>("(document.querySelector('[data-do=all]').click(), null)");
        await tab.UntilAsync(LessonInPageTests.HasEnded);

        Assert.Equal(0, await tab.AskAsync<int>("document.querySelectorAll('.run-code[data-ran=failed]').length"));
        Assert.Empty(tab.Complaints);
        Assert.All(tab.Requests, request => Assert.Matches($"^({space.Origin}/school/course/engine/|blob:|data:)", request));
    }

    [Fact]
    public async Task WhatIf_BelowAPath_IsLiveAndAsksOnlyThere()
    {
        using var space = new WebSpace(made.Folder);
        await using Tab tab = await browser.OpenAsync(space.Address(WhatIf), 1280, isOnLoopback: true);

        await tab.UntilAsync("document.documentElement.dataset.whatIf === 'rested'");

        Assert.StartsWith("Live", await tab.AskAsync<string>("document.querySelector('.engine-state').textContent"), StringComparison.Ordinal);
        Assert.Empty(tab.Complaints);
        Assert.All(tab.Requests, request => Assert.Matches($"^({space.Origin}/school/course/engine/|blob:|data:)", request));
    }

    [Fact]
    public async Task Folder_KeptOnce_RunsCellsAndWhatIfAfterTheServerIsGone()
    {
        string lesson, whatIf;
        using (var space = new WebSpace(made.Folder))
        {
            (lesson, whatIf) = (space.Address(Lesson), space.Address(WhatIf));
            await using Tab first = await browser.OpenAsync(lesson, 1280, isOnLoopback: true);
            Assert.Equal("42", (await first.RunInFirstCellAsync("6 * 7")).Trim());
            await first.UntilAsync(IsKept);
        }

        await using (Tab tab = await browser.OpenAsync(lesson, 1280, isOnLoopback: true))
        {
            Assert.Equal("56", (await tab.RunInFirstCellAsync("7 * 8")).Trim());
            Assert.Empty(tab.Complaints);
        }

        await using Tab other = await browser.OpenAsync(whatIf, 1280, isOnLoopback: true);
        await other.UntilAsync("document.documentElement.dataset.whatIf === 'rested'");
    }

    [Fact]
    public async Task Folder_MadeAnew_ReplacesTheKeptOne()
    {
        using var space = new WebSpace(made.Folder);
        await using (Tab first = await browser.OpenAsync(space.Address(WhatIf), 1280, isOnLoopback: true))
            await first.UntilAsync(IsKept);
        string keep = File.ReadAllText(Path.Combine(made.Folder, "engine", "keep.js"));
        int version = keep.IndexOf("KEPT = OURS + \"", StringComparison.Ordinal) + "KEPT = OURS + \"".Length;
        space.Newer["engine/keep.js"] = Encoding.UTF8.GetBytes(keep.Remove(version, 4).Insert(version, "0000"));
        space.Newer[WhatIf] = Encoding.UTF8.GetBytes(
            File.ReadAllText(Path.Combine(made.Folder, WhatIf)).Replace("<h1>What if?</h1>", "<h1>What if, anew?</h1>", StringComparison.Ordinal));

        await using (Tab second = await browser.OpenAsync(space.Address(WhatIf), 1280, isOnLoopback: true))
        {
            Assert.Equal("What if?", await second.AskAsync<string>("document.querySelector('h1').textContent"));
            await second.UntilAsync("navigator.serviceWorker.getRegistration().then(r => Boolean(r.waiting))");
        }

        await using Tab third = await browser.OpenAsync(space.Address(WhatIf), 1280, isOnLoopback: true);
        await third.UntilAsync("document.querySelector('h1').textContent === 'What if, anew?' || (location.reload(), false)");
        await third.UntilAsync($"caches.keys().then(names => names.filter(name => name.includes('{space.Origin}')).length === 1)");
    }
}
