using System.Collections.Concurrent;
using System.Text.Json;
using PuppeteerSharp;

namespace FlapAero.Handouts.Tests;

/// <summary>One tab and what it complained of or asked for, which the browser tells at any time: what is read is what was told until then.</summary>
public sealed class Tab : IAsyncDisposable
{
    private readonly IBrowserContext? _own;

    /// <summary>A tab, and the browser context that closes with it if it has one of its own.</summary>
    public Tab(IPage page, IBrowserContext? own)
    {
        (Page, _own) = (page, own);
        page.Console += (_, e) =>
        {
            if (e.Message.Type is ConsoleType.Error or ConsoleType.Warning)
                Complaints.Enqueue("console: " + e.Message.Text);
        };
        page.PageError += (_, e) => Complaints.Enqueue("error: " + e.Message);
        page.RequestFailed += (_, e) => Complaints.Enqueue("failed: " + e.Request.Url);
        page.Request += (_, e) => Requests.Enqueue(e.Request.Url);
    }

    public IPage Page { get; }

    public ConcurrentQueue<string> Complaints { get; } = [];

    public ConcurrentQueue<string> Requests { get; } = [];

    public Task<T> AskAsync<T>(string expression) => Page.EvaluateExpressionAsync<T>(expression);

    /// <summary>Opens what folds a figure away, as a reader does who has made a prediction.</summary>
    public Task OpenFiguresFoldsAsync() =>
        AskAsync<JsonElement?>("(document.querySelectorAll('details:has(figure.plot)').forEach(fold => fold.open = true), null)");

    /// <summary>Looks at each figure that is not folded away, since only what is near is drawn, and goes back to the top.</summary>
    public async Task WaitForFiguresAsync()
    {
        await Page.WaitForFunctionAsync("""
            () => {
              const still = [...document.querySelectorAll('figure.plot:not(.picture)')].find(f => f.checkVisibility() && !f.querySelector('.js-plotly-plot svg.main-svg'));
              if (still) still.scrollIntoView({ block: 'center' });
              return !still;
            }
            """);
        await AskAsync<JsonElement?>("(scrollTo(0, 0), null)");
    }

    public async ValueTask DisposeAsync() => await (_own?.CloseAsync() ?? Page.CloseAsync());
}
