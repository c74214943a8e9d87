using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using FlapAero.Notebooks;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace FlapAero.Handouts.Tests;

/// <summary>Students' pages in a Firefox without a network: what Chromium shows, it shows too.</summary>
[Trait("Speed", "slow")]
public sealed class FirefoxTests(Firefox firefox, LessonPages pages)
{
    private const string Plain = "04-approach-speed";
    private const string Pictured = "07-round-out-and-float";

    private const string Enter = "\uE007", End = "\uE010", Home = "\uE011", Right = "\uE014";

    /// <summary>What a reader sets in the browser: 0 is dark; 1 is less motion.</summary>
    private const string Dark = "layout.css.prefers-color-scheme.content-override", LessMotion = "ui.prefersReducedMotion";

    private const string OpenAll = "document.querySelectorAll('details').forEach(fold => fold.open = true);";

    /// <summary>What the first figure that moves shows: its lines, the sentence under its control, and what it is called.</summary>
    private const string Shown = """
        (() => {
          const figure = document.querySelector('figure.plot:not(.picture):has(.plot-control)');
          return [[...figure.querySelectorAll('.js-line')].map(line => line.getAttribute('d')).join(), figure.querySelector('.plot-finding').textContent,
            figure.querySelector('output').textContent, figure.querySelector('.plot-live').getAttribute('aria-label')];
        })()
        """;

    [Theory]
    [InlineData(Plain)]
    [InlineData(Pictured)]
    public async Task Page_Offline_DrawsAllFiguresAsksForNothingAndFitsAPhone(string lesson)
    {
        string address = await pages.OfStudentAsync(lesson);
        await using FirefoxTab tab = await firefox.OpenAsync(address, 1280);
        await tab.DoAsync(OpenAll);
        await tab.WaitForFiguresAsync();

        int figures = await tab.AskAsync<int>("document.querySelectorAll('figure.plot').length");
        Assert.True(figures >= 3, $"{figures} figures");
        // Each is seen once: alive, or a picture; and there is something in it.
        Assert.Empty(await tab.AskAsync<string[]>("""
            [...document.querySelectorAll('figure.plot')].filter(figure => {
              const seen = [...figure.querySelectorAll('.plot-drawing svg, .plot-live svg.main-svg')].filter(svg => svg.getBoundingClientRect().height > 100);
              const isPicture = figure.classList.contains('picture');
              const marks = figure.querySelectorAll(isPicture ? '.plot-drawing svg *' : '.plot-live .trace, .plot-live .shapelayer path');
              return seen.length === 0 || seen.some(svg => !svg.closest('.plot-live') !== isPicture) || marks.length === 0;
            }).map(figure => figure.id)
            """));
        Assert.Equal(lesson == Pictured, await tab.AskAsync<bool>("document.querySelector('figure.plot.picture') !== null"));
        // Formulas are drawn as formulas, and letters are the page's own.
        Assert.True(await tab.AskAsync<bool>("[...document.querySelectorAll('math')].filter(m => m.checkVisibility()).every(m => m.getBoundingClientRect().width > 2)"));
        Assert.Equal(2, await tab.AskAsync<int>("document.fonts.ready.then(fonts => [...fonts].filter(f => f.family === 'Inter' && f.status === 'loaded').length)"));

        await tab.ResizeAsync(390, 844);
        await tab.WaitForAsync("innerWidth === 390");
        Assert.Empty(await tab.AskAsync<string[]>("""
            [...document.querySelectorAll('body *')].filter(e => !e.closest('.scroll, .plot-live, .skip, .apart, svg') && e.getBoundingClientRect().right > innerWidth + 1)
              .map(e => e.outerHTML.slice(0, 120))
            """));
        Assert.InRange(await tab.AskAsync<int>("document.documentElement.scrollWidth"), 1, 390);

        Assert.Empty(tab.Complaints);
        // Firefox does not tell of the page itself, which is on the disk.
        Assert.DoesNotContain(tab.Requests, request => !request.StartsWith("data:", StringComparison.Ordinal) && request != address);
    }

    [Fact]
    public async Task Page_ForAReaderInTheDarkWhoWantsLessMotion_IsDarkAndStandsStillAndPrintsOnWhite()
    {
        await using FirefoxTab tab = await firefox.OpenAsync("about:blank", 1280);
        await tab.PreferAsync(Dark, 0);
        await tab.PreferAsync(LessMotion, 1);
        try
        {
            await tab.GoToAsync(await pages.OfStudentAsync(Plain));
            Assert.Equal("rgb(21, 23, 26)", await tab.AskAsync<string>("getComputedStyle(document.body).backgroundColor"));
            Assert.Empty(await tab.AskAsync<string[]>("""
                [...document.querySelectorAll('*')].filter(e => {
                  const s = getComputedStyle(e);
                  return s.animationName !== 'none' || s.transitionDuration.split(', ').some(t => parseFloat(t) > 0) || s.scrollBehavior !== 'auto';
                }).map(e => e.outerHTML.slice(0, 90))
                """));

            using PdfDocument pdf = PdfDocument.Open(await tab.PrintAsync());
            string[] headings = await tab.AskAsync<string[]>("[...document.querySelectorAll('main h2, main h3')].map(h => h.textContent)");
            Assert.All(pdf.GetPages(), page => AssertIsFitToBeHandedOut(page, headings));
            Assert.Empty(tab.Complaints);
        }
        finally
        {
            await tab.PreferAsync(Dark, null);
            await tab.PreferAsync(LessMotion, null);
        }
    }

    [Fact]
    public async Task Tab_ThatAsksOutsideAndComplains_IsHeard()
    {
        const string Outside = "http://192.0.2.1/picture.png";
        await using FirefoxTab tab = await firefox.OpenAsync("about:blank", 800);

        await tab.AskAsync<bool>($"new Promise(done => {{ const i = new Image(); i.onerror = () => done(true); i.src = '{Outside}'; }})");
        await tab.DoAsync("console.error('said aloud'); setTimeout(() => { throw new Error('thrown'); });");
        await tab.AskAsync<bool>("new Promise(done => setTimeout(() => done(true), 50))");

        Assert.Contains(Outside, tab.Requests);
        Assert.Contains("failed: " + Outside, tab.Complaints);
        Assert.Contains("console: said aloud", tab.Complaints);
        Assert.Contains(tab.Complaints, complaint => complaint.Contains("thrown", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Control_ByKeyboard_MovesTheDrawingAndWhatIsReadFromIt()
    {
        await using FirefoxTab tab = await firefox.OpenAsync(await pages.OfStudentAsync(Pictured), 1280);
        await tab.DoAsync(OpenAll);
        await tab.WaitForFiguresAsync();
        string[] start = await tab.AskAsync<string[]>(Shown);
        await tab.DoAsync("document.querySelector('figure.plot:not(.picture) .plot-control input').focus();");
        var seen = new List<string[]> { start };

        foreach (string key in (string[])[Right, End, Home])
        {
            await tab.PressAsync(key);
            // The drawing follows in a task of its own.
            await tab.WaitForAsync($"{Shown}[0] !== {System.Text.Json.JsonSerializer.Serialize(seen[^1][0])}");
            seen.Add(await tab.AskAsync<string[]>(Shown));
        }

        for (int part = 0; part < start.Length; part++)
            Assert.Equal(seen.Count, seen.Select(state => state[part]).Distinct().Count());
        Assert.All(seen.Skip(1), state => Assert.Equal(state[1], state[3]));

        const string Picture = "document.querySelector('figure.picture:has(.plot-control)')";
        string before = await tab.AskAsync<string>($"{Picture}.querySelector('svg').innerHTML");
        await tab.DoAsync($"{Picture}.querySelector('input').focus();");
        await tab.PressAsync(End);
        Assert.NotEqual(before, await tab.AskAsync<string>($"{Picture}.querySelector('svg').innerHTML"));
        Assert.Empty(tab.Complaints);
    }

    [Fact]
    public async Task Answer_Typed_IsJudgedInWords()
    {
        await using FirefoxTab tab = await firefox.OpenAsync(await pages.OfStudentAsync(Pictured), 1280);
        const string Problem = "[...document.querySelectorAll('section.problem')].find(p => p.querySelector('h3').id === 'into-the-wind')";
        string question = await tab.AskAsync<string>($"{Problem}.querySelector('.question').textContent");
        double[] given = [.. Regex.Matches(question, @"[\d.]+(?=\u00A0)").Select(number => double.Parse(number.Value, CultureInfo.InvariantCulture))];
        Assert.Equal(3, given.Length);
        // Airspeed less the wind, over the time that the float lasts; a knot is 1852 m an hour, a foot 0.3048 m.
        double feet = (given[0] - given[2]) * given[1] * 1852 / 3600 / 0.3048;
        async Task<(string Outcome, string Words)> AnswerAsync(string text)
        {
            await tab.DoAsync($"{Problem}.querySelector('form.try input').focus(); {Problem}.querySelector('form.try input').select();");
            await tab.TypeAsync(text);
            await tab.PressAsync(Enter);
            await tab.WaitForAsync($"{Problem}.querySelector('.verdict').textContent !== ''");
            return (await tab.AskAsync<string>($"{Problem}.querySelector('form.try').dataset.outcome"), await tab.AskAsync<string>($"{Problem}.querySelector('.verdict').textContent"));
        }

        (string outcome, string words) = await AnswerAsync("12");
        Assert.Equal("wrong", outcome);
        Assert.StartsWith("12\u00A0ft is not right", words, StringComparison.Ordinal);
        string right = feet.ToString("0", CultureInfo.InvariantCulture);
        (outcome, words) = await AnswerAsync(right);
        Assert.Equal("passed", outcome);
        Assert.StartsWith(right + "\u00A0ft is right", words, StringComparison.Ordinal);
        Assert.Empty(tab.Complaints);
    }

    [Fact]
    public async Task Prediction_Typed_IsComparedKeptOverAReloadAndForgotten()
    {
        await using FirefoxTab tab = await firefox.OpenAsync(await pages.OfStudentAsync(Plain), 1280);
        const string Field = "document.querySelector('input[data-prediction]')";
        const string Compared = $"document.querySelector('.compared[data-facts*=\"' + {Field}.dataset.prediction + '\"]').textContent";
        const string Kept = "document.querySelector('.typed')";
        string before = await tab.AskAsync<string>(Compared);
        await tab.DoAsync($"{Field}.focus();");
        await tab.TypeAsync("2.5");

        string compared = await tab.AskAsync<string>(Compared);
        Assert.DoesNotContain("you said", before, StringComparison.Ordinal);
        Assert.Contains(": you said 2.5", compared, StringComparison.Ordinal);
        Assert.Contains("kept in this browser on this device", await tab.AskAsync<string>($"{Kept}.textContent"), StringComparison.Ordinal);

        await tab.ReloadAsync();
        Assert.Equal("2.5", await tab.AskAsync<string>($"{Field}.value"));
        Assert.Equal(compared, await tab.AskAsync<string>(Compared));

        await tab.DoAsync($"{Kept}.querySelector('button').focus();");
        await tab.PressAsync(Enter);
        Assert.Equal("", await tab.AskAsync<string>($"{Field}.value"));
        Assert.Equal(before, await tab.AskAsync<string>(Compared));
        await tab.ReloadAsync();
        Assert.Equal("", await tab.AskAsync<string>($"{Field}.value"));
        Assert.Empty(tab.Complaints);
    }

    /// <summary>The caution at its foot, no dark ground, and no heading whose text is on the next page.</summary>
    private static void AssertIsFitToBeHandedOut(Page page, string[] headings)
    {
        string[] lines = [.. page.GetWords().GroupBy(word => Math.Round(word.BoundingBox.Bottom / 3)).OrderByDescending(line => line.Key)
            .Select(line => string.Join(' ', line.OrderBy(word => word.BoundingBox.Left).Select(word => word.Text)).Normalize(NormalizationForm.FormKC))];
        Assert.Equal(Caution.Short, lines[^1]);
        Assert.DoesNotContain(lines[^2], headings);
        Assert.DoesNotContain(page.Paths, path =>
            path.IsFilled && path.GetBoundingRectangle()?.Area > page.Width * page.Height / 2 && path.FillColor?.ToRGBValues() is { r: < 0.9 });
    }
}
