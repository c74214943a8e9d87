using FlapAero.Files;
namespace FlapAero.AeroplaneFiles;

/// <summary>
/// One object of the file, read key by key. Whatever is wrong with it becomes a fault, once; what comes back is then nothing,
/// and nothing that hangs on it is complained about.
/// </summary>
internal sealed class ObjectPart
{
    private readonly Dictionary<string, JsonItem> _items;
    private readonly FaultList _faults;
    private readonly string _place;

    private ObjectPart(ObjectItem item, string place, IReadOnlyList<FileKey> keys, FaultList faults)
    {
        _items = item.Members.ToDictionary(member => member.Key, member => member.Item, StringComparer.Ordinal);
        _faults = faults;
        _place = place;
        Line = item.Line;
        CheckKeys(item, keys);
    }

    public int Line { get; }

    public static ObjectPart? Of(JsonItem item, string place, IReadOnlyList<FileKey> keys, FaultList faults)
    {
        if (item is ObjectItem given) return new ObjectPart(given, place, keys, faults);
        faults.Add(item.Line, place, $"{item.Written} stands here", $"an object with {Choice(keys)} is wanted");
        return null;
    }

    public ObjectPart? Object(string key, IReadOnlyList<FileKey> keys) =>
        Item(key) is { } item ? Of(item, Place(key), keys, _faults) : null;

    /// <summary>A list's items, each with its path.</summary>
    public IReadOnlyList<(JsonItem Item, string Place)>? List(string key, int least, string what)
    {
        if (Item(key) is not { } item) return null;
        if (item is ArrayItem list && list.Items.Count >= least)
            return [.. list.Items.Select((entry, index) => (entry, FormattableString.Invariant($"{Place(key)}[{index}]")))];
        string problem = item is ArrayItem short_ ? $"a list of {Count(short_.Items.Count)} stands here" : $"{item.Written} stands here";
        _faults.Add(item.Line, Place(key), problem, $"a list [ … ] of {what} is wanted");
        return null;
    }

    public Given<string>? Text(string key)
    {
        if (Item(key) is not { } item) return null;
        if (item is TextItem { Text: var text } && !string.IsNullOrWhiteSpace(text))
            return new Given<string>(text, PlainText.Quoted(text), item.Line, Place(key));
        _faults.Add(
            item.Line, Place(key), item is TextItem ? "the text is empty" : $"{item.Written} stands here", "a text in double quotes is wanted");
        return null;
    }

    public Given<double>? Number(string key)
    {
        if (Item(key) is not { } item) return null;
        if (item is NumberItem number && double.IsFinite(number.Value))
            return new Given<double>(number.Value, PlainText.Short(number.Digits), item.Line, Place(key));
        string problem = item is NumberItem huge ? $"{PlainText.Short(huge.Digits)} is too large to compute with" : $"{item.Written} stands here";
        string hint = item is TextItem ? "a number is wanted, without quotes" : "a number is wanted";
        _faults.Add(item.Line, Place(key), problem, hint);
        return null;
    }

    public Func<double, T>? Unit<T>(UnitSet<T> units, out string name)
    {
        name = "";
        if (Item("unit") is not { } item) return null;
        if (item is TextItem text && units.Find(text.Text) is { } make)
        {
            name = text.Text;
            return make;
        }

        string problem = item is TextItem wrong ? $"{PlainText.Quoted(wrong.Text)} is no unit of {units.Kind}" : $"{item.Written} stands here";
        _faults.Add(item.Line, Place("unit"), problem, item is TextItem ? $"use {units.Choice}" : $"a unit in double quotes is wanted: {units.Choice}");
        return null;
    }

    public void Origin()
    {
        if (Item("origin") is not { } item) return;
        if (item is TextItem { Text: var text } && FileKeys.Origin().IsMatch(text)) return;
        string problem = item is TextItem wrong
            ? string.IsNullOrWhiteSpace(wrong.Text) ? "the origin is empty" : $"{PlainText.Quoted(wrong.Text)} does not say where the value comes from"
            : $"{item.Written} stands here";
        _faults.Add(
            item.Line, Place("origin"), problem, "write invented, estimate, measured or published, then \": \" and a note if there is one");
    }

    /// <summary>A value with its unit and origin.</summary>
    /// <param name="key">The key.</param>
    /// <param name="units">Its units.</param>
    /// <param name="probe">Makes a part of the model with this value in it; its refusal of the value is the fault.</param>
    /// <param name="argument">What the part's constructor calls the value; the key where none is given.</param>
    public Given<T>? Quantity<T>(string key, UnitSet<T> units, Func<T, object>? probe = null, string? argument = null)
    {
        if (Object(key, FileKeys.Value) is not { } part) return null;
        part.Origin();
        Func<double, T>? make = part.Unit(units, out string unit);
        Given<double>? number = part.Number("value");
        if (make is null || number is null) return null;
        T value = make(number.Value);
        if (probe is not null && Refusal.Of(() => probe(value), argument ?? key) is { } refusal)
        {
            _faults.Add(number.Line, number.Place, refusal.Problem, refusal.Expected);
            return null;
        }

        string written = unit == "1" ? number.Written : $"{number.Written} {unit}";
        return new Given<T>(value, written, number.Line, Place(key));
    }

    private JsonItem? Item(string key) => _items.GetValueOrDefault(key);

    private string Place(string key) => FaultList.Inside(_place, key);

    private void CheckKeys(ObjectItem item, IReadOnlyList<FileKey> keys)
    {
        List<FileKey> absent = [.. keys.Where(key => !_items.ContainsKey(key.Name))];
        List<FileKey> missing = [.. absent.Where(key => !key.Optional)];
        foreach (JsonMember member in item.Members.Where(member => keys.All(key => key.Name != member.Key)))
        {
            string? meant = EditDistance.Nearest(member.Key, absent.Select(key => key.Name));
            // A misspelt key is one fault, not an unknown key and a missing one.
            if (meant is not null) missing.RemoveAll(key => key.Name == meant);
            _faults.Add(
                member.Line, Place(member.Key), "no such key is known here",
                meant is not null ? $"did you mean \"{meant}\"?" : $"the keys here are {Choice(keys)}");
        }

        foreach (FileKey key in missing)
            _faults.Add(item.Line, Place(key.Name), "the key is missing", $"write \"{key.Name}\": {key.Form}");
    }

    private static string Choice(IReadOnlyList<FileKey> keys)
    {
        string[] names = [.. keys.Where(key => !key.Optional).Select(key => $"\"{key.Name}\"")];
        // Where every key may be left out, any of them is wanted.
        if (names.Length == 0) names = [.. keys.Select(key => $"\"{key.Name}\"")];
        return names.Length == 1 ? names[0] : $"{string.Join(", ", names[..^1])} and {names[^1]}";
    }

    private static string Count(int count) => count == 0 ? "nothing" : FormattableString.Invariant($"{count}");
}
