namespace FlapAero.Cli.Tests;

public sealed class NewCommandTests : IDisposable
{
    private readonly HandoutsFolder _folder = new();

    private string Notebooks => Path.Combine(_folder.Root, "notebooks");

    public void Dispose() => _folder.Dispose();

    [Fact, Trait("Speed", "slow")]
    public async Task New_Lesson_PassesCheckAndItsHandoutsAreMadeInAllEditions()
    {
        Assert.Equal(0, await RunAsync("new", "lesson", "A wind across, and why", "--number", "7"));
        Assert.Contains("07-a-wind-across-and-why.ipynb is written", _folder.Output.ToString(), StringComparison.Ordinal);

        Assert.Equal(0, await RunAsync("check"));
        Assert.Equal("", _folder.Error.ToString());
        Assert.Equal(0, await RunAsync("handouts"));
        Assert.Equal(0, await RunAsync("check", "--run"));

        Assert.Equal("", _folder.Error.ToString());
        Assert.Equal(
            ["07-a-wind-across-and-why.html", "07-a-wind-across-and-why.instructor.html", "07-a-wind-across-and-why.ipynb", "07-a-wind-across-and-why.key.html",
                "07-a-wind-across-and-why.sheet-1.html", "07-a-wind-across-and-why.sheet-1.key.html", "index.html"], _folder.Names());
        Assert.Contains("<h1>A wind across, and why</h1>", File.ReadAllText(Path.Combine(_folder.Pages, "07-a-wind-across-and-why.html")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task New_LessonsWithoutANumber_CountOn()
    {
        Assert.Equal(0, await RunAsync("new", "lesson", "First of all"));
        Assert.Equal(0, await RunAsync("new", "lesson", "Sources"));

        Assert.Equal(["01-first-of-all.ipynb", "02-sources.ipynb"], _folder.Names(Notebooks));
        Assert.Equal(0, await RunAsync("check"));
    }

    [Theory]
    [InlineData(2, "\"A*\"; allowed are", "A*")]
    [InlineData(2, "\"\"; allowed are", " ")]
    [InlineData(2, "--number is \"100\"; allowed is", "A good title", "--number", "100")]
    [InlineData(1, "Lesson 4 is there already: 04-taken.ipynb", "A good title", "--number", "4")]
    [InlineData(1, "of that name is there already: 04-taken.ipynb", "Taken")]
    [InlineData(1, "does not exist; name one with --notebooks", "A good title", "--notebooks", "nowhere")]
    public async Task New_WhatCannotBe_IsRefusedInOneLineAndNothingIsWritten(int code, string words, params string[] arguments)
    {
        File.WriteAllText(Path.Combine(Notebooks, "04-taken.ipynb"), "");

        Assert.Equal(code, await RunAsync(["new", "lesson", .. arguments]));

        Assert.Contains(words, _folder.Error.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", _folder.Error.ToString(), StringComparison.Ordinal);
        Assert.Equal(["04-taken.ipynb"], _folder.Names(Notebooks));
    }

    private Task<int> RunAsync(params string[] arguments)
    {
        _folder.Output.GetStringBuilder().Clear();
        _folder.Error.GetStringBuilder().Clear();
        return CommandLine.RunAsync(arguments, _folder.Output, _folder.Error, _folder.Root, TestContext.Current.CancellationToken);
    }
}
