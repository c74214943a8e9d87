using FlapAero.Handouts.Kernels;

namespace FlapAero.Lessons.Tests;

/// <summary>The lesson on round-out and float: which mistake was made, and numbers worked without the library.</summary>
[Trait("Speed", "slow")]
public sealed class RoundOutAndFloatTests
{
    [Theory]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = Fly(up, 0).TouchdownDistance;", "extra speed is missing")]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = Later(up, 10);", "only what the extra speed adds")]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = Fly(up, 10).Float;", "to the round-out is missing")]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = Fly(full, 10).TouchdownDistance;", "with full flap")]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = Fly(up, 10).StopDistance;", "where it stops")]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = Length.FromFeet(Fly(up, 10).TouchdownDistance.Meters);", "in metres")]
    [InlineData("my-load-on-the-wheels", "is-it-the-right-load", "var myLoad = full.Mass * Forced(full, 7).WeightCarriedNoseDown;", "what the wing carries")]
    [InlineData("my-load-on-the-wheels", "is-it-the-right-load", "var myLoad = full.Mass * (1 - Forced(up, 7).WeightCarriedNoseDown);", "with flaps up")]
    [InlineData("my-load-on-the-wheels", "is-it-the-right-load", "var myLoad = full.Mass;", "the whole weight")]
    [InlineData("my-load-on-the-wheels", "is-it-the-right-load", "var myLoad = full.Mass * Forced(full, 7).WeightCarried;", "nose up")]
    public Task Check_WrongAnswer_SaysWhatIsWrong(string answer, string check, string written, string words) =>
        LessonRun.RefusesAsync("round-out-and-float", answer, written, check, words);

    [Theory]
    [InlineData("TrainerH4", "404", "14.2", "76.5", "227")]
    [InlineData("TrainerL2", "448", "23.2", "78.6", "252")]
    public async Task Page_Numbers_AreThoseOfAnotherIntegration(string aeroplane, string later, string ground, string carried, string laterFull)
    {
        // The landing's equations stepped by 2 ms in another language, from the aeroplane's file alone (H4: 404.6, 14.2 %, 227.4; L2: 447.5,
        // 23.2 %, 252.4). Carried, by hand: C_L level over the C_L that just carries the weight 8 kt above the end of the float.
        IReadOnlyDictionary<string, CellResult> results = (await LessonRun.OfAsync("round-out-and-float", aeroplane)).Results;
        string Said(string id) => string.Concat(results[id].Outputs.Select(output => output.Text));

        Assert.Contains($"{later}\u00a0ft", Said("the-prediction-tested"), StringComparison.Ordinal);
        Assert.Contains($"{laterFull}\u00a0ft", Said("only-drag-takes-it-away"), StringComparison.Ordinal);
        Assert.Contains($"{ground}\u00a0%", Said("the-cushion-tested"), StringComparison.Ordinal);
        Assert.Contains($"{carried}\u00a0%", Said("the-push-tested"), StringComparison.Ordinal);
    }
}
