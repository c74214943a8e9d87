using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Tests;

namespace FlapAero.Explorer.Tests;

/// <summary>The lessons run in a page from a disk, without a network and with nothing installed.</summary>
public sealed partial class LessonInPageTests(MadeEngine made, Browser browser, Firefox firefox)
{
    /// <summary>All cells have run, or one failed.</summary>
    internal const string HasEnded = "[...document.querySelectorAll('.run-code')].every(c => c.dataset.ran) || document.querySelector('.run-code[data-ran=failed]') !== null";

    private const string Outputs = "JSON.stringify(Object.fromEntries([...document.querySelectorAll('.run-code')].map(c => [c.dataset.cell, c.querySelector('.output').innerHTML])))";

    public static TheoryData<string> Lessons => MadeEngine.Lessons;

    [Theory, MemberData(nameof(Lessons))]
    public async Task RunAll_StudentsNotebook_SaysWhatTheKernelInProcessSays(string lesson)
    {
        await using Tab tab = await browser.OpenAsync(made.Page(lesson), 1280);

        await tab.AskAsync<JsonElement?>("(document.querySelector('[data-do=all]').click(), null)");
        await tab.UntilAsync(HasEnded);

        Assert.Empty(await tab.AskAsync<string[]>("[...document.querySelectorAll('.run-code[data-ran=failed]')].map(c => c.dataset.cell + ': ' + c.querySelector('.output').textContent)"));
        Assert.Empty(tab.Complaints);
        Assert.All(tab.Requests, request => Assert.Matches("^(file|blob|data):", request));
        Dictionary<string, string> inPage = JsonSerializer.Deserialize<Dictionary<string, string>>(await tab.AskAsync<string>(Outputs))!;
        await SaysTheSameAsync(lesson, inPage);
    }

    [Fact]
    public async Task RunAll_InFirefox_SaysWhatTheKernelInProcessSays()
    {
        const string Lesson = "01-lift-and-where-it-ends";
        await using FirefoxTab tab = await firefox.OpenAsync(made.Page(Lesson), 1280);

        await tab.DoAsync("document.querySelector('[data-do=all]').click()");
        for (int i = 0; i < 3000 && !await tab.AskAsync<bool>(HasEnded); i++)
            await Task.Delay(100, TestContext.Current.CancellationToken);

        Assert.Empty(tab.Complaints);
        Assert.All(tab.Requests, request => Assert.Matches("^(file|blob|data):", request));
        await SaysTheSameAsync(Lesson, JsonSerializer.Deserialize<Dictionary<string, string>>(await tab.AskAsync<string>(Outputs))!);
    }

    private async Task SaysTheSameAsync(string lesson, Dictionary<string, string> inPage)
    {
        Dictionary<string, string> inProcess = await InProcessAsync(lesson);
        Assert.Equal(inProcess.Keys, inPage.Keys);
        Assert.All(inProcess, cell => Assert.Equal((cell.Key, Words(cell.Value)), (cell.Key, Words(inPage[cell.Key]))));
        Assert.True(inProcess.Values.Sum(output => Number().Count(Words(output))) > 30);
    }

    [Fact]
    public async Task StudentPage_RunThisLessonHere_LeadsToCellsThatRun()
    {
        await using Tab tab = await browser.OpenAsync(made.StudentPage("00-start-here"), 1280);

        await tab.Page.FocusAsync(".runs-here a");
        await Task.WhenAll(tab.Page.WaitForNavigationAsync(), tab.Page.Keyboard.PressAsync("Enter"));

        Assert.Equal(made.Page("00-start-here"), tab.Page.Url);
        Assert.Equal("42", (await tab.RunInFirstCellAsync("6 * 7")).Trim());
    }

    [Fact]
    public async Task Stop_CellThatNeverEnds_LeavesWhatWasWrittenAlsoAfterAReload()
    {
        const string Endless = "while (true) { }";
        await using Tab tab = await browser.OpenAsync(made.Page("00-start-here"), 1280);
        await tab.AskAsync<JsonElement?>($$"""
            (() => {
              const cell = document.querySelector('.run-code:not(:has(textarea[readonly]))'), field = cell.querySelector('textarea');
              field.value = '{{Endless}}';
              field.dispatchEvent(new Event('input', { bubbles: true }));
              cell.querySelector('[data-do=run]').click();
              return null;
            })()
            """);
        await tab.UntilAsync("document.querySelector('.engine-state').textContent.startsWith('Running')");

        await tab.AskAsync<JsonElement?>("(document.querySelector('[data-do=stop]').click(), null)");

        await tab.UntilAsync("document.querySelector('.run-code[data-ran=failed]') !== null");
        Assert.StartsWith("Stopped.", await tab.AskAsync<string>("document.querySelector('.engine-state').textContent"), StringComparison.Ordinal);
        await tab.Page.ReloadAsync();
        Assert.Equal(Endless, await tab.AskAsync<string>("document.querySelector('.run-code:not(:has(textarea[readonly])) textarea').value"));
    }

    [Fact]
    public async Task Cell_ThatDoesNotCompile_SaysWhatWhereAndWhatToTry()
    {
        await using Tab tab = await browser.OpenAsync(made.Page("00-start-here"), 390);

        string said = await tab.RunInFirstCellAsync("var v = 2;\nvv + 1");

        string[] lines = said.Split('\n');
        Assert.Equal(3, lines.Length);
        Assert.StartsWith("What: The name 'vv' does not exist", lines[0], StringComparison.Ordinal);
        Assert.Equal("Where: line 2 of this cell: vv + 1", lines[1]);
        Assert.StartsWith("Try: ", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Engine_OnTheDisk_IsNoLargerThanWritten()
    {
        Assert.InRange(made.Size("runtime.js"), 1_000_000, 9_000_000);
        Assert.InRange(made.Size("compiler.js") + made.Size("cells.js"), 1_000_000, 7_000_000);
        Assert.InRange(made.Size("00-start-here.html"), 10_000, 400_000);
    }

    private async Task<Dictionary<string, string>> InProcessAsync(string lesson)
    {
        var outputs = new Dictionary<string, string>();
        using var kernel = new InteractiveKernel();
        foreach (JsonNode? cell in JsonNode.Parse(made.Notebook(lesson))!["cells"]!.AsArray().Where(c => (string?)c!["cell_type"] == "code"))
        {
            JsonNode source = cell!["source"]!;
            string code = source is JsonArray lines ? string.Concat(lines.Select(line => (string?)line)) : (string)source!;
            CellResult result = await kernel.RunAsync(code, TestContext.Current.CancellationToken);
            Assert.True(result.Failure is null, result.Failure);
            outputs.Add((string)cell["id"]!, string.Concat(result.Outputs.Select(o => o.IsHtml ? o.ForInstructor : $"<pre>{WebUtility.HtmlEncode(o.Text)}</pre>")));
        }
        return outputs;
    }

    /// <summary>What is said: without formulas, which the page sets, and without drawings, which it draws anew.</summary>
    private static string Words(string html)
    {
        IElement body = new HtmlParser().ParseDocument(html).Body!;
        foreach (IElement other in body.QuerySelectorAll("script, style, .math, .plot-drawing, .plot-control").ToArray())
            other.Remove();
        return Blanks().Replace(body.TextContent, " ").Trim();
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"\d")]
    private static partial Regex Number();
}
