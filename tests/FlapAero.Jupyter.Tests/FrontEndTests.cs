using FlapAero.Tests;
using PuppeteerSharp;
using Browser = FlapAero.Handouts.Tests.Browser;

namespace FlapAero.Jupyter.Tests;

/// <summary>The lessons in a browser, on a real Jupyter server, with nothing reachable but loopback.</summary>
public sealed class FrontEndTests(InstalledJupyter jupyter, Browser browser) : IClassFixture<Browser>
{
    private const string AllDrawn =
        "[...document.querySelectorAll('figure.plot')].every(f => f.querySelector('.js-plotly-plot svg.main-svg'))";

    private const string AllPictured =
        "[...document.querySelectorAll('figure.plot .plot-drawing img')].every(i => i.complete && i.naturalWidth > 0 && i.offsetWidth > 0 && i.alt.length > 20)";

    [Theory]
    [MemberData(nameof(TwoEngineTests.Lessons), MemberType = typeof(TwoEngineTests))]
    public async Task Lesson_OpenedAndRunOffline_ShowsEverythingNowAndLater(string file)
    {
        await jupyter.SetUpAsync();
        int figures;
        await using (JupyterServer server = await JupyterServer.StartAsync(jupyter, jupyter.Notebooks, jupyter.Data))
        await using (NotebookPage page = await NotebookPage.OpenAsync(browser, server, file))
        {
            await page.RunAllAsync();
            await page.WaitAsync(AllDrawn);
            Assert.Equal("", await page.AskAsync<string>("[...document.querySelectorAll('.output_error, .output_stderr')].map(e => e.textContent).join()"));
            Assert.True(await page.AskAsync<int>("document.querySelectorAll('.check[data-outcome=passed]').length") > 0);
            await page.WaitAsync("document.querySelectorAll('.rendered_html .MathJax').length > 0");
            // Classic Notebook takes the triangle away, without which nobody sees that a hint opens.
            Assert.True(await page.AskAsync<bool>("[...document.querySelectorAll('.rendered_html summary')].every(s => getComputedStyle(s).display === 'list-item')"));
            figures = await FiguresAsync(page);
            Assert.True(figures > 0);
            await AssertControlsMoveAsync(page);
            await PhotographAsync(page, file);
            await page.SaveAsync();
            Assert.Empty(page.RequestsElsewhere(server));
        }
        string saved = await File.ReadAllTextAsync(Path.Combine(jupyter.Notebooks, file), TestContext.Current.CancellationToken);
        Machine.AssertNotIn(saved, jupyter.Checkout, jupyter.Data);
        Assert.Equal(2, saved.Split("drawFigures(library.exports)").Length);

        await AssertIsPutRightAsync(file);

        // Later, where the kernel is gone: for the one who ran it, and for one who got the file and does not trust it.
        await AssertShowsWithoutKernelAsync(file, jupyter.DataWithoutKernels(), AllDrawn, figures);
        await AssertShowsWithoutKernelAsync(file, jupyter.DataOfSomeoneElse(), AllPictured, figures);
    }

    /// <summary>An author who ran and saved a lesson gets back, by the command check, what the repository stores.</summary>
    private async Task AssertIsPutRightAsync(string file)
    {
        string copy = Path.Combine(Directory.CreateDirectory(Path.Combine(jupyter.Checkout, "put right")).FullName, file);
        File.Copy(Path.Combine(jupyter.Notebooks, file), copy);

        ProgramRun run = await InstalledJupyter.RunCommandAsync(jupyter.Checkout, jupyter.German, ["check", "--fix", copy]);

        run.Succeeded();
        Assert.Equal(await File.ReadAllTextAsync(RepositoryRoot.Path("notebooks/" + file)), await File.ReadAllTextAsync(copy));
    }

    private async Task AssertShowsWithoutKernelAsync(string file, string data, string shown, int figures)
    {
        await using JupyterServer server = await JupyterServer.StartAsync(jupyter, jupyter.Notebooks, data);
        await using NotebookPage page = await NotebookPage.OpenAsync(browser, server, file);
        await page.WaitAsync($"{shown} && document.querySelectorAll('.check[data-outcome], .check').length > 0");
        Assert.Equal(figures, await FiguresAsync(page));
        Assert.True(await page.AskAsync<bool>("!(Jupyter.notebook.kernel && Jupyter.notebook.kernel.is_connected())"));
        Assert.Empty(page.RequestsElsewhere(server));
    }

    private static Task<int> FiguresAsync(NotebookPage page) => page.AskAsync<int>("document.querySelectorAll('figure.plot').length");

    /// <summary>Each control by its arrow key: the value is said anew and the drawing is another.</summary>
    private static async Task AssertControlsMoveAsync(NotebookPage page)
    {
        foreach (IElementHandle control in await page.Tab.Page.QuerySelectorAllAsync(".plot-control input[type=range]"))
        {
            Task<string> Said() => control.EvaluateFunctionAsync<string>("c => c.getAttribute('aria-valuetext') + c.closest('.plot-control').querySelector('output').textContent");
            Task<string> Drawn() => control.EvaluateFunctionAsync<string>("c => c.closest('figure').querySelector('.js-plotly-plot').innerHTML");
            (string said, string drawn) = (await Said(), await Drawn());

            await control.FocusAsync();
            await control.PressAsync(await control.EvaluateFunctionAsync<bool>("c => c.value === c.max") ? "ArrowLeft" : "ArrowRight");

            Assert.NotEqual(said, await Said());
            await page.Tab.Page.WaitForFunctionAsync("(c, before) => c.closest('figure').querySelector('.js-plotly-plot').innerHTML !== before", new WaitForFunctionOptions { Timeout = 60_000 }, control, drawn);
        }
    }

    /// <summary>For a person's eyes: each figure of the lesson, its control moved by one, in artifacts.</summary>
    private static async Task PhotographAsync(NotebookPage page, string file)
    {
        string folder = Directory.CreateDirectory(RepositoryRoot.Path("artifacts/jupyter")).FullName;
        string name = Path.Combine(folder, Path.GetFileNameWithoutExtension(file));
        foreach (IElementHandle figure in await page.Tab.Page.QuerySelectorAllAsync("figure.plot"))
        {
            string id = await figure.EvaluateFunctionAsync<string>("f => (f.scrollIntoView({ block: 'center' }), f.id)");
            await page.Tab.Page.ScreenshotAsync($"{name}-{id}.png");
        }
    }
}
