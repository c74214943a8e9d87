using UnitsNet;
using UnitsNet.Units;

namespace FlapAero.Charts;

public static partial class Pictures
{
    /// <summary>
    /// The aeroplane where the round-out begins, half-way through its time, and where the wheels touch: height,
    /// attitude and the tail's clearance to one scale. One or two landings, one above the other.
    /// </summary>
    /// <param name="title">The title.</param>
    /// <param name="landings">One or two landings.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="RefusedInputException">There are no landings, or more than two.</exception>
    public static Picture RoundOut(string title, params IReadOnlyList<LandedView> landings)
    {
        ArgumentNullException.ThrowIfNull(landings);
        if (landings.Count is < 1 or > 2)
            throw Require.RefusedWhole(
                nameof(landings), $"A round-out is drawn for one or two landings; here are {landings.Count}.");
        const double tall = 144, wide = Picture.Width / 3;
        var sketch = new Sketch(title, 22 + tall * landings.Count);
        double highest = landings.Max(landing => landing.RoundOut.Max(point => point.Height.Meters));
        double scale = Math.Min(13.5, 78 / (highest + 2.6));
        string[] moments = ["it begins", "half-way", "touches"];
        for (int k = 0; k < moments.Length; k++) sketch.Heading(
            moments[k], new Point((k + 0.5) * wide, 11), FigureLayout.Ink);
        for (int i = 0; i < landings.Count; i++)
        {
            double ground = 22 + i * tall + 98;
            sketch.Heading(
                landings[i].Name, new Point(2, ground - 87), Palette.For(landings[i].Configuration).Text,
                LabelStand.Start);
            for (int k = 0; k < moments.Length; k++)
                DrawMoment(sketch, landings[i], landings[i].RoundOut[k], new Point((k + 0.5) * wide, ground), scale);
        }
        return sketch.Done(
            $"Each aeroplane to scale with its height over the runway; from one to the next the distance is not to scale. The aeroplane's shape is invented: its tail would touch 1.5° above the limit in the file.",
            FindingOf(landings),
            ["", .. landings.SelectMany(landing => moments.Select(moment => $"{landing.Name}, {moment}"))],
            Row("from the threshold", Moments(landings), at => $"{at.Point.Distance:ft 0}"),
            Row("wheels", Moments(landings), at => $"{at.Point.Height:ft 0.0}"),
            Row("pitch attitude", Moments(landings), at => $"{at.Landing.AttitudeAt(at.Point):+0.0}"),
            Row("tail above the runway", Moments(landings), at => $"{TailClearance(at.Landing, at.Point):ft 0.0}"),
            Row("airspeed", Moments(landings), at => $"{at.Point.Airspeed}"));
    }

    /// <summary>How high the drawn tail's lowest point is.</summary>
    internal static Length TailClearance(LandedView landing, LandingPoint moment)
    {
        var outline = new AeroplaneOutline(landing.Configuration);
        (double sin, double cos) = Math.SinCos(landing.AttitudeAt(moment).Radians);
        return Length.FromMeters(moment.Height.Meters + outline.Tail.X * sin + outline.Tail.Y * cos)
            .ToUnit(LengthUnit.Foot);
    }

    private static IEnumerable<(LandedView Landing, LandingPoint Point)> Moments(IEnumerable<LandedView> landings) =>
        landings.SelectMany(landing => landing.RoundOut.Select(point => (landing, point)));

    private static Words FindingOf(IReadOnlyList<LandedView> landings) => Each(landings, landing =>
    {
        (LandingPoint begin, LandingPoint end) = (landing.RoundOut[0], landing.RoundOut[^1]);
        return (Words)
            $"{Capital(landing.Name)}: from {begin.Distance:ft 0} to {end.Distance:ft 0} the nose rises from {landing.AttitudeAt(begin):+0.0} to {landing.AttitudeAt(end):+0.0}; where the wheels touch, the tail is {TailClearance(landing, end):ft 0.0} up. ";
    });

    private static void DrawMoment(Sketch sketch, LandedView landing, LandingPoint moment, Point ground, double scale)
    {
        SeriesStyle ink = Palette.For(landing.Configuration);
        var outline = new AeroplaneOutline(landing.Configuration);
        double pitch = landing.AttitudeAt(moment).Radians;
        var wheels = new Point(ground.X + 18, ground.Y - scale * moment.Height.Meters);
        var placement = new Placement(new Point(0, 0), wheels, pitch, scale);
        sketch.Line(PicturePart.Surface, new Point(ground.X - 64, ground.Y), new Point(ground.X + 64, ground.Y));
        placement.Draw(sketch, outline, ink);
        Point tail = placement.Of(outline.Tail);
        sketch.Line(
            PicturePart.Post.Named("tail-clearance"), ink with { Dash = "" }, tail, new Point(tail.X, ground.Y));
        sketch.Standing(
            $"tail {TailClearance(landing, moment):ft 0.0}", new Point(ground.X, ground.Y + 13), ink.Text,
            LabelStand.Middle);
        sketch.Standing(
            $"nose {landing.AttitudeAt(moment):+0.0}", new Point(ground.X, ground.Y + 33), FigureLayout.Ink,
            LabelStand.Middle);
    }
}
