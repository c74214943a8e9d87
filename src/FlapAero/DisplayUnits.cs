using System.Collections.Frozen;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>The units in which values are shown; what is computed does not depend on it.</summary>
public enum DisplayUnits
{
    /// <summary>Knots, feet, feet per minute, pounds, as in a cockpit.</summary>
    Aviation,

    /// <summary>Metres, metres per second, kilograms; degrees and revolutions per minute stay.</summary>
    SI,

    /// <summary>Knots and feet as in a cockpit, with masses in kilograms, areas in square metres and pressures in hectopascals.</summary>
    AviationKilograms,
}

/// <summary>Which unit shows a value in each system of units. Safe for any thread.</summary>
public static class DisplayUnitsExtensions
{
    private static readonly FrozenDictionary<Enum, Enum> SIUnits = new Dictionary<Enum, Enum>
    {
        [SpeedUnit.Knot] = SpeedUnit.MeterPerSecond,
        [SpeedUnit.FootPerMinute] = SpeedUnit.MeterPerSecond,
        [LengthUnit.Foot] = LengthUnit.Meter,
        [LengthUnit.NauticalMile] = LengthUnit.Kilometer,
        [AreaUnit.SquareFoot] = AreaUnit.SquareMeter,
        [MassUnit.Pound] = MassUnit.Kilogram,
        [AccelerationUnit.KnotPerSecond] = AccelerationUnit.MeterPerSecondSquared,
        [PressureUnit.InchOfMercury] = PressureUnit.Hectopascal,
        [ForceUnit.PoundForce] = ForceUnit.Newton,
        [PowerUnit.MechanicalHorsepower] = PowerUnit.Kilowatt,
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<Enum, Enum> KilogramUnits = SIUnits
        .Where(pair => pair.Key is MassUnit or AreaUnit or ForceUnit or PressureUnit).ToFrozenDictionary();

    private static FrozenDictionary<Enum, Enum> Others(DisplayUnits units) => units switch
    {
        DisplayUnits.SI => SIUnits,
        DisplayUnits.AviationKilograms => KilogramUnits,
        _ => FrozenDictionary<Enum, Enum>.Empty,
    };

    private static readonly FrozenDictionary<string, Enum> Abbreviated =
        SIUnits.Keys.ToFrozenDictionary(QuantityText.Abbreviation, StringComparer.Ordinal);

    /// <summary>The unit of a system that stands for another.</summary>
    /// <param name="units">The system.</param>
    /// <param name="unit">A unit of UnitsNet.</param>
    /// <returns>The unit itself where the system has no other for it.</returns>
    public static Enum UnitFor(this DisplayUnits units, Enum unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return Others(units).GetValueOrDefault(unit, unit);
    }

    /// <summary>The unit of a system that stands for another, by what is printed, and the factor from the one to the other.</summary>
    /// <param name="units">The system.</param>
    /// <param name="unit">An abbreviation, with or without more words after it, for example <c>kt CAS</c>.</param>
    /// <returns>For example <c>m/s CAS</c> and 0.514; the text itself and 1 where the system has no other for it.</returns>
    public static (string Unit, double Factor) UnitFor(this DisplayUnits units, string unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        int end = unit.IndexOf(' ', StringComparison.Ordinal);
        string word = end < 0 ? unit : unit[..end];
        if (!Abbreviated.TryGetValue(word, out Enum? from) || !Others(units).TryGetValue(from, out Enum? to)) return (unit, 1);
        return (QuantityText.Abbreviation(to) + unit[word.Length..], Quantity.From(1, from).As(to));
    }
}
