using CsCheck;
using UnitsNet;

namespace FlapAero.Tests.Properties;

public sealed class WindProperties
{
    [Fact]
    public void WindComponents_Squared_SumToTheWindSquared() =>
        Gen.Select(Gen.Double[0, 360], Gen.Double[0.1, 100], Gen.Double[0, 360]).Sample(
            (from, speed, heading) =>
            {
                Wind wind = new(Angle.FromDegrees(from), Speed.FromKnots(speed));
                double along = wind.Headwind(Angle.FromDegrees(heading)).Knots;
                double across = wind.Crosswind(Angle.FromDegrees(heading)).Knots;
                Close.To(speed * speed, along * along + across * across);
            },
            iter: Generators.Many);

    [Fact]
    public void WindComponents_OppositeHeading_ChangeSign() =>
        Gen.Select(Gen.Double[0, 360], Gen.Double[0, 100], Gen.Double[0, 180]).Sample(
            (from, speed, heading) =>
            {
                Wind wind = new(Angle.FromDegrees(from), Speed.FromKnots(speed));
                Angle there = Angle.FromDegrees(heading), back = Angle.FromDegrees(heading + 180);
                Assert.Equal(-wind.Headwind(there).Knots, wind.Headwind(back).Knots, 1e-10);
                Assert.Equal(-wind.Crosswind(there).Knots, wind.Crosswind(back).Knots, 1e-10);
            },
            iter: Generators.Many);

    [Fact]
    public void WindProfiles_AtTenMetres_AreTheReference() =>
        Gen.Select(Gen.Double[-60, 60], Gen.Double[0, 0.6], Gen.Double[0.0001, 2]).Sample(
            (knots, exponent, roughness) =>
            {
                Length tenMetres = Length.FromMeters(10);
                Close.To(knots, WindProfile.PowerLaw(Speed.FromKnots(knots), exponent).At(tenMetres).Knots);
                Close.To(knots, WindProfile.Logarithmic(Speed.FromKnots(knots), Length.FromMeters(roughness)).At(tenMetres).Knots);
            },
            iter: Generators.Many);

    [Fact]
    public void WindProfiles_Higher_BlowNoLess() =>
        Gen.Select(Gen.Double[0.1, 60], Gen.Double[0, 0.6], Gen.Double[0.0001, 2], Gen.Double[0, 590], Gen.Double[0, 10]).Sample(
            (knots, exponent, roughness, height, higher) =>
            {
                WindProfile power = WindProfile.PowerLaw(Speed.FromKnots(knots), exponent);
                WindProfile logarithmic = WindProfile.Logarithmic(Speed.FromKnots(knots), Length.FromMeters(roughness));
                Length low = Length.FromMeters(height), high = Length.FromMeters(height + higher);
                Assert.True(power.At(high) >= power.At(low));
                Assert.True(logarithmic.At(high) >= logarithmic.At(low));
            },
            iter: Generators.Many);

    [Fact]
    public void GustAdditive_SumOfGusts_IsTheSumOfAdditives() =>
        Gen.Select(Gen.Double[0, 30], Gen.Double[0, 30], Gen.Double[0, 1]).Sample(
            (one, other, share) => Assert.Equal(
                Gust.Additive(Speed.FromKnots(one), share).Knots + Gust.Additive(Speed.FromKnots(other), share).Knots,
                Gust.Additive(Speed.FromKnots(one + other), share).Knots,
                1e-10),
            iter: Generators.Many);
}
