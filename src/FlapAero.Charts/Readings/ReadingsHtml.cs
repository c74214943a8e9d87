using System.Globalization;
using System.Text;

namespace FlapAero.Charts;

/// <summary>Readings as a page shows them, above the table of samples.</summary>
internal static class ReadingsHtml
{
    internal static string List(IReadOnlyList<Reading> readings)
    {
        if (readings.Count == 0) return "";
        var html = new StringBuilder("<ul class=\"plot-readings\">");
        foreach (Reading reading in readings)
            html.Append(CultureInfo.InvariantCulture, $"<li>{LabelText.Html(reading.Name)}: <strong>{LabelText.Html(reading.Value)}</strong></li>");
        return html.Append("</ul>").ToString();
    }

    /// <summary>Of a figure that moves: a row each; what is the same at every value is said once.</summary>
    internal static string Table(NumbersTable readings)
    {
        if (readings.Rows.Count == 0) return "";
        var html = new StringBuilder("<table class=\"plot-readings\"><thead><tr>");
        foreach (string heading in readings.Headings) html.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\">{LabelText.Html(heading)}</th>");
        html.Append("</tr></thead><tbody>");
        foreach (IReadOnlyList<string> row in readings.Rows)
        {
            html.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{LabelText.Html(row[0])}</th>");
            bool isSame = row.Skip(1).Distinct().Count() == 1;
            string span = isSame && row.Count > 2 ? $" colspan=\"{row.Count - 1}\"" : "";
            foreach (string cell in row.Skip(1).Take(isSame ? 1 : row.Count)) html.Append(CultureInfo.InvariantCulture, $"<td{span}>{LabelText.Html(cell)}</td>");
            html.Append("</tr>");
        }
        return html.Append("</tbody></table>").ToString();
    }
}
