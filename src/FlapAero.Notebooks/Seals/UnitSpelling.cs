using UnitsNet;

namespace FlapAero.Notebooks.Seals;

/// <summary>A unit that an answer may come in: how it is written, and how a number in it becomes one in the wanted unit.</summary>
/// <param name="Sign">Its abbreviation.</param>
/// <param name="Words">Its words, as a verdict says them.</param>
/// <param name="Also">Other spellings, in small letters.</param>
/// <param name="Factor">The wanted unit's number is this times the number …</param>
/// <param name="Offset">… plus this.</param>
internal sealed record UnitSpelling(string Sign, string Words, IReadOnlyList<string> Also, double Factor, double Offset)
{
    /// <summary>The unit of a quantity first, then those it is mistaken for.</summary>
    public static IReadOnlyList<UnitSpelling> All(IQuantity quantity)
    {
        Enum wanted = quantity.Unit;
        return [.. UnitWords.MistakenFor(quantity).Where(unit => !unit.Equals(wanted)).Prepend(wanted).Select(unit =>
        {
            double zero = Quantity.From(0, unit).As(wanted), one = Quantity.From(1, unit).As(wanted);
            return new UnitSpelling(QuantityText.Abbreviation(unit), UnitWords.Of(unit), UnitWords.AlsoWritten(unit), one - zero, zero);
        })];
    }

    public bool IsWritten(string text)
    {
        string bare = text.Trim().TrimEnd('.');
        return ((string[])[Sign, Words]).Concat(Also).Contains(bare, StringComparer.OrdinalIgnoreCase);
    }

    public double ToWanted(double number) => number * Factor + Offset;
}
