using FlapAero.Handouts.Kernels;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>The lesson on energy on final: which mistake was made, and numbers worked without the library.</summary>
[Trait("Speed", "slow")]
public sealed class EnergyOnFinalTests
{
    private const string Slug = "energy-on-final";
    private const string Worth = "EnergyHeight.OfExcessSpeed(upSpeed.True, bitFast)";

    [Theory]
    [InlineData(Worth, "speed's part alone")]
    [InlineData("bitHigh + EnergyHeight.OfExcessSpeed(Speed.Zero, bitFast)", "difference of two squares")]
    [InlineData("bitHigh + 2 * " + Worth, "has a half in it")]
    [InlineData("bitHigh - " + Worth, "does not make up for")]
    [InlineData("EnergyHeight.Of(bitHigh, upSpeed.True + bitFast)", "the whole store")]
    [InlineData("Length.FromFeet((bitHigh + " + Worth + ").Meters)", "in metres")]
    public Task Excess_WrongAnswer_SaysWhatIsWrong(string written, string words) =>
        LessonRun.RefusesAsync(Slug, "my-excess", $"var myExcess = {written};", "is-it-the-right-excess", words);

    [Theory]
    [InlineData("plenty / Math.Tan(ours.GlideAngle.Radians)", "the path uses up its own part")]
    [InlineData("plenty / Math.Tan(path.Radians)", "path's angle alone")]
    [InlineData("flapped.FinalNeeded(plenty)", "with full flap")]
    [InlineData("ours.FinalNeeded(hundred)", "for the excess in the table")]
    [InlineData("ours.FinalNeeded(plenty + onPath)", "Only the excess")]
    [InlineData("Length.FromFeet(ours.FinalNeeded(plenty).Meters)", "in metres")]
    public Task Moment_WrongAnswer_SaysWhatIsWrong(string written, string words) =>
        LessonRun.RefusesAsync(Slug, "my-last-moment", $"var myFinal = {written};", "is-it-the-right-moment", words);

    [Theory]
    [InlineData("TrainerH4", 14.7, 2201, 1059, 7.93, 533, 38)]
    [InlineData("TrainerL2", 15.8, 2545, 1179, 9.27, 655, 113)]
    public async Task Page_Numbers_AreThoseOfAnotherIntegration(
        string aeroplane, double speed, double final, double finalFull, double inherited, double further, double furtherFull)
    {
        // By hand, H4: V = 69.27 kt = 35.64 m/s; √(35.64² + 2 × 9.80665 × 30.48) = 43.22 m/s, 14.7 kt more. Flaps up C_D/C_L = 0.0909, the
        // idling propeller 0.0157: 0.1066 a foot, less tan 3.5° = 0.0612: 0.0454, so 100 ft take 2 200 ft. The dive and the landing stepped in
        // another language (20 000 steps; 0.5 ms), from the aeroplane's file alone, the propeller's table read along straight lines.
        IReadOnlyDictionary<string, CellResult> results = (await LessonRun.OfAsync(Slug, aeroplane)).Results;
        double[] Said(string id, string unit) => KeyProblems.Numbers(
            string.Concat(results[id].Outputs.Select(output => output.Text)).Replace("\u202F", "", StringComparison.Ordinal), $"\u00a0?{unit}");

        Assert.Contains(Said("height-as-speed-tested", "kt"), value => Math.Abs(value - speed) < 0.06);
        Assert.Contains(Said("closing-the-throttle-tested", "ft"), value => Math.Abs(value / final - 1) < 0.02);
        Assert.Contains(Said("what-the-throttle-can-do", "ft"), value => Math.Abs(value / finalFull - 1) < 0.02);
        Assert.Contains(Said("what-the-threshold-inherits", "kt"), value => Math.Abs(value - inherited) < 0.15);
        Assert.Contains(Said("nose-down-tested", "ft"), value => Math.Abs(value - further) < 12);
        Assert.Contains(Said("what-the-threshold-inherits", "ft"), value => Math.Abs(value - furtherFull) < 12);
    }

    // By hand, H4: 35.64 m/s down 0.1066 a foot is a sink of 3.78 m/s; two seconds of it are 7.56 m, and half its square over a tenth of g 7.29 m: 48.7 ft.
    // L2: 32.71 m/s down 0.1005 is 3.27 m/s: 6.54 m and 5.45 m, 39.3 ft.
    [Theory]
    [InlineData("TrainerH4", 48.7, "There is not always a go-around"), InlineData("TrainerL2", 39.3, "That clears no obstacle")]
    public async Task GoAround_FromIdle_LosesWhatTheHandSays(string aeroplane, double lost, string words)
    {
        IReadOnlyDictionary<string, CellResult> results = (await LessonRun.OfAsync(Slug, aeroplane)).Results;
        string Text(string id) => string.Concat(results[id].Outputs.Select(output => output.Text));

        Assert.Contains(KeyProblems.Numbers(Text("the-go-around-tested"), "\u00a0?ft"), value => Math.Abs(value - lost) < 1);
        Assert.Equal(aeroplane == "TrainerH4", Text("from-idle-to-a-climb").Contains("never climbs", StringComparison.Ordinal));
        Assert.Contains(words, Text("what-a-go-around-needs"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lesson_OneFlapSetting_SaysSoAndRuns()
    {
        var results = await OneFlapSetting.RunAsync(Slug);

        Assert.All(results, result => Assert.True(result.Value.Failure is null, $"{result.Key}: {result.Value.Failure}"));
        Assert.Contains("one flap setting only", string.Concat(results["the-aeroplane-and-its-final"].Outputs.Select(o => o.Text)), StringComparison.Ordinal);
        Assert.Equal("passed", LessonCopies.Check(results["is-it-the-right-moment"]).Outcome);
    }
}
