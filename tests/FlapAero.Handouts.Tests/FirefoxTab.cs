using System.Collections.Concurrent;
using System.Text.Json;
using FlapAero.Handouts.Tests.WebDriver;

namespace FlapAero.Handouts.Tests;

/// <summary>One tab of Firefox and what it complained of or asked for, told at any time as in <see cref="Tab"/>.</summary>
public sealed class FirefoxTab : IAsyncDisposable
{
    private static readonly JsonSerializerOptions Json = JsonSerializerOptions.Web;

    private readonly BidiSession _session;
    private readonly string _context;

    private FirefoxTab(BidiSession session, string context)
    {
        (_session, _context) = (session, context);
        _session.Told += Hear;
    }

    public ConcurrentQueue<string> Complaints { get; } = [];

    public ConcurrentQueue<string> Requests { get; } = [];

    internal static async Task<FirefoxTab> OpenAsync(BidiSession session, string address, int width, int height)
    {
        JsonElement made = await session.SendAsync("browsingContext.create", new { type = "tab" });
        var tab = new FirefoxTab(session, made.GetProperty("context").GetString()!);
        await tab.ResizeAsync(width, height);
        await tab.GoToAsync(address);
        return tab;
    }

    public Task ResizeAsync(int width, int height) =>
        SendAsync("browsingContext.setViewport", new { context = _context, viewport = new { width, height }, devicePixelRatio = 1 });

    public Task GoToAsync(string address) => SendAsync("browsingContext.navigate", new { context = _context, url = address, wait = "complete" });

    public Task ReloadAsync() => SendAsync("browsingContext.reload", new { context = _context, wait = "complete" });

    /// <summary>What an expression of the page's language gives, once it is there.</summary>
    public async Task<T> AskAsync<T>(string expression)
    {
        JsonElement answer = await SendAsync("script.evaluate", new
        {
            expression = $"Promise.resolve({expression}).then(JSON.stringify)",
            target = new { context = _context },
            awaitPromise = true,
        });
        if (answer.GetProperty("type").GetString() == "exception")
            Assert.Fail(answer.GetProperty("exceptionDetails").GetProperty("text").GetString() + " in " + expression);
        JsonElement value = answer.GetProperty("result");
        return value.TryGetProperty("value", out JsonElement text) ? JsonSerializer.Deserialize<T>(text.GetString()!, Json)! : default!;
    }

    public Task DoAsync(string statements) => AskAsync<JsonElement?>($"(() => {{ {statements}; return null; }})()");

    /// <summary>Waits until an expression of the page's language is true.</summary>
    public async Task WaitForAsync(string condition) =>
        Assert.True(
            await AskAsync<bool>($$"""
                new Promise((go) => {
                  const end = performance.now() + 60000;
                  const look = () => ({{condition}}) ? go(true) : performance.now() > end ? go(false) : setTimeout(look, 15);
                  look();
                })
                """),
            condition);

    /// <summary>Sets a preference of the whole browser, as a reader does in its settings; null takes it back.</summary>
    public async Task PreferAsync(string preference, int? value)
    {
        JsonElement windows = await SendAsync("browsingContext.getTree", new Dictionary<string, object> { ["moz:scope"] = "chrome" });
        string window = windows.GetProperty("contexts")[0].GetProperty("context").GetString()!;
        string change = value is { } number ? $"setIntPref('{preference}', {number})" : $"clearUserPref('{preference}')";
        await SendAsync("script.evaluate", new { expression = "Services.prefs." + change, target = new { context = window }, awaitPromise = false });
    }

    /// <summary>The page as it is printed on A4 with its grounds, as a PDF.</summary>
    public async Task<byte[]> PrintAsync()
    {
        JsonElement printed = await SendAsync("browsingContext.print", new { context = _context, background = true, page = new { width = 21.0, height = 29.7 } });
        return printed.GetProperty("data").GetBytesFromBase64();
    }

    /// <summary>Looks at each figure that is not folded away, since only what is near is drawn, and goes back to the top.</summary>
    public async Task WaitForFiguresAsync()
    {
        await WaitForAsync("""
            (() => {
              const still = [...document.querySelectorAll('figure.plot:not(.picture)')].find(f => f.checkVisibility() && !f.querySelector('.js-plotly-plot svg.main-svg'));
              if (still) still.scrollIntoView({ block: 'center' });
              return !still;
            })()
            """);
        await DoAsync("scrollTo(0, 0)");
    }

    /// <summary>Presses and releases keys one after the other, as WebDriver names them: a letter, or a code for a key without one.</summary>
    public Task PressAsync(params IEnumerable<string> keys) =>
        SendAsync("input.performActions", new
        {
            context = _context,
            actions = new[]
            {
                new
                {
                    type = "key",
                    id = "keyboard",
                    actions = keys.SelectMany(value => new[] { new { type = "keyDown", value }, new { type = "keyUp", value } }).ToArray(),
                },
            },
        });

    /// <summary>Types letters into what has the focus.</summary>
    public Task TypeAsync(string text) => PressAsync(text.Select(letter => letter.ToString()));

    public async ValueTask DisposeAsync()
    {
        _session.Told -= Hear;
        await SendAsync("browsingContext.close", new { context = _context });
    }

    private Task<JsonElement> SendAsync(string method, object parameters) => _session.SendAsync(method, parameters);

    private void Hear(string method, JsonElement told)
    {
        if (method == "log.entryAdded")
        {
            bool isHere = told.GetProperty("source").TryGetProperty("context", out JsonElement of) && of.GetString() == _context;
            if (isHere && told.GetProperty("level").GetString() is "error" or "warn")
                Complaints.Enqueue($"{told.GetProperty("type")}: {told.GetProperty("text")}");
        }
        else if (told.TryGetProperty("context", out JsonElement context) && context.GetString() == _context)
        {
            string url = told.GetProperty("request").GetProperty("url").GetString()!;
            if (method == "network.fetchError")
                Complaints.Enqueue("failed: " + url);
            else
                Requests.Enqueue(url);
        }
    }
}
