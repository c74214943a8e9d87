using System.Globalization;
using System.Text;
using System.Text.Json;
using FlapAero.Files;

namespace FlapAero.AeroplaneFiles;

/// <summary>
/// JSON text into items that know their lines; the library's own document keeps no lines. Keys that occur twice and text
/// that is no JSON become faults.
/// </summary>
internal ref struct JsonTreeReader
{
    private const string Syntax =
        "JSON has double quotes, a point in numbers, a comma between two values and none after the last, no comments and no NaN";

    private readonly FaultList _faults;
    private readonly ReadOnlySpan<byte> _text;
    private Utf8JsonReader _reader;
    private string _place = "";
    private int _line = 1;
    private int _counted;

    private JsonTreeReader(ReadOnlySpan<byte> text, FaultList faults)
    {
        _text = text;
        _faults = faults;
        _reader = new Utf8JsonReader(text);
    }

    /// <summary>The text's value; none where it is no JSON, which is then among the faults.</summary>
    public static JsonItem? Read(string json, FaultList faults)
    {
        byte[] text = Encoding.UTF8.GetBytes(json.TrimStart('\uFEFF'));
        var tree = new JsonTreeReader(text, faults);
        try
        {
            tree._reader.Read();
            JsonItem root = tree.Item("");
            tree._reader.Read();
            return root;
        }
        catch (JsonException problem)
        {
            tree.Refuse(problem);
            return null;
        }
    }

    private JsonItem Item(string place)
    {
        int line = Line();
        return _reader.TokenType switch
        {
            JsonTokenType.StartObject => Members(line, place),
            JsonTokenType.StartArray => Items(line, place),
            JsonTokenType.String => new TextItem(line, Text(line, place)),
            JsonTokenType.Number => Number(line),
            _ => new WordItem(line, Encoding.UTF8.GetString(_reader.ValueSpan)),
        };
    }

    private ObjectItem Members(int line, string place)
    {
        var members = new List<JsonMember>();
        var first = new Dictionary<string, int>(StringComparer.Ordinal);
        while (Next(place) && _reader.TokenType != JsonTokenType.EndObject)
        {
            int keyLine = Line();
            string key = Text(keyLine, place);
            string inside = FaultList.Inside(place, key);
            Next(inside);
            JsonItem item = Item(inside);
            if (first.TryAdd(key, keyLine))
                members.Add(new JsonMember(key, keyLine, item));
            else
                _faults.Add(
                    keyLine, inside, "the key occurs twice",
                    string.Create(CultureInfo.InvariantCulture, $"each key once; the first is on line {first[key]}"));
        }

        return new ObjectItem(line, members);
    }

    private ArrayItem Items(int line, string place)
    {
        var items = new List<JsonItem>();
        while (Next(place) && _reader.TokenType != JsonTokenType.EndArray)
            items.Add(Item(string.Create(CultureInfo.InvariantCulture, $"{place}[{items.Count}]")));
        return new ArrayItem(line, items);
    }

    private NumberItem Number(int line)
    {
        string digits = Encoding.UTF8.GetString(_reader.ValueSpan);
        // Past the range of a double the reader may give up or give infinity; both are no number to compute with.
        double value = _reader.TryGetDouble(out double read) ? read : double.PositiveInfinity;
        return new NumberItem(line, value, digits);
    }

    private string Text(int line, string place)
    {
        try
        {
            return _reader.GetString() ?? "";
        }
        catch (InvalidOperationException)
        {
            _faults.Add(line, place, "a text holds half of a character, such as \\ud800 alone", "write the character itself");
            return "\uFFFD";
        }
    }

    private bool Next(string place)
    {
        _place = place;
        return _reader.Read();
    }

    private int Line()
    {
        int start = (int)_reader.TokenStartIndex;
        _line += _text[_counted..start].Count((byte)'\n');
        _counted = start;
        return _line;
    }

    private readonly void Refuse(JsonException problem)
    {
        int line = (int)(problem.LineNumber ?? 0);
        int offset = (int)(problem.BytePositionInLine ?? 0);
        ReadOnlySpan<byte> rest = _text;
        for (int skipped = 0; skipped < line && rest.Contains((byte)'\n'); skipped++)
            rest = rest[(rest.IndexOf((byte)'\n') + 1)..];
        int column = 1 + Encoding.UTF8.GetCharCount(rest[..Math.Min(offset, rest.Length)]);
        _faults.AddSyntax(line + 1, column, _place, $"here the text stops being JSON: {Reason(problem.Message)}", Syntax);
    }

    /// <summary>
    /// The library's reason without its own way of saying where, without advice to programmers, and without the rest of
    /// the file, which it quotes after a misspelt literal.
    /// </summary>
    private static string Reason(string message)
    {
        const string literal = "' is an invalid JSON literal";
        int quoted = message.LastIndexOf(literal, StringComparison.Ordinal);
        if (quoted > 0 && message[0] == '\'')
        {
            int end = message.AsSpan(1, quoted - 1).IndexOfAny(" \t\r\n,]}");
            string word = end < 0 ? message[1..quoted] : message[1..(end + 1)];
            message = $"'{PlainText.Short(word)}{message[quoted..]}";
        }

        int where = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return (where < 0 ? message : message[..where])
            .Replace(" Change the reader options.", "", StringComparison.Ordinal)
            .Replace(" when isFinalBlock is true", "", StringComparison.Ordinal)
            .TrimEnd('.');
    }
}
