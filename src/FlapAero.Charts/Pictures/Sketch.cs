namespace FlapAero.Charts;

/// <summary>A picture in the making: shapes and labels in the order in which they lie over each other.</summary>
internal sealed class Sketch(string title, double height)
{
    private readonly List<PictureShape> _shapes = [];
    private readonly List<PictureLabel> _labels = [];

    internal Box Whole => new(2, 2, Picture.Width - 4, height - 4);

    internal void Area(PicturePart part, IReadOnlyList<Point> corners, SeriesStyle? ink = null, bool isLine = false) =>
        _shapes.Add(new PictureShape(part, isLine && corners.Count > 0 ? [.. corners, corners[0]] : corners, ink));

    /// <summary>Several areas as one shape: each ends where it began, and the next follows.</summary>
    internal void Areas(PicturePart part, IEnumerable<IReadOnlyList<Point>> areas) =>
        _shapes.Add(new PictureShape(part, [], null) { Areas = [.. areas.Where(area => area.Count > 2)] });

    internal void Line(PicturePart part, params IReadOnlyList<Point> points) =>
        _shapes.Add(new PictureShape(part, points));

    internal void Line(PicturePart part, SeriesStyle ink, params IReadOnlyList<Point> points) =>
        _shapes.Add(new PictureShape(part, points, ink));

    internal void Label(Words text, Point anchor, Box? room = null, string color = FigureLayout.Ink) =>
        _labels.Add(new PictureLabel(text, anchor, room ?? Whole, color));

    internal void Standing(Words text, Point anchor, string color, LabelStand stand) =>
        _labels.Add(new PictureLabel(text, anchor, Whole, color, stand));

    internal void Heading(Words text, Point anchor, string color, LabelStand stand = LabelStand.Middle) =>
        _labels.Add(new PictureLabel(text, anchor, Whole, color, stand, IsStrong: true));

    internal Picture Done(
        Words caption, Words finding, IReadOnlyList<string> headings,
        params IReadOnlyList<IReadOnlyList<Words>> rows) =>
        new(title, height, _shapes, _labels, new PictureWords(caption, finding, headings, rows));
}
