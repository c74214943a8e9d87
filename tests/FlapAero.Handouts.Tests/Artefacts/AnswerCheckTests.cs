using System.Security.Cryptography;
using System.Text.Json;
using FlapAero.Handouts.Pages;
using FlapAero.Notebooks;
using FlapAero.Notebooks.Seals;
using UnitsNet;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>The page's script says of an answer what the library says.</summary>
[Trait("Speed", "slow")]
public sealed class AnswerCheckTests(AnswersTab answers) : IClassFixture<AnswersTab>
{
    private static readonly Lesson TheLesson = Lesson.Begin();
    private static readonly string Speeds = SealText.Of(NumberSeal.Of("Stall", "", Speed.FromKnots(51.13), Speed.FromKnots(0.5),
        [new Mistake(Speed.FromKnots(46.7), "The bank is missing: “φ”."), new Mistake(Speed.FromKnots(102.3), "That is for four times the weight.")]));

    private static readonly string Ratios = SealText.Of(NumberSeal.Of("C_L", "", Scalar.FromAmount(-1.61), Scalar.FromAmount(0.02), []));
    private static readonly string Masses = SealText.Of(NumberSeal.Of("Weight", "", Mass.FromPounds(2043), Mass.FromPounds(30), []));
    private static readonly string Options = SealText.Of(ChoiceSeal.Of("Turn", "q", [(Standing.Wrong, "Für Übermut."), (Standing.Right, "Weight cancels."), (Standing.Safe, "Never wrong.")]));

    [Fact]
    public async Task Answers_Hashes_AreThoseOfDotNet()
    {
        foreach (int length in new[] { 0, 1, 55, 56, 63, 64, 65, 200 })
        {
            byte[] bytes = [.. Enumerable.Range(0, length).Select(i => (byte)(i * 7 + 3))];
            Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(bytes)), await answers.AskAsync<string>($"answers.hex(answers.sha256(new Uint8Array({JsonSerializer.Serialize(bytes.Select(b => (int)b))})))"));
        }
        foreach ((string guess, int rounds) in new[] { ("right:12", 1), ("0:-3", 4000), (new string('x', 70), 2) })
        {
            byte[] salt = [.. Enumerable.Range(0, 16).Select(i => (byte)(255 - i))];
            string expected = Convert.ToHexStringLower(Rfc2898DeriveBytes.Pbkdf2(guess, salt, rounds, HashAlgorithmName.SHA256, 32));
            Assert.Equal(expected, await answers.AskAsync<string>($"answers.hex(answers.stretch(answers.ascii('{guess}'), new Uint8Array({JsonSerializer.Serialize(salt.Select(b => (int)b))}), {rounds}))"));
        }
    }

    public static TheoryData<double> Knots => [.. new[] { 51.13, 50.63, 51.63, 50.6, 51.7, 46.7, 102.3, 25.56, -51.13, 26.3, 58.8, 94.7, 70, 5178, 511, 5.11, 52, 50.2, 53 }];

    [Theory, MemberData(nameof(Knots))]
    public async Task CheckNumber_Typed_IsWhatTheNotebookSays(double knots)
    {
        CheckResult notebook = TheLesson.CheckSealed(Speed.FromKnots(knots), Speeds);

        string[] page = await CheckAsync(Speeds, knots.ToString(System.Globalization.CultureInfo.InvariantCulture));

        Assert.Equal(notebook.Outcome.ToString().ToLowerInvariant(), page[0]);
        // Behind the title and the number as it was typed both say the same.
        string Tail(string words) => words[(words.IndexOf("kt ", StringComparison.Ordinal) + 3)..];
        Assert.Equal(Tail(notebook.Words), Tail(page[1]));
    }

    [Theory]
    [InlineData("speed", "51.1", "passed", "51.1_kt is right, within 0.5_kt.")]
    [InlineData("speed", "51,1", "passed", "51,1_kt is right")]
    [InlineData("speed", "51.1 kt", "passed", "51.1 kt is right")]
    [InlineData("speed", "51.1kts", "passed", "right")]
    [InlineData("speed", " 51 ", "passed", "51_kt is right")]
    [InlineData("speed", "26.3 m/s", "passed", "right")]
    [InlineData("speed", "−51.1", "wrong", "wrong sign")]
    [InlineData("speed", "26.3", "wrong", "That would be right in metres per second; the answer wants knots.")]
    [InlineData("speed", "58.8", "wrong", "statute miles per hour")]
    [InlineData("speed", "51.1 m/s", "wrong", "The number would be right in knots, but it was given in metres per second.")]
    [InlineData("speed", "102.0", "wrong", "four times the weight")]
    [InlineData("speed", "46.5", "wrong", "The bank is missing: “φ”.")]
    [InlineData("speed", "25.6", "wrong", "half of what it should be")]
    [InlineData("speed", "511", "wrong", "511_kt is ten times what it should be: look at the decimal point.")]
    [InlineData("speed", "5.1", "wrong", "5.1_kt is a tenth of what it should be: look at the decimal point.")]
    [InlineData("speed", "52.1", "wrong", "52.1_kt is close, but not close enough: look for a value that was rounded early.")]
    [InlineData("speed", "49.9", "wrong", "close, but not close enough")]
    [InlineData("speed", "53", "wrong", "53_kt is not right: work it again.")]
    [InlineData("speed", "70", "wrong", "70_kt is not right: work it again.")]
    [InlineData("speed", "", "open", "Write your answer first")]
    [InlineData("speed", "fifty", "open", "“fifty” is not a number that can be read: write one such as 1.5 kt.")]
    [InlineData("speed", "51.1 ft", "open", "“ft” is no unit that fits here: the answer wants knots (kt).")]
    [InlineData("speed", "51..1", "open", "not a number")]
    [InlineData("speed", "1e5", "open", "not a number")]
    [InlineData("speed", "0", "open", "Zero is not an answer")]
    [InlineData("ratio", "-1.6", "passed", "-1.6 is right, within 0.02.")]
    [InlineData("ratio", "1,61", "wrong", "wrong sign")]
    [InlineData("ratio", "1.61 kt", "open", "without a unit")]
    [InlineData("mass", "2,043", "passed", "2,043_lb is right, within 30_lb.")]
    [InlineData("mass", "2 050 lbs", "passed", "right")]
    [InlineData("mass", "927", "wrong", "right in kilograms; the answer wants pounds")]
    [InlineData("mass", "4086", "wrong", "twice what it should be")]
    public async Task CheckNumber_EveryWriting_GetsItsWords(string seal, string typed, string outcome, string words)
    {
        string[] verdict = await CheckAsync(seal switch { "speed" => Speeds, "ratio" => Ratios, _ => Masses }, typed);

        Assert.Equal(outcome, verdict[0]);
        Assert.Contains(words, verdict[1].Replace('\u00A0', '_'), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("'b'", "passed", "b is right. Weight cancels.")]
    [InlineData("'a'", "wrong", "a is not right. Für Übermut.")]
    [InlineData("'c'", "passed", "c is safe and accepted; it is more than the rule asks. Never wrong.")]
    [InlineData("null", "open", "Choose an option first")]
    public async Task CheckChoice_Letter_GetsItsReason(string letter, string outcome, string words)
    {
        string[] verdict = await answers.AskAsync<string[]>($"answers.checkChoice(answers.read('{Options}'), {letter})");

        Assert.Equal(outcome, verdict[0]);
        Assert.Contains(words, verdict[1], StringComparison.Ordinal);
    }

    private Task<string[]> CheckAsync(string seal, string typed) =>
        answers.AskAsync<string[]>($"answers.checkNumber(answers.read('{seal}'), {JsonSerializer.Serialize(typed)})");
}

/// <summary>A tab with the page's script that judges answers, for all tests: it keeps nothing of what it is asked.</summary>
public sealed class AnswersTab(Browser browser) : IAsyncDisposable
{
    // Opened by a test, which is skipped where there is no browser.
    private Task<Tab>? _tab;

    public async Task<T> AskAsync<T>(string expression) => await (await (_tab ??= OpenAsync())).AskAsync<T>(expression);

    public async ValueTask DisposeAsync()
    {
        if (_tab is { IsCompletedSuccessfully: true })
            await (await _tab).DisposeAsync();
    }

    private async Task<Tab> OpenAsync()
    {
        Tab tab = await browser.OpenAsync("about:blank", 800);
        await tab.AskAsync<JsonElement?>($"(0, eval)({JsonSerializer.Serialize(Assets.Answers + "\nglobalThis.answers = answers;")}), null");
        return tab;
    }
}
