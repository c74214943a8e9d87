using FlapAero.Handouts.Tests;
using FlapAero.Tests;

namespace FlapAero.Jupyter.Tests;

/// <summary>The lessons in a browser, on a real Jupyter server, with nothing reachable but loopback.</summary>
public sealed class FrontEndTests(InstalledJupyter jupyter, Browser browser) : IClassFixture<Browser>
{
    [Theory]
    [MemberData(nameof(TwoEngineTests.Lessons), MemberType = typeof(TwoEngineTests))]
    public async Task Lesson_OpenedAndRunOffline_ShowsEverythingAndSavesNothingOfTheMachine(string file)
    {
        await jupyter.SetUpAsync();
        string saved = Path.Combine(jupyter.Notebooks, file);
        await using JupyterServer server = await JupyterServer.StartAsync(jupyter, jupyter.Notebooks, jupyter.Data);
        await using (NotebookPage page = await NotebookPage.OpenAsync(browser, server, file))
        {
            await page.RunAllAsync();
            await AssertShowsEverythingAsync(page);
            await PhotographAsync(page, file, "run");
            await page.SaveAsync();
            Assert.Empty(page.RequestsElsewhere(server));
        }
        Machine.AssertNotIn(await File.ReadAllTextAsync(saved, TestContext.Current.CancellationToken), jupyter.Checkout, jupyter.Data);
    }

    private static async Task AssertShowsEverythingAsync(NotebookPage page)
    {
        Assert.Equal("", await page.AskAsync<string>("[...document.querySelectorAll('.output_error, .output_stderr')].map(e => e.textContent).join()"));
        Assert.True(await page.AskAsync<int>("document.querySelectorAll('.check[data-outcome=passed]').length") > 0);
        Assert.True(await page.AskAsync<int>("document.querySelectorAll('figure.plot').length") > 0);
    }

    private static Task PhotographAsync(NotebookPage page, string file, string what)
    {
        string folder = Directory.CreateDirectory(RepositoryRoot.Path("artifacts/jupyter")).FullName;
        return page.Tab.Page.ScreenshotAsync(Path.Combine(folder, $"{Path.GetFileNameWithoutExtension(file)}-{what}.png"));
    }
}
