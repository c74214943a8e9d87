using FlapAero.Equations;

namespace FlapAero.Tests.Equations;

/// <summary>Expected pressures come from integrating the hydrostatic equation with Simpson's rule, not from the closed form.</summary>
public sealed class AtmosphereLawsTests
{
    [Theory]
    [InlineData(-500, 291.4)]
    [InlineData(2000, 275.15)]
    [InlineData(11000, 216.65)]
    [InlineData(15000, 216.65)]
    public void StandardTemperature_Altitude_FollowsTheLapseToTheTropopause(double altitude, double kelvins) =>
        Assert.Equal(kelvins, AtmosphereLaws.StandardTemperature(altitude), 1e-9);

    [Theory]
    [InlineData(-500, 107477.51116)]
    [InlineData(0, 101325)]
    [InlineData(2000, 79495.201934)]
    [InlineData(5000, 54019.888188)]
    [InlineData(11000, 22632.040095)]
    [InlineData(15000, 12044.552807)]
    [InlineData(20000, 5474.8774243)]
    public void StandardPressure_Altitude_BalancesTheWeightOfTheAirAbove(double altitude, double pascals) =>
        Assert.Equal(pascals, AtmosphereLaws.StandardPressure(altitude), 1e-4);

    [Fact]
    public void StandardPressure_AcrossTheTropopause_IsContinuous() =>
        Assert.Equal(AtmosphereLaws.StandardPressure(11000), AtmosphereLaws.StandardPressure(11000 + 1e-6), 1e-5);

    [Theory]
    [InlineData(70000, 3012.1805068)]
    [InlineData(10000, 16179.7143539)]
    [InlineData(101325, 0)]
    public void PressureAltitude_Pressure_IsTheAltitudeThatHasIt(double pascals, double altitude) =>
        Assert.Equal(altitude, AtmosphereLaws.PressureAltitude(pascals), 1e-5);

    [Theory]
    [InlineData(1.0, 2064.2957819)]
    [InlineData(0.2, 14796.1559777)]
    public void DensityAltitude_Density_IsTheAltitudeThatHasIt(double density, double altitude) =>
        Assert.Equal(altitude, AtmosphereLaws.DensityAltitude(density), 1e-5);

    // 90 000/(287.05287 · 280) = 90 000/80 374.8036.
    [Fact]
    public void Density_PerfectGas_IsPressureOverGasConstantAndTemperature() =>
        Assert.Equal(1.11975390, AtmosphereLaws.Density(90000, 280), 1e-8);

    [Fact]
    public void SpeedOfSound_250Kelvins_IsThatOfAPerfectGas() =>
        Assert.Equal(316.967671064, AtmosphereLaws.SpeedOfSound(250), 1e-8);

    // ∫ (r/(r + z))² dz from 0 to 5 km: the definition of geopotential altitude, integrated.
    [Fact]
    public void Geopotential_FiveKilometres_IsTheIntegralOfGravity() =>
        Assert.Equal(4996.0702735687, AtmosphereLaws.Geopotential(5000), 1e-8);

    [Fact]
    public void SeaLevelDensity_Constants_IsThePerfectGas() =>
        Assert.Equal(1.225, StandardConstants.SeaLevelDensity, 1e-7);
}
