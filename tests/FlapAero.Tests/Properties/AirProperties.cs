using CsCheck;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests.Properties;

public sealed class AirProperties
{
    private static readonly Gen<(Air Air, double Mach)> Subsonic =
        Gen.Select(Generators.StandardAirs, Gen.Double[0.01, 0.99], (air, mach) => (air, mach));

    [Fact]
    public void PressureAltitude_OfStandardPressure_IsTheAltitude() =>
        Gen.Double[-1000, 20000].Sample(
            altitude => Assert.Equal(altitude, AtmosphereLaws.PressureAltitude(AtmosphereLaws.StandardPressure(altitude)), 1e-7),
            iter: Generators.Many);

    [Fact]
    public void DensityAltitude_OfStandardAir_IsThePressureAltitude() =>
        Generators.StandardAirs.Sample(
            air => Assert.Equal(air.PressureAltitude.Meters, air.DensityAltitude.Meters, 1e-7), iter: Generators.Many);

    [Fact]
    public void OfDensity_AnyAltitude_IsTheStandardAirThere()
    {
        foreach (double metres in (double[])[-1000, -30, 0, 3048, 11_000, 15_000, 20_000])
        {
            Air standard = Air.Standard(Length.FromMeters(metres)), same = Air.OfDensity(standard.Density);
            Close.To(standard.Density.KilogramsPerCubicMeter, same.Density.KilogramsPerCubicMeter);
            Close.To(standard.Temperature.Kelvins, same.Temperature.Kelvins);
            Assert.Equal(metres, same.PressureAltitude.Meters, 1e-7);
        }

        Assert.StartsWith(
            "density: 0.01 kg/m³ is refused; allowed is 0.088035 kg/m³ to 1.347 kg/m³.",
            Assert.Throws<RefusedInputException>(() => Air.OfDensity(Density.FromKilogramsPerCubicMeter(0.01))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void DensityAltitude_WarmAir_IsAboveThePressureAltitude() =>
        Gen.Select(Gen.Double[-1000, 6000], Gen.Double[0.1, 25]).Sample(
            (altitude, warmer) =>
            {
                Air air = Air.OffStandard(Length.FromMeters(altitude), TemperatureDelta.FromDegreesCelsius(warmer));
                Assert.True(air.DensityAltitude > air.PressureAltitude);
            },
            iter: Generators.Many);

    [Fact]
    public void PressureAndDensity_Higher_AreLess() =>
        Gen.Select(Gen.Double[-1000, 19000], Gen.Double[1, 1000]).Sample(
            (altitude, climb) =>
            {
                Air low = Air.Standard(Length.FromMeters(altitude));
                Air high = Air.Standard(Length.FromMeters(altitude + climb));
                Assert.True(high.Pressure < low.Pressure && high.Density < low.Density);
            },
            iter: Generators.Many);

    [Fact]
    public void Geopotential_AboveTheSurface_IsLessThanGeometric() =>
        Gen.Double[0.001, 20000].Sample(
            geometric => Assert.True(Air.GeopotentialOf(Length.FromMeters(geometric)).Meters < geometric), iter: Generators.Many);

    [Fact]
    public void TrueAirspeed_ThroughCalibrated_ComesBack() =>
        Subsonic.Sample(
            flight =>
            {
                Airspeed there = Airspeed.FromTrue(flight.Air.SpeedOfSound * flight.Mach, flight.Air);
                Close.To(there.True.Knots, Airspeed.FromCalibrated(there.Calibrated, flight.Air).True.Knots, 1e-9);
            },
            iter: Generators.Many);

    [Fact]
    public void TrueAirspeed_ThroughEquivalent_ComesBack() =>
        Subsonic.Sample(
            flight =>
            {
                Airspeed there = Airspeed.FromTrue(flight.Air.SpeedOfSound * flight.Mach, flight.Air);
                Close.To(there.True.Knots, Airspeed.FromEquivalent(there.Equivalent, flight.Air).True.Knots);
            },
            iter: Generators.Many);

    [Fact]
    public void Airspeeds_AtAltitude_AreOrdered() =>
        Gen.Select(Gen.Double[10, 20000], Gen.Double[0.05, 0.99]).Sample(
            (altitude, mach) =>
            {
                Air air = Air.Standard(Length.FromMeters(altitude));
                Airspeed airspeed = Airspeed.FromTrue(air.SpeedOfSound * mach, air);
                Assert.True(airspeed.True >= airspeed.Equivalent, "TAS is at least EAS in thinner air.");
                Assert.True(airspeed.Calibrated >= airspeed.Equivalent, "Compression raises the needle.");
            },
            iter: Generators.Many);

    [Fact]
    public void IndicatedAndCalibrated_ThroughEachOther_ComeBack() =>
        Gen.Select(Generators.Configurations, Gen.Double[0.001, 0.999]).Sample(
            (configuration, share) =>
            {
                AirspeedCalibration table = configuration.Flaps.Calibration;
                Speed indicated = table.Rows[0].Indicated + share * (table.Rows[^1].Indicated - table.Rows[0].Indicated);
                Close.To(indicated.Knots, table.Indicated(table.Calibrated(indicated)).Knots);
            },
            iter: Generators.Many);

    [Fact]
    public void DynamicPressure_OfEquivalentAtSeaLevel_IsTheSame() =>
        Subsonic.Sample(
            flight =>
            {
                Airspeed airspeed = Airspeed.FromTrue(flight.Air.SpeedOfSound * flight.Mach, flight.Air);
                double equivalent = airspeed.Equivalent.MetersPerSecond;
                Close.To(0.5 * StandardConstants.SeaLevelDensity * equivalent * equivalent, airspeed.DynamicPressure.Pascals);
            },
            iter: Generators.Many);
}
