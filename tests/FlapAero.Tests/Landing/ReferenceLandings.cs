using System.Globalization;
using System.Runtime.CompilerServices;
using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>The landings in data/reference.</summary>
internal static class ReferenceLandings
{
    internal sealed record Case(string Name, LandingInput Input, double[] Results, string Reason);

#if MUTATION_RUN
    // Every mutant flies these again: few of them tell as much.
    private const int Every = 12;
#else
    private const int Every = 1;
#endif

    public static IReadOnlyList<Case> Cases { get; } = [.. Read("landing-cases.csv").Where((_, i) => i % Every == 0)];

    /// <summary>Those whose idle thrust depends on the airspeed.</summary>
    public static IReadOnlyList<Case> IdleCases { get; } = [.. Read("landing-cases-idle.csv").Where((_, i) => i % Every == 0)];

    public static IReadOnlyList<Case> Refusals { get; } = Read("landing-refusals.csv");

    public static string[] Header => Lines("landing-cases.csv")[0].Split(',');

    private static string[] Lines(string file, [CallerFilePath] string here = "") =>
        File.ReadAllLines(Path.Combine(Path.GetDirectoryName(here)!, "../../../data/reference", file));

    private static List<Case> Read(string file)
    {
        string[] lines = Lines(file);
        string[] header = lines[0].Split(',');
        double[] Numbers(string[] cells, IEnumerable<string> columns) =>
            [.. columns.Select(c => double.Parse(cells[Array.IndexOf(header, c)], CultureInfo.InvariantCulture))];
        return
        [
            .. lines.Skip(1).Select(line => line.Split(',')).Select(cells => new Case(
                cells[0],
                Input(header, cells),
                header.Contains("stop_x") ? Numbers(cells, ResultColumns.Names) : [],
                header.Contains("reason") ? cells[Array.IndexOf(header, "reason")] : "")),
        ];
    }

    private static LandingInput Input(string[] header, string[] cells) => LandingInput.FromRow(
    [
        .. LandingColumn.All.Select(column => Array.IndexOf(header, column.Name) is var place and >= 0
            ? double.Parse(cells[place], CultureInfo.InvariantCulture) : column.LeftOut!.Value),
    ]);
}
