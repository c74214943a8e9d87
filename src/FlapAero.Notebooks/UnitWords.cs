using UnitsNet;
using UnitsNet.Units;

namespace FlapAero.Notebooks;

/// <summary>The units in which students give an answer by mistake, and what they are called.</summary>
internal static class UnitWords
{
    /// <summary>Units of the same kind of quantity that are taken for one another.</summary>
    internal static IReadOnlyList<Enum> MistakenFor(IQuantity quantity) => quantity switch
    {
        Speed => [SpeedUnit.MeterPerSecond, SpeedUnit.Knot, SpeedUnit.MilePerHour, SpeedUnit.KilometerPerHour, SpeedUnit.FootPerMinute, SpeedUnit.FootPerSecond],
        Length => [LengthUnit.Meter, LengthUnit.Foot, LengthUnit.NauticalMile, LengthUnit.Mile, LengthUnit.Kilometer],
        Mass => [MassUnit.Kilogram, MassUnit.Pound],
        Angle => [AngleUnit.Radian, AngleUnit.Degree],
        Temperature => [TemperatureUnit.DegreeFahrenheit, TemperatureUnit.DegreeCelsius, TemperatureUnit.Kelvin],
        Pressure => [PressureUnit.InchOfMercury, PressureUnit.Hectopascal, PressureUnit.Pascal],
        Density => [DensityUnit.SlugPerCubicFoot, DensityUnit.PoundPerCubicFoot, DensityUnit.KilogramPerCubicMeter],
        RotationalSpeed => [RotationalSpeedUnit.RevolutionPerSecond, RotationalSpeedUnit.RevolutionPerMinute, RotationalSpeedUnit.RadianPerSecond],
        Force => [ForceUnit.Newton, ForceUnit.PoundForce, ForceUnit.KilogramForce, ForceUnit.Kilonewton],
        Duration => [DurationUnit.Minute, DurationUnit.Second, DurationUnit.Hour],
        Ratio => [RatioUnit.DecimalFraction, RatioUnit.Percent],
        Power => [PowerUnit.Kilowatt, PowerUnit.MechanicalHorsepower, PowerUnit.Watt],
        Area => [AreaUnit.SquareMeter, AreaUnit.SquareFoot],
        _ => [],
    };

    /// <summary>How else a student may write the unit, in small letters.</summary>
    internal static IReadOnlyList<string> AlsoWritten(Enum unit) => unit switch
    {
        SpeedUnit.Knot => ["kts", "kn", "knot"],
        SpeedUnit.MeterPerSecond => ["mps", "meters per second"],
        SpeedUnit.MilePerHour => ["mph", "mi/h", "miles per hour"],
        SpeedUnit.KilometerPerHour => ["kmh", "kph"],
        SpeedUnit.FootPerMinute => ["fpm"],
        SpeedUnit.FootPerSecond => ["fps"],
        LengthUnit.Foot => ["foot", "'"],
        LengthUnit.Meter => ["meters", "metre", "meter"],
        MassUnit.Pound => ["lbs", "pound"],
        MassUnit.Kilogram => ["kgs", "kilo", "kilos"],
        AngleUnit.Degree => ["deg", "degree"],
        AngleUnit.Radian => ["radian"],
        TemperatureUnit.DegreeCelsius => ["c", "celsius"],
        TemperatureUnit.DegreeFahrenheit => ["f", "fahrenheit"],
        RotationalSpeedUnit.RevolutionPerMinute => ["rpm"],
        DurationUnit.Second => ["sec", "second"],
        DurationUnit.Minute => ["minute"],
        RatioUnit.Percent => ["percent", "pct"],
        _ => [],
    };

    /// <summary>The unit in a sentence, for example "metres per second".</summary>
    internal static string Of(Enum unit) => unit switch
    {
        SpeedUnit.Knot => "knots",
        SpeedUnit.MeterPerSecond => "metres per second",
        SpeedUnit.MilePerHour => "statute miles per hour",
        SpeedUnit.KilometerPerHour => "kilometres per hour",
        SpeedUnit.FootPerMinute => "feet per minute",
        SpeedUnit.FootPerSecond => "feet per second",
        LengthUnit.Foot => "feet",
        LengthUnit.Meter => "metres",
        LengthUnit.NauticalMile => "nautical miles",
        LengthUnit.Mile => "statute miles",
        LengthUnit.Kilometer => "kilometres",
        MassUnit.Pound => "pounds",
        MassUnit.Kilogram => "kilograms",
        AngleUnit.Degree => "degrees",
        AngleUnit.Radian => "radians",
        TemperatureUnit.DegreeCelsius => "degrees Celsius",
        TemperatureUnit.DegreeFahrenheit => "degrees Fahrenheit",
        TemperatureUnit.Kelvin => "kelvins",
        PressureUnit.Hectopascal => "hectopascals",
        PressureUnit.InchOfMercury => "inches of mercury",
        RotationalSpeedUnit.RevolutionPerMinute => "revolutions per minute",
        RotationalSpeedUnit.RevolutionPerSecond => "revolutions per second",
        RotationalSpeedUnit.RadianPerSecond => "radians per second",
        ForceUnit.Newton => "newtons",
        ForceUnit.PoundForce => "pounds-force",
        DurationUnit.Second => "seconds",
        DurationUnit.Minute => "minutes",
        DurationUnit.Hour => "hours",
        RatioUnit.DecimalFraction => "a plain fraction",
        RatioUnit.Percent => "per cent",
        _ => QuantityText.Abbreviation(unit),
    };

    /// <summary>A number with its unit as it is written in C#, such as <c>Length.FromFeet(51)</c>.</summary>
    internal static string InCode(QuantityInfo quantity, Enum unit, string number) =>
        $"{quantity.Name}.From{quantity.UnitInfos.First(u => u.Value.Equals(unit)).PluralName}({number})";
}
