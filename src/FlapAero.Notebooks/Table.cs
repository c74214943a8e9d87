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
        foreach (string heading in Headings)
            html.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\">{LabelText.Html(heading)}</th>");
        html.Append("</tr></thead><tbody>");
        foreach (IReadOnlyList<string> row in Rows)
        {
            html.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\"{Wordy(row[0])}>{HtmlText.Escape(row[0])}</th>");
            foreach (string cell in row.Skip(1)) html.Append(CultureInfo.InvariantCulture, $"<td{Wordy(cell)}>{HtmlText.Escape(cell)}</td>");
            html.Append("</tr>");
        }
        return html.Append("</tbody></table>").ToString();
    }

    /// <summary>A cell of several words keeps some width, or a narrow screen breaks it at each of them.</summary>
    private static string Wordy(string cell) => cell.Length > 16 && cell.Contains(' ', StringComparison.Ordinal) ? " class=\"wordy\"" : "";

    /// <inheritdoc/>
    public override string ToString() => Caption + "\n" + string.Join('\n', new[] { Headings }.Concat(Rows).Select(row => string.Join('\t', row.Select(LabelText.Plain))));
}
