using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.Handouts.Kernels;

namespace FlapAero.Lessons.Tests;

/// <summary>The lesson on flaps that stay up: which mistake was made, and numbers worked without the library.</summary>
[Trait("Speed", "slow")]
public sealed class FlapsStayUpTests
{
    private const string Slug = "when-the-flaps-stay-up";

    [Theory]
    [InlineData("fresh.Left(0.70).Endurance(loads.TakeLast(6))", "before anyone looked is missing")]
    [InlineData("fresh.Endurance(loads.TakeLast(6))", "a new battery, and full")]
    [InlineData("fresh.Left(1 - fresh.ShareTaken(drawn, Duration.FromMinutes(6))).Endurance(loads.TakeLast(6))", "workshop's test is missing")]
    [InlineData("Duration.FromHours(20.0 / 7)", "That is the book")]
    [InlineData("Duration.FromHours(20.0 / 7 * 0.5406)", "holds at the rated current only")]
    [InlineData("fresh.Left(0.70 - fresh.ShareTaken(drawn, Duration.FromMinutes(6))).Endurance(loads)", "with everything on")]
    [InlineData("fresh.Left(0.70).Endurance(loads.TakeLast(6)) - Duration.FromMinutes(6)", "count for more than minutes now")]
    [InlineData("Duration.FromMinutes(108 * 60)", "in seconds")]
    public Task Minutes_WrongAnswer_SaysWhatIsWrong(string answer, string words) =>
        LessonRun.RefusesAsync(Slug, "my-minutes", $"var myMinutes = {answer};", "are-they-the-right-minutes", words);

    [Theory]
    [InlineData("aeroplane.WithFlapsUp(light).LandAsPlanned(Quillmere.Runway24, day.Air, wind).StopDistance", "the margin is missing")]
    [InlineData("aeroplane.WithFlapsUp(light).LandAsPlanned(Quillmere.Runway24, day.Air, wind).StopDistance * 0.7", "makes it longer")]
    [InlineData("up.RunwayNeeded(Quillmere.Runway24, day.Air, wind)", "today's weight")]
    [InlineData("aeroplane.WithFlapsUp(light).RunwayNeeded(Quillmere.Runway33, day.Air, wind)", "the grass")]
    [InlineData("aeroplane.WithFlapsUp(light).RunwayNeeded(Quillmere.Runway06, day.Air, wind)", "the other end")]
    [InlineData("aeroplane.WithFlapsUp(light).RunwayNeeded(Quillmere.Runway24, day.Air, new Wind(wind.From, Speed.FromKnots(28)))", "all of the headwind")]
    [InlineData("aeroplane.WithFlapsUp(light).RunwayNeeded(Quillmere.Runway24, day.Air, new Wind(wind.From, Speed.Zero))", "in calm air")]
    [InlineData("Length.FromFeet(aeroplane.WithFlapsUp(light).RunwayNeeded(Quillmere.Runway24, day.Air, wind).Meters)", "in metres")]
    public Task Distance_WrongAnswer_SaysWhatIsWrong(string answer, string words) =>
        LessonRun.RefusesAsync(Slug, "my-distance", $"var light = aeroplane.MaximumMass * 0.85;\nvar myDistance = {answer};", "is-it-the-right-distance", words);

    [Theory]
    [InlineData("TrainerH4", -1116.2, 40.2, -171.1, 1411.5)]
    [InlineData("TrainerL2", -1079.0, 38.2, -145.0, 1383.6)]
    public async Task Page_Numbers_AreThoseWorkedElsewhere(string aeroplane, double left, double gained, double bare, double brackmere)
    {
        // Runways: the landing's equations stepped by half a millisecond in another language, from the aeroplane's file alone; half of
        // 14 kt · cos of the angle to the runway, 12 °C at 600 ft, stop over 0.7 against 620 m and 1 400 m. H4, runway 24: 3 357.6 ft with the
        // margin at 95 % of the maximum, 3 317.4 ft at 93 %; runway 33: 2 123.3 ft to the stop with dry asphalt's braking, and 81.9 ft more
        // with the grass's own. L2: 3 397.0, 3 358.8 and 2 110.7 ft and 68.5 ft more: 171.1 and 145.0 ft more than the 620 m.
        IReadOnlyDictionary<string, CellResult> results = (await LessonRun.OfAsync(Slug, aeroplane)).Results;
        string Said(string id) => Plain(results, id);

        Assert.Equal(left, Feet(Said("the-runway-tested"), "the model gives"), 2.5);
        Assert.Equal(gained, Feet(Said("the-waiting-tested"), "the model gives"), 1.0);
        Assert.Equal(bare, Feet(Said("two-sums-decide"), "any margin:"), 2.0);
        Assert.Equal(brackmere, Feet(Said("left-over-while-one-waits"), "Brackmere, (?=[0-9])"), 2.5);
        Assert.Contains("no runway of Quillmere fits; Brackmere's does", Said("two-sums-decide").ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("Fits, by this model.", Said("the-briefing"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_Battery_IsWorkedByHand()
    {
        // 60 min · (20/30)^1.15 = 37.64 new. Nine minutes took 9/37.64 = 0.2391; 0.80 − 0.2391 = 0.5609 is left: 21.1 min with everything on,
        // 0.5609 · 60 · (20/5)^1.15 = 165.7 at 5 A, 0.5609 · 60 · (20/3)^1.15 = 298 at 3 A. The motor: (8/3600)(23/20)^1.15 = 0.002610 of a new
        // battery, times 60 · (20/3)^1.15 = 532 is 1.39 min. Twice forty minutes: 20 · (0.5609 · 60/80)^(1/1.15) = 9.42 A.
        LessonRun run = await LessonRun.OfAsync(Slug);
        string Said(string id) => Plain(run.Results, id);

        Assert.Contains("the model gives 21 min", Said("the-prediction-tested"), StringComparison.Ordinal);
        Assert.Contains("the book promises 40 min, a new battery gives 38 min", Said("minutes-against-amperes"), StringComparison.Ordinal);
        Assert.Contains("2.2 times as long; 5 A lasts 166 min", Said("the-switches-make-the-minutes"), StringComparison.Ordinal);
        Assert.Contains("costs 1.4 min of 298 min", Said("one-more-try"), StringComparison.Ordinal);
        Assert.Contains("160 ampere-seconds", Said("one-more-try"), StringComparison.Ordinal);
        Assert.Contains("less than 9.4 A may stay", Said("two-sums-decide"), StringComparison.Ordinal);
    }

    // The lesson's landing and the briefing's are one.
    [Fact]
    public async Task Briefing_SameRunway_HasTheDistanceOfTheTable()
    {
        LessonRun run = await LessonRun.OfAsync(Slug);
        CellResult both = await run.RunAsync(
            "Console.Write(string.Join(';', outcome!.Value.Flapless.Landing.WithMargin.Feet, up.RunwayNeeded(Brackmere.Runway30, day.Air, wind).Feet));");
        double[] feet = [.. string.Concat(both.Outputs.Select(o => o.Text)).Split(';').Select(t => double.Parse(t, CultureInfo.InvariantCulture))];
        Assert.Equal(feet[0], feet[1], 1e-6 * feet[0]);
    }

    private static string Plain(IReadOnlyDictionary<string, CellResult> results, string id) =>
        string.Concat(results[id].Outputs.Select(output => output.Text)).Replace('\n', ' ').Replace('\u00a0', ' ').Replace("\u202f", "", StringComparison.Ordinal).Replace('\u2212', '-');

    private static double Feet(string text, string after)
    {
        Match match = Regex.Match(text, after + @"\s*(-?[0-9.]+) ft( short)?");
        Assert.True(match.Success, $"nothing after '{after}' in {text}");
        double feet = double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
        return match.Groups[2].Success ? -feet : feet;
    }
}
