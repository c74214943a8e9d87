using FlapAero.Handouts.Tests;
using PuppeteerSharp;
using Browser = FlapAero.Handouts.Tests.Browser;

namespace FlapAero.Jupyter.Tests;

/// <summary>A notebook open in the browser, as Jupyter Notebook 6 shows it.</summary>
internal sealed class NotebookPage : IAsyncDisposable
{
    // The first cell of a kernel compiles for seconds; a shared machine makes that a minute.
    private static readonly WaitForFunctionOptions Patient = new() { Timeout = 300_000, PollingInterval = 50 };

    private readonly Tab _tab;

    private NotebookPage(Tab tab) => _tab = tab;

    public Tab Tab => _tab;

    public static async Task<NotebookPage> OpenAsync(Browser browser, JupyterServer server, string file)
    {
        Tab tab = await browser.OpenAsync(new Uri(server.Address, "notebooks/" + file).ToString(), 1280, 900, isOnLoopback: true);
        var page = new NotebookPage(tab);
        await page.WaitAsync("window.Jupyter && Jupyter.notebook && Jupyter.notebook._fully_loaded");
        return page;
    }

    public Task WaitForKernelAsync() =>
        WaitAsync("Jupyter.notebook.kernel && Jupyter.notebook.kernel.is_connected() && Jupyter.notebook.kernel.info_reply.status");

    public async Task RunAllAsync()
    {
        await WaitForKernelAsync();
        await _tab.Page.EvaluateExpressionAsync("Jupyter.notebook.clear_all_output(), Jupyter.notebook.execute_all_cells()");
        await WaitForIdleAsync();
    }

    public Task WaitForIdleAsync() => WaitAsync(
        "!Jupyter.notebook.kernel_busy && Jupyter.notebook.get_cells().every(c => c.cell_type !== 'code' || typeof c.input_prompt_number === 'number')");

    public Task WaitAsync(string condition) => _tab.Page.WaitForFunctionAsync($"() => {condition}", Patient);

    public Task<T> AskAsync<T>(string expression) => _tab.AskAsync<T>(expression);

    public Task SaveAsync() => _tab.Page.EvaluateFunctionAsync("async () => { await Jupyter.notebook.save_notebook(); }");

    public Task<int> FiguresAsync() => AskAsync<int>("document.querySelectorAll('figure.plot').length");

    /// <summary>Else each lesson's kernel would live as long as the server.</summary>
    public Task EndKernelAsync() => _tab.Page.EvaluateFunctionAsync("() => new Promise((done, failed) => Jupyter.notebook.session.delete(done, failed))");

    /// <summary>Everything that the page asked for elsewhere than from the server on loopback.</summary>
    public IEnumerable<string> RequestsElsewhere(JupyterServer server) => _tab.Requests
        .Where(address => !address.StartsWith(server.Address.ToString(), StringComparison.Ordinal)
            && address != "about:blank" && !address.StartsWith("data:", StringComparison.Ordinal) && !address.StartsWith("blob:", StringComparison.Ordinal));

    public ValueTask DisposeAsync() => _tab.DisposeAsync();
}
