using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Published.Tests;

internal static partial class Evaluations
{
    // The gas constant of the introductory textbook's examples, J/(kg K).
    private const double TextbookGasConstant = 287;

    private static Dictionary<string, Evaluation> Atmosphere() => new()
    {
        ["T01-001"] = Of(() => Geometric(0).Temperature.Kelvins),
        ["T01-002"] = Of(() => Geometric(0).Pressure.Pascals),
        ["T01-003"] = Of(() => Geometric(0).Density.KilogramsPerCubicMeter),
        ["T01-004"] = Of(() => Geometric(0).SpeedOfSound.MetersPerSecond),
        ["T01-005"] = Of(() => Geometric(1000).Temperature.Kelvins),
        ["T01-006"] = Of(() => Geometric(1000).Pressure.Pascals),
        ["T01-007"] = Of(() => Geometric(1000).Density.KilogramsPerCubicMeter),
        ["T01-008"] = Of(() => Geometric(1000).SpeedOfSound.MetersPerSecond),
        ["T01-013"] = Of(() => Geometric(11000).Temperature.Kelvins),
        ["T01-014"] = Of(() => Geometric(11000).Pressure.Pascals),
        ["T01-015"] = Of(() => Geometric(11000).Density.KilogramsPerCubicMeter),
        ["T01-016"] = Of(() => Geometric(11000).SpeedOfSound.MetersPerSecond),
        ["T01-017"] = Of(() => Tropopause.Temperature.Kelvins),
        ["T01-018"] = Of(() => Tropopause.Pressure.Pascals),
        ["T01-019"] = Of(() => Tropopause.Density.KilogramsPerCubicMeter),
        ["T01-020"] = Of(() => Tropopause.SpeedOfSound.MetersPerSecond),
        ["T01-021"] = Of(() => TemperaturePressureDensity(500)),
        ["T01-022"] = Of(() => TemperaturePressureDensity(2500)),
        ["T01-023"] = Of(() => TemperaturePressureDensity(6500)),
        ["T01-024"] = Of(() => TemperaturePressureDensity(9000)),
        ["T01-031"] = Of(() => Air.AtTemperature(
            Air.PressureAltitudeOf(Length.FromFeet(5883), Pressure.FromInchesOfMercury(30.10)),
            Temperature.FromDegreesFahrenheit(70)).DensityAltitude.Feet),
        ["T01-032"] = Of(() => Air.PressureAltitudeOf(Length.Zero, Pressure.FromInchesOfMercury(30.10)).Feet),
        ["T01-033"] = Of(() => Air.AtTemperature(
            Length.FromFeet(5718), Temperature.FromDegreesFahrenheit(70)).DensityAltitude.Feet),
        ["T01-038"] = Of(() => Lapse(Air.StandardSeaLevel, Air.Standard(Length.FromFeet(1000)))),
    };

    private static Dictionary<string, Evaluation> Airspeeds() => new()
    {
        ["T01-040"] = Of(() => AirspeedLaws.EquivalentFromTrue(114.2, 0.81935, 1.23)),
        ["T01-042"] = Of(TrueAndEquivalentFromPitot),
        ["T01-043"] = Of(MachTrueAndCalibratedFromPitot),
    };

    private static Air Tropopause => Air.Standard(Length.FromMeters(11000));

    private static Air Geometric(double meters) => Air.Standard(Air.GeopotentialOf(Length.FromMeters(meters)));

    private static double[] TemperaturePressureDensity(double geometric)
    {
        Air air = Geometric(geometric);
        return [air.Temperature.Kelvins, air.Pressure.Pascals, air.Density.KilogramsPerCubicMeter];
    }

    private static double[] Lapse(Air low, Air high) =>
        [low.Temperature.Kelvins - high.Temperature.Kelvins, low.Pressure.InchesOfMercury - high.Pressure.InchesOfMercury];

    private static double[] TrueAndEquivalentFromPitot()
    {
        double[] inputs = [.. PublishedRows.Get("T01-041").Numbers.Select(number => number.Value)];
        double density = inputs[1] / (inputs[3] * inputs[2]);
        // q grows with V², so a unit speed's q is all it takes to turn the law round.
        double speed = Math.Sqrt((inputs[0] - inputs[1]) / AirspeedLaws.DynamicPressure(density, 1));
        return [speed, AirspeedLaws.EquivalentFromTrue(speed, density, 1.226)];
    }

    private static double[] MachTrueAndCalibratedFromPitot()
    {
        const double Total = 42400, Static = 26500, SeaLevelPressure = 1.01e5, SeaLevelSpeedOfSound = 340.3;
        double mach = AirspeedLaws.Mach(Total - Static, Static);
        double speedOfSound = Math.Sqrt(StandardConstants.HeatCapacityRatio * TextbookGasConstant * 230);
        return [mach, mach * speedOfSound, SeaLevelSpeedOfSound * AirspeedLaws.Mach(Total - Static, SeaLevelPressure)];
    }
}
