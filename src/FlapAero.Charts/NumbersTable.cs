using System.Globalization;
using System.Text;

namespace FlapAero.Charts;

/// <summary>The numbers of a figure as text: a heading a column, at most about ten rows. Immutable.</summary>
public sealed class NumbersTable
{
    private const int MostRows = 10;

    private const int MostDecimals = 3;

    internal NumbersTable(IReadOnlyList<string> headings, IReadOnlyList<IReadOnlyList<string>> rows) => (Headings, Rows) = (headings, rows);

    /// <summary>The columns' headings; the first column is the horizontal axis.</summary>
    public IReadOnlyList<string> Headings { get; }

    /// <summary>The rows, a text for each column.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Rows { get; }

    /// <summary>The table for a page.</summary>
    /// <returns>A <c>table</c> element.</returns>
    public string ToHtml()
    {
        bool[] words = HoldWords(Rows);
        string Class(int column) => words[column] ? " class=\"words\"" : "";
        var html = new StringBuilder("<table><thead><tr>");
        for (int i = 0; i < Headings.Count; i++) html.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\"{Class(i)}>{LabelText.Html(Headings[i])}</th>");
        html.Append("</tr></thead><tbody>");
        foreach (IReadOnlyList<string> row in Rows)
        {
            html.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{LabelText.Html(row[0])}</th>");
            for (int i = 1; i < row.Count; i++) html.Append(CultureInfo.InvariantCulture, $"<td{Class(i)}>{LabelText.Html(row[i])}</td>");
            html.Append("</tr>");
        }
        return html.Append("</tbody></table>").ToString();
    }

    /// <summary>Which columns after the first hold words in every row: words begin at the left, numbers end at the right.</summary>
    internal static bool[] HoldWords(IReadOnlyList<IReadOnlyList<string>> rows) =>
        [.. rows[0].Select((_, column) => column > 0 && rows.All(row => row[column].Any(char.IsLetter) && !row[column].Any(char.IsDigit)))];

    /// <summary>The table in plain text, columns parted by tabs.</summary>
    /// <returns>Plain text.</returns>
    public override string ToString() => string.Join('\n',
        new[] { Headings }.Concat(Rows).Select(row => string.Join('\t', row.Select(LabelText.Plain))));

    internal static NumbersTable Of(Figure figure)
    {
        (IReadOnlyList<string> headings, IReadOnlyList<IReadOnlyList<string>> rows) =
            figure.Lines.FirstOrDefault(line => line.IsBars) is { } bars && figure.Lines.All(IsRising) ? AtValues(figure, bars.X)
            : HaveSameX(figure) ? AtSamples(figure)
            : figure.Lines.All(IsRising) ? AtRoundValues(figure)
            : LineByLine(figure);
        return new NumbersTable(headings, rows);
    }

    /// <summary>Decimals that show about three digits of what varies in the values.</summary>
    internal static int DecimalsFor(IEnumerable<double> values)
    {
        double[] all = [.. values];
        double range = all.Max() - all.Min();
        if (all.All(value => value == Math.Round(value)) && range < 1000) return 0;
        if (range == 0) range = Math.Abs(all[0]);
        return range == 0 ? 0 : Math.Clamp(2 - (int)Math.Floor(Math.Log10(range)), 0, 6);
    }

    private static bool HaveSameX(Figure figure) => figure.Lines.All(line => line.X.SequenceEqual(figure.Lines[0].X));

    private static bool IsRising(Series line)
    {
        for (int i = 1; i < line.X.Count; i++) if (line.X[i] <= line.X[i - 1]) return false;
        return true;
    }

    private static (IReadOnlyList<string>, IReadOnlyList<IReadOnlyList<string>>) AtSamples(Figure figure)
    {
        IReadOnlyList<double> xs = figure.Lines[0].X;
        int[] chosen = RoundSamples(xs) ?? Spread(xs.Count, MostRows);
        string xPattern = ExactPattern(chosen.Select(i => xs[i]));
        string[] patterns = [.. figure.Lines.Select(line => PatternFor(line.Y))];
        return (HeadingsOf(figure), [.. chosen.Select(i => (IReadOnlyList<string>)
            [QuantityText.Of(xs[i], xPattern), .. figure.Lines.Select((line, k) => QuantityText.Of(line.Y[i], patterns[k]))])]);
    }

    private static (IReadOnlyList<string>, IReadOnlyList<IReadOnlyList<string>>) AtRoundValues(Figure figure)
    {
        double low = figure.Lines.Min(line => line.X[0]), high = figure.Lines.Max(line => line.X[^1]);
        return AtValues(figure, Ticks.Multiples(Ticks.Step(high - low, MostRows - 1), low, high));
    }

    private static (IReadOnlyList<string>, IReadOnlyList<IReadOnlyList<string>>) AtValues(Figure figure, IReadOnlyList<double> xs)
    {
        string xPattern = ExactPattern(xs);
        string[] patterns = [.. figure.Lines.Select(line => PatternFor(line.Y))];
        return (HeadingsOf(figure), [.. xs.Select(x => (IReadOnlyList<string>)
            [QuantityText.Of(x, xPattern), .. figure.Lines.Select((line, k) => At(line, x) is double y ? QuantityText.Of(y, patterns[k]) : "–")])]);
    }

    /// <summary>Where lines share no horizontal values: each with some of its own points.</summary>
    private static (IReadOnlyList<string>, IReadOnlyList<IReadOnlyList<string>>) LineByLine(Figure figure)
    {
        int each = Math.Max(3, MostRows / figure.Lines.Count);
        return (["line", Heading(figure.X), Heading(figure.Y)],
            [.. figure.Lines.SelectMany(line => Spread(line.X.Count, each).Select(i => (IReadOnlyList<string>)
                [line.Name, QuantityText.Of(line.X[i], PatternFor(line.X)), QuantityText.Of(line.Y[i], PatternFor(line.Y))]))]);
    }

    private static string[] HeadingsOf(Figure figure) =>
        [Heading(figure.X), .. figure.Lines.Select(line => figure.Y.Unit.Length == 0 ? line.Name : $"{line.Name} ({figure.Y.Unit})")];

    internal static string Heading(Axis axis) => axis.Unit.Length == 0 ? axis.Name : $"{axis.Name} ({axis.Unit})";

    /// <summary>The samples at all multiples of the finest round step that they hold completely, at most ten; none if they hold none.</summary>
    private static int[]? RoundSamples(IReadOnlyList<double> xs)
    {
        double low = xs.Min(), high = xs.Max();
        if (high <= low) return null;
        for (int rows = MostRows - 1; rows >= 3; rows--)
        {
            double step = Ticks.Step(high - low, rows);
            int[] found = [.. Ticks.Multiples(step, low, high).Select(x => IndexOf(xs, x, step * 1e-6))];
            if (found.Length >= 3 && !found.Contains(-1)) return found;
        }
        return null;
    }

    private static int IndexOf(IReadOnlyList<double> xs, double wanted, double tolerance)
    {
        for (int i = 0; i < xs.Count; i++) if (Math.Abs(xs[i] - wanted) <= tolerance) return i;
        return -1;
    }

    private static int[] Spread(int count, int rows) =>
        count <= rows ? [.. Enumerable.Range(0, count)] : [.. Enumerable.Range(0, rows).Select(i => (int)Math.Round(i * (count - 1.0) / (rows - 1)))];

    private static double? At(Series line, double x)
    {
        if (x < line.X[0] || x > line.X[^1]) return null;
        int i = 1;
        while (line.X[i] < x) i++;
        double part = (x - line.X[i - 1]) / (line.X[i] - line.X[i - 1]);
        return line.Y[i - 1] + part * (line.Y[i] - line.Y[i - 1]);
    }

    private static string PatternFor(IReadOnlyList<double> values) => Ticks.Pattern(DecimalsFor(values));

    /// <summary>The fewest decimals that show every value as it is, at most three.</summary>
    internal static string ExactPattern(IEnumerable<double> values) => Ticks.Pattern(ExactDecimals([.. values]) ?? MostDecimals);

    /// <summary>The same for values in steps; those that are round in another unit get the decimals that show a twentieth of a step.</summary>
    internal static string StepPattern(IReadOnlyList<double> rising)
    {
        double step = rising.Zip(rising.Skip(1), (low, high) => high - low).Min();
        return Ticks.Pattern(ExactDecimals(rising) ?? Math.Clamp((int)Math.Ceiling(Math.Log10(10 / step)), 0, MostDecimals));
    }

    /// <summary>Null where more than three would be needed.</summary>
    internal static int? ExactDecimals(IReadOnlyList<double> values)
    {
        for (int decimals = 0; decimals <= MostDecimals; decimals++)
            if (values.All(v => Math.Abs(v - Math.Round(v, decimals)) <= 1e-9 * Math.Max(1, Math.Abs(v)))) return decimals;
        return null;
    }
}
