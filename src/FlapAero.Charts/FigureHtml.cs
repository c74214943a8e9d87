using System.Globalization;
using System.Text;

namespace FlapAero.Charts;

/// <summary>The <c>figure</c> element, put together in one place for pages and for notebooks.</summary>
/// <param name="Start">The figure or the picture that is drawn until anything moves.</param>
/// <param name="Data">The live drawing's JSON; empty for a picture that stands still.</param>
/// <param name="Control">What moves it, as HTML; empty for a figure that stands still.</param>
/// <param name="Range">What a still drawing says of that, as HTML; empty likewise.</param>
/// <param name="Readings">What one reads off it, as HTML; empty for a picture, whose table says it.</param>
/// <param name="Numbers">The figure's tables.</param>
internal sealed record FigureHtml(IDrawing Start, string Data, string Control, string Range, string Readings, params IReadOnlyList<NumbersTable> Numbers)
{
    /// <summary>In pixels: wide enough to read, narrow enough for a notebook's column.</summary>
    private const int StillWidth = 552;

    internal string ForPage() => Element(Start.ToSvg(), "");

    /// <summary>
    /// A notebook that is not trusted loses scripts, inline SVG and <c>aria-label</c>; a picture with its alternative
    /// text stays. One that is trusted draws the figure as soon as the lesson's first cell has brought the means.
    /// </summary>
    internal string ForNotebook() => Element(
        $"<img width=\"{StillWidth}\" alt=\"{Finding}\" src=\"data:image/svg+xml;charset=utf-8,{InAddress(Start.ToSvg())}\">",
        Data.Length == 0 ? "" : $"<script>(window.flapaeroFigures ??= []).push(\"{Start.Id}\")</script>");

    private string Kind => Start switch { Picture => "plot picture", Figure { IsToScale: true } => "plot to-scale", _ => "plot" };

    private string Finding => HtmlText.Escape(LabelText.Plain(Start.FindingText));

    private string Element(string still, string script)
    {
        string end = Start.Title[^1] is '.' or '?' or '!' ? "" : ".";
        var html = new StringBuilder();
        html.Append(CultureInfo.InvariantCulture, $"<figure class=\"{Kind}\" id=\"{Start.Id}\"><div class=\"plot-drawing\" role=\"img\" aria-label=\"{Finding}\">{still}</div>");
        if (Data.Length > 0) html.Append(CultureInfo.InvariantCulture, $"<script type=\"application/json\" class=\"plot-data\">{Data}</script>{Control}");
        html.Append(CultureInfo.InvariantCulture, $"<figcaption><strong>{LabelText.Html(Start.Title)}{end}</strong> {LabelText.Html(Start.CaptionText)}{Range}</figcaption>");
        html.Append("<details class=\"plot-numbers\"><summary>The numbers in this figure</summary>").Append(Readings);
        foreach (NumbersTable numbers in Numbers) html.Append(numbers.ToHtml());
        return html.Append(CultureInfo.InvariantCulture, $"</details>{script}</figure>").ToString();
    }

    /// <summary>Only what would end an address or an attribute early: the drawing stays readable, and smaller than as base64.</summary>
    private static string InAddress(string svg) => svg
        .Replace("'", "&apos;", StringComparison.Ordinal)
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("%", "%25", StringComparison.Ordinal)
        .Replace("#", "%23", StringComparison.Ordinal)
        .Replace('"', '\'');
}
