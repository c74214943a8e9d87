using System.Text.Json;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Rules.AfterARun;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>What a reader predicts is drawn on the figure that answers it, and a right prediction lies on the answer.</summary>
[Trait("Speed", "slow")]
public sealed class PredictionMarkTests
{
    [Fact]
    public async Task Lesson_Predictions_AreMarkedOnAFigureOfTheLesson()
    {
        var without = new List<string>();
        foreach (LessonNotebook lesson in LessonCopies.All)
        {
            RanLesson ran = await RanAsync(lesson.Slug);
            var marked = Plots(ran).SelectMany(Marks).Select(mark => mark.GetProperty("name").GetString()).ToHashSet();
            without.AddRange(PredictionsGivenAway.Compared(ran).Select(one => one.Name).Where(name => !marked.Contains(name)).Select(name => $"{lesson.Slug}: {name}"));
        }

        Assert.True(without.Count == 0, string.Join('\n', without));
    }

    [Theory]
    [InlineData("start-here", "marginGuess", "flown")]
    [InlineData("start-here", "ruleGuess", "flaps up")]
    [InlineData("lift-and-where-it-ends", "gainGuess", "flying, full")]
    [InlineData("what-flaps-change", "leftGuess", "1.3, full")]
    [InlineData("what-flaps-change", "shareGuess", "four fifths")]
    [InlineData("drag-and-the-angle-of-descent", "steeperGuess", "faster")]
    [InlineData("approach-speed", "fasterGuess", "1.3, up")]
    [InlineData("power-on-the-approach", "shareGuess", "1.1")]
    [InlineData("energy-on-final", "lostGuess", "lowest, up")]
    [InlineData("round-out-and-float", "groundGuess", "touch")]
    [InlineData("the-circuit-without-flaps", "highGuess", "final begins")]
    [InlineData("the-landing-roll", "beforeGuess", "nose down")]
    [InlineData("the-landing-roll", "tenGuess", "stop")]
    [InlineData("the-landing-roll", "endGuess", "Friday, on 06")]
    [InlineData("when-the-flaps-stay-up", "leftGuess", "runway 33")]
    [InlineData("how-much-landings-vary", "alikeGuess", "round-out")]
    public async Task RightPrediction_OnItsFigure_LiesOnTheAnswersMark(string slug, string prediction, string answer)
    {
        RanLesson ran = await RanAsync(slug);
        JsonElement plot = Plots(ran).Single(p => Marks(p).Any(mark => mark.GetProperty("name").GetString() == prediction));
        JsonElement own = Marks(plot).Single(mark => mark.GetProperty("name").GetString() == prediction);
        JsonElement marks = plot.GetProperty("data").EnumerateArray().Single(trace => trace.GetProperty("name").GetString() == "marks");
        int place = marks.GetProperty("text").EnumerateArray().Select(text => text.GetString()).ToList().LastIndexOf(answer);
        double wanted = marks.GetProperty(own.GetProperty("axis").GetString()!)[place].GetDouble();

        double model = PredictionsGivenAway.Compared(ran).Single(one => one.Name == prediction).Facts.GetProperty("model").GetDouble();
        double at = own.GetProperty("from").GetDouble() + (own.GetProperty("times").GetDouble() * model);

        Assert.Equal(wanted, at, 0.002 * Math.Max(1, Math.Abs(wanted)));
    }

    private static async Task<RanLesson> RanAsync(string slug) => (await LessonRun.OfAsync(slug)).ToRan();

    private static IEnumerable<JsonElement> Plots(RanLesson ran) => ran.Outputs.Values.SelectMany(outputs => outputs).Where(output => output.IsHtml)
        .SelectMany(output => output.Read.QuerySelectorAll("script.plot-data")).Select(plot => JsonDocument.Parse(plot.TextContent).RootElement);

    private static IEnumerable<JsonElement> Marks(JsonElement plot) =>
        plot.TryGetProperty("predictions", out JsonElement marks) ? marks.EnumerateArray() : [];
}
