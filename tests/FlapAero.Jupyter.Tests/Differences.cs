using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace FlapAero.Jupyter.Tests;

/// <summary>What two runs of one lesson put out differently, cell by cell.</summary>
internal static class Differences
{
    /// <summary>Every difference, in words that name the cell; none where each output says the same.</summary>
    public static IReadOnlyList<string> Between(
        IReadOnlyDictionary<string, IReadOnlyList<Output>> first, IReadOnlyDictionary<string, IReadOnlyList<Output>> second)
    {
        var differences = new List<string>();
        foreach (string cell in first.Keys.Union(second.Keys))
        {
            if (!first.TryGetValue(cell, out IReadOnlyList<Output>? left) || !second.TryGetValue(cell, out IReadOnlyList<Output>? right))
            {
                differences.Add($"{cell}: ran in one engine alone");
                continue;
            }
            if (left.Count != right.Count)
                differences.Add(FormattableString.Invariant($"{cell}: {left.Count} outputs against {right.Count}"));
            differences.AddRange(left.Zip(right).Where(pair => Plain(pair.First) != Plain(pair.Second))
                .Select(pair => $"{cell}: {Shown(Plain(pair.First), Plain(pair.Second))}"));
        }
        return differences;
    }

    /// <summary>The output without scripts: they draw what the page's own words and data say.</summary>
    private static Output Plain(Output output)
    {
        if (output.Kind != "html")
            return output;
        IElement body = new HtmlParser().ParseDocument(output.Text).Body!;
        foreach (IElement script in body.QuerySelectorAll("script:not(.plot-data)").ToArray())
            script.Remove();
        return output with { Text = body.InnerHtml.ReplaceLineEndings("\n").Trim() };
    }

    private static string Shown(Output first, Output second)
    {
        if (first.Kind != second.Kind)
            return $"{first.Kind} against {second.Kind}";
        int same = first.Text.Zip(second.Text).TakeWhile(pair => pair.First == pair.Second).Count();
        int start = Math.Max(0, same - 30);
        string Part(string text) => text[start..Math.Min(text.Length, same + 30)];
        return $"\"{Part(first.Text)}\" against \"{Part(second.Text)}\"";
    }
}
