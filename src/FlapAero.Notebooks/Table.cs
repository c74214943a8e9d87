using System.Globalization;
using System.Text;
using FlapAero.Charts;

namespace FlapAero.Notebooks;

/// <summary>A table of values in words. Immutable.</summary>
public sealed class Table : LessonResult
{
    internal Table(string caption, IReadOnlyList<string> headings, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        if (headings.Count == 0) throw Require.RefusedWhole(
            nameof(headings),
            $"The table \"{caption}\" has no columns.");
        if (rows.Count == 0) throw Require.RefusedWhole(nameof(rows), $"The table \"{caption}\" has no rows.");
        for (int i = 0; i < rows.Count; i++)
            if (rows[i].Count != headings.Count)
                throw Require.RefusedWhole(
                    nameof(rows),
                    $"Row {i + 1} of the table \"{caption}\" has {rows[i].Count} values for {headings.Count} columns.");
        (Caption, Headings, Rows) = (caption, headings, rows);
    }

    /// <summary>The caption.</summary>
    public string Caption { get; }

    /// <summary>The headings, one a column.</summary>
    public IReadOnlyList<string> Headings { get; }

    /// <summary>The rows, a text for each column; the first heads the row.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Rows { get; }

    /// <inheritdoc/>
    public override string ToHtml()
    {
        var html = new StringBuilder("<table class=\"numbers\">");
        html.Append(CultureInfo.InvariantCulture, $"<caption>{HtmlText.Escape(Caption)}</caption><thead><tr>");
        bool[] words = NumbersTable.HoldWords(Rows);
        for (int i = 0; i < Headings.Count; i++)
            html.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\"{(words[i] ? " class=\"words\"" : "")}>{LabelText.Html(Headings[i])}</th>");
        html.Append("</tr></thead><tbody>");
        foreach (IReadOnlyList<string> row in Rows)
        {
            html.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\"{Classes(row[0], false)}>{HtmlText.Escape(row[0])}</th>");
            for (int i = 1; i < row.Count; i++)
                html.Append(CultureInfo.InvariantCulture, $"<td{Classes(row[i], words[i])}>{HtmlText.Escape(row[i])}</td>");
            html.Append("</tr>");
        }
        return html.Append("</tbody></table>").ToString();
    }

    /// <summary>Words begin at the left; of several a cell keeps some width, or a narrow screen breaks it at each of them.</summary>
    private static string Classes(string cell, bool isWords)
    {
        bool isWordy = cell.Length > 16 && cell.Contains(' ', StringComparison.Ordinal);
        return isWords ? isWordy ? " class=\"words wordy\"" : " class=\"words\"" : isWordy ? " class=\"wordy\"" : "";
    }

    /// <inheritdoc/>
    public override string ToString() => Caption + "\n" + string.Join('\n', new[] { Headings }.Concat(Rows).Select(row => string.Join('\t', row.Select(LabelText.Plain))));
}
