using FlapAero.Notebooks.Seals;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Says how far a prediction was off, in the prediction's unit. A page's script says the same of what is typed there.</summary>
internal static class Comparison
{
    internal static Compared Of(string what, IQuantity guess, IQuantity actual, string prediction, DisplayUnits units = DisplayUnits.Aviation)
    {
        Require.Words(what, "name of the comparison");
        Enum unit = units.UnitFor(guess.Unit);
        IQuantity predicted = guess.ToUnit(unit), result = actual.ToUnit(unit);
        string model = QuantityText.InOwnUnit(result);
        var facts = new ComparedFacts(
            what.Trim(), prediction, result.As(unit), model, QuantityText.PatternOf(unit) ?? "",
            unit is not UnitsNet.Units.TemperatureUnit, UnitSpelling.All(result));
        if (predicted.As(unit) == 0) return new Compared($"{what.Trim()}: the model gives {model}.", facts);

        double off = predicted.As(unit) - result.As(unit);
        string difference = QuantityText.InOwnUnit(Quantity.From(Math.Abs(off), unit));
        bool isZero = !difference.AsSpan().ContainsAnyInRange('1', '9');
        string verdict = isZero ? "as good as exact" : $"{difference} too {(off > 0 ? "high" : "low")}{Share(off, result.As(unit), unit)}";
        return new Compared($"{what.Trim()}: you said {QuantityText.InOwnUnit(predicted)}, the model gives {model}. That is {verdict}.", facts);
    }

    /// <summary>Of a prediction that came out of a calculation without an answer.</summary>
    internal static Compared OfNoNumber(string what, IQuantity actual, string prediction)
    {
        Compared open = Of(what, Quantity.From(0, actual.Unit), actual, prediction);
        return new($"{what.Trim()}: the prediction is not a finite number. The model gives {open.Facts.Shown}.", open.Facts);
    }

    /// <summary>The difference as a share of the result; of a temperature's scale there is none.</summary>
    private static string Share(double off, double result, Enum unit)
    {
        double share = Math.Abs(off / result);
        if (unit is UnitsNet.Units.TemperatureUnit || !double.IsFinite(share) || share > 10) return "";
        return $" ({QuantityText.Of(share, share < 0.1 ? "% 0.0" : "% 0")})";
    }
}

/// <summary>What a page needs to compare a prediction that is typed there.</summary>
/// <param name="What">What was predicted.</param>
/// <param name="Prediction">The variable of the lesson that holds the prediction.</param>
/// <param name="Model">The result in the first of the units.</param>
/// <param name="Shown">The result in words.</param>
/// <param name="Pattern">The pattern of numbers in that unit; empty for three significant digits.</param>
/// <param name="HasShare">Whether a difference can be told as a share of the result.</param>
/// <param name="Units">The units that a prediction may come in; the first is the wanted one.</param>
internal sealed record ComparedFacts(
    string What, string Prediction, double Model, string Shown, string Pattern, bool HasShare, IReadOnlyList<UnitSpelling> Units);
