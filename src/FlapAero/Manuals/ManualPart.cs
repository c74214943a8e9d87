using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.AeroplaneFiles;
using FlapAero.Files;

namespace FlapAero.Manuals;

/// <summary>One object of a manual's file. Values are texts as manuals print them, number and unit: <c>"2300 lb"</c>.</summary>
internal sealed partial class ManualPart(ObjectPart part, FaultList faults)
{
    public ObjectPart Part { get; } = part;

    public int Line => Part.Line;

    public static ManualPart? Of(JsonItem item, string place, IReadOnlyList<FileKey> keys, FaultList faults) =>
        ObjectPart.Of(item, place, keys, faults) is { } part ? new(part, faults) : null;

    public ManualPart? Object(string key, IReadOnlyList<FileKey> keys) => Part.Object(key, keys) is { } part ? new(part, faults) : null;

    /// <summary>The objects of a list that may be left out.</summary>
    public IEnumerable<(ManualPart Part, string Place)> List(string key, IReadOnlyList<FileKey> keys)
    {
        foreach ((JsonItem item, string place) in Part.List(key, 1, "one row or more") ?? [])
            if (Of(item, place, keys, faults) is { } row) yield return (row, place);
    }

    /// <summary>A value in its range.</summary>
    public Printed<T>? Value<T>(string key, UnitSet<T> units, T low, T high, string why)
        where T : IComparable<T>
    {
        if (Part.Text(key) is not { } text) return null;
        if (Read(text, units) is not { } read) return null;
        double number = read.Number;
        if (double.IsFinite(number) && read.Value.CompareTo(low) >= 0 && read.Value.CompareTo(high) <= 0) return read;
        string guess = units.Names.Where(name => name != read.Unit && !SameKind(name, read.Unit))
            .Select(name => (Name: name, Value: units.Find(name)!(number)))
            .Where(other => other.Value.CompareTo(low) >= 0 && other.Value.CompareTo(high) <= 0)
            .Select(other => string.Create(CultureInfo.InvariantCulture, $"; did you mean {number} {other.Name}?")).FirstOrDefault() ?? "";
        faults.Add(
            text.Line, text.Place, $"{text.Value.Trim()} is refused",
            string.Create(
                CultureInfo.InvariantCulture,
                $"allowed is {ManualUnits.In(low, read.Unit):0.#} to {ManualUnits.In(high, read.Unit):0.#} {read.Unit}. {why}{guess}"));
        return null;
    }

    /// <summary>A value that a part of the model takes; its refusal is the fault.</summary>
    public Printed<T>? Value<T>(string key, UnitSet<T> units, Func<T, object> probe)
    {
        if (Part.Text(key) is not { } text || Read(text, units) is not { } read) return null;
        if (Refusal.Of(() => probe(read.Value)) is not { } refusal) return read;
        faults.Add(text.Line, text.Place, refusal.Problem, refusal.Expected);
        return null;
    }

    /// <summary>A number that a part of the model takes; its refusal is the fault.</summary>
    public double? Number(string key, Func<double, object> probe)
    {
        if (Part.Number(key) is not { } given) return null;
        if (Refusal.Of(() => probe(given.Value)) is not { } refusal) return given.Value;
        faults.Add(given.Line, given.Place, refusal.Problem, refusal.Expected);
        return null;
    }

    /// <summary>A number without a unit, in its range.</summary>
    public Printed<double>? Number(string key, double low, double high, string why, Func<double, string?>? guess = null)
    {
        if (Part.Number(key) is not { } given) return null;
        int point = given.Written.IndexOf('.');
        if (given.Value >= low && given.Value <= high)
            return new(given.Value, given.Value, point < 0 ? 0 : given.Written.Length - point - 1, "", given);
        faults.Add(
            given.Line, given.Place, $"{given.Written} is refused",
            string.Create(CultureInfo.InvariantCulture, $"allowed is {low} to {high}. {why}{guess?.Invoke(given.Value)}"));
        return null;
    }

    /// <summary>One of a few words.</summary>
    public T? Word<T>(string key, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        if (Part.Text(key) is not { } text) return null;
        if (words.TryGetValue(text.Value.Trim(), out T found)) return found;
        RefuseWord(text, words.Keys);
        return null;
    }

    public void RefuseWord(Given<string> text, IEnumerable<string> words)
    {
        string[] known = [.. words];
        string? near = EditDistance.Nearest(text.Value.Trim(), known);
        faults.Add(
            text.Line, text.Place, $"{text.Written} is not known here",
            near is not null ? $"did you mean \"{near}\"?" : $"use {string.Join(", ", known.Select(PlainText.Quoted))}");
    }

    private Printed<T>? Read<T>(Given<string> text, UnitSet<T> units)
    {
        Match match = NumberAndUnit().Match(text.Value);
        string first = units.Names.First();
        if (!match.Success)
        {
            string problem = text.Value.Contains(',', StringComparison.Ordinal)
                ? $"{text.Written} has a comma" : $"{text.Written} is not a number and its unit";
            faults.Add(text.Line, text.Place, problem, $"write the number with a point, a space and the unit, such as \"12.5 {first}\"");
            return null;
        }

        string unit = match.Groups["unit"].Value;
        // A value far too long to be one is infinite, and refused by its range.
        double number = double.Parse(match.Groups["number"].Value, NumberStyles.Float, CultureInfo.InvariantCulture);
        string? name = units.Names.FirstOrDefault(known => string.Equals(known, unit, StringComparison.OrdinalIgnoreCase));
        if (name is null || !double.IsFinite(number))
        {
            string? near = EditDistance.Nearest(unit, units.Names);
            faults.Add(
                text.Line, text.Place,
                name is null ? $"{PlainText.Quoted(unit)} is no unit of {units.Kind}" : $"{text.Written} is too large to compute with",
                (near is null ? "" : $"did you mean {near}? ") + $"use {units.Choice}");
            return null;
        }

        int point = match.Groups["number"].Value.IndexOf('.');
        int decimals = point < 0 ? 0 : match.Groups["number"].Value.Length - point - 1;
        return new(
            units.Find(name)!(Math.Clamp(number, -1e12, 1e12)), number, decimals, name,
            new Given<double>(number, PlainText.Short(text.Value.Trim()), text.Line, text.Place));
    }

    /// <summary>Two names of one unit, or two airspeeds in one unit: no slip from one to the other explains a range.</summary>
    private static bool SameKind(string first, string second) =>
        first.Trim('°') == second.Trim('°') || (first[0] == second[0] && first.EndsWith("AS", StringComparison.Ordinal) && second.EndsWith("AS", StringComparison.Ordinal));

    [GeneratedRegex(@"^\s*(?<number>[+-]?\d{1,30}(\.\d{1,30})?)\s*(?<unit>[^\d\s,.].{0,30}?)\s*$", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex NumberAndUnit();
}
