using System.Text.Json;
using FlapAero.Handouts.Tests;

namespace FlapAero.Explorer.Tests;

/// <summary>The names that can stand in a cell, told while it is written; and an engine that is stopped or is not whole.</summary>
public sealed class NamesInPageTests(MadeEngine made, Browser browser)
{
    private const string Lesson = "04-approach-speed", Field = "document.querySelector('.run-code:not(:has(textarea[readonly])) textarea')";
    private const string State = "document.querySelector('.engine-state').textContent";

    private string Address => made.Page(Lesson);

    [Fact]
    public async Task Names_ByKeyboard_AreFilteredExplainedChosenAndUndone()
    {
        await using Tab tab = await browser.OpenAsync(Address, 1280);
        await tab.RunInFirstCellAsync("using FlapAero; using UnitsNet;\nvar approach = Speed.FromKnots(65);");
        await WriteAsync(tab, "approach.");

        await AskForNamesAsync(tab);
        Assert.Contains("Knots", await NamesAsync(tab));
        await tab.Page.Keyboard.TypeAsync("Kno");
        Assert.Equal(["Knots"], await NamesAsync(tab));
        await tab.UntilAsync("document.querySelector('.names code')?.textContent.includes('Speed.Knots') === true");
        Assert.Empty(await tab.AxeViolationsAsync());
        Assert.Equal("Knots", await tab.AskAsync<string>($"document.getElementById({Field}.getAttribute('aria-activedescendant')).firstChild.textContent"));
        await tab.Page.Keyboard.PressAsync("Enter");

        Assert.Equal("approach.Knots", await tab.AskAsync<string>(Field + ".value"));
        Assert.Empty(await NamesAsync(tab));
        await tab.Page.Keyboard.DownAsync("Control");
        await tab.Page.Keyboard.PressAsync("z");
        await tab.Page.Keyboard.UpAsync("Control");
        Assert.Equal("approach.Kno", await tab.AskAsync<string>(Field + ".value"));
    }

    [Fact]
    public async Task Names_OfTheLibrary_SayWhatItsDocCommentSays()
    {
        await using Tab tab = await browser.OpenAsync(Address, 1280);
        Assert.Equal("", await tab.RunInFirstCellAsync("// Names alone.\nusing FlapAero;"));
        await WriteAsync(tab, "Landing.Fly()");
        await tab.AskAsync<JsonElement?>($"({Field}.setSelectionRange(8, 8), null)");

        await AskForNamesAsync(tab);

        // The name in which one stands is the one that is explained.
        await tab.UntilAsync("document.querySelector('.names p + p')?.textContent.includes('setup: ') === true");
        Assert.StartsWith("Outcome<", await tab.AskAsync<string>("document.querySelector('.names code').textContent"), StringComparison.Ordinal);
        await tab.Page.Keyboard.PressAsync("Escape");
        Assert.Empty(await NamesAsync(tab));
        Assert.Equal("Landing.Fly()", await tab.AskAsync<string>(Field + ".value"));
    }

    [Fact]
    public async Task Names_ByTouchOnATelephone_AreChosenAndNothingIsWiderThanIt()
    {
        await using Tab tab = await browser.OpenAsync(Address, 390);
        await tab.RunInFirstCellAsync("var approach = 65;");
        await WriteAsync(tab, "appr");

        await tab.Page.ClickAsync(".run-code:not(:has(textarea[readonly])) [data-do=names]");
        await tab.UntilAsync("document.querySelector('.names li') !== null");
        Assert.Equal(390, await tab.AskAsync<int>("document.documentElement.scrollWidth"));
        await tab.Page.ClickAsync(".names li");

        Assert.Equal("approach", await tab.AskAsync<string>(Field + ".value"));
    }

    /// <summary>While the files come, and at once after it; the engine that was stopped answers nothing more, and a new one runs.</summary>
    [Fact]
    public async Task Stop_WhileTheEngineComes_LeavesAPageThatRuns()
    {
        await using Tab tab = await browser.OpenAsync(Address, 1280);

        await tab.AskAsync<JsonElement?>("(document.querySelector('.run-code [data-do=run]').click(), null)");
        await tab.UntilAsync(State + ".includes('coming')");
        await tab.AskAsync<JsonElement?>("(document.querySelector('[data-do=stop]').click(), null)");
        await tab.UntilAsync(State + ".startsWith('Stopped.')");

        Assert.Equal("42", (await tab.RunInFirstCellAsync("6 * 7")).Trim());
        Assert.Single(tab.Page.Workers);
        Assert.Empty(tab.Complaints);
    }

    [Fact]
    public async Task Run_WithoutACompilerAndThenWithIt_SaysWhatIsMissingAndRuns()
    {
        string folder = Directory.CreateTempSubdirectory("flapaero-part-").FullName;
        try
        {
            foreach (string file in Directory.GetFiles(Path.Combine(made.Folder, "engine")).Where(f => Path.GetFileName(f) != "compiler.js"))
                File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
            await using Tab tab = await browser.OpenAsync(new Uri(Path.Combine(folder, Lesson + ".html")).AbsoluteUri, 1280);

            string without = await tab.RunInFirstCellAsync("6 * 7");
            File.Copy(Path.Combine(made.Folder, "engine", "compiler.js"), Path.Combine(folder, "compiler.js"));
            string with = await tab.RunInFirstCellAsync("6 * 7");

            Assert.Contains("The file compiler.js is not beside this page", without, StringComparison.Ordinal);
            Assert.Equal("42", with.Trim());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Task<string[]> NamesAsync(Tab tab) => tab.AskAsync<string[]>("[...document.querySelectorAll('.names li')].map(item => item.firstChild.textContent)");

    private static Task WriteAsync(Tab tab, string code) => tab.AskAsync<JsonElement?>(
        $"({Field}.focus(), {Field}.value = {JsonSerializer.Serialize(code)}, {Field}.setSelectionRange({code.Length}, {code.Length}), null)");

    private static async Task AskForNamesAsync(Tab tab)
    {
        await tab.Page.Keyboard.DownAsync("Control");
        await tab.Page.Keyboard.PressAsync("Space");
        await tab.Page.Keyboard.UpAsync("Control");
        await tab.UntilAsync("document.querySelector('.names li') !== null");
    }
}
