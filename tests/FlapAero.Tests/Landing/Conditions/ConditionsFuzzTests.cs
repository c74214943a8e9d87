using CsCheck;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests;

/// <summary>Any wind, gust, idle thrust and odd number: a result, a refusal or an argument error; never NaN, never without end.</summary>
public sealed class ConditionsFuzzTests
{
    private const int Samples = 1000;

    [Fact]
    public void Solve_AnyConditions_EndsInAResultARefusalOrAnArgumentError()
    {
        LandingTally tally = new();
        Gen<double[]> conditions = Gen.Select(
            Gen.Double[-15, 20], Gen.Double[0, 0.6], Gen.Double[-15, 15], Gen.Double[-2, 40], Gen.Double[0.2, 20], Gen.Double[-600, 600],
            (w, p, gust, start, length, idle) => new[] { w, p, gust, start, length, idle });
        Gen<double> odd = Gen.OneOf(Gen.Double[-10, 100], Gen.Double[0, 1], Gen.Double);
        Gen.Select(LandingGenerators.Any, conditions, odd, Gen.Int[0, 4 * LandingInput.Count - 1], Gen.Bool).Sample(
            (usual, c, value, place, brakes) =>
            {
                double[] row = [.. LandingInput.Rows([usual with { IdleThrust = c[5], IdleThrustSlope = -c[5] / 25 }])];
                if (place < row.Length)
                    row[place] = value;
                return tally.Count(() =>
                {
                    WindyLanding flown = WindyLanding.Fly(LandingInput.FromRow(row), c[0], c[1], c[2], c[3], c[4], brakes);
                    return (flown.Outcome, flown.States.All(s => double.IsFinite(s.Speed) && double.IsFinite(s.Drag) && double.IsFinite(s.Headwind)));
                });
            },
            iter: Samples);
        Assert.True(tally.Landed > Samples / 20 && tally.Refused > Samples / 20 && tally.Argued > 0, $"{tally}");
    }

    // An approach that takes ages: the points that are kept must not be as many as its tenths of a second.
    [Fact]
    public void Fly_FromAbsurdlyHigh_EndsAllTheSame()
    {
        LandingSetup usual = UsualLanding.Setup;
        LandingSetup high = usual with { Technique = usual.Technique with { ThresholdHeight = Length.FromKilometers(1e9) } };
        Outcome<LandingResult, LandingRefusal> report = Landing.Fly(high, LandingConditions.Canonical);
        Assert.True(!report.Happened || report.Value.Trajectory.Count < 200_000);
    }
}
