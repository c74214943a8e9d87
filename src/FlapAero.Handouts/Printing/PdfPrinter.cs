using System.Globalization;
using FlapAero.Handouts.Leaks;
using FlapAero.Handouts.Pages;
using PuppeteerSharp;
using PuppeteerSharp.Media;

namespace FlapAero.Handouts.Printing;

/// <summary>
/// Prints pages to PDF with an installed browser: tagged, outlined, numbered, without a network, the same bytes every time.
/// One browser process prints any number of pages, one after the other; not for use from several threads.
/// </summary>
/// <example><code>
/// await using PdfPrinter printer = await PdfPrinter.StartAsync(cancellationToken);
/// byte[] pdf = await printer.PrintAsync(html, Paper.A4, cancellationToken);
/// </code></example>
public sealed class PdfPrinter : IAsyncDisposable
{
    private const string Margin = "15mm";

    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(60);

    private readonly IBrowser _browser;

    private PdfPrinter(IBrowser browser, string version)
    {
        _browser = browser;
        Version = version;
    }

    /// <summary>The browser's name and version: another one may print other bytes.</summary>
    public string Version { get; }

    /// <summary>Starts the browser.</summary>
    /// <param name="cancellationToken">Gives up waiting for it.</param>
    /// <returns>The printer; dispose it, which ends the browser.</returns>
    /// <exception cref="BrowserMissingException">No browser is installed.</exception>
    /// <exception cref="HandoutException">The browser does not start.</exception>
    public static Task<PdfPrinter> StartAsync(CancellationToken cancellationToken) => StartAsync(InstalledBrowser.Find(), cancellationToken);

    internal static async Task<PdfPrinter> StartAsync(string path, CancellationToken cancellationToken)
    {
        var options = new LaunchOptions
        {
            ExecutablePath = path,
            Headless = true,
            // Over a pipe the browser ends with this process, however that ends, and listens on no port.
            Pipe = !OperatingSystem.IsWindows(),
            Timeout = (int)Limit.TotalMilliseconds,
            Args =
            [
                "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run",
                "--no-default-browser-check", "--host-resolver-rules=\"MAP * ~NOTFOUND\"", "--user-agent=FlapAero", "--lang=en",
                // Chromium refuses to run sandboxed for root, who has nothing to gain from it here: pages fetch nothing and run no script.
                .. !OperatingSystem.IsWindows() && Environment.IsPrivilegedProcess ? ["--no-sandbox"] : Array.Empty<string>(),
            ],
        };
        try
        {
            IBrowser browser = await Puppeteer.LaunchAsync(options).WaitAsync(Limit, cancellationToken).ConfigureAwait(false);
            return new PdfPrinter(browser, await browser.GetVersionAsync().WaitAsync(Limit, cancellationToken).ConfigureAwait(false));
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            throw new HandoutException($"The browser {path} does not start, so nothing can be printed: {LastLine(e)} Another can be named in the variable {InstalledBrowser.Variable}.", e);
        }
    }

    /// <summary>Prints a page. Its scripts do not run, and links to other files are dropped: they would hold this machine's folders.</summary>
    /// <param name="html">The whole page; its <c>@page</c> rule decides the paper where it has one.</param>
    /// <param name="paper">The paper where the page does not say.</param>
    /// <param name="cancellationToken">Gives up waiting for it.</param>
    /// <returns>The PDF's bytes.</returns>
    /// <exception cref="HandoutException">The browser ended, or took longer than a minute.</exception>
    public async Task<byte[]> PrintAsync(string html, Paper paper, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(html);
        try
        {
            byte[] pdf = await PrintInTabAsync(ArtefactText.WithoutScripts(html), paper).WaitAsync(Limit, cancellationToken).ConfigureAwait(false);
            PdfDates.Fix(pdf);
            return pdf;
        }
        catch (TimeoutException e)
        {
            throw new HandoutException(string.Create(CultureInfo.InvariantCulture, $"The browser did not print a page within {Limit.TotalSeconds:0} s; the machine may be busy: try again."), e);
        }
        catch (Exception e) when (e is PuppeteerException or IOException or ObjectDisposedException or InvalidOperationException)
        {
            throw new HandoutException($"The browser ended while it was printing: {LastLine(e)} Try again, or name another in the variable {InstalledBrowser.Variable}.", e);
        }
    }

    /// <summary>Ends the browser.</summary>
    public async ValueTask DisposeAsync()
    {
        try
        {
            await _browser.CloseAsync().WaitAsync(TimeSpan.FromSeconds(5)).ConfigureAwait(false);
        }
        catch (Exception e) when (e is PuppeteerException or TimeoutException or IOException)
        {
            if (_browser.Process is { HasExited: false } process)
                process.Kill(entireProcessTree: true);
        }
    }

    private async Task<byte[]> PrintInTabAsync(string html, Paper paper)
    {
        await using IPage page = await _browser.NewPageAsync().ConfigureAwait(false);
        await page.SetOfflineModeAsync(true).ConfigureAwait(false);
        await page.SetJavaScriptEnabledAsync(false).ConfigureAwait(false);
        await page.SetContentAsync(html, new SetContentOptions { Timeout = (int)Limit.TotalMilliseconds }).ConfigureAwait(false);
        // The browser has read the page: what is different on paper is changed there.
        await page.EvaluateFunctionAsync(Assets.Print).ConfigureAwait(false);
        return await page.PdfDataAsync(new PdfOptions
        {
            Format = paper == Paper.A4 ? PaperFormat.A4 : PaperFormat.Letter,
            PreferCSSPageSize = true,
            MarginOptions = new MarginOptions { Top = Margin, Bottom = Margin, Left = Margin, Right = Margin },
            PrintBackground = true,
            Tagged = true,
            Outline = true,
        }).ConfigureAwait(false);
    }

    /// <summary>A browser's last line says why; those before are its warnings.</summary>
    private static string LastLine(Exception e) =>
        e.Message.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).LastOrDefault("it gives no reason").TrimEnd('.') + ".";
}
