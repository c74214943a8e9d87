using System.Runtime.CompilerServices;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>Refusals in one voice: what, which value, what is allowed, why.</summary>
internal static class Require
{
    /// <summary>What is more than this in any unit is refused as endless: in another unit no number may be left for it.</summary>
    private const double Endless = 1e200;

    private static readonly Speed StrongestWind = Speed.FromKnots(100);

    public static double Between(
        double value, double low, double high, string what, string why,
        [CallerArgumentExpression(nameof(value))] string? argument = null) =>
        value >= low && value <= high
            ? value
            : throw Refused(argument, what, value, $"{Number(low)} to {Number(high)}", why);

    public static double Positive(
        double value, string what, string why, [CallerArgumentExpression(nameof(value))] string? argument = null) =>
        value > 0 && double.IsFinite(value)
            ? value
            : throw Refused(argument, what, value, "a finite value above zero", why);

    public static T Between<T>(
        T value, T low, T high, string what, string why,
        [CallerArgumentExpression(nameof(value))] string? argument = null)
        where T : IQuantity, IComparable<T>
    {
        bool inside = double.IsFinite((double)value.Value) && value.CompareTo(low) >= 0 && value.CompareTo(high) <= 0;
        return inside
            ? value
            : throw Refused(argument, what, value, $"{Text(low, value)} to {Text(high, value)}", why);
    }

    public static T Positive<T>(
        T value, string what, string why, [CallerArgumentExpression(nameof(value))] string? argument = null)
        where T : IQuantity =>
        (double)value.Value is > 0 and < Endless
            ? value
            : throw Refused(argument, what, value, "a finite value above zero", why);

    /// <summary>A quantity's number in another unit; refused where no number is large enough.</summary>
    public static double In(
        IQuantity value, Enum unit, string what, [CallerArgumentExpression(nameof(value))] string? argument = null)
    {
        double converted = Converted(value, unit);
        return double.IsFinite(converted)
            ? converted
            : throw Refused(argument, what, value, "a value that is still a number in other units", "Nothing can be computed from it.");
    }

    /// <summary>A headwind, or a tailwind with its minus.</summary>
    public static double Headwind(
        Speed headwind, string what = "headwind", [CallerArgumentExpression(nameof(headwind))] string? argument = null) =>
        Between(headwind, -StrongestWind, StrongestWind, what, "Nobody flies an approach in more.", argument).MetersPerSecond;

    /// <summary>A limit for the crosswind, without a sign.</summary>
    public static Speed CrosswindLimit(Speed limit, string argument) => Between(
        limit, Speed.FromKnots(1), Speed.FromKnots(60), "crosswind limit", "Manuals of light aeroplanes give between them.", argument);

    /// <summary>A text that says something.</summary>
    public static string Words(string text, string what, [CallerArgumentExpression(nameof(text))] string? argument = null)
    {
        ArgumentNullException.ThrowIfNull(text, argument);
        return string.IsNullOrWhiteSpace(text)
            ? throw Refused(argument, what, "a blank text", "any other text", "A blank says nothing.")
            : text;
    }

    /// <summary>A value that is there.</summary>
    public static T Given<T>(T value, [CallerArgumentExpression(nameof(value))] string? argument = null)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(value, argument);
        return value;
    }

    public static RefusedInputException Refused(string? argument, string what, IQuantity value, string allowed, string why) =>
        RefusedInputException.Of(argument, what, Text(value), allowed, why, value);

    public static RefusedInputException Refused(string? argument, string what, double value, string allowed, string why) =>
        RefusedInputException.Of(argument, what, Number(value), allowed, why, value);

    public static RefusedInputException Refused(string? argument, string what, string given, string allowed, string why) =>
        RefusedInputException.Of(argument, what, given, allowed, why);

    /// <summary>A refusal of several values together, in a sentence.</summary>
    public static RefusedInputException RefusedWhole(string? argument, string why, Exception? cause = null) =>
        RefusedInputException.OfWhole(argument, why, cause);

    /// <summary>A quantity in the unit that the caller chose, or that of <paramref name="like"/>.</summary>
    public static string Text(IQuantity quantity, IQuantity? like = null)
    {
        Enum unit = (like ?? quantity).Unit;
        return WithUnit(Number(Converted(quantity, unit)), unit);
    }

    /// <summary>A value in words and its unit, also where it has left what can be computed.</summary>
    public static string Text(double value, Enum unit) => WithUnit(PlainNumber.InWords(value, "g5"), unit);

    /// <summary>Infinite where the number is too large for the unit, where UnitsNet throws.</summary>
    private static double Converted(IQuantity quantity, Enum unit)
    {
        try
        {
            return quantity.As(unit);
        }
        catch (Exception e) when (e is ArgumentException or OverflowException)
        {
            return double.CopySign(double.PositiveInfinity, (double)quantity.Value);
        }
    }

    /// <summary>A number and its unit; a degree sign stands close.</summary>
    public static string WithUnit(string number, Enum unit)
    {
        string abbreviation = QuantityText.Abbreviation(unit);
        return number + (abbreviation is "°" or "" ? "" : " ") + abbreviation;
    }

    /// <summary>A number as messages write it.</summary>
    public static string Number(double value) => PlainNumber.Of(value, "g5");
}
