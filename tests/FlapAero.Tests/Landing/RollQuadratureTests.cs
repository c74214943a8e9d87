using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>The two integrals of a roll to the last digits, on both sides of the place where a series takes over.</summary>
public sealed class RollQuadratureTests
{
    // From 1 to 0 under 1 + E V² the time is arctan(√E)/√E, or artanh(√−E)/√−E.
    [Theory]
    [InlineData(0.5), InlineData(1.1e-3), InlineData(1e-3), InlineData(9.9e-4), InlineData(4e-4), InlineData(1e-5)]
    public void Time_EitherSignOfE_IsTheClosedForm(double squared)
    {
        double root = Math.Sqrt(squared);
        Assert.Equal(Math.Atan(root) / root, RollQuadrature.Time(1, squared, 1, 0), 1e-15);
        Assert.Equal(Math.Atanh(root) / root, RollQuadrature.Time(1, -squared, 1, 0), squared > 1e-4 ? 2e-15 : 1e-14);
    }

    [Fact]
    public void Time_ByTheSeries_GoesOverIntoTheClosedForm() =>
        Assert.Equal(
            RollQuadrature.Time(1, Math.BitIncrement(1e-3), 1, 0), RollQuadrature.Time(1, Math.BitDecrement(1e-3), 1, 0), 1e-15);

    // ∫ dV/(C + E V²) from 20 to 30 with C = 2, E = 0.01: [arctan(0.1·30/√2) − arctan(0.1·20/√2)]/(0.1 √2).
    [Fact]
    public void Time_BetweenTwoSpeeds_IsTheDifferenceOfTwoArcTangents() =>
        Assert.Equal(
            (Math.Atan(3 / Math.Sqrt(2)) - Math.Atan(2 / Math.Sqrt(2))) / (0.1 * Math.Sqrt(2)),
            RollQuadrature.Time(2, 0.01, 30, 20), 1e-14);

    [Theory]
    [InlineData(0.01), InlineData(-0.002), InlineData(1e-7), InlineData(-1e-7)]
    public void Distance_BetweenTwoSpeeds_IsTheLogarithm(double squared) =>
        Assert.Equal(
            Math.Log((2 + squared * 900) / (2 + squared * 400)) / (2 * squared),
            RollQuadrature.Distance(2, squared, 30, 20), 1e-15 / Math.Abs(squared) + 1e-12);

    [Fact]
    public void Distance_NextToNoE_IsThatOfConstantDeceleration() =>
        Assert.Equal(125, RollQuadrature.Distance(2, 1e-30, 30, 20), 1e-12);
}
