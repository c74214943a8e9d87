namespace FlapAero.Charts;

/// <summary>A line or an area of a picture. Immutable.</summary>
/// <param name="Part">What it is, which decides how it is drawn and names it in the drawing.</param>
/// <param name="Points">Its corners in the picture's own pixels.</param>
/// <param name="Ink">Its colour and dash where the part leaves them open: those of a flap setting.</param>
internal sealed record PictureShape(PicturePart Part, IReadOnlyList<Point> Points, SeriesStyle? Ink = null)
{
    /// <summary>Several areas that are one thing, such as the paint on a runway.</summary>
    internal IReadOnlyList<IReadOnlyList<Point>> Areas { get; init; } = [];
}

/// <summary>What is drawn and how. Immutable.</summary>
/// <param name="Name">Its name in the drawing.</param>
/// <param name="Fill">The area's colour; empty for a line.</param>
/// <param name="Stroke">The line's colour; empty for an area without an edge, or one that takes a flap setting's
/// ink.</param>
/// <param name="Width">The line's width in pixels.</param>
/// <param name="Dash">The line's dash; empty for a solid line.</param>
/// <param name="IsClear">Whether labels keep off its line.</param>
/// <param name="HasHead">Whether the line ends in an arrow's head.</param>
internal sealed record PicturePart(
    string Name, string Fill = "", string Stroke = "", double Width = 1, string Dash = "", bool IsClear = false,
        bool HasHead = false)
{
    internal static readonly PicturePart
        Sky = new("sky", Fill: "#E6F0F7"),
        Ground = new("ground", Fill: "#E2E6D3"),
        Horizon = new("horizon", Stroke: "#222222", Width: 1.5, IsClear: true),
        Runway = new("runway", Fill: "#6E6E6E"),
        Paint = new("paint", Fill: "#FFFFFF"),
        Cowling = new("cowling", Fill: "#4A4A4A", Stroke: "#222222", Width: 1.5),
        Frame = new("frame", Width: 3),
        Level = new("level-line", Stroke: "#222222", Width: 1.2, Dash: "2,3", IsClear: true),
        Chord = new("chord", Stroke: "#222222", Width: 1.6, Dash: "10,3", IsClear: true),
        Path = new("path", Width: 2.5, IsClear: true),
        PathPoint = new("path-point", Stroke: "#B00000", Width: 2, IsClear: true),
        Arc = new("arc", Stroke: "#222222", Width: 1.2, IsClear: true),
        Body = new("body", Fill: "#F4F4F4", Stroke: "#222222", Width: 1.3, IsClear: true),
        Glass = new("glass", Fill: "#C9D6DE", Stroke: "#222222", Width: 0.8),
        Wing = new("wing", Fill: "#FFFFFF", Stroke: "#222222", Width: 1.6, IsClear: true),
        Flap = new("flap", Width: 3.2, IsClear: true),
        Wheel = new("wheel", Fill: "#4A4A4A", Stroke: "#222222"),
        Surface = new("surface", Stroke: "#222222", Width: 2, IsClear: true),
        Force = new("force", Width: 2.5, IsClear: true, HasHead: true),
        Arrow = new("arrow", Stroke: "#222222", Width: 2, IsClear: true, HasHead: true),
        Measure = new("measure", Stroke: "#222222", Width: 1, IsClear: true),
        Post = new("post", Width: 2.2, IsClear: true);

    internal PicturePart Named(string name) => this with { Name = name };
}

/// <summary>A label of a picture. Immutable.</summary>
/// <param name="Text">Its words.</param>
/// <param name="Anchor">What it speaks of.</param>
/// <param name="Room">Where it may stand.</param>
/// <param name="Color">Its colour.</param>
/// <param name="Stand">Whether it stands at its anchor, and which end of it, or is placed where it hides
/// nothing.</param>
/// <param name="IsStrong">Whether it is a heading.</param>
internal sealed record PictureLabel(
    Words Text, Point Anchor, Box Room, string Color, LabelStand Stand = LabelStand.Placed, bool IsStrong = false);

/// <summary>
/// How a label stands to its anchor: its middle, its left or its right end on it, or wherever it hides nothing.
/// </summary>
internal enum LabelStand { Placed, Middle, Start, End }
