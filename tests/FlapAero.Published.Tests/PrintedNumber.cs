using System.Globalization;

namespace FlapAero.Published.Tests;

/// <summary>A number as its source prints it: its last digit says how much of it can be trusted.</summary>
internal sealed class PrintedNumber
{
    // Doubles cannot hold most printed numbers exactly.
    private const double Rounding = 1e-9;

    private readonly string _tolerance;

    /// <param name="text">The number, as printed.</param>
    /// <param name="tolerance">Empty: half a unit of the last digit; "cut": a whole unit, on the far side from zero; else a number.</param>
    public PrintedNumber(string text, string tolerance)
    {
        Value = double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
        Unit = LastDigit(text);
        Text = text;
        _tolerance = tolerance;
    }

    public string Text { get; }

    public double Value { get; }

    /// <summary>One unit of the last printed digit.</summary>
    public double Unit { get; }

    public bool Agrees(double computed)
    {
        double slack = Rounding * Math.Max(Math.Abs(Value), Unit);
        if (_tolerance == "cut")
        {
            double beyond = (computed - Value) * Math.Sign(Value);
            return beyond >= -slack && beyond < Unit + slack;
        }

        double allowed = _tolerance.Length == 0
            ? Unit / 2
            : double.Parse(_tolerance, NumberStyles.Float, CultureInfo.InvariantCulture);
        return Math.Abs(computed - Value) <= allowed + slack;
    }

    public override string ToString() => _tolerance.Length == 0 ? Text : $"{Text} ({_tolerance})";

    // "1.0e5" has its last digit in the fourth place; a whole number without exponent has it in the units.
    private static double LastDigit(string text)
    {
        string[] parts = text.Split('e', 'E');
        int point = parts[0].IndexOf('.', StringComparison.Ordinal);
        int decimals = point < 0 ? 0 : parts[0].Length - point - 1;
        int exponent = parts.Length > 1 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : 0;
        return Math.Pow(10, exponent - decimals);
    }
}
