using System.Net;
using System.Net.Sockets;
using System.Text.Json;
using FlapAero.Handouts.Tests;

namespace FlapAero.Explorer.Tests;

/// <summary>What a cell cannot do: ask anybody for anything, freeze its page, lose what was typed, disturb another tab.</summary>
public sealed class HostileCellTests(MadeEngine made, Browser browser)
{
    private const string Html = "Activator.CreateInstance(Type.GetType(\"Microsoft.AspNetCore.Html.HtmlString, Microsoft.AspNetCore.Html.Abstractions\"), ";

    private const string Script = "Type.GetType(\"System.Runtime.InteropServices.JavaScript.JSHost, System.Runtime.InteropServices.JavaScript\")";

    /// <summary>From a disk and from a server, with a network that would answer: pages, policy and engine are what stops a request.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Cell_ThatTriesToReachSomeone_ReachesNobody(bool isOnServer)
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        string there = $"http://127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}/";
        using WebSpace? space = isOnServer ? new WebSpace(made.Folder) : null;
        await using Tab tab = await browser.OpenAsync(space?.Address("engine/00-start-here.html") ?? made.Page("00-start-here"), 1280, isOnLoopback: true);
        string before = tab.Page.Url;

        string client = await tab.RunInFirstCellAsync($"await new System.Net.Http.HttpClient().GetStringAsync(\"{there}\")");
        string found = await tab.RunInFirstCellAsync("Type.GetType(\"System.Net.Http.HttpClient, System.Net.Http\") == null");
        string module = await tab.RunInFirstCellAsync(
            $"var asked = (System.Threading.Tasks.Task){Script}.GetMethods().First(m => m.Name == \"ImportAsync\").Invoke(null, new object[] {{ \"m\", \"{there}m.js\", System.Threading.CancellationToken.None }});\nawait asked;");
        string shown = await tab.RunInFirstCellAsync(Html + $$"""
            "<p>shown</p><img src='{{there}}1'><img src='data:,' onerror=\"new Image().src='{{there}}2';location='{{there}}3'\"><script>fetch('{{there}}4')</script>"
            + "<iframe src='{{there}}5'></iframe><iframe srcdoc=\"<script>top.location='{{there}}6'</script>\"></iframe><meta http-equiv=refresh content='0;url={{there}}7'>"
            + "<link rel=stylesheet href='{{there}}8'><link rel=prefetch href='{{there}}9'><style>@import url({{there}}10)</style><p style='background:url({{there}}11)'>.</p>"
            + "<svg onload=\"location='{{there}}12'\"><image href='{{there}}13'/></svg><video src='{{there}}14'></video><object data='{{there}}15'></object><embed src='{{there}}16'>"
            + "<details open ontoggle=\"location='{{there}}17'\"><summary>.</summary></details><input autofocus onfocus=\"location='{{there}}18'\"><a href=\"javascript:location='{{there}}19'\">.</a>")
            """);
        string[] asked = await tab.AskAsync<string[]>($$"""
            (async () => {
              const said = [];
              said.push(await fetch('{{there}}20').then(() => 'answered', () => 'refused'));
              said.push(await new Promise((then) => { const one = new WebSocket('{{there}}21'.replace('http', 'ws')); one.onopen = () => then('answered'); one.onerror = () => then('refused'); }));
              said.push(navigator.sendBeacon('{{there}}22') ? 'queued' : 'refused');
              const script = document.createElement('script');
              said.push(await new Promise((then) => { script.onload = () => then('answered'); script.onerror = () => then('refused'); script.src = '{{there}}23'; document.head.append(script); }));
              document.querySelector('.run-code[data-ran] .output a')?.click();
              return said;
            })()
            """);

        Assert.StartsWith("What: ", client, StringComparison.Ordinal);
        Assert.Equal("True", found.Trim());
        Assert.Contains("What: ", module, StringComparison.Ordinal);
        Assert.StartsWith("shown", shown, StringComparison.Ordinal);
        Assert.DoesNotContain("answered", asked);
        await Task.Delay(500, TestContext.Current.CancellationToken);
        Assert.Equal(before, tab.Page.Url);
        Assert.False(listener.Pending());
    }

    [Fact]
    public async Task Cell_ThatTakesAllMemory_LeavesAPageThatRunsAgainAndWhatWasTyped()
    {
        const string Greedy = "var all = new List<byte[]>(); while (true) { all.Add(new byte[64_000_000]); all[^1][0] = 1; }";
        await using Tab tab = await browser.OpenAsync(made.Page("00-start-here"), 1280);

        string said = await tab.RunInFirstCellAsync(Greedy);

        Assert.NotEqual("", said.Trim());
        Assert.Equal(Greedy, await tab.AskAsync<string>("document.querySelector('.run-code:not(:has(textarea[readonly])) textarea').value"));
        await tab.AskAsync<JsonElement?>("(document.querySelector('[data-do=again]').click(), null)");
        Assert.Equal("42", (await tab.RunInFirstCellAsync("6 * 7")).Trim());
    }

    /// <summary>A cell that never ends in one tab; the page answers all the while, and another tab runs.</summary>
    [Fact]
    public async Task TwoTabs_OneThatNeverEnds_TheOtherRunsAndNothingTypedIsLost()
    {
        using var space = new WebSpace(made.Folder);
        string address = space.Address("engine/00-start-here.html");
        await using Tab first = await browser.OpenAsync(address, 1280, isOnLoopback: true), second = await browser.OpenAsync(address, 1280, isOnLoopback: true);
        await TypeAsync(first, 0, "while (true) { }");
        await first.AskAsync<JsonElement?>("(document.querySelector('.run-code:not(:has(textarea[readonly])) [data-do=run]').click(), null)");
        await first.UntilAsync("document.querySelector('.engine-state').textContent.startsWith('Running')");

        await TypeAsync(second, 1, "6 * 7");
        await second.AskAsync<JsonElement?>("(document.querySelectorAll('.run-code:not(:has(textarea[readonly])) [data-do=run]')[1].click(), null)");
        await second.UntilAsync("document.querySelector('.run-code[data-ran]') !== null");

        Assert.Equal("42", (await second.AskAsync<string>("document.querySelector('.run-code[data-ran] .output').textContent")).Trim());
        Assert.False(await first.AskAsync<bool>("document.querySelector('[data-do=stop]').disabled"));
        await first.AskAsync<JsonElement?>("(document.querySelector('[data-do=stop]').click(), null)");
        await first.UntilAsync("document.querySelector('.run-code[data-ran=failed]') !== null");
        await first.Page.ReloadAsync();
        Assert.Equal(["while (true) { }", "6 * 7"], await first.AskAsync<string[]>(
            "[...document.querySelectorAll('.run-code:not(:has(textarea[readonly])) textarea')].slice(0, 2).map(field => field.value)"));
    }

    private static Task TypeAsync(Tab tab, int place, string code) => tab.Page.EvaluateFunctionAsync("""
        (place, code) => {
          const field = document.querySelectorAll('.run-code:not(:has(textarea[readonly])) textarea')[place];
          field.value = code;
          field.dispatchEvent(new Event('input', { bubbles: true }));
        }
        """, place, code);
}
