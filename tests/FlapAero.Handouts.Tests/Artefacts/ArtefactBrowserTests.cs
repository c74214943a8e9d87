using System.Text.Json;
using FlapAero.Handouts.Leaks;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;
using PuppeteerSharp.Media;
using UglyToad.PdfPig;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>Every page of the approach-speed lesson in a browser: quiet, readable, usable by keyboard, fit for print.</summary>
[Collection<TestsOfArtefacts>]
[Trait("Speed", "slow")]
public sealed class ArtefactBrowserTests(ApproachSpeedArtefacts lesson, Browser browser)
{
    public static TheoryData<string> Pages =>
    [
        ApproachSpeedArtefacts.Student, ApproachSpeedArtefacts.Instructor, ApproachSpeedArtefacts.Key,
        ApproachSpeedArtefacts.Sheet, ApproachSpeedArtefacts.SheetKey, ApproachSpeedArtefacts.Index,
    ];

    [Theory, MemberData(nameof(Pages))]
    public async Task Page_Offline_IsQuietAndPassesAxe(string name)
    {
        await using Tab tab = await browser.OpenAsync(lesson.Address(name), 1280);
        await tab.WaitForFiguresAsync();
        await tab.AskAsync<JsonElement?>("document.querySelectorAll('details').forEach(d => d.open = true)");
        // Every state of an answer: none, wrong, and words under it.
        await tab.AskAsync<JsonElement?>("document.querySelectorAll('form.try').forEach(f => { const i = f.querySelector('input'); if (i.type === 'text') i.value = '12'; else i.checked = true; f.requestSubmit(); }), new Promise(r => setTimeout(() => r(null), 200))");

        Assert.Empty(await tab.AxeViolationsAsync());
        Assert.Empty(tab.Complaints);
        Assert.All(tab.Requests.Where(r => !r.StartsWith("data:", StringComparison.Ordinal)), r => Assert.Equal(lesson.Address(name), r));
    }

    [Theory]
    [InlineData(ApproachSpeedArtefacts.Student, 320, 1)]
    [InlineData(ApproachSpeedArtefacts.Key, 320, 1)]
    [InlineData(ApproachSpeedArtefacts.Sheet, 320, 1)]
    [InlineData(ApproachSpeedArtefacts.SheetKey, 390, 1)]
    [InlineData(ApproachSpeedArtefacts.Index, 320, 1)]
    [InlineData(ApproachSpeedArtefacts.Student, 1280, 2)]
    [InlineData(ApproachSpeedArtefacts.Sheet, 390, 2)]
    [InlineData(ApproachSpeedArtefacts.Key, 390, 2)]
    public async Task Page_NarrowOrEnlarged_DoesNotScrollSideways(string name, int width, int enlarged)
    {
        await using Tab tab = await browser.OpenAsync(lesson.Address(name), width);

        await tab.DoesNotScrollSidewaysAsync(width, enlarged);
    }

    [Fact]
    public async Task Sheet_ByKeyboard_ReachesEveryFieldInOrderWithVisibleFocus()
    {
        await using Tab tab = await browser.OpenAsync(lesson.Address(ApproachSpeedArtefacts.Sheet), 1280);
        var stops = new List<string>();
        for (int n = 0; n < 80 && !stops.Contains("end"); n++)
        {
            await tab.Page.Keyboard.PressAsync("Tab");
            stops.Add(await tab.AskAsync<string>("""
                (() => {
                  const e = document.activeElement;
                  if (!e || e === document.body) return 'end';
                  const box = e.getBoundingClientRect();
                  const seen = getComputedStyle(e).outlineStyle !== 'none' && box.width > 0 && box.left >= 0;
                  return (seen ? '' : 'unseen ') + (e.className || e.type || e.localName);
                })()
                """));
        }

        Assert.DoesNotContain(stops, stop => stop.StartsWith("unseen", StringComparison.Ordinal));
        Assert.Equal(
            ["skip", "a", "name", "date", "text", "submit", "text", "submit", "text", "submit", "text", "submit", "radio", "submit", "radio", "textarea", "submit", "summary"],
            stops.Take(18));
    }

    [Fact]
    public async Task StudentPage_AnswerByKeyboard_IsCheckedInPlaceQuickly()
    {
        await using Tab tab = await browser.OpenAsync(lesson.Address(ApproachSpeedArtefacts.Student), 1280);
        double right = Secrets.Of(lesson.Lesson).Keys.First().Value!.Value;
        const string Field = "document.querySelector('form.try input')";
        async Task<(string Outcome, string Words)> Type(string text)
        {
            await tab.AskAsync<JsonElement?>($"({Field}.focus(), {Field}.select(), null)");
            await tab.Page.Keyboard.SendCharacterAsync(text);
            await tab.Page.Keyboard.PressAsync("Enter");
            await tab.Page.WaitForFunctionAsync("() => document.querySelector('form.try .verdict').textContent !== ''");
            return (await tab.AskAsync<string>("document.querySelector('form.try').dataset.outcome"), await tab.AskAsync<string>("document.querySelector('form.try .verdict').textContent"));
        }

        Assert.Equal("wrong", (await Type("120")).Outcome);
        (string outcome, string words) = await Type(right.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture) + " kt");
        Assert.Equal("passed", outcome);
        Assert.Contains("is right, within 1\u00A0kt", words, StringComparison.Ordinal);
        Assert.Contains("the gust is missing", (await Type((right - 5).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture))).Words, StringComparison.OrdinalIgnoreCase);
        Assert.Equal("polite", await tab.AskAsync<string>("document.querySelector('form.try .verdict').getAttribute('aria-live')"));
        Assert.True(await tab.AskAsync<bool>($"{Field}.getAttribute('aria-describedby').split(' ').every(id => document.getElementById(id))"));
        Assert.Empty(tab.Complaints);
    }

    [Fact]
    public async Task StudentPage_Predictions_FoldWhatTheModelSaysUntilOpened()
    {
        await using Tab tab = await browser.OpenAsync(lesson.Address(ApproachSpeedArtefacts.Student), 1280);
        await tab.WaitForFiguresAsync();

        Assert.Equal(3, await tab.AskAsync<int>("document.querySelectorAll('details.after').length"));
        string shown = await tab.AskAsync<string>("document.body.innerText");
        Assert.DoesNotContain("11.3\u00A0kt", shown, StringComparison.Ordinal);
        Assert.DoesNotContain("53.7°", shown, StringComparison.Ordinal);

        await tab.AskAsync<JsonElement?>("(location.hash = document.querySelector('details.after h2').id, null)");
        await tab.Page.WaitForFunctionAsync("() => document.querySelector('details.after').open");
        Assert.Contains("11.3\u00A0kt", await tab.AskAsync<string>("document.body.innerText"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ApproachSpeedArtefacts.Student, "A4")]
    [InlineData(ApproachSpeedArtefacts.Sheet, "A4")]
    [InlineData(ApproachSpeedArtefacts.Sheet, "Letter")]
    public async Task Page_ToPdf_HasNoAnswerNoButtonAndTheSheetsSeed(string name, string paper)
    {
        await using Tab tab = await browser.OpenAsync("about:blank", 1280);
        await tab.Page.SetJavaScriptEnabledAsync(false);
        await tab.Page.GoToAsync(lesson.Address(name));

        byte[] bytes = await tab.Page.PdfDataAsync(new PuppeteerSharp.PdfOptions { Format = paper == "A4" ? PaperFormat.A4 : PaperFormat.Letter });
        using PdfDocument pdf = PdfDocument.Open(bytes);
        string text = string.Join('\n', pdf.GetPages().Select(page => string.Join(' ', page.GetWords().Select(word => word.Text)))).Normalize(System.Text.NormalizationForm.FormKC);

        RanSheet? sheet = name == ApproachSpeedArtefacts.Sheet ? lesson.Lesson.Sheets[1] : null;
        Assert.Empty(LeakSearch.InText(name, text, sheet is null ? Secrets.Of(lesson.Lesson) : Secrets.Of(lesson.Lesson, sheet)));
        Assert.DoesNotContain("Check", text, StringComparison.Ordinal);
        Assert.Contains(Caution.Short, text, StringComparison.Ordinal);
        Assert.Contains($"of {pdf.NumberOfPages}", text, StringComparison.Ordinal);
        if (sheet is null)
            return;
        Assert.Contains("Name", text, StringComparison.Ordinal);
        Assert.Contains("seed 4711", text, StringComparison.Ordinal);
        // A hint belongs to the page, where a student opens it when in need; on paper all would see it at once.
        Assert.DoesNotContain("Two things have changed", text, StringComparison.Ordinal);
        Assert.InRange(pdf.NumberOfPages, 2, 4);
    }

    [Theory]
    [InlineData(ApproachSpeedArtefacts.Key)]
    [InlineData(ApproachSpeedArtefacts.Sheet)]
    public async Task Page_Grey_KeepsOutcomesApart(string name)
    {
        await using Tab tab = await browser.OpenAsync(lesson.Address(name), 1280);
        // What is right and what is not differs in words and in its mark, whatever the colour.
        string[] marks = await tab.AskAsync<string[]>("""
            ['passed', 'wrong'].map(o => { const d = document.createElement('div'); d.dataset.outcome = o; d.innerHTML = '<p class="verdict">x</p>'; document.body.append(d);
              return getComputedStyle(d.firstChild, '::before').content + getComputedStyle(d.firstChild).borderLeftStyle; })
            """);

        Assert.NotEqual(marks[0], marks[1]);
    }
}
