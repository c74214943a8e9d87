using System.Globalization;
using FlapAero.Files;
using nietras.SeparatedValues;

namespace FlapAero.Cli;

/// <summary>A table of landings as text has it: read whole, with every fault in it, before anything is computed.</summary>
internal sealed class LandingsTable
{
    private LandingsTable(
        IReadOnlyList<string> names, IReadOnlyList<(LandingSetup Setup, LandingConditions Conditions)> landings,
        IReadOnlyList<string> faults) =>
        (Names, Landings, Faults) = (names, landings, faults);

    /// <summary>The columns that a table must have, in their order.</summary>
    public static IEnumerable<string> Needed => Columns(leftOut: false);

    /// <summary>The columns that it may have.</summary>
    public static IEnumerable<string> Optional => Columns(leftOut: true);

    /// <summary>What the column <c>case</c> calls each landing; its number where there is no such column.</summary>
    public IReadOnlyList<string> Names { get; }

    public IReadOnlyList<(LandingSetup Setup, LandingConditions Conditions)> Landings { get; }

    /// <summary>Every fault, with row and column, in the order of the file; where there is one, the landings are not to be used.</summary>
    public IReadOnlyList<string> Faults { get; }

    /// <summary>Reads a table: comma between cells, quotes where a cell needs them, any order of columns, others ignored.</summary>
    public static LandingsTable Read(string path)
    {
        using SepReader reader = Sep.New(',')
            .Reader(o => o with { HasHeader = false, Unescape = true, DisableColCountCheck = true, CultureInfo = CultureInfo.InvariantCulture })
            .From(OrdinaryFile.Read(path, OrdinaryFile.TableLimit));
        List<string> faults = [];
        List<string> names = [];
        List<(LandingSetup, LandingConditions)> landings = [];
        Dictionary<LandingVariable, int>? places = null;
        int width = 0, nameColumn = -1;
        foreach (SepReader.Row row in reader)
        {
            string[] cells = row[..].ToStringsArray();
            if (cells.All(string.IsNullOrWhiteSpace) && (cells.Length <= 1 || places is null))
                continue;
            if (places is null)
            {
                string[] header = [.. cells.Select(c => c.Trim())];
                (places, width) = (Places(header, faults), header.Length);
                nameColumn = Array.IndexOf(header, "case");
                continue;
            }

            // Rows count as an editor counts lines, the header being the first.
            ReadRow(cells, row.LineNumberFrom, width, places, faults, landings);
            names.Add(nameColumn >= 0 && nameColumn < cells.Length
                ? cells[nameColumn]
                : (names.Count + 1).ToString(CultureInfo.InvariantCulture));
        }

        if (places is null)
            faults.Add($"the file is empty; the first row names the columns: {string.Join(", ", Needed)}.");
        else if (names.Count == 0 && faults.Count == 0)
            faults.Add("the file has a row of names and no landing under it; each row is one landing.");
        return new LandingsTable(names, landings, faults);
    }

    private static IEnumerable<string> Columns(bool leftOut) =>
        LandingColumns.All.Where(variable => variable.WhereLeftOut() is not null == leftOut).Select(variable => variable.Column());

    private static Dictionary<LandingVariable, int> Places(string[] header, List<string> faults)
    {
        Dictionary<LandingVariable, int> places = [];
        foreach (LandingVariable variable in LandingColumns.All)
        {
            string name = variable.Column();
            places[variable] = Array.IndexOf(header, name);
            if (places[variable] < 0 && variable.WhereLeftOut() is null)
                faults.Add($"row 1: the column {name} is missing.");
            else if (Array.LastIndexOf(header, name) != places[variable])
                faults.Add($"row 1: the column {name} stands there {header.Count(c => c == name)} times; once is allowed, or nobody knows which is meant.");
        }

        if (header.Count(c => c == "case") > 1)
            faults.Add("row 1: the column case stands there more than once; once is allowed.");
        if (header.Length == 1 && header[0].Contains(';', StringComparison.Ordinal))
            faults.Add("row 1: the cells are separated by semicolons; allowed is the comma, with a point in numbers.");
        return places;
    }

    private static void ReadRow(
        string[] cells, int line, int width, Dictionary<LandingVariable, int> places, List<string> faults,
        List<(LandingSetup, LandingConditions)> landings)
    {
        if (cells.Length != width)
        {
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"row {line}: {cells.Length} cells stand under {width} names; each row has one cell a name."));
            return;
        }

        int before = faults.Count;
        Dictionary<LandingVariable, double> values = [];
        foreach ((LandingVariable variable, int place) in places)
        {
            if (place < 0)
                values[variable] = variable.WhereLeftOut() ?? double.NaN;
            else if (Fault(cells[place], out double value) is { } fault)
                Add(variable.Column(), fault);
            else
                values[variable] = value;
        }

        // A table without one of its columns is refused for that alone, and not once more in each row.
        if (faults.Count > before || values.Values.Any(double.IsNaN))
            return;
        LandingsRow row = new(values);
        landings.Add(row.Landing());
        foreach ((string columns, string refusal) in row.Faults)
            Add(columns, refusal);

        void Add(string columns, string fault)
        {
            string word = columns.Contains(',', StringComparison.Ordinal) ? "columns" : "column";
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"row {line}, {word} {columns}: {fault}"));
        }
    }

    private static string? Fault(string cell, out double value)
    {
        string text = cell.Trim();
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value))
            return null;
        return text.Length == 0
            ? "the cell is empty; a number belongs there."
            : $"'{PlainText.Short(text)}' is not a finite number; digits, a point and an exponent are allowed.";
    }
}
