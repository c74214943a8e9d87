using FlapAero.Handouts.Printing;

namespace FlapAero.Lessons.Tests;

/// <summary>One browser for all lessons that are printed; tests are skipped where there is none, except in CI.</summary>
public sealed class PrinterOfLessons : IAsyncLifetime
{
    private PdfPrinter? _printer;
    private string _missing = "";

    public async ValueTask InitializeAsync()
    {
        try
        {
            _printer = await PdfPrinter.StartAsync(TestContext.Current.CancellationToken);
        }
        catch (BrowserMissingException e) when (Environment.GetEnvironmentVariable("CI") != "true")
        {
            _missing = e.Message;
        }
    }

    public ValueTask DisposeAsync() => _printer?.DisposeAsync() ?? ValueTask.CompletedTask;

    public Task<byte[]> PrintAsync(string page, Paper paper)
    {
        Assert.SkipWhen(_printer is null, _missing);
        return _printer!.PrintAsync(page, paper, TestContext.Current.CancellationToken);
    }
}
