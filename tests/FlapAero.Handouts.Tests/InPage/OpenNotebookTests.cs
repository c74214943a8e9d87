using System.Text.Json;
using System.Text.Json.Nodes;
using FlapAero.Handouts.InPage;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;
using FlapAero.Tests;
using PuppeteerSharp;

namespace FlapAero.Handouts.Tests.InPage;

/// <summary>A notebook that was saved, opened again on its lesson's page, and every other file refused with nothing lost.</summary>
[Trait("Speed", "slow")]
public sealed class OpenNotebookTests : IAsyncLifetime
{
    private const string Fields = "[...document.querySelectorAll('.run-code textarea')]";
    private const string State = "document.querySelector('.engine-state').textContent";
    private const string Written = "var mine = 12.5; // by hand";

    private readonly string _folder = Directory.CreateTempSubdirectory("flapaero-").FullName;
    private readonly Browser _browser;

    private string _notebook = "";

    public OpenNotebookTests(Browser browser) => _browser = browser;

    public async ValueTask InitializeAsync()
    {
        LessonNotebook lesson = LessonCopies.Named("approach-speed");
        _notebook = StudentNotebook.Of(new RanLesson(lesson, new Dictionary<string, IReadOnlyList<Kernels.CellOutput>>()));
        foreach ((string name, string text) in (IEnumerable<(string, string)>)
            [("page.html", RunPage.Of("page", _notebook, Paper.A4)), ("figures.js", ""), ("temml.js", Assets.Temml), ("engine.js", Assets.EngineStart),
                ("names.js", Assets.EngineNames), ("run.js", Assets.EngineRun)])
            await File.WriteAllTextAsync(Path.Combine(_folder, name), text, TestContext.Current.CancellationToken);
    }

    public ValueTask DisposeAsync()
    {
        Directory.Delete(_folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Open_NotebookThatWasSaved_WritesItsCellsAndBringsBackWhatWasThere()
    {
        await using Tab tab = await OpenPageAsync();
        string[] before = await tab.AskAsync<string[]>($"{Fields}.map(field => field.value)");
        int at = await tab.AskAsync<int>($"{Fields}.findIndex(field => !field.readOnly)");
        string id = await tab.AskAsync<string>($"{Fields}[{at}].id");

        await ChooseAsync(tab, "mine.ipynb", Changed(cell => "code-" + (string?)cell["id"] == id ? Written : null));

        string[] after = await tab.AskAsync<string[]>($"{Fields}.map(field => field.value)");
        Assert.Equal(Written, after[at]);
        Assert.Equal(before.Where((_, i) => i != at), after.Where((_, i) => i != at));
        Assert.Equal("Opened: “mine.ipynb”. Press Run all.", await tab.AskAsync<string>(State));

        await tab.AskAsync<JsonElement?>("(document.querySelector('[data-do=back]').click(), null)");
        Assert.Equal(before, await tab.AskAsync<string[]>($"{Fields}.map(field => field.value)"));
        Assert.Empty(tab.Complaints);
    }

    public static TheoryData<string, string, string> Refused => new()
    {
        { "broken.ipynb", "{ \"cells\": [", "is no notebook: it is not the JSON text that “Save as a notebook” or Jupyter writes." },
        { "list.ipynb", "[1, 2]", "is no notebook: it has no list of cells." },
        { "other.ipynb", "{ \"cells\": [], \"metadata\": {} }", "is a notebook, but of no lesson of FlapAero." },
        {
            "nine.ipynb", "{ \"cells\": [], \"metadata\": { \"flapaero\": { \"lesson\": 9, \"title\": \"The circuit\" } } }",
            "is lesson 9, “The circuit”, and this page is lesson 4, “Approach speed against stall speed”: open it on its own lesson's page."
        },
        {
            "empty.ipynb", "{ \"cells\": [null, 3, { \"cell_type\": \"code\", \"id\": \"x\", \"source\": [1] }], \"metadata\": { \"flapaero\": "
                + "{ \"lesson\": 4, \"title\": \"Approach speed against stall speed\" } } }",
            "holds none of the cells that are written in on this page."
        },
    };

    [Theory, MemberData(nameof(Refused))]
    public async Task Open_AnyOtherFile_SaysWhyOnceAndChangesNothing(string name, string text, string why)
    {
        await using Tab tab = await OpenPageAsync();
        await tab.AskAsync<JsonElement?>($"(() => {{ const field = {Fields}.find(one => !one.readOnly); field.value = '{Written}'; field.dispatchEvent(new Event('input', {{ bubbles: true }})); return null; }})()");
        string[] before = await tab.AskAsync<string[]>($"{Fields}.map(field => field.value)");

        await ChooseAsync(tab, name, text);

        Assert.Equal($"“{name}” {why} Nothing was changed.", await tab.AskAsync<string>(State));
        Assert.Equal(before, await tab.AskAsync<string[]>($"{Fields}.map(field => field.value)"));
        Assert.True(await tab.AskAsync<bool>("document.querySelector('[data-do=back]').hidden"));
        Assert.Empty(tab.Complaints);
    }

    private string Changed(Func<JsonNode, string?> source)
    {
        JsonNode notebook = JsonNode.Parse(_notebook)!;
        foreach (JsonNode? cell in notebook["cells"]!.AsArray())
            if (source(cell!) is { } text)
                cell!["source"] = new JsonArray(text);
        return notebook.ToJsonString();
    }

    private Task<Tab> OpenPageAsync() => _browser.OpenAsync(new Uri(Path.Combine(_folder, "page.html")).AbsoluteUri, 1280);

    private async Task ChooseAsync(Tab tab, string name, string text)
    {
        string file = Path.Combine(_folder, name);
        await File.WriteAllTextAsync(file, text, TestContext.Current.CancellationToken);
        string before = await tab.AskAsync<string>(State);
        await using IElementHandle chooser = await tab.Page.QuerySelectorAsync(".engine input[type=file]");
        await chooser.UploadFileAsync(file);
        await tab.Page.WaitForFunctionAsync("before => document.querySelector('.engine-state').textContent !== before", before);
    }
}
