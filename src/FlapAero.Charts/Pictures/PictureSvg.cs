using System.Globalization;
using System.Text;

namespace FlapAero.Charts;

/// <summary>
/// Writes a picture as SVG: a list of elements, so that a picture that moves can say what changes in which.
/// </summary>
internal static class PictureSvg
{
    internal static string Draw(Picture picture)
    {
        var svg = new StringBuilder();
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Picture.Width} {N(picture.Height)}\" font-family=\"system-ui, sans-serif\" font-size=\"{PictureLabels.FontSize}\" fill=\"none\" stroke-linejoin=\"round\">");
        foreach (SvgElement element in Elements(picture)) svg.Append(element);
        return svg.Append("</svg>").ToString();
    }

    internal static IReadOnlyList<SvgElement> Elements(Picture picture)
    {
        var elements = new List<SvgElement>
        {
            new("path", [("fill", "#FFFFFF"), ("d", $"M0 0H{N(Picture.Width)}V{N(picture.Height)}H0Z")], ""),
        };
        foreach (PictureShape shape in picture.Shapes) elements.Add(Element(shape));
        IReadOnlyList<PlacedLabel> placed = PictureLabels.Place(picture);
        for (int i = 0; i < placed.Count; i++)
        {
            elements.Add(LeaderOf(placed[i]));
            elements.Add(Text(placed[i], picture.Labels[i]));
        }
        return elements;
    }

    private static SvgElement Element(PictureShape shape)
    {
        PicturePart part = shape.Part;
        string stroke = part.Stroke.Length > 0 ? part.Stroke : part.Fill.Length > 0 ? "" : shape.Ink?.Line
            ?? FigureLayout.Ink;
        string dash = part.Dash.Length > 0 ? part.Dash : part.Fill.Length > 0 || part.Stroke.Length > 0 ? ""
            : shape.Ink?.Dash ?? "";
        // A head must not be dashed, and a short arrow must not look broken.
        if (part.HasHead) dash = "";
        var attributes = new List<(string, string)> { ("data-part", part.Name) };
        if (part.Fill.Length > 0) attributes.Add(("fill", part.Fill));
        if (stroke.Length > 0) attributes.AddRange([("stroke", stroke), ("stroke-width", N(part.Width))]);
        if (dash.Length > 0) attributes.Add(("stroke-dasharray", dash));
        attributes.Add(
            ("d", Path(shape.Points, part.Fill.Length > 0)
                + string.Concat(shape.Areas.Select(area => Path(area, true)))
                    + (part.HasHead ? Head(shape.Points) : "")));
        return new SvgElement("path", attributes, "");
    }

    private static string Path(IReadOnlyList<Point> points, bool isClosed)
    {
        if (points.Count == 0) return "";
        var path = new StringBuilder();
        for (int i = 0; i < points.Count; i++)
            path.Append(CultureInfo.InvariantCulture, $"{(i == 0 ? "M" : "L")}{N(points[i].X)} {N(points[i].Y)}");
        return isClosed ? path.Append('Z').ToString() : path.ToString();
    }

    /// <summary>Two short strokes at the end; shorter on a short arrow.</summary>
    private static string Head(IReadOnlyList<Point> points)
    {
        if (points.Count < 2) return "";
        (Point from, Point to) = (points[^2], points[^1]);
        double dx = to.X - from.X, dy = to.Y - from.Y, length = Math.Sqrt(dx * dx + dy * dy);
        if (length < 1) return "";
        double size = Math.Min(9, 0.6 * length) / length, half = 0.55;
        string Side(double side) =>
            $"M{N(to.X - size * (dx + side * half * dy))} {N(to.Y - size * (dy - side * half * dx))}L{N(to.X)} {N(to.Y)}";
        return Side(1) + Side(-1);
    }

    /// <summary>Always an element, so that a picture that moves has the same ones at every value.</summary>
    private static SvgElement LeaderOf(PlacedLabel label) => new("path",
        [("stroke", label.Color),
            ("d", label.Leader == Leader.None ? ""
                : $"M{N(label.Anchor.X)} {N(label.Anchor.Y)}L{N(label.LeaderEnd.X)} {N(label.LeaderEnd.Y)}")], "");

    /// <summary>
    /// A label that stands on its middle or its end is aligned by the viewer, who knows the letters' true widths.
    /// </summary>
    private static SvgElement Text(PlacedLabel label, PictureLabel wanted)
    {
        (string anchor, double x) = wanted.Stand switch
        {
            LabelStand.Middle => (" text-anchor=\"middle\"", wanted.Anchor.X),
            LabelStand.End => (" text-anchor=\"end\"", wanted.Anchor.X),
            _ => ("", label.Box.Left),
        };
        var lines = new StringBuilder();
        for (int i = 0; i < label.Lines.Count; i++)
            lines.Append(
                CultureInfo.InvariantCulture,
                $"<text x=\"{N(x)}\" y=\"{N(label.Box.Top + i * PictureLabels.LineHeight + PictureLabels.FontSize * 0.93)}\"{anchor}>{Notation.ToSvg(label.Lines[i])}</text>");
        var attributes = new List<(string, string)> { ("fill", label.Color) };
        if (wanted.IsStrong) attributes.Add(("font-weight", "700"));
        else attributes.AddRange([("stroke", "#FFFFFF"), ("stroke-width", "4"), ("paint-order", "stroke")]);
        return new SvgElement("g", attributes, lines.ToString());
    }

    internal static string N(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);
}

/// <summary>An element of a drawing.</summary>
/// <param name="Tag">Its name.</param>
/// <param name="Attributes">Its attributes in their order.</param>
/// <param name="Inner">What stands in it, as markup.</param>
internal sealed record SvgElement(string Tag, IReadOnlyList<(string Name, string Value)> Attributes, string Inner)
{
    public override string ToString() =>
        $"<{Tag}{string.Concat(Attributes.Select(a => $" {a.Name}=\"{HtmlText.Escape(a.Value)}\""))}{(Inner.Length == 0 ? "/>" : $">{Inner}</{Tag}>")}";
}
