using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests.Scatter;

/// <summary>Which input moves the result: linear where the landing is, honest about landings that cannot happen.</summary>
public sealed class SensitivityTests
{
    private static LandingScatter Demo(double speedHeightCorrelation = 0) => DemoPilot.Scatter(
        DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FlapsUp), Air.StandardSeaLevel, speedHeightCorrelation);

    [Fact]
    public void Sensitivity_OfSmallWidths_IsTheLinearShares()
    {
        LandingSpread endless = Spreads.Inputs(Spreads.Reference) with
        {
            ThresholdSpeed = Distribution.Normal(Speed.FromMetersPerSecond(36.802), Speed.FromMetersPerSecond(0.05)),
            BrakingFriction = Distribution.Normal(0.333762, 0.01),
        };
        // An unbounded normal reaches impossible values: the edges are far out.
        RefusedInputException refusal = Assert.Throws<RefusedInputException>(() => new LandingScatter(endless));
        Assert.Contains("threshold speed", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("truncate", refusal.Message, StringComparison.Ordinal);
        LandingSpread inputs = endless with
        {
            ThresholdSpeed = Distribution.TruncatedNormal(
                Speed.FromMetersPerSecond(36.802), Speed.FromMetersPerSecond(0.05), Speed.FromMetersPerSecond(30), Speed.FromMetersPerSecond(40)),
            BrakingFriction = Distribution.TruncatedNormal(0.333762, 0.01, 0.1, 0.5),
        };

        LandingSensitivity sensitivity = new LandingScatter(inputs).Sensitivity(2000, resamples: 200);

        double Shift(int column, double step)
        {
            double At(double by)
            {
                double[] row = Spreads.Row(Spreads.Reference);
                row[column] += by;
                return LandingSolver.Solve(LandingInput.FromRow(row)).StopDistance;
            }

            return At(step / 2) - At(-step / 2);
        }

        double speed = Math.Pow(Shift(10, 0.05), 2);
        double brakes = Math.Pow(Shift(22, 0.01), 2);
        SensitivityIndex OfSpeed(IReadOnlyList<SensitivityIndex> shares) =>
            shares.Single(index => index.Inputs[0] == LandingVariable.ThresholdSpeed);
        Assert.Equal(0, sensitivity.RowsLeftOut);
        Assert.Equal(speed / (speed + brakes), OfSpeed(sensitivity.StopDistance).FirstOrder.Value, 0.06);
        Assert.Equal(speed / (speed + brakes), OfSpeed(sensitivity.StopDistance).Total.Value, 0.06);
        // Brakes do not move the touchdown.
        Assert.Equal(1, OfSpeed(sensitivity.TouchdownDistance).Total.Value, 0.06);
        Assert.Equal(0, sensitivity.TouchdownDistance[^1].Total.Value);
    }

    [Fact]
    public void Sensitivity_OfTheDemoPilot_IsMovedMostByThresholdSpeedAndAddsUp()
    {
        LandingSensitivity sensitivity = Demo().Sensitivity(2000, resamples: 200);
        Assert.Equal(LandingVariable.ThresholdSpeed, Assert.Single(sensitivity.TouchdownDistance[0].Inputs));
        // Interactions are counted in every total and in no first order.
        Assert.True(sensitivity.StopDistance.Sum(index => index.FirstOrder.Low) < 1);
        Assert.True(sensitivity.StopDistance.Sum(index => index.Total.High) > 1);
        Assert.All(sensitivity.StopDistance, index => Assert.InRange(index.Total.Value, index.Total.Low, index.Total.High));
    }

    [Fact]
    public void Sensitivity_OfACorrelatedPair_IsOneShareOfBoth()
    {
        LandingScatter scatter = Demo(0.5);
        LandingSensitivity sensitivity = scatter.Sensitivity(500, resamples: 50);
        Assert.Equal(
            [LandingVariable.ThresholdSpeed, LandingVariable.ThresholdHeight],
            sensitivity.TouchdownDistance.Single(index => index.Inputs.Count == 2).Inputs);
        Assert.DoesNotContain(sensitivity.TouchdownDistance, index => index.Inputs is [LandingVariable.ThresholdHeight]);
    }

    [Fact]
    public void Sensitivity_WithManyRefused_IsRefusedUnlessAllowed()
    {
        LandingScatter scatter = Demo()
            .With(new() { ThresholdSpeed = Distribution.Uniform(Speed.FromKnots(59), Speed.FromKnots(80)) });
        RefusedInputException refusal = Assert.Throws<RefusedInputException>(() => scatter.Sensitivity(400, resamples: 20));
        Assert.Contains("cannot happen", refusal.Message, StringComparison.Ordinal);
        Assert.InRange(scatter.Sensitivity(400, maximumRefusedShare: 0.5, resamples: 20).RowsLeftOut, 5, 200);
    }

    [Fact]
    public void Sensitivity_OfNothing_IsRefused() =>
        Assert.Contains(
            "fixed",
            Assert.Throws<RefusedInputException>(() => new LandingScatter(Spreads.Inputs(Spreads.Reference)).Sensitivity()).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Sensitivity_BySameSeed_IsTheSameWhateverTheThreads()
    {
        LandingSensitivity one = Demo().Sensitivity(300, seed: 4, resamples: 50, threads: 1);
        LandingSensitivity two = Demo().Sensitivity(300, seed: 4, resamples: 50, threads: 2);
        Assert.Equal(
            one.StopDistance.Select(index => (index.FirstOrder.Value, index.Total.Low, index.Total.High)),
            two.StopDistance.Select(index => (index.FirstOrder.Value, index.Total.Low, index.Total.High)));
    }

    [Theory, InlineData(99, 0.95, 0.01, 100), InlineData(200, 0.4, 0.01, 100), InlineData(200, double.NaN, 0.01, 100)]
    [InlineData(200, 0.95, -0.1, 100), InlineData(200, 0.95, 0.6, 100), InlineData(200, 0.95, 0.01, 9)]
    public void Sensitivity_OfNonsense_IsRefused(int rows, double confidence, double share, int resamples) =>
        Assert.Throws<RefusedInputException>(() => Demo().Sensitivity(rows, 1, share, resamples, confidence));
}
