using System.Globalization;
using FlapAero.Equations;
using FlapAero.Files;
using nietras.SeparatedValues;

namespace FlapAero.Cli;

/// <summary>A table of landings as text has it: read whole, with every fault in it, before anything is computed.</summary>
internal sealed class LandingsTable
{
    private LandingsTable(IReadOnlyList<string> names, LandingInput[] landings, IReadOnlyList<string> faults) =>
        (Names, Landings, Faults) = (names, landings, faults);

    /// <summary>The columns that a table must have, in their order.</summary>
    public static IEnumerable<string> Needed => LandingColumn.All.Where(column => column.LeftOut is null).Select(column => column.Name);

    /// <summary>The columns that it may have.</summary>
    public static IEnumerable<string> Optional => LandingColumn.All.Where(column => column.LeftOut is not null).Select(column => column.Name);

    /// <summary>What the column <c>case</c> calls each landing; its number where there is no such column.</summary>
    public IReadOnlyList<string> Names { get; }

    public LandingInput[] Landings { get; }

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
        List<LandingInput> landings = [];
        int[]? places = null;
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
        return new LandingsTable(names, [.. landings], faults);
    }

    private static int[] Places(string[] header, List<string> faults)
    {
        var places = new int[LandingColumn.All.Count];
        for (int i = 0; i < places.Length; i++)
        {
            string name = LandingColumn.All[i].Name;
            places[i] = Array.IndexOf(header, name);
            if (places[i] < 0 && LandingColumn.All[i].LeftOut is null)
                faults.Add($"row 1: the column {name} is missing.");
            else if (Array.LastIndexOf(header, name) != places[i])
                faults.Add($"row 1: the column {name} stands there {header.Count(c => c == name)} times; once is allowed, or nobody knows which is meant.");
        }

        if (header.Count(c => c == "case") > 1)
            faults.Add("row 1: the column case stands there more than once; once is allowed.");
        if (header.Length == 1 && header[0].Contains(';', StringComparison.Ordinal))
            faults.Add("row 1: the cells are separated by semicolons; allowed is the comma, with a point in numbers.");
        return places;
    }

    private static void ReadRow(
        string[] cells, int line, int width, int[] places, List<string> faults, List<LandingInput> landings)
    {
        int before = faults.Count;
        if (cells.Length != width)
        {
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"row {line}: {cells.Length} cells stand under {width} names; each row has one cell a name."));
            return;
        }

        var values = new double[places.Length];
        foreach (LandingColumn column in LandingColumn.All)
        {
            int place = places[(int)column.Variable];
            ref double value = ref values[(int)column.Variable];
            if (place < 0)
                value = column.LeftOut ?? double.NaN;
            else if (Value(cells[place], column, out value) is { } fault)
                faults.Add(string.Create(CultureInfo.InvariantCulture, $"row {line}, column {fault}"));
        }

        if (faults.Count > before || values.Any(double.IsNaN))
            return;
        var landing = LandingInput.FromRow(values);
        if (LandingCheck.FaultOfWhole(landing) is { } whole)
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"row {line}, column {whole.Message}"));
        landings.Add(landing);
    }

    private static string? Value(string cell, LandingColumn column, out double value)
    {
        value = double.NaN;
        string text = cell.Trim();
        if (text.Length == 0)
            return $"{column.Name}: the cell is empty; a number belongs there.";
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value)
            ? LandingCheck.Fault(value, column.Variable)?.Message
            : $"{column.Name}: '{PlainText.Short(text)}' is not a number; digits, a point and an exponent are allowed.";
    }
}
