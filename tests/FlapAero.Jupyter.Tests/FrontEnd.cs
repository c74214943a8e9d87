using System.Collections.Concurrent;
using PuppeteerSharp;
using Browser = FlapAero.Handouts.Tests.Browser;
using Tab = FlapAero.Handouts.Tests.Tab;

namespace FlapAero.Jupyter.Tests;

/// <summary>
/// The lessons as a person runs and saves them in the browser: each once, for all tests, on one server; a second server has no
/// kernel of ours and a third belongs to someone who trusts no notebook.
/// </summary>
internal sealed class FrontEnd(InstalledJupyter jupyter) : IAsyncDisposable
{
    /// <summary>Where this is 1 in the environment, each figure is photographed for a person's eyes.</summary>
    private const string Photographs = "FLAPAERO_PHOTOGRAPHS";

    private readonly Browser _browser = new();
    private readonly ConcurrentDictionary<string, Lazy<Task<FrontEndRun>>> _runs = new();
    private readonly ConcurrentDictionary<string, Lazy<Task<JupyterServer>>> _servers = new();
    private readonly Lazy<string> _lessons = new(() => jupyter.CopyOfTheLessons("saved lessons"));

    /// <summary>
    /// A lesson opened, run from its first cell to its last, its controls moved, and saved. The next two are begun meanwhile: much of a run
    /// is waiting for a kernel.
    /// </summary>
    internal Task<FrontEndRun> RunAsync(string file)
    {
        Task<FrontEndRun> run = Begun(file);
        foreach (string next in TwoEngineTests.Files.SkipWhile(other => other != file).Skip(1).Take(2))
            _ = Begun(next);
        return run;
    }

    private Task<FrontEndRun> Begun(string file) => _runs.GetOrAdd(file, f => new(() => RunAnsweredAsync(f))).Value;

    /// <summary>The folder that the servers show: copies of the lessons, which are saved with their outputs.</summary>
    internal string Lessons => _lessons.Value;

    /// <summary>The server that runs lessons.</summary>
    internal Task<JupyterServer> ServerAsync() => ServerAsync(jupyter.Data);

    /// <summary>A server of the same user after the kernel has gone: what Jupyter knows to trust stays.</summary>
    internal Task<JupyterServer> WithoutKernelAsync() => ServerAsync(
        jupyter.DataOf("without kernels"),
        "--NotebookNotary.db_file=" + Path.Combine(jupyter.Data, "nbsignatures.db"),
        "--NotebookNotary.secret_file=" + Path.Combine(jupyter.Data, "notebook_secret"));

    /// <summary>A server of a user whose Jupyter knows neither our kernel nor any notebook.</summary>
    internal Task<JupyterServer> OfSomeoneElseAsync() => ServerAsync(jupyter.DataOf("of someone else"));

    /// <summary>A server's list of files.</summary>
    internal Task<Tab> OpenTabAsync(JupyterServer server) => _browser.OpenAsync(new Uri(server.Address, "tree").ToString(), 1280, 900, isOnLoopback: true);

    internal Task<NotebookPage> OpenAsync(JupyterServer server, string file) => NotebookPage.OpenAsync(_browser, server, file);

    public async ValueTask DisposeAsync()
    {
        // One that no test came for is over before its server is.
        foreach (Lazy<Task<FrontEndRun>> run in _runs.Values)
            await run.Value.ContinueWith(_ => { }, TaskScheduler.Default);
        foreach (Lazy<Task<JupyterServer>> server in _servers.Values)
            await (await server.Value).DisposeAsync();
        await _browser.DisposeAsync();
    }

    private Task<JupyterServer> ServerAsync(string data, params string[] options) =>
        _servers.GetOrAdd(data, d => new(() => JupyterServer.StartAsync(jupyter, Lessons, d, options))).Value;

    /// <summary>
    /// On a crowded machine a browser once gave no answer for three minutes to whatever a tab was asked: nothing that a page can do, so the lesson is
    /// opened once more.
    /// </summary>
    private async Task<FrontEndRun> RunAnsweredAsync(string file)
    {
        try
        {
            return await RunOnceAsync(file);
        }
        catch (PuppeteerException e) when (e.InnerException is TimeoutException)
        {
            return await RunOnceAsync(file);
        }
    }

    private async Task<FrontEndRun> RunOnceAsync(string file)
    {
        await jupyter.SetUpAsync();
        JupyterServer server = await ServerAsync();
        await using NotebookPage page = await OpenAsync(server, file);
        await page.RunAllAsync();
        await page.WaitAsync(FrontEndRun.AllDrawn);
        await page.WaitAsync("document.querySelectorAll('.rendered_html .MathJax').length > 0");
        string errors = await page.AskAsync<string>("[...document.querySelectorAll('.output_error, .output_stderr')].map(e => e.textContent).join()");
        int passed = await page.AskAsync<int>("document.querySelectorAll('.check[data-outcome=passed]').length");
        bool triangles = await page.AskAsync<bool>("[...document.querySelectorAll('.rendered_html summary')].every(s => getComputedStyle(s).display === 'list-item')");
        int figures = await page.FiguresAsync();
        int pictured = await page.AskAsync<int>("[...document.querySelectorAll('figure.plot')].filter(f => [...f.querySelectorAll('.plot-drawing img')].some(i => i.complete && i.naturalWidth > 0 && i.alt.length > 20)).length");
        IReadOnlyList<string> still = await StillControlsAsync(page);
        if (Environment.GetEnvironmentVariable(Photographs) == "1")
            await PhotographAsync(page, file);
        await page.SaveAsync();
        await page.EndKernelAsync();
        return new FrontEndRun(errors, passed, triangles, figures, pictured, still, [.. page.RequestsElsewhere(server)], SavedNotebook.Read(Path.Combine(Lessons, file)));
    }

    /// <summary>Each control is moved by its arrow key; what it does not say or draw anew is listed.</summary>
    private static async Task<IReadOnlyList<string>> StillControlsAsync(NotebookPage page)
    {
        var still = new List<string>();
        foreach (IElementHandle control in await page.Tab.Page.QuerySelectorAllAsync(".plot-control input[type=range]"))
        {
            Task<string> Said() => control.EvaluateFunctionAsync<string>("c => c.getAttribute('aria-valuetext') + c.closest('.plot-control').querySelector('output').textContent");
            Task<string> Drawn() => control.EvaluateFunctionAsync<string>("c => c.closest('figure').querySelector('.js-plotly-plot, .picture > .plot-drawing').innerHTML");
            (string said, string drawn) = (await Said(), await Drawn());

            await control.FocusAsync();
            await control.PressAsync(await control.EvaluateFunctionAsync<bool>("c => c.value === c.max") ? "ArrowLeft" : "ArrowRight");

            if (said == await Said())
                still.Add(said);
            await page.Tab.Page.WaitForFunctionAsync("(c, before) => c.closest('figure').querySelector('.js-plotly-plot, .picture > .plot-drawing').innerHTML !== before", new WaitForFunctionOptions { Timeout = 60_000 }, control, drawn);
        }
        return still;
    }

    /// <summary>Each figure of the lesson, its control moved by one, in artifacts/jupyter.</summary>
    private static async Task PhotographAsync(NotebookPage page, string file)
    {
        string folder = Directory.CreateDirectory(FlapAero.Tests.RepositoryRoot.Path("artifacts/jupyter")).FullName;
        string name = Path.Combine(folder, Path.GetFileNameWithoutExtension(file));
        foreach (IElementHandle figure in await page.Tab.Page.QuerySelectorAllAsync("figure.plot"))
        {
            string id = await figure.EvaluateFunctionAsync<string>("f => (f.scrollIntoView({ block: 'center' }), f.id)");
            await page.Tab.Page.ScreenshotAsync($"{name}-{id}.png");
        }
    }
}

/// <summary>One after the other: while eight kernels start, the server answers nobody else.</summary>
[CollectionDefinition]
public sealed class UsersOfTheServer;

/// <summary>What a lesson showed in the browser, and what Jupyter saved of it.</summary>
internal sealed record FrontEndRun(
    string Errors, int ChecksPassed, bool HintsHaveTriangles, int Figures, int Pictured, IReadOnlyList<string> StillControls,
    IReadOnlyList<string> RequestsElsewhere, SavedNotebook Saved)
{
    /// <summary>Only what is near is drawn, so it looks at one after the other.</summary>
    public const string AllDrawn =
        "[...document.querySelectorAll('figure.plot:not(.picture)')].every(f => f.querySelector('.js-plotly-plot svg.main-svg') || (f.scrollIntoView({ block: 'center' }), false))";
}
