using UnitsNet;

namespace FlapAero.Charts;

public static partial class Pictures
{
    /// <summary>How much taller heights are drawn than distances in the profile of final.</summary>
    internal const double Raised = 3;

    /// <summary>
    /// Final from the side, landing to the right: the path to the threshold and on to the aiming point, and up to two
    /// descents as they are flown to the threshold. Heights are drawn three times as tall as distances are long.
    /// </summary>
    /// <param name="title">The title.</param>
    /// <param name="path">The angle of the path over the threshold at the usual pilot's height, positive down.</param>
    /// <param name="descents">One or two descents, each with its name, its configuration, and its moments; the last
    /// is over the threshold.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="RefusedInputException">There are no descents, more than two, or one of fewer than two
    /// moments.</exception>
    public static Picture FinalFromTheSide(
        string title, Angle path,
            params IReadOnlyList<(string Name, Configuration Configuration, IReadOnlyList<DescentPoint> Down)> descents)
    {
        ArgumentNullException.ThrowIfNull(descents);
        if (descents.Count is < 1 or > 2 || descents.Any(descent => descent.Down.Count < 2))
            throw Require.RefusedWhole(
                nameof(descents),
                $"Final is drawn with one or two descents of at least two moments; here are {descents.Count}.");
        if (!(path.Degrees is >= 1 and <= 12))
            throw Require.RefusedWhole(
                nameof(path), $"The path leads down at {QuantityText.Of(path)}; allowed are 1° to 12°.");
        Length threshold = descents[0].Configuration.UsualPilot.ThresholdHeight;
        double slope = Math.Tan(path.Radians), over = threshold.Meters, aiming = over / slope;
        double longest = descents.Max(descent => descent.Down[^1].Distance.Meters - descent.Down[0].Distance.Meters);
        double highest =
            Math.Max(over + longest * slope, descents.Max(descent => descent.Down.Max(point => point.Height.Meters)));
        double scale = Math.Min((Picture.Width - 24) / (longest + aiming + 60), 190 / (Raised * highest));
        double ground = 28 + Raised * scale * highest + 8;
        var sketch = new Sketch(title, ground + 48);
        Point On(double along, double height) => new(12 + scale * (along + longest), ground - Raised * scale * height);
        sketch.Line(PicturePart.Surface, On(-longest, 0), On(0, 0));
        sketch.Line(
            (PicturePart.Surface with { Width = 6, Stroke = "#6E6E6E" }).Named("runway"), On(0, 0), On(aiming + 60, 0));
        sketch.Line(PicturePart.Level.Named("path-meant"), On(-longest, over + longest * slope), On(aiming, 0));
        sketch.Line(PicturePart.Measure.Named("threshold"), On(0, -0.02 * highest), On(0, over));
        var inks = descents.Select(descent => Palette.For(descent.Configuration)).ToArray();
        if (inks.Length == 2 && inks[0] == inks[1]) inks[1] = Palette.Changed;
        for (int i = 0; i < descents.Count; i++)
        {
            DescentPoint end = descents[i].Down[^1];
            sketch.Line(PicturePart.Path.Named("descent"), inks[i],
                [.. descents[i].Down.Select(point => On((point.Distance - end.Distance).Meters, point.Height.Meters))]);
            Point middle = On(
                (descents[i].Down[descents[i].Down.Count / 3].Distance - end.Distance).Meters,
                descents[i].Down[descents[i].Down.Count / 3].Height.Meters);
            sketch.Label(descents[i].Name, middle, color: inks[i].Text);
        }
        sketch.Standing(
            $"threshold, {threshold:ft 0}", On(0, 0) with { Y = ground + 16 },
            FigureLayout.Ink, LabelStand.End);
        sketch.Standing($"aiming point", On(aiming, 0) with { Y = ground + 36 }, FigureLayout.Ink, LabelStand.End);
        sketch.Line(PicturePart.Measure.Named("leader"), On(aiming, 0), On(aiming, 0) with { Y = ground + 28 });
        sketch.Label($"path {path:0.0}", On(aiming * 0.45, over * 0.55));
        return sketch.Done(
            $"Landing to the right. Heights are drawn {Raised:0} times as tall as distances are long, so angles look steeper than they are.",
            FindingOf(descents),
            ["", .. descents.Select(descent => descent.Name)],
            Row("begins before the threshold", descents, descent =>
                $"{descent.Down[^1].Distance - descent.Down[0].Distance:ft 0}"),
            Row("height there", descents, descent => $"{descent.Down[0].Height:ft 0}"),
            Row("true airspeed there", descents, descent => $"{descent.Down[0].Airspeed.True}"),
            Row("height over the threshold", descents, descent => $"{descent.Down[^1].Height:ft 0}"),
            Row("true airspeed there", descents, descent => $"{descent.Down[^1].Airspeed.True}"));
    }

    private static Words FindingOf(
        IReadOnlyList<(string Name, Configuration Configuration, IReadOnlyList<DescentPoint> Down)> descents) => Each(descents, view =>
        (Words)$"{Capital(view.Name)}: from {view.Down[0].Height:ft 0} to {view.Down[^1].Height:ft 0} over the threshold, there at {view.Down[^1].Airspeed.True} true. ");
}
