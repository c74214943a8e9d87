using System.Text.Json;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Rules.AfterARun;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>A prediction is worth making only where nobody has read its number before.</summary>
[Trait("Speed", "slow")]
public sealed class PredictionTests
{
    /// <summary>Each prediction's number is looked for in all that is read before it, earlier lessons too.</summary>
    [Fact]
    public async Task Lesson_Predictions_StandInNothingReadBefore()
    {
        var before = new List<RanLesson>();
        var told = new List<PredictionsGivenAway.Told>();
        var away = new List<string>();
        int predictions = 0;
        foreach (LessonNotebook lesson in LessonCopies.All)
        {
            RanLesson ran = (await LessonRun.OfAsync(lesson.Slug)).ToRan();
            told.AddRange(PredictionsGivenAway.All(ran, before));
            away.AddRange(new PredictionsGivenAway().Faults(ran, before).Select(fault => fault.Words));
            predictions += PredictionsGivenAway.Compared(ran).Count();
            before.Add(ran);
        }

        Assert.True(predictions >= 24, $"only {predictions} predictions were looked for");
        Assert.True(away.Count == 0, string.Join('\n', away));
        IEnumerable<string> gone = PredictionsGivenAway.OfAnotherThing
            .Where(known => !told.Any(found => found.Prediction == known.Prediction && found.Cell.Id == known.Cell)).Select(known => known.Prediction);
        Assert.True(!gone.Any(), $"found no more, to be taken out: {string.Join(", ", gone)}");
    }

    [Theory]
    [InlineData("It stalls at 16.0°.", true)]
    [InlineData("It changes by −16.04°.", true)]
    [InlineData("About 16°, whatever the load.", true)]
    [InlineData("It stalls at 16.1°.", false)]
    [InlineData("It turns at 16.0 kt.", false)]
    [InlineData("Some 20°.", false)]
    [InlineData("0.28 radians", true)]
    public void Numbers_AngleOfSixteenDegrees_IsFoundWhereItIsTold(string text, bool isTold)
    {
        JsonElement facts = JsonDocument.Parse("""
            {
              "model": 16.04,
              "units": [
                { "sign": "°", "words": "degrees", "factor": 1 },
                { "sign": "rad", "words": "radians", "factor": 57.29578 }
              ]
            }
            """).RootElement;

        Assert.Equal(isTold, PredictionsGivenAway.Numbers(facts, text, PredictionsGivenAway.CoarsestInTheLesson).Any());
    }
}
