using FlapAero.Equations;

namespace FlapAero.Tests.Scatter;

/// <summary>Which inputs of a scatter vary together, and what is said of a drawn landing that cannot be computed.</summary>
public sealed class ScatterFactorTests
{
    // Each number makes sense, and together they are of no aeroplane: found only when the landing is flown, in a later block.
    [Fact]
    public void Fly_ALandingThatCannotBeComputed_IsRefusedByItsNumberAndInTheCallersWords()
    {
        LandingInput ofNoAeroplane = Spreads.Reference with
        {
            MaximumLift = 1e6,
            ZeroLiftDrag = 3,
            PowerCutHeight = 3,
            PowerCutTime = 0,
        };
        RefusedInputException refusal = Assert.Throws<RefusedInputException>(() => ScatterRun.Fly(
            300, 1,
            (first, inputs) =>
            {
                for (int i = 0; i < inputs.Length; i++)
                    inputs[i] = first + i is 200 or 201 ? ofNoAeroplane : Spreads.Reference;
            },
            new QuantityVoice(variable => LandingVariables.Kind(variable)?.BaseUnitInfo.Value)));
        Assert.StartsWith("Landing 201: ", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("cannot be computed (mass ", refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("_", refusal.Message, StringComparison.Ordinal);
    }

    [Theory, InlineData(0.3), InlineData(0.0)]
    public void Factors_OfASampler_AreTheInputsThatVaryAndTwoThatGoTogetherAreOne(double correlation)
    {
        const int height = (int)LandingVariable.ThresholdHeight, speed = (int)LandingVariable.ThresholdSpeed;
        var sampler = new LandingSampler(
            Spreads.Laws(
                Spreads.Reference,
                (LandingVariable.Mass, DistributionLaw.Normal(1100, 8)), (LandingVariable.Headwind, DistributionLaw.Normal(2, 0.1)),
                (LandingVariable.ThresholdHeight, DistributionLaw.Normal(15, 1)), (LandingVariable.ThresholdSpeed, DistributionLaw.Normal(35, 1))),
            speed, height, correlation);
        int[][] expected = correlation == 0 ? [[0], [8], [height], [speed]] : [[0], [8], [speed, height]];
        Assert.Equal(expected, sampler.Factors);
    }
}
