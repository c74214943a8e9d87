using System.Globalization;

namespace FlapAero;

/// <summary>One fault of an aeroplane's file: where it is, what it is, and what would be right. Immutable.</summary>
public sealed class AeroplaneFault
{
    internal AeroplaneFault(int? line, int? column, string place, string problem, string expected)
    {
        Line = line;
        Column = column;
        Place = place;
        Problem = problem;
        Expected = expected;
    }

    /// <summary>The line, from 1; none where the file itself is the fault.</summary>
    public int? Line { get; }

    /// <summary>The column in characters, from 1, where the text stops being JSON; none for every other fault.</summary>
    public int? Column { get; }

    /// <summary>The path to the value, such as <c>flapSettings[2].oswaldFactor.value</c>; empty for the whole file.</summary>
    public string Place { get; }

    /// <summary>What is wrong.</summary>
    public string Problem { get; }

    /// <summary>What would be right, and why where it is physics.</summary>
    public string Expected { get; }

    /// <summary>The fault in one line.</summary>
    public override string ToString()
    {
        string[] where =
        [
            .. Line is { } line ? [string.Create(CultureInfo.InvariantCulture, $"line {line}")] : Array.Empty<string>(),
            .. Column is { } column ? [string.Create(CultureInfo.InvariantCulture, $"column {column}")] : Array.Empty<string>(),
            .. Place.Length > 0 ? [Place] : Array.Empty<string>(),
        ];
        string what = $"{Problem}; {Expected}";
        return where.Length == 0 ? what : $"{string.Join(", ", where)}: {what}";
    }
}
