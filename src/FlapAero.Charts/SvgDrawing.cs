using System.Globalization;
using System.Text;

namespace FlapAero.Charts;

/// <summary>
/// The static drawing, for viewers that run no scripts and for paper: plain SVG with real text, no ids, no script, and
/// scaled by its container. It is not hidden from assistive technology: its wrapper is one image with one text, and a
/// wrapper of something hidden loses that text in a PDF.
/// </summary>
internal static class SvgDrawing
{
    private const double DrawingWidth = 460;
    private const double DrawingHeight = 350;
    private const double FontSize = 15;

    internal static string Draw(Figure figure)
    {
        var layout = new FigureLayout(figure, DrawingWidth, DrawingHeight, FontSize, []);
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {DrawingWidth} {N(layout.Height)}\" font-family=\"system-ui, sans-serif\" font-size=\"{FontSize}\" fill=\"{FigureLayout.Ink}\">");
        svg.Append(CultureInfo.InvariantCulture, $"<path fill=\"#FFFFFF\" d=\"M0 0H{DrawingWidth}V{N(layout.Height)}H0Z\"/>");
        AppendAxes(svg, layout);
        foreach ((Level level, string dash) in figure.LevelDashes)
            svg.Append(CultureInfo.InvariantCulture, $"<path stroke=\"{FigureLayout.Grey}\" stroke-dasharray=\"{dash}\" d=\"M{N(layout.Plot.Left)} {N(layout.ToY(level.Y))}H{N(layout.Plot.Right)}\"/>");
        for (int i = 0; i < figure.Lines.Count; i++)
            if (figure.Lines[i].IsBars) AppendBars(svg, layout.ToBars(figure.Lines[i]), figure.LineStyles[i]);
        for (int i = 0; i < figure.Lines.Count; i++)
            if (!figure.Lines[i].IsBars) AppendLine(svg, layout.ToPoints(figure.Lines[i]), figure.LineStyles[i]);
        foreach (Mark mark in figure.Marks)
            svg.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{N(layout.ToX(mark.X))}\" cy=\"{N(layout.ToY(mark.Y))}\" r=\"4.5\" stroke=\"#FFFFFF\" stroke-width=\"1.5\"/>");
        foreach (Prediction prediction in figure.PredictionsWithin(layout)) AppendPrediction(svg, prediction, layout);
        foreach (PlacedLabel label in layout.Labels) AppendLabel(svg, label, layout);
        return svg.Append("</svg>").ToString();
    }

    private static void AppendAxes(StringBuilder svg, FigureLayout layout)
    {
        Box plot = layout.Plot;
        string grid = string.Concat(layout.YTicks.Values.Select(y => $"M{N(plot.Left)} {N(layout.ToY(y))}H{N(plot.Right)}"))
            + string.Concat(layout.XTicks.Values.Select(x => $"M{N(layout.ToX(x))} {N(plot.Top)}V{N(plot.Bottom)}"));
        svg.Append(CultureInfo.InvariantCulture, $"<path stroke=\"{FigureLayout.Grid}\" d=\"{grid}\"/>");
        string ticks = string.Concat(layout.XTicks.Values.Select(x => $"M{N(layout.ToX(x))} {N(plot.Bottom)}v5"));
        svg.Append(CultureInfo.InvariantCulture, $"<path stroke=\"{FigureLayout.Grey}\" d=\"M{N(plot.Left)} {N(plot.Bottom)}H{N(plot.Right)}{ticks}\"/>");

        svg.Append("<g text-anchor=\"end\">");
        foreach ((double y, string text) in layout.YTicks.Values.Zip(layout.YTicks.Labels))
            AppendText(svg, plot.Left - 8, layout.ToY(y) + FontSize * 0.35, text);
        svg.Append("</g><g text-anchor=\"middle\">");
        foreach ((double x, string text) in layout.XTicks.Values.Zip(layout.XTicks.Labels))
            AppendText(svg, layout.ToX(x), plot.Bottom + 6 + FontSize, text);
        double below = plot.Bottom + 8 + FontSize + layout.LineHeight;
        for (int i = 0; i < layout.XTitle.Count; i++)
            AppendRuns(svg, plot.Left + plot.Width / 2, below + i * layout.LineHeight, layout.XTitle[i]);
        svg.Append("</g>");
        for (int i = 0; i < layout.YTitle.Count; i++)
            AppendRuns(svg, 6, FontSize + 2 + i * layout.LineHeight, layout.YTitle[i]);
    }

    private static void AppendLine(StringBuilder svg, IReadOnlyList<Point> points, SeriesStyle style)
    {
        string path = string.Join(' ', Simplified.Line(points, 0.12).Select(p => $"{N(p.X)},{N(p.Y)}"));
        string dash = style.Dash.Length == 0 ? "" : $" stroke-dasharray=\"{style.Dash}\"";
        svg.Append(CultureInfo.InvariantCulture, $"<polyline fill=\"none\" stroke=\"{style.Line}\" stroke-width=\"2.5\"{dash} points=\"{path}\"/>");
    }

    private static void AppendBars(StringBuilder svg, IEnumerable<Box> bars, SeriesStyle style)
    {
        string path = string.Concat(bars.Select(b => $"M{N(b.Left)} {N(b.Bottom)}V{N(b.Top)}H{N(b.Right)}V{N(b.Bottom)}Z"));
        svg.Append(CultureInfo.InvariantCulture, $"<path class=\"bars\" fill=\"{style.Line}\" fill-opacity=\"0.55\" stroke=\"{style.Line}\" d=\"{path}\"/>");
    }

    private static void AppendPrediction(StringBuilder svg, Prediction prediction, FigureLayout layout)
    {
        Box plot = layout.Plot;
        (double x, double y) = prediction.IsAcross ? (layout.ToX(prediction.At), plot.Top + FontSize) : (plot.Left, layout.ToY(prediction.At) - 4);
        string line = prediction.IsAcross ? $"M{N(x)} {N(plot.Top)}V{N(plot.Bottom)}" : $"M{N(plot.Left)} {N(y + 4)}H{N(plot.Right)}";
        bool isRight = x > plot.Left + plot.Width / 2;
        svg.Append(CultureInfo.InvariantCulture, $"<path stroke=\"#000000\" stroke-width=\"2\" stroke-dasharray=\"1,5\" stroke-linecap=\"round\" d=\"{line}\"/>");
        svg.Append(CultureInfo.InvariantCulture, $"<g stroke=\"#FFFFFF\" stroke-width=\"4\" paint-order=\"stroke\" font-weight=\"700\" text-anchor=\"{(isRight ? "end" : "start")}\">");
        AppendText(svg, x + (isRight ? -6 : 6), y, Prediction.Label);
        svg.Append("</g>");
    }

    private static void AppendLabel(StringBuilder svg, PlacedLabel label, FigureLayout layout)
    {
        if (label.Leader != Leader.None)
            svg.Append(CultureInfo.InvariantCulture, $"<path stroke=\"{label.Color}\" d=\"M{N(label.Anchor.X)} {N(label.Anchor.Y)}L{N(label.LeaderEnd.X)} {N(label.LeaderEnd.Y)}\"/>");
        // On the side of what it names it ends where it should, whatever the letters' true width.
        (string side, double x) = label.Side switch
        {
            LabelSide.Left => ("", label.Box.Left),
            LabelSide.Right => (" text-anchor=\"end\"", label.Box.Right),
            _ => (" text-anchor=\"middle\"", label.Box.Left + label.Box.Width / 2),
        };
        svg.Append(CultureInfo.InvariantCulture, $"<g fill=\"{label.Color}\" stroke=\"#FFFFFF\" stroke-width=\"4\" stroke-linejoin=\"round\" paint-order=\"stroke\"{side}>");
        for (int i = 0; i < label.Lines.Count; i++)
            AppendRuns(svg, x, label.Box.Top + i * layout.LineHeight + FontSize * 0.93, label.Lines[i]);
        svg.Append("</g>");
    }

    private static void AppendText(StringBuilder svg, double x, double y, string text) =>
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{N(x)}\" y=\"{N(y)}\">{HtmlText.Escape(text)}</text>");

    private static void AppendRuns(StringBuilder svg, double x, double y, IReadOnlyList<Notation.Run> runs) =>
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{N(x)}\" y=\"{N(y)}\">{Notation.ToSvg(runs)}</text>");

    private static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
