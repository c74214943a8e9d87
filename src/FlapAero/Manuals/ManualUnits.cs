using FlapAero.AeroplaneFiles;
using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>The units in which manuals print, where an aeroplane's file has none for the kind.</summary>
internal static class ManualUnits
{
    public static readonly UnitSet<PrintedAirspeed> Airspeeds = new(
        "an airspeed",
        ("KIAS", value => new(Speed.FromKnots(value), AirspeedKind.Indicated)),
        ("KCAS", value => new(Speed.FromKnots(value), AirspeedKind.Calibrated)),
        ("KTAS", value => new(Speed.FromKnots(value), AirspeedKind.True)),
        ("mph IAS", value => new(Speed.FromMilesPerHour(value), AirspeedKind.Indicated)),
        ("mph CAS", value => new(Speed.FromMilesPerHour(value), AirspeedKind.Calibrated)),
        ("mph TAS", value => new(Speed.FromMilesPerHour(value), AirspeedKind.True)),
        ("km/h IAS", value => new(Speed.FromKilometersPerHour(value), AirspeedKind.Indicated)),
        ("km/h CAS", value => new(Speed.FromKilometersPerHour(value), AirspeedKind.Calibrated)),
        ("km/h TAS", value => new(Speed.FromKilometersPerHour(value), AirspeedKind.True)));

    public static readonly UnitSet<Speed> Rates = new(
        "a rate of climb", ("ft/min", value => Speed.FromFeetPerMinute(value)), ("m/s", value => Speed.FromMetersPerSecond(value)));

    public static readonly UnitSet<Power> Powers = new(
        "a power", ("hp", value => Power.FromMechanicalHorsepower(value)), ("kW", value => Power.FromKilowatts(value)));

    public static readonly UnitSet<Temperature> Temperatures = new(
        "a temperature",
        ("C", value => Temperature.FromDegreesCelsius(value)), ("°C", value => Temperature.FromDegreesCelsius(value)),
        ("F", value => Temperature.FromDegreesFahrenheit(value)), ("°F", value => Temperature.FromDegreesFahrenheit(value)));

    public static readonly UnitSet<double> Numbers = new("a number", ("", value => value));

    /// <summary>By how much a whole number of a unit may be rounded where a manual prints no decimals.</summary>
    public static double WholeStep(string unit) => unit switch
    {
        "ft/min" or "rpm" => 10,
        "ft" or "m" => 5,
        _ => 1,
    };

    /// <summary>The unit that two spellings share, for a bound in the writer's own.</summary>
    public static double In(object value, string unit) => (value, unit) switch
    {
        (PrintedAirspeed speed, _) => SpeedIn(speed.Value, unit),
        (Mass mass, "lb") => mass.Pounds,
        (Mass mass, _) => mass.Kilograms,
        (Length length, "ft") => length.Feet,
        (Length length, "in") => length.Inches,
        (Length length, "cm") => length.Centimeters,
        (Length length, _) => length.Meters,
        (Area area, "ft2") => area.SquareFeet,
        (Area area, _) => area.SquareMeters,
        (Angle angle, "rad") => angle.Radians,
        (Angle angle, _) => angle.Degrees,
        (Temperature temperature, "F" or "°F") => temperature.DegreesFahrenheit,
        (Temperature temperature, _) => temperature.DegreesCelsius,
        (Power power, "hp") => (double)power.MechanicalHorsepower,
        (Power power, _) => (double)power.Kilowatts,
        (RotationalSpeed turning, "rev/s") => turning.RevolutionsPerSecond,
        (RotationalSpeed turning, _) => turning.RevolutionsPerMinute,
        (Speed speed, _) => SpeedIn(speed, unit),
        _ => (double)value,
    };

    private static double SpeedIn(Speed speed, string unit) => unit switch
    {
        "ft/min" => speed.FeetPerMinute,
        "m/s" => speed.MetersPerSecond,
        _ when unit.StartsWith("mph", StringComparison.Ordinal) => speed.MilesPerHour,
        _ when unit.StartsWith("km/h", StringComparison.Ordinal) => speed.KilometersPerHour,
        _ => speed.Knots,
    };
}
