using System.Globalization;
using System.Runtime.CompilerServices;
using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>The landings in data/reference.</summary>
internal static class ReferenceLandings
{
    internal sealed record Case(string Name, LandingInput Input, double[] Results, string Reason);

    public static IReadOnlyList<Case> Cases { get; } = Read("landing-cases.csv");

    public static IReadOnlyList<Case> Refusals { get; } = Read("landing-refusals.csv");

    private static List<Case> Read(string file, [CallerFilePath] string here = "")
    {
        string path = Path.Combine(Path.GetDirectoryName(here)!, "../../../data/reference", file);
        string[] lines = File.ReadAllLines(path);
        string[] header = lines[0].Split(',');
        double[] Numbers(string[] cells, IEnumerable<string> columns) =>
            [.. columns.Select(c => double.Parse(cells[Array.IndexOf(header, c)], CultureInfo.InvariantCulture))];
        return
        [
            .. lines.Skip(1).Select(line => line.Split(',')).Select(cells => new Case(
                cells[0],
                LandingInput.FromRow(Numbers(cells, LandingColumns.Inputs)),
                header.Contains("stop_x") ? Numbers(cells, LandingColumns.Results) : [],
                header.Contains("reason") ? cells[Array.IndexOf(header, "reason")] : "")),
        ];
    }
}
