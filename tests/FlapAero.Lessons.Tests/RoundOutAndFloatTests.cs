using FlapAero.Handouts.Kernels;

namespace FlapAero.Lessons.Tests;

/// <summary>The lesson on round-out and float: which mistake was made, and numbers worked without the library.</summary>
[Trait("Speed", "slow")]
public sealed class RoundOutAndFloatTests
{
    [Theory]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = onSpeedUp.TouchdownDistance;", "extra speed is missing")]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = up.Land(air, Speed.FromKnots(7)).TouchdownDistance - onSpeedUp.TouchdownDistance;", "only what the extra speed adds")]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = up.Land(air, Speed.FromKnots(7)).Float;", "to the round-out is missing")]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = fastUp.TouchdownDistance;", "for ten knots")]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = full.Land(air, Speed.FromKnots(7)).TouchdownDistance;", "with full flap")]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = up.Land(air, Speed.FromKnots(7)).StopDistance;", "where it stops")]
    [InlineData("my-touchdown", "is-it-the-right-touchdown", "var myTouchdown = Length.FromFeet(up.Land(air, Speed.FromKnots(7)).TouchdownDistance.Meters);", "in metres")]
    [InlineData("my-load-on-the-wheels", "is-it-the-right-load", "var myLoad = full.Mass * full.ForcedOn(air, Speed.FromKnots(7)).WeightCarriedNoseDown;", "what the wing carries")]
    [InlineData("my-load-on-the-wheels", "is-it-the-right-load", "var myLoad = full.Mass * (1 - up.ForcedOn(air, Speed.FromKnots(7)).WeightCarriedNoseDown);", "with flaps up")]
    [InlineData("my-load-on-the-wheels", "is-it-the-right-load", "var myLoad = full.Mass;", "the whole weight")]
    [InlineData("my-load-on-the-wheels", "is-it-the-right-load", "var myLoad = full.Mass * full.ForcedOn(air, Speed.FromKnots(7)).WeightCarried;", "nose up")]
    public Task Check_WrongAnswer_SaysWhatIsWrong(string answer, string check, string written, string words) =>
        LessonRun.RefusesAsync("round-out-and-float", answer, written, check, words);

    [Theory]
    [InlineData("TrainerH4", "338", "11.9", "84.2", "195")]
    [InlineData("TrainerL2", "358", "19.4", "86.4", "208")]
    public async Task Page_Numbers_AreThoseOfAnotherIntegration(string aeroplane, string later, string ground, string carried, string laterFull)
    {
        // The landing's equations stepped by 0.5 ms in another language, from the aeroplane's file alone (H4: 337.9, 11.86 %, 84.15 %, 194.5; L2:
        // 358.0, 19.43 %, 86.43 %, 208.4). Carried: C_L level over the C_L that just carries the weight 8 kt above the end of the float.
        IReadOnlyDictionary<string, CellResult> results = (await LessonRun.OfAsync("round-out-and-float", aeroplane)).Results;
        string Said(string id) => string.Concat(results[id].Outputs.Select(output => output.Text)).Replace('\n', ' ');

        Assert.Contains($"{later}\u00a0ft", Said("the-prediction-tested"), StringComparison.Ordinal);
        Assert.Contains($"{laterFull}\u00a0ft", Said("where-the-extra-speed-goes"), StringComparison.Ordinal);
        Assert.Contains($"{ground}\u00a0%", Said("the-cushion-tested"), StringComparison.Ordinal);
        Assert.Contains($"{carried}\u00a0%", Said("the-push-tested"), StringComparison.Ordinal);
    }
}
