using System.Text.Json;
using FlapAero.Handouts.Pages;
using FlapAero.Notebooks;
using UnitsNet;
using Comparison = FlapAero.Notebooks.Comparison;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>The student's page takes up what its reader types: it compares, keeps, forgets, and helps who is stuck.</summary>
[Collection<TestsOfArtefacts>]
[Trait("Speed", "slow")]
public sealed class ListeningTests(ApproachSpeedArtefacts lesson, Browser browser)
{
    private const string Prediction = "document.querySelector('[data-prediction=fasterGuess]')";
    private const string Compared = "[...document.querySelectorAll('.compared')].find(c => c.dataset.facts.includes('fasterGuess')).textContent";
    private const string Said = "document.querySelector('.typed [role=status]').textContent";

    public static TheoryData<string, double, double> Guesses => new()
    {
        { "speed", 10, 11.27 }, { "speed", 20, 11.27 }, { "speed", 11.3, 11.27 }, { "speed", -4, 11.27 }, { "speed", 2000, 11.27 },
        { "ratio", 25, 8.26 }, { "ratio", 8.3, 8.26 }, { "ratio", 30, 29.96 }, { "turns", 1200, -262 }, { "number", 1.25, 1.409 },
        { "number", 1234, 20164 }, { "length", 12345, 1655 }, { "temperature", 25, 15 },
    };

    [Theory, MemberData(nameof(Guesses))]
    public async Task Comparison_OfANumber_IsThatOfTheNotebook(string kind, double guess, double actual)
    {
        await using Tab tab = await ScriptsAsync();
        IQuantity Of(double value) => kind switch
        {
            "speed" => Speed.FromKnots(value),
            "ratio" => Ratio.FromPercent(value),
            "turns" => RotationalSpeed.FromRevolutionsPerMinute(value),
            "length" => Length.FromFeet(value),
            "temperature" => Temperature.FromDegreesCelsius(value),
            _ => Scalar.FromAmount(value),
        };
        Compared notebook = Comparison.Of("Faster", Of(guess), Of(actual), "guess");

        string page = await CompareAsync(tab, notebook, guess.ToString(System.Globalization.CultureInfo.InvariantCulture));

        Assert.Equal(notebook.ToString(), page);
    }

    [Theory]
    [InlineData("10 kts", "Faster: you said 10.0 kt, the model gives 11.3 kt.")]
    [InlineData("10,5", "Faster: you said 10.5 kt, the model gives 11.3 kt.")]
    [InlineData("5 m/s", "Faster: you said 9.7 kt, the model gives 11.3 kt.")]
    [InlineData("", "Faster: the model gives 11.3 kt.")]
    [InlineData("a few", "Faster: the model gives 11.3 kt. “a few” could not be read as a prediction.")]
    public async Task Comparison_EveryWriting_IsRead(string typed, string words)
    {
        await using Tab tab = await ScriptsAsync();

        string page = await CompareAsync(tab, Comparison.Of("Faster", Speed.FromKnots(0), Speed.FromKnots(11.27), "guess"), typed);

        Assert.StartsWith(words, page.Replace('\u00A0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Prediction_TypedAndReloaded_IsComparedKeptAndForgotten()
    {
        await using Tab tab = await OpenAsync();
        Assert.Contains("the model gives", await tab.AskAsync<string>(Compared), StringComparison.Ordinal);

        await TypeAsync(tab, Prediction, "10");
        await TypeAsync(tab, "document.querySelector('textarea')", "Since the rule says so.");
        await tab.AskAsync<JsonElement?>("(document.querySelector('input[type=radio]').click(), null)");
        await tab.Page.ReloadAsync();

        Assert.Equal("10", await tab.AskAsync<string>(Prediction + ".value"));
        Assert.Contains("you said 10.0\u00A0kt, the model gives", await tab.AskAsync<string>(Compared), StringComparison.Ordinal);
        Assert.Equal("Since the rule says so.", await tab.AskAsync<string>("document.querySelector('textarea').value"));
        Assert.True(await tab.AskAsync<bool>("document.querySelector('input[type=radio]').checked"));
        Assert.Contains("kept in this browser on this device", await tab.AskAsync<string>(Said), StringComparison.Ordinal);

        await PressAsync(tab);
        Assert.Equal("", await tab.AskAsync<string>(Prediction + ".value"));
        Assert.DoesNotContain("you said", await tab.AskAsync<string>(Compared), StringComparison.Ordinal);
        Assert.Equal(0, await tab.AskAsync<int>("localStorage.length"));
        await PressAsync(tab);
        Assert.Equal("10", await tab.AskAsync<string>(Prediction + ".value"));
        Assert.True(await tab.AskAsync<bool>("document.querySelector('input[type=radio]').checked"));

        await PressAsync(tab);
        await tab.Page.ReloadAsync();
        Assert.Equal("", await tab.AskAsync<string>(Prediction + ".value"));
        Assert.Empty(tab.Complaints);
    }

    [Theory]
    [InlineData("45", "your prediction", 45.0)]
    [InlineData("80", "your prediction →", 65.0)]
    public async Task Prediction_Typed_IsDrawnAsTheReadersOwnMark(string typed, string label, double at)
    {
        await using Tab tab = await OpenAsync();
        await tab.OpenFiguresFoldsAsync();
        await tab.WaitForFiguresAsync();
        const string Live = "document.querySelector('#fig-stalling-speed-in-a-level-turn .plot-live')";
        Assert.DoesNotContain("your prediction", await tab.AskAsync<string>(Live + ".textContent"), StringComparison.Ordinal);

        await TypeAsync(tab, "document.querySelector('[data-prediction=bankGuess]')", typed);
        await tab.Page.WaitForFunctionAsync($"() => {Live}.textContent.includes('your prediction')");

        Assert.Contains(label, await tab.AskAsync<string>(Live + ".textContent"), StringComparison.Ordinal);
        double place = await tab.AskAsync<double>(Live + ".layout.shapes.at(-1).x0"), end = await tab.AskAsync<double>(Live + ".layout.xaxis.range[1]");
        Assert.Equal(Math.Min(at, end), place, 0.01);

        await TypeAsync(tab, "document.querySelector('[data-prediction=bankGuess]')", "");
        await tab.Page.WaitForFunctionAsync($"() => !{Live}.textContent.includes('your prediction')");
    }

    [Fact]
    public async Task Page_BrowserThatKeepsNothing_SaysSoAndStillCompares()
    {
        await using Tab tab = await browser.OpenAsync("about:blank", 1280);
        await tab.Page.EvaluateExpressionOnNewDocumentAsync("Object.defineProperty(window, 'localStorage', { get() { throw new Error('no'); } })");
        await tab.Page.GoToAsync(lesson.Address(ApproachSpeedArtefacts.Student));

        Assert.Contains("keeps nothing", await tab.AskAsync<string>(Said), StringComparison.Ordinal);
        await TypeAsync(tab, Prediction, "10");
        Assert.Contains("you said", await tab.AskAsync<string>(Compared), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Problem_ThreeMisses_OffersAHint()
    {
        await using Tab tab = await OpenAsync();
        const string Form = "document.querySelector('.exercise form.try')";
        const string Offers = "[...document.querySelectorAll('.exercise .try button')].filter(b => b.textContent === 'Open a hint').length";
        await TypeAsync(tab, Form + ".querySelector('input')", "3");
        for (int miss = 1; miss <= 3; miss++)
        {
            Assert.Equal(0, await tab.AskAsync<int>(Offers));
            await tab.AskAsync<JsonElement?>($"({Form}.requestSubmit(), new Promise(r => setTimeout(() => r(null), 200)))");
        }

        Assert.EndsWith("A hint may help.", await tab.AskAsync<string>(Form + ".querySelector('.verdict').textContent"), StringComparison.Ordinal);
        await tab.AskAsync<JsonElement?>($"({Form}.querySelector('button[type=button]').click(), null)");
        Assert.True(await tab.AskAsync<bool>($"{Form}.closest('.cell').querySelector('details.hint').open"));
        Assert.Equal(0, await tab.AskAsync<int>(Offers));
    }

    [Fact]
    public async Task ChangeOneNumber_ByKeyboard_ShowsWhatTheCellSaysOfEachValue()
    {
        await using Tab tab = await OpenAsync();
        await tab.Page.FocusAsync(".values input");
        await tab.Page.Keyboard.PressAsync("Home");
        var said = new List<string>();
        for (int n = 0; n < 5; n++)
        {
            said.Add(await tab.AskAsync<string>("[...document.querySelectorAll('.changed')].filter(c => c.offsetHeight > 0).map(c => c.textContent).join('|')"));
            await tab.Page.Keyboard.PressAsync("ArrowRight");
        }

        Assert.Equal(5, said.Distinct().Count());
        Assert.DoesNotContain(said, words => words.Contains('|', StringComparison.Ordinal));
        Assert.Contains("At 2\u202F043\u00A0lb", said[2], StringComparison.Ordinal);
        Assert.Equal("1", await tab.AskAsync<string>("document.querySelector('.values output').textContent"));
        // In the notebook the cell is changed by hand; on paper it shows its own number.
        await tab.Page.EmulateMediaTypeAsync(PuppeteerSharp.Media.MediaType.Print);
        Assert.Equal(0, await tab.AskAsync<int>("document.querySelector('.values').offsetHeight"));
    }

    private async Task<Tab> OpenAsync()
    {
        Tab tab = await browser.OpenAsync(lesson.Address(ApproachSpeedArtefacts.Student), 1280);
        // What another test typed is kept in this browser, too.
        await tab.AskAsync<JsonElement?>("(localStorage.clear(), null)");
        await tab.Page.ReloadAsync();
        return tab;
    }

    private async Task<Tab> ScriptsAsync()
    {
        Tab tab = await browser.OpenAsync("about:blank", 800);
        await tab.AskAsync<JsonElement?>($"(0, eval)({JsonSerializer.Serialize(Assets.Answers + "\nglobalThis.answers = answers;\n" + Assets.Predictions + "\nglobalThis.predictions = predictions;")}), null");
        return tab;
    }

    private static Task<string> CompareAsync(Tab tab, Compared compared, string typed) => tab.AskAsync<string>(
        $"(d => {{ d.innerHTML = {JsonSerializer.Serialize(compared.ToHtml())}; return predictions.compare(JSON.parse(d.firstChild.dataset.facts), {JsonSerializer.Serialize(typed)}); }})(document.createElement('div'))");

    private static Task TypeAsync(Tab tab, string field, string text) => tab.AskAsync<JsonElement?>(
        $"(f => {{ f.value = {JsonSerializer.Serialize(text)}; f.dispatchEvent(new Event('input', {{ bubbles: true }})); }})({field}), null");

    private static Task PressAsync(Tab tab) => tab.AskAsync<JsonElement?>("(document.querySelector('.typed button').click(), null)");
}
