using System.Globalization;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace FlapAero;

/// <summary>Refusals in one voice: what, which value, what is allowed, why.</summary>
internal static class Require
{
    private static readonly Speed StrongestWind = Speed.FromKnots(100);

    public static double Between(
        double value, double low, double high, string what, string why,
        [CallerArgumentExpression(nameof(value))] string? argument = null) =>
        value >= low && value <= high
            ? value
            : throw Refused(argument, what, Number(value), $"{Number(low)} to {Number(high)}", why);

    public static double Positive(
        double value, string what, string why, [CallerArgumentExpression(nameof(value))] string? argument = null) =>
        value > 0 && double.IsFinite(value)
            ? value
            : throw Refused(argument, what, Number(value), "a finite value above zero", why);

    public static T Between<T>(
        T value, T low, T high, string what, string why,
        [CallerArgumentExpression(nameof(value))] string? argument = null)
        where T : IQuantity, IComparable<T>
    {
        bool inside = double.IsFinite((double)value.Value) && value.CompareTo(low) >= 0 && value.CompareTo(high) <= 0;
        return inside
            ? value
            : throw Refused(argument, what, Text(value), $"{Text(low, value)} to {Text(high, value)}", why);
    }

    public static T Positive<T>(
        T value, string what, string why, [CallerArgumentExpression(nameof(value))] string? argument = null)
        where T : IQuantity =>
        (double)value.Value is > 0 and < double.PositiveInfinity
            ? value
            : throw Refused(argument, what, Text(value), "a finite value above zero", why);

    /// <summary>A headwind, or a tailwind with its minus.</summary>
    public static double Headwind(Speed headwind) =>
        Between(headwind, -StrongestWind, StrongestWind, "headwind", "Nobody flies an approach in more.").MetersPerSecond;

    /// <summary>A limit for the crosswind, without a sign.</summary>
    public static Speed CrosswindLimit(Speed limit, string argument) => Between(
        limit, Speed.FromKnots(1), Speed.FromKnots(60), "crosswind limit", "Manuals of light aeroplanes give between them.", argument);

    public static ArgumentOutOfRangeException Refused(
        string? argument, string what, string value, string allowed, string why) =>
        new(argument, $"{what}: {value} is refused; allowed is {allowed}. {why}");

    /// <summary>A quantity in the unit that the caller chose, or that of <paramref name="like"/>.</summary>
    public static string Text(IQuantity quantity, IQuantity? like = null)
    {
        Enum unit = (like ?? quantity).Unit;
        string abbreviation = QuantityText.Abbreviation(unit);
        return Number(quantity.As(unit)) + (abbreviation == "°" ? "" : " ") + abbreviation;
    }

    private static string Number(double value) => value.ToString("g5", CultureInfo.InvariantCulture);
}
