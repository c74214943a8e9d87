using System.Globalization;
using System.Security;
using System.Text;

namespace FlapAero.Charts;

public sealed partial class Figure
{
    /// <summary>The figure's numbers: at most about ten rows, at round values where the samples have them.</summary>
    public NumbersTable Numbers => NumbersTable.Of(Complete());

    /// <summary>The figure's name in a page: <c>fig-</c> and the title in lower case.</summary>
    public string Id => "fig-" + Slug(Title);

    /// <summary>The static drawing: SVG without ids, styles or script.</summary>
    /// <returns>An <c>svg</c> element.</returns>
    /// <exception cref="InvalidOperationException">The figure has no line, no caption or no finding.</exception>
    public string ToSvg() => SvgDrawing.Draw(Complete());

    /// <summary>The live drawing: data, layout and config for plotly.js, in a fixed order.</summary>
    /// <returns>A JSON object that is safe inside a script element.</returns>
    /// <exception cref="InvalidOperationException">The figure has no line, no caption or no finding.</exception>
    public string ToPlotlyJson() => PlotlyDrawing.Json(Complete());

    /// <summary>The figure for a page: both drawings, the caption, the alternative text and the numbers.</summary>
    /// <returns>A <c>figure</c> element.</returns>
    /// <exception cref="InvalidOperationException">The figure has no line, no caption or no finding.</exception>
    public string ToHtml()
    {
        var html = new StringBuilder();
        html.Append(CultureInfo.InvariantCulture, $"<figure class=\"plot\" id=\"{Id}\">");
        html.Append(CultureInfo.InvariantCulture, $"<div class=\"plot-drawing\" role=\"img\" aria-label=\"{SecurityElement.Escape(PlainFinding)}\">");
        html.Append(ToSvg()).Append("</div>");
        html.Append("<script type=\"application/json\" class=\"plot-data\">").Append(ToPlotlyJson()).Append("</script>");
        html.Append(CultureInfo.InvariantCulture, $"<figcaption><strong>{LabelText.Html(Title)}{(Title[^1] is '.' or '?' or '!' ? "" : ".")}</strong> {LabelText.Html(CaptionText)}</figcaption>");
        html.Append("<details class=\"plot-numbers\"><summary>The numbers in this figure</summary>");
        html.Append(Numbers.ToHtml()).Append("</details></figure>");
        return html.ToString();
    }

    /// <summary>The figure in words: title, finding, numbers.</summary>
    /// <returns>Plain text.</returns>
    public override string ToString() =>
        Lines.Count == 0 ? Title : $"{Title}\n{CaptionText}\n{PlainFinding}\n{NumbersTable.Of(this)}";

    private string PlainFinding => LabelText.Plain(FindingText);

    private Figure Complete()
    {
        string? missing = Lines.Count == 0 ? "a line: add .Line(name, x, y)"
            : CaptionText.Length == 0 ? "a caption that says what it shows: add .Caption(\"…\")"
            : FindingText.Length == 0 ? "a finding, which is the text for those who do not see it: add .Finding($\"…\")"
            : null;
        return missing is null ? this : throw new InvalidOperationException($"The figure \"{Title}\" is not drawn: it lacks {missing}.");
    }

    private static string Slug(string title)
    {
        var slug = new StringBuilder();
        foreach (char c in title.Normalize(NormalizationForm.FormD).ToLowerInvariant())
            if (char.IsAsciiLetterOrDigit(c)) slug.Append(c);
            else if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark && slug.Length > 0 && slug[^1] != '-') slug.Append('-');
        return slug.ToString().Trim('-') is { Length: > 0 } text ? text : "figure";
    }
}
