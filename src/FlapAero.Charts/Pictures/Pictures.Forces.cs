using UnitsNet;

namespace FlapAero.Charts;

public static partial class Pictures
{
    /// <summary>
    /// How much longer drag and thrust are drawn than lift and weight: at the same length they would hardly be seen.
    /// </summary>
    internal const double AlongPathMagnified = 4;

    private const double OutlineScale = 11;

    private const double WeightPixels = 50;

    /// <summary>
    /// The four forces at up to four moments, two side by side: lift across the path, drag and thrust along it, the
    /// weight down, as long as they are large. All at one scale, drag and thrust drawn four times as long.
    /// </summary>
    /// <param name="title">The title.</param>
    /// <param name="moments">One to four moments.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="RefusedInputException">There are no moments, or more than four.</exception>
    public static Picture Forces(string title, params IReadOnlyList<ForcesAtAMoment> moments)
    {
        ArgumentNullException.ThrowIfNull(moments);
        if (moments.Count is < 1 or > 4)
            throw Require.RefusedWhole(
                nameof(moments), $"The forces are drawn at one to four moments; here are {moments.Count}.");
        const double wide = 196, tall = 158;
        var sketch = new Sketch(title, tall * ((moments.Count + 1) / 2));
        Force greatest = moments.MaxBy(moment => moment.Weight.Newtons)!.Weight;
        double scale = WeightPixels / greatest.Newtons;
        for (int i = 0; i < moments.Count; i++)
            DrawForces(
                sketch, moments[i], new Box(2 + i % 2 * (wide + 4), i / 2 * tall + 2, wide - 2, tall - 4), scale);
        return sketch.Done(
            $"Arrows as long as the forces are large; drag and thrust are drawn {AlongPathMagnified:0} times as long, or they would hardly be seen. Lift stands across the path, not upright. The aeroplane's shape is invented.",
            FindingOf(moments),
            ["", .. moments.Select(moment => moment.Name)],
            Row("lift L", moments, moment => $"{moment.Lift:lbf 0}"),
            Row("weight W", moments, moment => $"{moment.Weight:lbf 0}"),
            Row("drag D", moments, moment => $"{moment.Drag:lbf 0}"),
            Row("thrust T", moments, moment => $"{moment.Thrust:lbf 0}"),
            Row("path γ", moments, moment => $"{moment.PathAngle:+0.0}"),
            Row("pitch attitude θ", moments, moment => $"{moment.PitchAttitude:+0.0}"));
    }

    private static Words FindingOf(IReadOnlyList<ForcesAtAMoment> moments) => Each(moments, moment =>
        (Words)$"{Capital(moment.Name)}: drag {moment.Drag:lbf 0}, thrust {moment.Thrust:lbf 0}, lift {moment.Lift:lbf 0} for a weight of {moment.Weight:lbf 0}, path {moment.PathAngle:+0.0}. ");

    private static void DrawForces(Sketch sketch, ForcesAtAMoment moment, Box box, double scale)
    {
        SeriesStyle ink = Palette.For(moment.Configuration);
        var outline = new AeroplaneOutline(moment.Configuration);
        var centre = new Point(box.Left + 98, box.Top + 92);
        var placement = new Placement(outline.Quarter, centre, moment.PitchAttitude.Radians, OutlineScale);
        placement.Draw(sketch, outline, ink);
        (double sin, double cos) = Math.SinCos(moment.PathAngle.Radians);
        Point Moved(double along, double across) =>
            new(centre.X + along * cos - across * sin, centre.Y - along * sin - across * cos);
        sketch.Line(PicturePart.Measure.Named("path-line"), Moved(-76, 0), Moved(84, 0));
        // Side by side, so that a thrust that brakes does not hide on the drag.
        const double apart = 2.5;
        double up = scale * moment.Lift.Newtons, along = scale * AlongPathMagnified;
        var weight = new Point(centre.X, centre.Y + scale * moment.Weight.Newtons);
        sketch.Line(PicturePart.Force.Named("lift"), ink, centre, Moved(0, up));
        sketch.Line(PicturePart.Force.Named("weight"), ink, centre, weight);
        sketch.Line(PicturePart.Force.Named("drag"), ink, Moved(0, apart), Moved(-along * moment.Drag.Newtons, apart));
        sketch.Line(
            PicturePart.Force.Named("thrust"), ink, Moved(0, -apart), Moved(along * moment.Thrust.Newtons, -apart));
        double beside = Math.Min(centre.Y - 18, placement.Of(outline.Body).Min(point => point.Y) - 11);
        sketch.Heading(moment.Name, new Point(box.Left, box.Top + 9), ink.Text, LabelStand.Start);
        sketch.Standing("L", new Point(Moved(0, up).X, centre.Y - up - 11), ink.Text, LabelStand.Middle);
        sketch.Standing("W", new Point(centre.X + 9, weight.Y - 3), ink.Text, LabelStand.Start);
        sketch.Standing($"D {moment.Drag:lbf 0}", new Point(centre.X - 12, beside), ink.Text, LabelStand.End);
        sketch.Standing($"T {moment.Thrust:lbf 0}", new Point(centre.X + 12, beside), ink.Text, LabelStand.Start);
    }
}
