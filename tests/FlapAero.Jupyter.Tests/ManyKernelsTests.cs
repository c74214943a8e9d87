namespace FlapAero.Jupyter.Tests;

/// <summary>A class opens its notebooks in the same minute.</summary>
[Trait("Speed", "slow")]
public sealed class ManyKernelsTests(InstalledJupyter jupyter)
{
    private const int Students = 8;

    [Fact]
    public async Task Kernels_EightStartedAtOnce_AllAnswer()
    {
        // Set up before: else the first of them would do it while the others wait.
        await jupyter.SetUpAsync();
        string[] notebooks = [.. Enumerable.Range(1, Students).Select(n => Path.Combine(jupyter.Checkout, FormattableString.Invariant($"student-{n}.ipynb")))];
        foreach (string notebook in notebooks)
            await File.WriteAllTextAsync(notebook, Notebooks.Of(("answer", "(6 * 7).ToString()")), TestContext.Current.CancellationToken);

        SavedNotebook[] saved = await Task.WhenAll(notebooks.Select(notebook => jupyter.RunAsync(notebook)));

        Assert.All(saved, notebook => Assert.Equal("42", Assert.Single(notebook.Outputs["answer"]).Text));
    }
}
