using System.Text;
using System.Text.RegularExpressions;

namespace FlapAero.Charts;

/// <summary>
/// A label in which symbols may have a subscript: <c>V_S</c>, <c>C_Lmax</c>, <c>V_{S,30}</c>. The base is set in
/// italics, the subscript lowered, in HTML (which plotly.js reads too) and in SVG.
/// </summary>
internal static partial class Notation
{
    internal enum Kind { Text, Symbol, Subscript }

    internal readonly record struct Run(string Text, Kind Kind);

    /// <summary>Splits a label. In a symbol every letter is set in italics, in a sentence only one with a subscript.</summary>
    internal static IReadOnlyList<Run> Parse(string label, bool isSymbol = false)
    {
        var runs = new List<Run>();
        int at = 0;
        foreach (Match match in (isSymbol ? AnySymbol() : SymbolWithSubscript()).Matches(label))
        {
            if (match.Index > at) runs.Add(new Run(label[at..match.Index], Kind.Text));
            runs.Add(new Run(match.Groups["base"].Value, Kind.Symbol));
            if (match.Groups["sub"].Success) runs.Add(new Run(match.Groups["sub"].Value.Trim('{', '}'), Kind.Subscript));
            at = match.Index + match.Length;
        }
        if (at < label.Length) runs.Add(new Run(label[at..], Kind.Text));
        return runs;
    }

    internal static string ToPlain(IEnumerable<Run> runs) => string.Concat(runs.Select(run => run.Text));

    internal static string ToHtml(IEnumerable<Run> runs) => string.Concat(runs.Select(run => run.Kind switch
    {
        Kind.Symbol => $"<i>{HtmlText.Escape(run.Text)}</i>",
        Kind.Subscript => $"<sub>{HtmlText.Escape(run.Text)}</sub>",
        _ => HtmlText.Escape(run.Text),
    }));

    /// <summary>Text spans for inside an SVG <c>text</c>; lowered with <c>dy</c>, since not every browser knows baseline-shift.</summary>
    internal static string ToSvg(IEnumerable<Run> runs)
    {
        var svg = new StringBuilder();
        bool isLowered = false;
        foreach (Run run in Merged(runs))
        {
            string shift = (run.Kind == Kind.Subscript, isLowered) switch
            {
                (true, false) => " dy=\"4\" font-size=\"75%\"",
                (true, true) => " font-size=\"75%\"",
                (false, true) => " dy=\"-4\"",
                _ => "",
            };
            string style = run.Kind == Kind.Symbol ? " font-style=\"italic\"" : "";
            string text = HtmlText.Escape(run.Text);
            svg.Append(shift.Length + style.Length == 0 ? text : $"<tspan{shift}{style}>{text}</tspan>");
            isLowered = run.Kind == Kind.Subscript;
        }
        return svg.ToString();
    }

    /// <summary>Neighbours of one kind as one, so that no span holds but a space, which XML readers may drop.</summary>
    private static List<Run> Merged(IEnumerable<Run> runs)
    {
        var merged = new List<Run>();
        foreach (Run run in runs)
            if (merged.Count > 0 && merged[^1].Kind == run.Kind) merged[^1] = run with { Text = merged[^1].Text + run.Text };
            else merged.Add(run);
        return merged;
    }

    [GeneratedRegex(@"(?<![\p{L}\p{N}])(?<base>\p{L}{1,2})_(?<sub>\{[^}]+\}|[\p{L}\p{N}]+)", RegexOptions.CultureInvariant)]
    private static partial Regex SymbolWithSubscript();

    [GeneratedRegex(@"(?<base>\p{L}+)(_(?<sub>\{[^}]+\}|[\p{L}\p{N}]+))?", RegexOptions.CultureInvariant)]
    private static partial Regex AnySymbol();
}
