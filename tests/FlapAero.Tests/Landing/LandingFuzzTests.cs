using CsCheck;
using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Any numbers: a result, a refusal or an argument error; never NaN, never without end.</summary>
public sealed class LandingFuzzTests
{
    private const int Samples = 10_000;

    private static readonly double[] Edges =
        [double.NaN, double.PositiveInfinity, double.NegativeInfinity, 0, -1, double.Epsilon, double.MaxValue, double.MinValue, 1e300, 1e-300];

    [Fact]
    public void Solve_AnyNumbersAmongUsualOnes_EndsInAResultARefusalOrAnArgumentError()
    {
        LandingTally tally = new();
        Gen<double> odd = Gen.Frequency((3, Gen.Double[-10, 100]), (2, Gen.Double[0, 1]), (2, Gen.Double), (2, Gen.Int[0, Edges.Length - 1].Select(i => Edges[i])), (2, Gen.Double[0, 1e4]));
        Gen.Select(LandingGenerators.Any, odd.Array[3], Gen.Int[0, LandingInput.Count - 1].Array[3], Gen.Int[1, 3]).Sample(
            (usual, values, places, count) =>
            {
                double[] row = [.. LandingInput.Rows([usual])];
                for (int i = 0; i < count; i++)
                    row[places[i]] = values[i];
                LandingInput input = LandingInput.FromRow(row);
                return tally.Count(() => (LandingSolver.Solve(input), true), () => LandingCheck.MakesSense(input));
            },
            iter: Samples);
        Assert.True(tally.Landed > Samples / 10 && tally.Refused > Samples / 20 && tally.Argued > Samples / 10, $"{tally}");
    }

    [Theory]
    [InlineData("mass", -1.0, "above 0")]
    [InlineData("flare_time_constant", 0.0, "above 0")]
    [InlineData("hold_off_height", -0.1, "above 0")]
    [InlineData("touchdown_lift_fraction", 1.0, "above 0 and below 1")]
    [InlineData("nose_lower_speed_fraction", 0.0, "above 0 and below 1")]
    [InlineData("threshold_speed", 2.0, "more than the headwind, 2.5")]
    [InlineData("density", double.NaN, "above 0")]
    [InlineData("idle_thrust", double.PositiveInfinity, "a finite number")]
    [InlineData("power_cut_time", -0.5, "0 or more")]
    public void Solve_InputWithoutSense_NamesInputValueAndWhatIsAllowed(string column, double value, string allowed)
    {
        double[] row = [.. LandingInput.Rows([UsualLanding.Setup.Checked() with { Headwind = 2.5 }])];
        row[LandingColumn.All.ToList().FindIndex(known => known.Name == column)] = value;
        var error = Assert.Throws<RefusedInputException>(() => LandingSolver.Solve(LandingInput.FromRow(row)));
        Assert.Equal(column, error.ParamName);
        Assert.Contains(column + ": " + value.ToString("g6", System.Globalization.CultureInfo.InvariantCulture), error.Message, StringComparison.Ordinal);
        Assert.Contains(allowed, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Solve_TailwindThatNoPathMeets_IsAnArgumentError() =>
        Assert.Contains("path_angle_deg", Assert.Throws<RefusedInputException>(() =>
            LandingSolver.Solve(UsualLanding.Setup.Checked() with { Headwind = -60, PathAngleDegrees = 45 })).Message, StringComparison.Ordinal);

    [Fact]
    public void Solve_ManyWithOneWithoutSense_SaysWhich()
    {
        LandingInput usual = UsualLanding.Setup.Checked();
        var error = Assert.Throws<RefusedInputException>(() =>
            LandingSolver.Solve([usual, usual with { Mass = 0 }], new LandingOutcome[2]));
        Assert.StartsWith("Landing 2: mass: 0 is refused", error.Message, StringComparison.Ordinal);
    }
}
