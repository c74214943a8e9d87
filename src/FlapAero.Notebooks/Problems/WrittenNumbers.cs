using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.Notebooks.Seals;

namespace FlapAero.Notebooks;

/// <summary>The numbers in a text, of which it finds those that say an answer, in whatever writing: rounded, in another unit, with a comma.</summary>
internal sealed partial class WrittenNumbers
{
    /// <summary>Abbreviations of any quantity: a number with one of them is no bare number.</summary>
    private static readonly HashSet<string> AnyUnit = new(
        ["kt", "m/s", "km/h", "mph", "ft/min", "ft/s", "ft", "m", "nm", "km", "mi", "lb", "kg", "°", "rad", "%", "°c", "°f", "k", "hpa", "inhg", "kg/m³", "rpm", "n", "lbf", "s", "min", "h", "kw", "hp", "m²", "ft²", "a", "ah", "v", "w"],
        StringComparer.OrdinalIgnoreCase);

    private readonly List<(string Text, string Number, double Value, double Half, string Unit)> _found = [];

    public WrittenNumbers(string text)
    {
        foreach (Match match in Number().Matches(Plain(text)))
        {
            string written = match.Groups["number"].Value, digits = written.Replace(',', '.');
            int point = digits.IndexOf('.', StringComparison.Ordinal);
            double half = 0.5 * Math.Pow(10, point < 0 ? 0 : point + 1 - digits.Length) * (1 + 1e-9);
            _found.Add((match.Value.Trim(), written, double.Parse(digits, CultureInfo.InvariantCulture), half, match.Groups["unit"].Value.TrimEnd('.')));
        }
    }

    /// <summary>
    /// The first writing of a number that would pass as the answer: with a unit of its kind within the tolerance, bare if it
    /// is the answer rounded to no more than the tolerance; null if there is none. A number of another kind (degrees
    /// where knots are asked) is none.
    /// </summary>
    public string? FirstWithin(double value, double tolerance, IReadOnlyList<UnitSpelling> units) =>
        In(units).Where(n => n.HasUnit ? Math.Abs(n.Value - value) <= tolerance : n.Says(value, tolerance)).Select(n => n.Text).FirstOrDefault();

    /// <summary>The writings of the answer with a unit: rounded, to no more than the tolerance.</summary>
    public IEnumerable<string> WithUnit(double value, double tolerance, IReadOnlyList<UnitSpelling> units) =>
        In(units).Where(n => n.HasUnit && n.Says(value, tolerance)).Select(n => n.Text);

    /// <summary>The writings of a number with a unit that a student could type, and pass.</summary>
    public IEnumerable<string> PassingWithUnit(double value, double tolerance, IReadOnlyList<UnitSpelling> units) =>
        In(units).Where(n => n.HasUnit && Math.Abs(n.Value - value) <= tolerance).Select(n => n.Text);

    private IEnumerable<Written> In(IReadOnlyList<UnitSpelling> units)
    {
        foreach ((string text, string number, double value, double half, string written) in _found)
        {
            UnitSpelling? unit = written.Length == 0 ? null : units.FirstOrDefault(u => u.IsWritten(written));
            if (unit is not null && unit.Sign.Length > 0)
                yield return new Written(text, unit.ToWanted(value), Math.Abs(half * unit.Factor), true);
            else if (!AnyUnit.Contains(written))
                yield return new Written(number, value, half, false);
        }
    }

    /// <summary>No-break spaces as spaces, thousands closed up, the proper minus as a hyphen, and the simplest maths as text.</summary>
    private static string Plain(string text) => Thousands().Replace(text, "")
        .Replace(QuantityText.NoBreakSpace, ' ').Replace(QuantityText.Minus, '-').Replace("&nbsp;", " ", StringComparison.Ordinal).Replace("\\u00a0", " ", StringComparison.OrdinalIgnoreCase);

    private readonly record struct Written(string Text, double Value, double Half, bool HasUnit)
    {
        /// <summary>Whether the number is the answer, rounded no coarser than the tolerance.</summary>
        public bool Says(double answer, double tolerance) => Half <= tolerance * (1 + 1e-9) && Math.Abs(Value - answer) <= Half;
    }

    [GeneratedRegex(@"(?<![\w.,]|[A-Za-z]-)-?(?<number>\d+(?:[.,]\d+)?)(?![\w]*\d)(?![.,]\d)(?: ?(?:±|\+/-|\\pm) ?\d+(?:[.,]\d+)?)? ?(?<unit>°[CF]?|%|knots|[A-Za-z]+(?:/[A-Za-z]+)?[²³]?)?", RegexOptions.CultureInvariant)]
    private static partial Regex Number();

    [GeneratedRegex(@"(?<=\d)[\u202F,](?=\d{3}(?!\d))", RegexOptions.CultureInvariant)]
    private static partial Regex Thousands();
}
