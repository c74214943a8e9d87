using System.Text.Encodings.Web;
using System.Text.Json;

namespace FlapAero.Files;

/// <summary>The faults found so far. Lives as long as one reading.</summary>
internal sealed class FaultList
{
    private const int Longest = 60;
    private static readonly JsonSerializerOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private readonly List<AeroplaneFault> _faults = [];

    public bool IsEmpty => _faults.Count == 0;

    public void Add(int line, string place, string problem, string expected) =>
        _faults.Add(new AeroplaneFault(line, null, place, problem, expected));

    public void AddSyntax(int line, int column, string place, string problem, string expected) =>
        _faults.Add(new AeroplaneFault(line, column, place, problem, expected));

    public IReadOnlyList<AeroplaneFault> ByLine() => [.. _faults.OrderBy(fault => fault.Line)];

    /// <summary>Text in quotes, on one line and not endless, whatever the file holds.</summary>
    public static string Quoted(string text) => JsonSerializer.Serialize(Short(text), Readable);

    /// <summary>The start of a text that a message can carry.</summary>
    public static string Short(string text) => text.Length <= Longest ? text : text[..Longest] + "…";

    /// <summary>The path to a key inside a place.</summary>
    public static string Inside(string place, string key)
    {
        bool plain = key.Length is > 0 and <= Longest && key.All(c => char.IsAsciiLetterOrDigit(c) || c is '$' or '_');
        if (!plain) return $"{place}[{Quoted(key)}]";
        return place.Length == 0 ? key : $"{place}.{key}";
    }
}
