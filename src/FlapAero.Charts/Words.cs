using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using UnitsNet;

namespace FlapAero.Charts;

/// <summary>
/// A sentence with values in it, written as an interpolated string: quantities and numbers in it are put into words by
/// <see cref="QuantityText"/>, the same under every culture: <c>$"{speed} or {speed:m/s 0.0}"</c>.
/// </summary>
/// <remarks>Keep a sentence one interpolated string: joined to a plain string with <c>+</c>, C# formats it itself.</remarks>
[InterpolatedStringHandler]
public sealed class Words
{
    private readonly List<Part> _parts = [];

    /// <summary>Called by the compiler for an interpolated string.</summary>
    /// <param name="literalLength">Length of the literal text.</param>
    /// <param name="formattedCount">Number of values.</param>
    public Words(int literalLength, int formattedCount)
    {
        _ = literalLength;
        _parts.Capacity = 2 * formattedCount + 1;
    }

    /// <summary>A sentence without values.</summary>
    /// <param name="text">The sentence.</param>
    public static implicit operator Words(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var words = new Words(text.Length, 0);
        words.AppendLiteral(text);
        return words;
    }

    /// <summary>Called by the compiler for literal text.</summary>
    /// <param name="text">The text.</param>
    public void AppendLiteral(string text) => _parts.Add(new(text, null, null));

    /// <summary>Called by the compiler for a value.</summary>
    /// <typeparam name="T">The value's type.</typeparam>
    /// <param name="value">The value.</param>
    /// <param name="format">Its format, see <see cref="QuantityText"/>.</param>
    /// <exception cref="RefusedInputException">
    /// The format is not known: it is refused where it stands, not where it is shown.
    /// </exception>
    public void AppendFormatted<T>(T value, string? format = null) => _parts.Add(new(Of(value, format), value, format, IsValue: true));

    /// <summary>A value in words: the one formatter of sentences, tables and figures.</summary>
    /// <param name="value">A quantity, a number, or anything else with a text of its own.</param>
    /// <param name="format">Its format, see <see cref="QuantityText"/>.</param>
    /// <param name="units">The units of the quantities.</param>
    /// <returns>The value in words.</returns>
    public static string Of(object? value, string? format = null, DisplayUnits units = DisplayUnits.Aviation) => value switch
    {
        null => "",
        Words words => words.In(units).ToString(),
        IQuantity quantity => QuantityText.Of(quantity, format, units),
        double number => QuantityText.Of(number, format),
        float number => QuantityText.Of(number, format),
        int or long or short or byte or uint => QuantityText.Of(Convert.ToDouble(value, CultureInfo.InvariantCulture), format ?? "0"),
        decimal number => QuantityText.Of((double)number, format),
        IFormattable formattable => formattable.ToString(format, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    /// <summary>Puts the parts together, literal text and values each in its own way.</summary>
    /// <param name="literal">What becomes of literal text.</param>
    /// <param name="value">What becomes of a value's words.</param>
    /// <returns>The whole.</returns>
    public string Join(Func<string, string> literal, Func<string, string> value)
    {
        ArgumentNullException.ThrowIfNull(literal);
        ArgumentNullException.ThrowIfNull(value);
        var text = new StringBuilder();
        foreach (Part part in _parts) text.Append(part.IsValue ? value(part.Text) : literal(part.Text));
        return text.ToString();
    }

    /// <summary>The sentence with its quantities in another system of units.</summary>
    /// <param name="units">The units.</param>
    /// <returns>The sentence in these units.</returns>
    public Words In(DisplayUnits units)
    {
        if (units == DisplayUnits.Aviation) return this;
        var words = new Words(0, _parts.Count);
        words._parts.AddRange(_parts.Select(part => part.IsValue ? part with { Text = Of(part.Value, part.Format, units) } : part));
        return words;
    }

    /// <summary>The sentence.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString() => Join(text => text, text => text);

    private readonly record struct Part(string Text, object? Value, string? Format, bool IsValue = false);
}
