using System.Text.RegularExpressions;
using FlapAero.Handouts.Kernels;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>The first lesson: its checks say which mistake was made, its numbers hold by hand, and what it shows of an error is what C# says.</summary>
[Trait("Speed", "slow")]
public sealed class StartHereTests
{
    private const string Slug = "start-here";

    [Theory]
    [InlineData("var myRate = Speed.FromFeetPerMinute(5 * fullGround.Knots);", "That is five times")]
    [InlineData("var myRate = fullGround * Math.Tan(3 * Math.PI / 180);", "on three degrees")]
    [InlineData("var myRate = fullGround * (3.2 / 60);", "by one in sixty")]
    [InlineData("var myRate = ground * Math.Tan(steeper.Radians);", "with flaps up")]
    [InlineData("var myRate = fullGround * Math.Tan(3.2);", "as if they were radians")]
    [InlineData("var myRate = fullGround;", "the slope is missing")]
    [InlineData("var myRate = -steepFlight.SinkRate;", "the wrong sign")]
    [InlineData("var myRate = 2 * steepFlight.SinkRate;", "twice what it should be")]
    [InlineData("var myRate = Speed.FromFeetPerMinute(steepFlight.SinkRate.FeetPerSecond);", "right in feet per second")]
    [InlineData("var myRate = Speed.FromFeetPerMinute(steepFlight.SinkRate.Knots);", "right in knots")]
    [InlineData("var myRate = Speed.FromFeetPerMinute(500);", "too high")]
    public Task RateOfDescent_WrongAnswer_SaysWhatIsWrong(string written, string words) =>
        LessonRun.RefusesAsync(Slug, "my-rate-of-descent", written, "is-it-the-right-rate-of-descent", words);

    [Theory]
    [InlineData("var myPath = Angle.FromDegrees(3);", "There the rule gives too little")]
    [InlineData("var myPath = Angle.FromDegrees(2.96);", "One in sixty is a rounding too")]
    [InlineData("var myPath = Angle.FromDegrees(2.86);", "more than a hundred feet a minute")]
    [InlineData("var myPath = Angle.FromDegrees(3.18);", "Turned round")]
    [InlineData("var myPath = Angle.FromDegrees(0.04933);", "right in radians")]
    [InlineData("var myPath = Angle.FromDegrees(-2.83);", "the wrong sign")]
    [InlineData("var myPath = Angle.FromDegrees(1);", "too low")]
    public Task Path_WrongAnswer_SaysWhatIsWrong(string written, string words) =>
        LessonRun.RefusesAsync(Slug, "my-path", written, "is-it-the-right-path", words);

    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json", "69.2", "60.2", "367", "346")]
    [InlineData("TrainerL2", "trainer-l2.json", "63.7", "55.4", "338", "318")]
    public async Task Page_Numbers_AreThoseWorkedByHand(string aeroplane, string file, string meant, string flown, string exact, string rule)
    {
        // By hand, H4: 1.3 √(2 × 1090 × 9.80665/(1.225 × 16.6 × 1.40)) = 35.62 m/s = 69.2 kt. As many miles an hour are 69.2 × 1609.344/1852 = 60.2 kt,
        // 1.3/1.15078 = 1.130 times the stall. True at 600 ft and 9 °C 69.27 kt, over the ground × cos 3° = 69.18 kt; a knot is 101.27 ft/min,
        // tan 3° = 0.05241: 367 ft/min; 5 × 69.18 = 346. L2: 63.7, 55.4; 63.68 kt over the ground: 338 and 318. 5/(101.27 × 0.05241) = 0.942 for any.
        double stall = new HandAeroplane(RepositoryRoot.Path("data/aeroplanes/" + file)).Stall("up");
        Assert.Equal(double.Parse(meant, System.Globalization.CultureInfo.InvariantCulture), 1.3 * stall, 0.06);
        IReadOnlyDictionary<string, CellResult> results = (await LessonRun.OfAsync(Slug, aeroplane)).Results;
        string Said(string id) => string.Concat(results[id].Outputs.Select(output => output.Text)).Replace('\n', ' ');

        Assert.Contains($"{meant}\u00a0kt", Said("the-aeroplane-and-its-speeds"), StringComparison.Ordinal);
        Assert.Contains($"{flown}\u00a0kt", Said("what-the-two-needles-say"), StringComparison.Ordinal);
        Assert.Contains(" 1.15 statute miles", Said("what-the-two-needles-say"), StringComparison.Ordinal);
        Assert.Matches("gives 13\u00a0%", Said("the-margin-tested"));
        Assert.Contains("\u22125.8\u00a0%", Said("the-rule-tested"), StringComparison.Ordinal);
        Assert.Contains($"{exact}\u00a0ft/min", Said("the-rule-looked-into"), StringComparison.Ordinal);
        Assert.Contains($"{rule}\u00a0ft/min", Said("the-rule-looked-into"), StringComparison.Ordinal);
        // The figure's formula and the model's flight are one rate.
        Assert.Contains($"{exact}\u00a0ft/min", Said("down-the-path"), StringComparison.Ordinal);
        // 65 kt are 65 × 1852/3600 m/s and 65 × 1852/0.3048/60 ft/min.
        Assert.Matches("33\\.4<.*6\u202f?582<", Said("a-first-number").ReplaceLineEndings(""));
    }

    [Fact]
    public async Task Explain_ALengthAddedToASpeed_IsRefusedInTheWordsShown()
    {
        LessonRun run = await LessonRun.OfAsync(Slug);
        string shown = run.Lesson.Cells.Single(cell => cell.Id == "the-unit-is-in-the-name").Source;
        string what = Regex.Match(shown, @"\*\*What:\*\* (.*)\.\n").Groups[1].Value;

        string? failure = (await run.TryAsync("speed + Length.FromFeet(50)")).Failure;

        Assert.NotEmpty(what);
        Assert.Contains(what, failure, StringComparison.Ordinal);
        Assert.Null((await run.TryAsync("speed + Speed.FromMetersPerSecond(2)")).Failure);
    }
}
