using CsCheck;
using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>The two integrals of a roll to the last digits, on both sides of the places where another form takes over.</summary>
public sealed class RollLawTests
{
    // From 1 to 0 under 1 + E V² the time is arctan(√E)/√E, or artanh(√−E)/√−E.
    [Theory]
    [InlineData(0.5), InlineData(1.1e-3), InlineData(1e-3), InlineData(9.9e-4), InlineData(4e-4), InlineData(1e-5)]
    public void Time_EitherSignOfE_IsTheClosedForm(double squared)
    {
        double root = Math.Sqrt(squared);
        Assert.Equal(Math.Atan(root) / root, new RollLaw(1, 0, squared).Time(1, 0), 1e-15);
        Assert.Equal(Math.Atanh(root) / root, new RollLaw(1, 0, -squared).Time(1, 0), squared > 1e-4 ? 2e-15 : 1e-14);
    }

    [Fact]
    public void Time_ByTheSeries_GoesOverIntoTheClosedForm() => Assert.Equal(
        new RollLaw(1, 0, Math.BitIncrement(1e-3)).Time(1, 0), new RollLaw(1, 0, Math.BitDecrement(1e-3)).Time(1, 0), 1e-15);

    // ∫ dV/(C + E V²) from 20 to 30 with C = 2, E = 0.01: [arctan(0.1·30/√2) − arctan(0.1·20/√2)]/(0.1 √2).
    [Fact]
    public void Time_BetweenTwoSpeeds_IsTheDifferenceOfTwoArcTangents() => Assert.Equal(
        (Math.Atan(3 / Math.Sqrt(2)) - Math.Atan(2 / Math.Sqrt(2))) / (0.1 * Math.Sqrt(2)), new RollLaw(2, 0, 0.01).Time(30, 20), 1e-14);

    [Theory]
    [InlineData(0.01), InlineData(-0.002), InlineData(1e-7), InlineData(-1e-7)]
    public void Distance_BetweenTwoSpeeds_IsTheLogarithm(double squared) => Assert.Equal(
        Math.Log((2 + squared * 900) / (2 + squared * 400)) / (2 * squared), new RollLaw(2, 0, squared).Distance(30, 20),
        1e-15 / Math.Abs(squared) + 1e-12);

    /// <summary>A thrust that grows with the airspeed leaves least deceleration half-way; the arc tangent is past a quarter turn.</summary>
    [Theory]
    [InlineData(0.26493, -0.027769, 0.00076171, 29.2, 16.9)]
    [InlineData(1.2, -0.2, 0.009, 30, 0)]
    [InlineData(1.2, -0.2, 0.009, 22.3, 0)]
    [InlineData(0.30, -0.027769, 0.00076171, 29.2, 16.9)]
    public void TimeAndDistance_LeastDecelerationHalfWay_AreTheIntegrals(double constant, double linear, double squared, double from, double to)
    {
        var law = new RollLaw(constant, linear, squared);
        double Over(Func<double, double> of) => MathNet.Numerics.Integration.DoubleExponentialTransformation.Integrate(of, to, from, 1e-12);

        Assert.True(law.Slows(from, to));
        Assert.Equal(1, law.Time(from, to) / Over(v => 1 / law.At(v)), 1e-9);
        Assert.Equal(1, law.Distance(from, to) / Over(v => v / law.At(v)), 1e-9);
    }

    [Fact]
    public void Distance_NextToNoE_IsThatOfConstantDeceleration() => Assert.Equal(125, new RollLaw(2, 0, 1e-30).Distance(30, 20), 1e-12);

    // Under C + B V: t = ln(a₁/a₂)/B, x = (V₁ − V₂)/B − (C/B) t, also where E is all but nothing.
    [Theory]
    [InlineData(2.0, 0.05, 0.0, 30.0, 0.0), InlineData(0.001, 0.05, 0.0, 30.0, 0.0), InlineData(2.0, -0.05, 1e-18, 30.0, 12.0)]
    public void LinearLaw_BetweenTwoSpeeds_IsTheClosedForm(double constant, double linear, double squared, double from, double to)
    {
        RollLaw law = new(constant, linear, squared);
        double time = Math.Log((constant + linear * from) / (constant + linear * to)) / linear;
        Assert.Equal(time, law.Time(from, to), 1e-12 * time);
        double distance = (from - to) / linear - constant / linear * time;
        Assert.Equal(distance, law.Distance(from, to), 1e-11 * distance);
    }

    // All three terms, of any sign, against many small steps of Simpson's rule in the speed.
    [Fact]
    public void AnyLaw_BetweenTwoSpeeds_IsTheIntegral() =>
        Gen.Select(Gen.Double[0.05, 4], Gen.Double[-0.1, 0.1], Gen.Double[-0.004, 0.004], Gen.Double[15, 40], Gen.Double[0, 0.95], Gen.Int[0, 12]).Sample(
            (constant, linear, squared, from, share, smaller) =>
            {
                // The square's share becomes anything down to nothing, across the place where the rule takes over.
                RollLaw law = new(constant, linear, squared * Math.Pow(10, -smaller));
                double to = share * from;
                if (!law.Slows(from, to) || law.At(from) < 0.05 || law.At(to) < 0.05 || law.At(0.5 * (from + to)) < 0.05)
                    return;
                const int steps = 4000;
                double time = 0, distance = 0, width = (from - to) / steps;
                for (int i = 0; i <= steps; i++)
                {
                    double weight = i is 0 or steps ? 1 : i % 2 == 0 ? 2 : 4, speed = to + i * width;
                    time += weight * width / 3 / law.At(speed);
                    distance += weight * width / 3 * speed / law.At(speed);
                }

                Assert.Equal(time, law.Time(from, to), 1e-8 * time);
                Assert.Equal(distance, law.Distance(from, to), 1e-8 * distance);
            });

    // A law that pushes between two speeds at which it slows.
    [Fact]
    public void Slows_DipBelowZeroOnTheWay_IsSeen()
    {
        Assert.False(new RollLaw(1, -0.2, 0.009).Slows(30, 0));
        Assert.True(new RollLaw(1.2, -0.2, 0.009).Slows(30, 0));
        Assert.True(new RollLaw(1, -0.2, 0.009).Slows(30, 17));
        Assert.False(new RollLaw(-0.1, 0, 0.01).Slows(30, 0));
        Assert.True(new RollLaw(1, 0, 0).Slows(30, 0));
    }
}
