using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Ends that are hard to find: grazed by the lift, or a moment after the thrust's kink. The usual tolerance finds them like a tight one.</summary>
public sealed class CloseEndTests
{
    private const double Tight = 1e-11;
    private const double Allowed = 5e-5;

#if MUTATION_RUN
    private const int Many = 600;
#else
    private const int Many = 20_000;
#endif

    [Fact]
    public void Solve_ManyDrawnLandings_AgreeWithATightTolerance()
    {
        LandingInput[] inputs = [.. Drawn(Many)];
        var outcomes = new LandingOutcome[inputs.Length];
        LandingSolver.Solve(inputs, outcomes);
        int landed = 0;
        for (int i = 0; i < inputs.Length; i++)
            landed += AssertClose(inputs[i], outcomes[i]) ? 1 : 0;
        Assert.True(landed > Many / 2, $"{landed} landed");
    }

    // The power goes at once, so shortly before an end that the last stretch to it held the jump.
    [Theory]
    [InlineData(0.01, false), InlineData(0.05, false), InlineData(0.09, false), InlineData(0.01, true), InlineData(0.04, true)]
    public void Solve_PowerCutJustBeforeAnEnd_AgreesWithATightTolerance(double before, bool holdOff)
    {
        int landed = 0;
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Cases)
        {
            LandingInput input = landing.Input with { PowerCutTime = 0 };
            for (int i = 0; i < 6; i++)
            {
                LandingOutcome at = LandingSolver.Solve(input, Tight);
                double end = holdOff ? at.HoldOffEndTime : at.TouchdownTime;
                double height = (at.FlareHeight - input.HoldOffHeight) * Math.Exp((at.FlareStartTime - end + before) / input.FlareTimeConstant);
                if (at.Refusal == LandingRefusal.None && end - before > at.FlareStartTime)
                    input = input with { PowerCutHeight = input.HoldOffHeight + height };
            }

            landed += AssertClose(input, LandingSolver.Solve(input)) ? 1 : 0;
        }

        Assert.True(3 * landed > ReferenceLandings.Cases.Count, $"{landed} landed");
    }

    // With the wing carrying more than the weight on the wheels, and the throttle still closing, the roll begins above the lift-off speed.
    [Fact]
    public void Solve_WheelsThatTakeUpWeightWhileTheThrottleCloses_AgreesWithATightTolerance()
    {
        int landed = 0;
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Cases)
        {
            LandingInput input = landing.Input;
            LandingInput light = input with
            {
                NoseHighLift = 1.1 * input.TouchdownLiftFraction * input.MaximumLift,
                PowerCutHeight = input.HoldOffHeight + 0.5,
                PowerCutTime = 12,
            };
            landed += AssertClose(light, LandingSolver.Solve(light)) ? 1 : 0;
        }

        Assert.True(3 * landed > ReferenceLandings.Cases.Count, $"{landed} landed");
    }

    private static bool AssertClose(in LandingInput input, in LandingOutcome outcome)
    {
        LandingOutcome tight = LandingSolver.Solve(input, Tight);
        Assert.Equal(tight.Refusal, outcome.Refusal);
        if (tight.Refusal != LandingRefusal.None)
            return false;
        ReadOnlySpan<double> expected = LandingOutcome.Results(tight), actual = LandingOutcome.Results(outcome);
        for (int i = 0; i < expected.Length; i++)
        {
            double error = Math.Abs(actual[i] / expected[i] - 1);
            Assert.True(error < Allowed, $"{ResultColumns.Names[i]}: off by {error:e1} in {input}");
        }

        return true;
    }

    // The same landings in every run: what is rare is either among them or not.
    private static IEnumerable<LandingInput> Drawn(int count)
    {
        Random random = new(20);
        for (int i = 0; i < count; i++)
            yield return LandingGenerators.Between(() => random.NextDouble());
    }
}
