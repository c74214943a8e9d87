using System.Globalization;
using FlapAero.Cli;
using FlapAero.Tests;

namespace FlapAero.Jupyter.Tests;

/// <summary>The lessons in a browser, on a real Jupyter server, with nothing reachable but loopback.</summary>
[Collection<UsersOfTheServer>]
[Trait("Speed", "slow")]
public sealed class FrontEndTests(InstalledJupyter jupyter)
{
    private const string AllPictured =
        "[...document.querySelectorAll('figure.plot .plot-drawing img')].every(i => i.complete && i.naturalWidth > 0 && i.offsetWidth > 0 && i.alt.length > 20)";

    /// <summary>
    /// Each third lesson is opened again later, among them those of pictures, of moving figures and of both: how saved figures come alive, or stay still,
    /// is the same in all, and that each has its still picture is seen in the run.
    /// </summary>
    private static readonly IReadOnlyList<string> OpenedAgain = [.. TwoEngineTests.Files.Where((_, at) => at % 3 == 2)];

    [Theory]
    [MemberData(nameof(TwoEngineTests.Lessons), MemberType = typeof(TwoEngineTests))]
    public async Task Lesson_OpenedAndRunOffline_ShowsEverythingNowAndLater(string file)
    {
        FrontEndRun run = await jupyter.FrontEnd.RunAsync(file);

        Assert.Equal("", run.Errors);
        Assert.True(run.ChecksPassed > 0);
        // Classic Notebook takes the triangle away, without which nobody sees that a hint opens.
        Assert.True(run.HintsHaveTriangles);
        Assert.True(run.Figures > 0);
        Assert.Equal(run.Figures, run.Pictured);
        Assert.Empty(run.StillControls);
        Assert.Empty(run.RequestsElsewhere);
        Machine.AssertNotIn(run.Saved.Text, jupyter.Checkout, jupyter.Data);
        Assert.Equal(2, run.Saved.Text.Split("function drawFigures(bringPlotly)").Length);

        await AssertIsPutRightAsync(file);

        if (!OpenedAgain.Contains(file))
            return;
        // Later, where the kernel is gone: for the one who ran it, and for one who got the file and does not trust it.
        await Task.WhenAll(
            AssertShowsWithoutKernelAsync(file, await jupyter.FrontEnd.WithoutKernelAsync(), FrontEndRun.AllDrawn, run.Figures),
            AssertShowsWithoutKernelAsync(file, await jupyter.FrontEnd.OfSomeoneElseAsync(), AllPictured, run.Figures));
    }

    /// <summary>An author who ran and saved a lesson gets back, by the command check, what the repository stores.</summary>
    private async Task AssertIsPutRightAsync(string file)
    {
        string copy = Path.Combine(Directory.CreateDirectory(Path.Combine(jupyter.Checkout, "put right")).FullName, file);
        File.Copy(Path.Combine(jupyter.FrontEnd.Lessons, file), copy);
        using StringWriter output = new(), error = new();
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

        int code = await CommandLine.RunAsync(["check", "--fix", copy], output, error, jupyter.Checkout, TestContext.Current.CancellationToken);

        Assert.True(code == ExitCode.Done, error.ToString());
        Assert.Equal(await File.ReadAllTextAsync(RepositoryRoot.Path("notebooks/" + file)), await File.ReadAllTextAsync(copy));
    }

    private async Task AssertShowsWithoutKernelAsync(string file, JupyterServer server, string shown, int figures)
    {
        await using NotebookPage page = await jupyter.FrontEnd.OpenAsync(server, file);
        await page.WaitAsync($"{shown} && document.querySelectorAll('.check[data-outcome], .check').length > 0");
        Assert.Equal(figures, await page.FiguresAsync());
        Assert.True(await page.AskAsync<bool>("!(Jupyter.notebook.kernel && Jupyter.notebook.kernel.is_connected())"));
        Assert.Empty(page.RequestsElsewhere(server));
    }
}
