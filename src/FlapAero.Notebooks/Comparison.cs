using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Says how far a prediction was off, in the prediction's unit.</summary>
internal static class Comparison
{
    internal static Compared Of(string what, IQuantity guess, IQuantity actual, DisplayUnits units = DisplayUnits.Aviation)
    {
        Require.Words(what, "name of the comparison");
        Enum unit = units.UnitFor(guess.Unit);
        double predicted = guess.As(unit), result = actual.As(unit);
        string model = QuantityText.InOwnUnit(Quantity.From(result, unit));
        if (predicted == 0) return new Compared($"{what.Trim()}: the model gives {model}.");

        double off = predicted - result;
        string words = QuantityText.InOwnUnit(Quantity.From(predicted, unit));
        string difference = Difference(off, unit);
        bool isZero = !difference.AsSpan().ContainsAnyInRange('1', '9');
        string verdict = isZero ? "as good as exact" : $"{difference} too {(off > 0 ? "high" : "low")}{Share(off, result, unit)}";
        return new Compared($"{what.Trim()}: predicted {words}, the model gives {model}. The prediction is {verdict}.");
    }

    /// <summary>Of a prediction that came out of a calculation without an answer.</summary>
    internal static Compared OfNoNumber(string what, IQuantity actual) =>
        new($"{what.Trim()}: the prediction is not a finite number. The model gives {QuantityText.InOwnUnit(actual)}.");

    private static string Difference(double off, Enum unit) => QuantityText.InOwnUnit(Quantity.From(Math.Abs(off), unit));

    /// <summary>The difference as a share of the result; of a temperature's scale there is none.</summary>
    private static string Share(double off, double result, Enum unit)
    {
        double share = Math.Abs(off / result);
        if (unit is UnitsNet.Units.TemperatureUnit || !double.IsFinite(share) || share > 10) return "";
        return $" ({QuantityText.Of(share, share < 0.1 ? "% 0.0" : "% 0")})";
    }
}
