using PuppeteerSharp;

namespace FlapAero.Handouts.Tests;

/// <summary>An installed Chromium, Chrome or Edge, started once, when the first page is opened; tests are skipped where there is none, except in CI.</summary>
public sealed class Browser : IAsyncDisposable
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge", "msedge", "chrome"];

    private readonly Lazy<Task<IBrowser?>> _browser = new(StartAsync);

    public async ValueTask DisposeAsync()
    {
        if (_browser.IsValueCreated && await _browser.Value is { } browser)
            await browser.DisposeAsync();
    }

    /// <summary>
    /// A fresh tab in a window of its own, for a browser does not draw what another tab covers. A page from the disk keeps what it keeps for itself;
    /// pages of a server share what they fetched. It is offline, but for loopback if asked, and keeps a list of everything that went wrong or out.
    /// </summary>
    public async Task<Tab> OpenAsync(string address, int width, int height = 720, bool isOnLoopback = false)
    {
        IBrowser? browser = await _browser.Value;
        if (browser is null)
        {
            const string Missing = "no Chromium, Chrome or Edge found";
            if (Environment.GetEnvironmentVariable("CI") == "true")
                Assert.Fail(Missing + "; CI needs one");
            Assert.Skip(Missing);
        }
        (IPage page, IBrowserContext? own) = await NewPageAsync(browser, isAlone: !isOnLoopback);
        // On a shared machine seconds become a minute.
        page.DefaultTimeout = page.DefaultNavigationTimeout = 120_000;
        var tab = new Tab(page, own);
        await page.SetOfflineModeAsync(!isOnLoopback);
        await page.SetViewportAsync(new ViewPortOptions { Width = width, Height = height });
        await page.GoToAsync(address);
        return tab;
    }

    /// <summary>
    /// While it puts the tab before away, a browser now and then answers that it does not know the session: nothing that a page can do, so it is
    /// asked again.
    /// </summary>
    private static async Task<(IPage Page, IBrowserContext? Own)> NewPageAsync(IBrowser browser, bool isAlone)
    {
        for (int attempt = 1; ; attempt++)
        {
            try
            {
                IBrowserContext? own = isAlone ? await browser.CreateBrowserContextAsync() : null;
                return (await (own ?? browser.DefaultContext).NewPageAsync(new CreatePageOptions { Type = CreatePageType.Window }), own);
            }
            catch (PuppeteerException) when (attempt < 3)
            {
                await Task.Delay(TimeSpan.FromSeconds(attempt));
            }
        }
    }

    private static async Task<IBrowser?> StartAsync()
    {
        if (Find() is not { } path)
            return null;
        return await Puppeteer.LaunchAsync(new LaunchOptions
        {
            ExecutablePath = path,
            Headless = true,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--no-first-run",
                "--proxy-server=127.0.0.1:9"],
        });
    }

    private static string? Find()
    {
        if (Environment.GetEnvironmentVariable("CHROME") is { Length: > 0 } named)
            return named;
        string[] folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        string ending = OperatingSystem.IsWindows() ? ".exe" : "";
        IEnumerable<string> places = Names.SelectMany(name => folders.Select(folder => Path.Combine(folder, name + ending)));
        foreach (Environment.SpecialFolder programs in new[] { Environment.SpecialFolder.ProgramFiles, Environment.SpecialFolder.ProgramFilesX86 })
            if (Environment.GetFolderPath(programs) is { Length: > 0 } root)
                places = places.Append(Path.Combine(root, "Google", "Chrome", "Application", "chrome.exe")).Append(Path.Combine(root, "Microsoft", "Edge", "Application", "msedge.exe"));
        return places.FirstOrDefault(File.Exists);
    }
}
