using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.Equations;

namespace FlapAero.Published.Tests;

internal static partial class Evaluations
{
    /// <summary>The two measured propellers: what the conditions call them, and their pitch over diameter.</summary>
    internal static IReadOnlyList<(string Name, double PitchRatio)> MeasuredPropellers { get; } = [("9x5.68", 0.631), ("9x7.72", 0.858)];

    private static Dictionary<string, Evaluation> Propellers() =>
        MeasuredRows("9x").ToDictionary(row => row.Id, row => Of(() => CoefficientsOf(row)), StringComparer.Ordinal)
            .Append(new("T09-009", Of(() => PublishedStatic())))
            .Append(new("T09-024", Of(() => [.. MeasuredPropellers.Select(ZeroThrustOverPitch)])))
            .ToDictionary(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal);

    /// <summary>Rows with an advance ratio, of the propellers whose name holds the text, by their advance ratio.</summary>
    internal static IEnumerable<PublishedRow> MeasuredRows(string name) => PublishedRows.All
        .Where(row => row.File == "uiuc-propellers.csv"
            && row.Conditions.Contains(name, StringComparison.Ordinal)
            && row.Conditions.Contains("J =", StringComparison.Ordinal))
        .OrderBy(AdvanceRatio);

    internal static double AdvanceRatio(PublishedRow row) =>
        double.Parse(AdvanceRatioText().Match(row.Conditions).Groups[1].Value, CultureInfo.InvariantCulture);

    internal static PropellerCurve Curve(IEnumerable<PublishedRow> rows, int coefficient)
    {
        PublishedRow[] points = [.. rows];
        return new PropellerCurve([.. points.Select(AdvanceRatio)], [.. points.Select(row => row.Numbers[coefficient].Value)]);
    }

    // C_T and C_P are the table's own; that the efficiency follows from them to the last printed digit is the check.
    private static double[] CoefficientsOf(PublishedRow row)
    {
        PublishedRow[] rows = [.. MeasuredRows(NameOf(row))];
        double ratio = AdvanceRatio(row);
        double thrust = Curve(rows, 0).At(ratio);
        double power = Curve(rows, 1).At(ratio);
        return [thrust, power, PropellerLaws.Efficiency(ratio, thrust, power)];
    }

    private static double[] PublishedStatic()
    {
        PublishedRow row = PublishedRows.Get("T09-009");
        PropellerCurve Through(int coefficient) => new(
            [0, .. MeasuredRows("9x5.68").Select(AdvanceRatio)],
            [row.Numbers[coefficient].Value, .. MeasuredRows("9x5.68").Select(each => each.Numbers[coefficient].Value)]);
        return [Through(0).At(0), Through(1).At(0)];
    }

    private static double ZeroThrustOverPitch((string Name, double PitchRatio) propeller)
    {
        double[] ratios = [.. MeasuredRows(propeller.Name).Select(AdvanceRatio)];
        return Curve(MeasuredRows(propeller.Name), 0).ZeroBetween(ratios[^2], ratios[^1]) / propeller.PitchRatio;
    }

    private static string NameOf(PublishedRow row) =>
        MeasuredPropellers.Single(propeller => row.Conditions.Contains(propeller.Name, StringComparison.Ordinal)).Name;

    [GeneratedRegex(@"J = ([0-9.]+)")]
    private static partial Regex AdvanceRatioText();
}
