using FlapAero.Equations;

namespace FlapAero.Tests.Equations;

/// <summary>
/// Expected values at 3 000 m (70 108.526496 Pa, 328.577928 m/s, 0.909121862 kg/m³) and 60 m/s come from the series
/// q_c = q (1 + M²/4 + M⁴/40 + M⁶/1600), turned round by bisection.
/// </summary>
public sealed class AirspeedLawsTests
{
    private const double Pressure = 70108.52649606044;
    private const double SpeedOfSound = 328.577928254014;
    private const double Density = 0.90912186121629;

    [Fact]
    public void ImpactPressure_MachThreeTenths_IsThatOfTheSeries() =>
        Assert.Equal(3221.514310, AirspeedLaws.ImpactPressure(0.3, 50000), 1e-5);

    [Fact]
    public void ImpactPressure_SixtyMetresPerSecond_IsThatOfTheSeries() =>
        Assert.Equal(1650.10631889, AirspeedLaws.ImpactPressure(60 / SpeedOfSound, Pressure), 1e-6);

    [Fact]
    public void Mach_ImpactPressure_IsTheInverse() =>
        Assert.Equal(0.3, AirspeedLaws.Mach(3221.514310, 50000), 1e-9);

    [Fact]
    public void CalibratedFromTrue_AtThreeKilometres_IsThatOfTheSeries() =>
        Assert.Equal(51.75448047, AirspeedLaws.CalibratedFromTrue(60, Pressure, SpeedOfSound), 1e-7);

    [Fact]
    public void TrueFromCalibrated_AtThreeKilometres_IsThatOfTheSeries() =>
        Assert.Equal(60, AirspeedLaws.TrueFromCalibrated(51.75448047, Pressure, SpeedOfSound), 1e-7);

    [Fact]
    public void EquivalentFromTrue_AtThreeKilometres_HasTheSameDynamicPressureAtSeaLevel() =>
        Assert.Equal(51.688539, AirspeedLaws.EquivalentFromTrue(60, Density), 1e-5);

    [Fact]
    public void EquivalentFromTrue_OwnSeaLevelDensity_TakesIt() =>
        Assert.Equal(50, AirspeedLaws.EquivalentFromTrue(100, 0.3, 1.2), 1e-12);

    [Fact]
    public void TrueFromEquivalent_AtThreeKilometres_IsTheInverse() =>
        Assert.Equal(60, AirspeedLaws.TrueFromEquivalent(51.688539, Density), 1e-5);

    // ½ · 1.2 · 30² = 540.
    [Fact]
    public void DynamicPressure_ThirtyMetresPerSecond_IsHalfDensityTimesSquare() =>
        Assert.Equal(540, AirspeedLaws.DynamicPressure(1.2, 30), 1e-10);
}
