using System.Globalization;
using System.Text.Json;
using PuppeteerSharp;

namespace FlapAero.Benchmarks;

/// <summary>How long a page keeps its reader waiting: the longest tasks of a browser's main thread while it is read.</summary>
internal static class PageTimes
{
    private const int Screen = 720;

    /// <summary>Browsers tell of tasks from 50 ms on.</summary>
    private const string Watch = """
        window.tasks = [];
        new PerformanceObserver((list) => { for (const task of list.getEntries()) window.tasks.push(task.duration); })
          .observe({ type: "longtask", buffered: true });
        """;

    private const string Live = """
        document.querySelectorAll("figure.plot .main-svg:first-child").length + " of " + document.querySelectorAll("figure.plot:not(.picture)").length
        """;

    /// <summary>Opens the page, reads it from its top to its end and moves each control with the arrow keys.</summary>
    /// <param name="file">The page.</param>
    /// <param name="slower">How many times slower than this machine the reader's is.</param>
    /// <param name="output">Where the times go.</param>
    /// <param name="error">Where it says that there is no such page.</param>
    internal static async Task<int> PrintAsync(string file, double slower, TextWriter output, TextWriter error)
    {
        if (!File.Exists(file))
        {
            await error.WriteLineAsync($"There is no page {file}.");
            return 2;
        }
        await using IBrowser browser = await LaunchAsync();
        await using IPage page = await browser.NewPageAsync();
        await page.SetViewportAsync(new ViewPortOptions { Width = 1280, Height = Screen });
        await page.EmulateCPUThrottlingAsync((decimal)slower);
        await page.EvaluateExpressionOnNewDocumentAsync(Watch);
        await page.GoToAsync(new Uri(Path.GetFullPath(file)).AbsoluteUri);

        await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileName(file)}: {new FileInfo(file).Length:N0} bytes"));
        await PrintAsync(page, "opened", output);
        await ReadAsync(page);
        await PrintAsync(page, "read to its end", output);
        int moved = await MoveAsync(page);
        await PrintAsync(page, string.Create(CultureInfo.InvariantCulture, $"{moved} controls moved"), output);
        return 0;
    }

    /// <summary>An installed browser.</summary>
    internal static Task<IBrowser> LaunchAsync() => Puppeteer.LaunchAsync(new LaunchOptions
    {
        ExecutablePath = Environment.GetEnvironmentVariable("CHROME") is { Length: > 0 } named ? named : OnPath("chromium", "google-chrome", "chrome"),
        Headless = true,
        // A cell takes as long as it takes.
        ProtocolTimeout = 0,
        Args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--no-first-run"],
    });

    /// <summary>With what stands after each prediction opened, screen by screen.</summary>
    private static async Task ReadAsync(IPage page)
    {
        await page.EvaluateExpressionAsync<JsonElement?>("(document.querySelectorAll('details.after').forEach(fold => fold.open = true), null)");
        double before = -1, now = 0;
        for (; now > before; now = await page.EvaluateExpressionAsync<double>($"(scrollBy(0, {Screen / 2}), scrollY)"))
        {
            before = now;
            await Task.Delay(400);
        }
    }

    private static async Task<int> MoveAsync(IPage page)
    {
        IElementHandle[] controls = await page.QuerySelectorAllAsync(".plot-control input[type=range]");
        foreach (IElementHandle control in controls)
        {
            await control.EvaluateFunctionAsync<JsonElement?>("c => { c.scrollIntoView({ block: 'center' }); c.focus(); return null; }");
            await Task.Delay(400);
            foreach (string key in (string[])["Home", "ArrowRight", "ArrowRight", "ArrowRight", "End", "ArrowLeft", "ArrowLeft"])
            {
                await page.Keyboard.PressAsync(key);
                await Task.Delay(100);
            }
        }
        return controls.Length;
    }

    /// <summary>What was long since the last time.</summary>
    private static async Task PrintAsync(IPage page, string done, TextWriter output)
    {
        await Task.Delay(1500);
        double[] tasks = await page.EvaluateExpressionAsync<double[]>("window.tasks.splice(0)");
        string longest = tasks.Length == 0 ? "no task of 50 ms or more"
            : string.Join(", ", tasks.OrderDescending().Take(8).Select(task => task.ToString("0", CultureInfo.InvariantCulture))) + " ms";
        string live = await page.EvaluateExpressionAsync<string>(Live);
        await output.WriteLineAsync($"  {done}, {live} figures live: {longest}");
    }

    private static string OnPath(params string[] names) => names
        .SelectMany(name => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(folder => Path.Combine(folder, name)))
        .FirstOrDefault(File.Exists) ?? throw new FileNotFoundException("No Chromium is on the path; name one in CHROME.");
}
