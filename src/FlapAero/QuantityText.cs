using System.Globalization;
using System.Text.RegularExpressions;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// Turns a quantity or a number into words: the only place where a value gets its unit, its decimals and its
/// thousands, the same under every culture. Immutable and safe for any thread.
/// </summary>
/// <remarks>
/// A value and its unit are joined by a no-break space (a degree sign stands close), thousands by a narrow no-break
/// space, and the minus is the proper sign, U+2212. A format is an optional unit and an optional number pattern of
/// <c>0 # .</c>, with a leading <c>+</c> where a plus is to be shown: <c>kt</c>, <c>0.0</c>, <c>ft/min 0</c>, <c>kt +0.0</c>.
/// </remarks>
public static partial class QuantityText
{
    /// <summary>Joins a value and its unit.</summary>
    public const char NoBreakSpace = '\u00A0';

    /// <summary>Parts the thousands.</summary>
    public const char NarrowNoBreakSpace = '\u202F';

    /// <summary>The minus sign, U+2212.</summary>
    public const char Minus = '\u2212';

    /// <summary>Where no pattern is given and none is customary for the unit.</summary>
    private const int SignificantDigits = 3;

    /// <summary>The quantity in words: in the unit that aviation uses for it unless the format names another.</summary>
    /// <param name="quantity">Any quantity with a finite value.</param>
    /// <param name="format">An optional unit and an optional number pattern, for example <c>ft/min 0</c>.</param>
    /// <param name="units">Where it is not aviation's, the unit named or customary gives way to that of the system, with its usual decimals and as many more as the format asks for beyond the usual.</param>
    /// <returns>The value with its unit, for example <c>51.1 kt</c>.</returns>
    /// <exception cref="RefusedInputException">
    /// The format is neither a unit of this quantity nor a pattern, or the value is not finite.
    /// </exception>
    /// <example><code>QuantityText.Of(Speed.FromKnots(51.13)); // 51.1 kt</code></example>
    public static string Of(IQuantity quantity, string? format = null, DisplayUnits units = DisplayUnits.Aviation)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        (string unitText, string? pattern) = Split(format);
        Enum unit = unitText.Length == 0 ? CustomaryUnit(quantity) : NamedUnit(quantity, unitText, format!);
        Enum shown = units.UnitFor(unit);
        if (!shown.Equals(unit)) pattern = InsteadOf(pattern, PatternOf(unit), PatternOf(shown));
        return In(quantity, shown, pattern);
    }

    /// <summary>The usual pattern of the unit shown, with as many more decimals as were asked for beyond the usual of the unit named.</summary>
    private static string? InsteadOf(string? asked, string? usual, string? shown)
    {
        if (shown is null) return null;
        int more = asked is null || usual is null ? 0 : Math.Max(0, Decimals(asked) - Decimals(usual));
        string plus = asked?.StartsWith('+') == true ? "+" : "";
        return more == 0 ? plus + shown : $"{plus}{shown}{(shown.Contains('.') ? "" : ".")}{new string('0', more)}";

        static int Decimals(string pattern) => pattern.Contains('.') ? pattern.Length - pattern.IndexOf('.') - 1 : 0;
    }

    /// <summary>The quantity in words, in the unit it was made with.</summary>
    /// <param name="quantity">Any quantity with a finite value.</param>
    /// <param name="pattern">An optional number pattern, for example <c>0.0</c>.</param>
    /// <returns>The value with its unit.</returns>
    /// <exception cref="RefusedInputException">The pattern is not one, or the value is not finite.</exception>
    public static string InOwnUnit(IQuantity quantity, string? pattern = null)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        return In(quantity, quantity.Unit, pattern);
    }

    /// <summary>A number without a unit: three significant digits unless a pattern says otherwise.</summary>
    /// <param name="value">A finite number.</param>
    /// <param name="format">A pattern such as <c>0.00</c>, or <c>%</c> with an optional pattern for a share in percent.</param>
    /// <returns>The number.</returns>
    /// <exception cref="RefusedInputException">The format is not known, or the value is not finite.</exception>
    public static string Of(double value, string? format = null)
    {
        (string unit, string? pattern) = Split(format);
        if (unit == "%") return Of(Ratio.FromDecimalFractions(value), format);
        if (unit.Length > 0) throw UnknownFormat(format!, "a number without a unit", "A plain number takes no other unit than %.");
        return Number(value, pattern);
    }

    /// <summary>The unit's abbreviation as it is printed, for example <c>kt</c>; empty for a pure number.</summary>
    /// <param name="unit">A unit of UnitsNet, for example <see cref="SpeedUnit.Knot"/>.</param>
    /// <returns>The abbreviation.</returns>
    public static string Abbreviation(Enum unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return unit switch
        {
            SpeedUnit.Knot => "kt",
            AccelerationUnit.KnotPerSecond => "kt/s",
            DurationUnit.Minute => "min",
            PowerUnit.MechanicalHorsepower => "hp",
            VolumeUnit.UsGallon => "US gal",
            VolumeFlowUnit.UsGallonPerHour => "US gal/h",
            ElectricChargeUnit.AmpereHour => "Ah",
            _ => Abbreviations(unit).FirstOrDefault("").Replace("∆", "", StringComparison.Ordinal),
        };
    }

    private static string In(IQuantity quantity, Enum unit, string? pattern)
    {
        double value = Require.In(quantity, unit, "value to be put into words");
        string number = Number(value, pattern ?? PatternOf(unit));
        string abbreviation = Abbreviation(unit);
        if (abbreviation.Length == 0) return number;
        return unit is AngleUnit.Degree ? number + abbreviation : number + NoBreakSpace + abbreviation;
    }

    private static Enum CustomaryUnit(IQuantity quantity) => quantity switch
    {
        Speed => SpeedUnit.Knot,
        Length => LengthUnit.Foot,
        Mass => MassUnit.Pound,
        Angle => AngleUnit.Degree,
        Temperature => TemperatureUnit.DegreeCelsius,
        TemperatureDelta => TemperatureDeltaUnit.DegreeCelsius,
        Pressure => PressureUnit.Hectopascal,
        Density => DensityUnit.KilogramPerCubicMeter,
        RotationalSpeed => RotationalSpeedUnit.RevolutionPerMinute,
        Ratio => RatioUnit.Percent,
        Duration => DurationUnit.Second,
        ElectricCurrent => ElectricCurrentUnit.Ampere,
        ElectricCharge => ElectricChargeUnit.AmpereHour,
        _ => quantity.Unit,
    };

    /// <summary>The pattern of numbers that is customary for a unit; null for three significant digits.</summary>
    internal static string? PatternOf(Enum unit) => unit switch
    {
        SpeedUnit.Knot or SpeedUnit.MeterPerSecond => "0.0",
        SpeedUnit.FootPerMinute or SpeedUnit.KilometerPerHour or SpeedUnit.MilePerHour => "0",
        LengthUnit.Foot or LengthUnit.Meter => "0",
        LengthUnit.NauticalMile or LengthUnit.Kilometer => "0.0",
        MassUnit.Pound or MassUnit.Kilogram => "0",
        AngleUnit.Degree => "0.0",
        AngleUnit.Radian => "0.000",
        TemperatureUnit.DegreeCelsius or TemperatureUnit.DegreeFahrenheit => "0",
        TemperatureDeltaUnit.DegreeCelsius or TemperatureDeltaUnit.DegreeFahrenheit => "0",
        PressureUnit.Hectopascal => "0",
        PressureUnit.InchOfMercury => "0.00",
        DensityUnit.KilogramPerCubicMeter => "0.000",
        RotationalSpeedUnit.RevolutionPerMinute => "0",
        ForceUnit.Newton or ForceUnit.PoundForce => "0",
        RatioUnit.Percent => "0.#",
        DurationUnit.Second => "0.0",
        DurationUnit.Minute => "0",
        ElectricCurrentUnit.Ampere or ElectricPotentialUnit.Volt => "0.#",
        _ => null,
    };

    private static Enum NamedUnit(IQuantity quantity, string text, string format)
    {
        foreach (UnitInfo info in quantity.QuantityInfo.UnitInfos)
            if (Abbreviation(info.Value) == text || Abbreviations(info.Value).Contains(text, StringComparer.Ordinal))
                return info.Value;
        string units = string.Join(", ", quantity.QuantityInfo.UnitInfos
            .Select(info => Abbreviation(info.Value)).Where(a => a.Length > 0).Take(60));
        throw UnknownFormat(format, quantity.QuantityInfo.Name.ToLowerInvariant(), $"Its units are {units}.");
    }

    private static IReadOnlyList<string> Abbreviations(Enum unit) =>
        UnitsNetSetup.Default.UnitAbbreviations.GetUnitAbbreviations(
            unit.GetType(), Convert.ToInt32(unit, CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static (string Unit, string? Pattern) Split(string? format)
    {
        string text = (format ?? "").Trim();
        if (text.Length == 0) return ("", null);
        int space = text.LastIndexOf(' ');
        string last = text[(space + 1)..];
        if (Pattern().IsMatch(last)) return (space < 0 ? "" : text[..space].Trim(), last);
        return (text, null);
    }

    private static string Number(double value, string? pattern)
    {
        if (!double.IsFinite(value))
            throw Require.Refused(nameof(value), "value to be put into words", value, "a finite number", "Nothing else has digits.");
        if (pattern is not null && !Pattern().IsMatch(pattern))
            throw UnknownFormat(pattern, "a number", "A pattern is made of 0, # and one point.");

        bool showPlus = pattern?.StartsWith('+') == true;
        double magnitude = Math.Abs(value);
        string digits = magnitude.ToString(pattern?.TrimStart('+') ?? Significant(magnitude), CultureInfo.InvariantCulture);
        bool isZero = !digits.AsSpan().ContainsAnyInRange('1', '9');
        string sign = isZero ? "" : value < 0 ? Minus.ToString() : showPlus ? "+" : "";
        return sign + Grouped(digits);
    }

    /// <summary>The pattern that shows three significant digits, never in powers of ten.</summary>
    private static string Significant(double magnitude)
    {
        if (magnitude == 0) return "0";
        int decimals = SignificantDigits - 1 - (int)Math.Floor(Math.Log10(magnitude));
        return decimals <= 0 ? "0" : "0." + new string('0', Math.Min(decimals, 12));
    }

    private static string Grouped(string digits)
    {
        int end = digits.IndexOf('.', StringComparison.Ordinal);
        if (end < 0) end = digits.Length;
        string text = digits;
        for (int at = end - 3; at > 0; at -= 3) text = text.Insert(at, NarrowNoBreakSpace.ToString());
        return text;
    }

    private static RefusedInputException UnknownFormat(string format, string what, string why) => RefusedInputException.Of(
        nameof(format), $"format of {what}", $"\"{format}\"", "a unit, a number pattern, or both (\"kt\", \"0.0\", \"ft/min 0\")",
        why);

    [GeneratedRegex(@"^\+?(?=[0#.]*[0#])[0#]*(\.[0#]+)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();
}
