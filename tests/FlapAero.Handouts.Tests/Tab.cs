using PuppeteerSharp;

namespace FlapAero.Handouts.Tests;

/// <summary>One tab and what it complained of or asked for.</summary>
public sealed class Tab : IAsyncDisposable
{
    public Tab(IPage page)
    {
        Page = page;
        page.Console += (_, e) =>
        {
            if (e.Message.Type is ConsoleType.Error or ConsoleType.Warning)
                Complaints.Add("console: " + e.Message.Text);
        };
        page.PageError += (_, e) => Complaints.Add("error: " + e.Message);
        page.RequestFailed += (_, e) => Complaints.Add("failed: " + e.Request.Url);
        page.Request += (_, e) => Requests.Add(e.Request.Url);
    }

    public IPage Page { get; }

    public List<string> Complaints { get; } = [];

    public List<string> Requests { get; } = [];

    public Task<T> AskAsync<T>(string expression) => Page.EvaluateExpressionAsync<T>(expression);

    public Task WaitForFiguresAsync() => Page.WaitForFunctionAsync(
        "() => [...document.querySelectorAll('figure.plot')].every(f => f.querySelector('.js-plotly-plot svg.main-svg'))");

    public ValueTask DisposeAsync() => Page.DisposeAsync();
}
