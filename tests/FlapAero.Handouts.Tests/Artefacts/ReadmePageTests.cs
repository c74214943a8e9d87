using System.Text.Json;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using FlapAero.Handouts.Briefings;
using FlapAero.Handouts.Printing;
using FlapAero.Notebooks;
using FlapAero.Tests;
using PuppeteerSharp;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>
/// The README's pictures of a lesson's page and of the briefing's sheet show what both say today. Pixels differ from machine to machine, so the words of
/// what is shown stand beside each picture. <c>FLAPAERO_README_PICTURES=1</c> in the environment of this test makes both anew.
/// </summary>
[Collection<TestsOfArtefacts>]
[Trait("Speed", "slow")]
public sealed partial class ReadmePageTests(ApproachSpeedArtefacts lesson, Browser browser)
{
    private const string WritesThem = "FLAPAERO_README_PICTURES", Cell = ".cell:has(> #fig-stalling-speed-in-a-level-turn)", Sheet = "main";

    private const int LargestBytes = 150_000;

    [Fact]
    public async Task LessonsPage_OfTheReadme_ShowsWhatThePageSaysToday() =>
        await AssertShowsAsync("lesson-page.png", lesson.Text(ApproachSpeedArtefacts.Student), Cell);

    [Fact]
    public async Task BriefingsSheet_OfTheReadme_ShowsWhatTheSheetSaysToday() => await AssertShowsAsync(
        "briefing-sheet.webp", BriefingPage.ToHtml(BriefingSheet.Of(Briefing.For(DemoBriefings.Flight).Value), Paper.A4), Sheet);

    private async Task AssertShowsAsync(string name, string page, string part)
    {
        string picture = RepositoryRoot.Path("docs/pictures/" + name), words = Path.ChangeExtension(picture, ".txt");
        string said = Words(page, part);
        if (Environment.GetEnvironmentVariable(WritesThem) == "1")
        {
            await PhotographAsync(page, part, picture);
            await File.WriteAllTextAsync(words, said, TestContext.Current.CancellationToken);
        }

        Assert.Equal(said, (await File.ReadAllTextAsync(words, TestContext.Current.CancellationToken)).ReplaceLineEndings("\n"));
        byte[] bytes = await File.ReadAllBytesAsync(picture, TestContext.Current.CancellationToken);
        Assert.InRange(bytes.Length, 10_000, LargestBytes);
    }

    private async Task PhotographAsync(string page, string part, string picture)
    {
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".html");
        await File.WriteAllTextAsync(file, page, TestContext.Current.CancellationToken);
        await using Tab tab = await browser.OpenAsync(new Uri(file).AbsoluteUri, 1100);
        await tab.OpenFiguresFoldsAsync();
        await tab.WaitForFiguresAsync();
        await tab.AskAsync<JsonElement?>("document.fonts.ready.then(() => null)");
        // The caution stays in sight while a reader scrolls, and would lie over the picture.
        await tab.AskAsync<JsonElement?>($"(document.querySelectorAll('.caution').forEach(c => c.style.position = 'static'), null)");
        IElementHandle shown = await tab.Page.QuerySelectorAsync(part);
        await shown.ScreenshotAsync(picture, new ElementScreenshotOptions { Type = picture.EndsWith(".png", StringComparison.Ordinal) ? ScreenshotType.Png : ScreenshotType.Webp });
        File.Delete(file);
    }

    /// <summary>What the part says, a text a line: what only scripts read is no word of it.</summary>
    private static string Words(string page, string part)
    {
        IElement shown = new HtmlParser().ParseDocument(page).QuerySelector(part)!;
        foreach (IElement silent in shown.QuerySelectorAll("script, style").ToArray())
            silent.Remove();
        return string.Join('\n', shown.Descendants<IText>().Select(text => Spaces().Replace(text.Data, " ").Trim()).Where(text => text.Length > 0)) + "\n";
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
