using FlapAero.Handouts.Printing;

namespace FlapAero.Tests;

/// <summary>One browser for all pages that a class of tests prints; tests are skipped where there is none, except in CI.</summary>
public sealed class Printer : IAsyncLifetime
{
    private PdfPrinter? _printer;
    private string _missing = "";

    public async ValueTask InitializeAsync()
    {
        try
        {
            _printer = await StartAsync();
        }
        catch (BrowserMissingException e) when (Environment.GetEnvironmentVariable("CI") != "true")
        {
            _missing = e.Message;
        }
    }

    public ValueTask DisposeAsync() => _printer?.DisposeAsync() ?? ValueTask.CompletedTask;

    /// <summary>A browser of a test's own.</summary>
    public async Task<PdfPrinter> AnotherAsync()
    {
        Assert.SkipWhen(_printer is null, _missing);
        return await StartAsync();
    }

    public Task<byte[]> PrintAsync(string page, Paper paper)
    {
        Assert.SkipWhen(_printer is null, _missing);
        return _printer!.PrintAsync(page, paper, TestContext.Current.CancellationToken);
    }

    private static Task<PdfPrinter> StartAsync() => PdfPrinter.StartAsync(TestContext.Current.CancellationToken);
}
