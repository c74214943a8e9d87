using FlapAero.Files;

namespace FlapAero.AeroplaneFiles;

/// <summary>The faults found so far. Lives as long as one reading.</summary>
internal sealed class FaultList
{
    private readonly List<AeroplaneFault> _faults = [];

    public bool IsEmpty => _faults.Count == 0;

    public void Add(int line, string place, string problem, string expected) =>
        _faults.Add(new AeroplaneFault(line, null, place, problem, expected));

    public void AddSyntax(int line, int column, string place, string problem, string expected) =>
        _faults.Add(new AeroplaneFault(line, column, place, problem, expected));

    public IReadOnlyList<AeroplaneFault> ByLine() => [.. _faults.OrderBy(fault => fault.Line)];

    /// <summary>The path to a key inside a place.</summary>
    public static string Inside(string place, string key)
    {
        bool plain = key.Length is > 0 and <= PlainText.Longest && key.All(c => char.IsAsciiLetterOrDigit(c) || c is '$' or '_');
        if (!plain) return $"{place}[{PlainText.Quoted(key)}]";
        return place.Length == 0 ? key : $"{place}.{key}";
    }
}
