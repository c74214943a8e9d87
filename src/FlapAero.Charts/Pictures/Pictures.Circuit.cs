using UnitsNet;

namespace FlapAero.Charts;

public static partial class Pictures
{
    /// <summary>
    /// One or two circuits from above, to scale, landing to the right: tracks with their legs, the runway with its
    /// number and threshold, the places where turns begin, and the wind. Two circuits with one flap setting on final
    /// are told apart: the second is what changed.
    /// </summary>
    /// <param name="title">The title.</param>
    /// <param name="runway">The runway.</param>
    /// <param name="circuits">One or two circuits in one wind, each with its name.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="RefusedInputException">There are no circuits, or more than two.</exception>
    public static Picture CircuitFromAbove(
        string title, Runway runway, params IReadOnlyList<(string Name, Circuit Circuit)> circuits)
    {
        ArgumentNullException.ThrowIfNull(runway);
        ArgumentNullException.ThrowIfNull(circuits);
        if (circuits.Count is < 1 or > 2)
            throw Require.RefusedWhole(
                nameof(circuits), $"A circuit is drawn alone or beside one other; here are {circuits.Count}.");
        CircuitPoint[] all = [.. circuits.SelectMany(view => view.Circuit.Track)];
        double length = runway.LengthAvailable.Meters;
        double lowX = all.Min(p => p.X.Meters), highX = Math.Max(length, all.Max(p => p.X.Meters));
        double lowY = all.Min(p => p.Y.Meters), highY = all.Max(p => p.Y.Meters);
        const double tallest = 236, margin = 24;
        double scale =
            Math.Min((Picture.Width - 2 * margin) / (highX - lowX), (tallest - 2 * margin) / Math.Max(1, highY - lowY));
        var sketch = new Sketch(title, tallest + 24);
        double left = (Picture.Width - scale * (highX - lowX)) / 2, top = 24 + margin;
        Point On(double along, double across) => new(left + scale * (along - lowX), top + scale * (across - lowY));
        DrawStrip(sketch, runway, On, scale);
        var inks = circuits.Select((view, i) => Palette.For(view.Circuit.Final.Configuration)).ToArray();
        if (inks.Length == 2 && inks[0] == inks[1]) inks[1] = Palette.Changed;
        for (int i = 0; i < circuits.Count; i++) DrawTrack(sketch, circuits[i].Circuit, inks[i], On);
        for (int i = 0; i < circuits.Count; i++)
        {
            double edge = i == 0 ? 2 : Picture.Width - 2, inwards = i == 0 ? 56 : -56;
            sketch.Heading(
                circuits[i].Name, new Point(edge, 11), inks[i].Text, i == 0 ? LabelStand.Start : LabelStand.End);
            // In grey print the dash says which is which.
            sketch.Line(PicturePart.Path.Named("sample"), inks[i], new Point(edge, 25), new Point(edge + inwards, 25));
        }
        Circuit first = circuits[0].Circuit;
        foreach (
            (string leg, CircuitLeg at) in ((string, CircuitLeg)[])[
                ("downwind", first.Downwind), ("base", first.Base), ("final", first.Final)])
            sketch.Label(leg, On((at.Begin.X.Meters + at.End.X.Meters) / 2, (at.Begin.Y.Meters + at.End.Y.Meters) / 2));
        sketch.Label(runway.Name, On(length / 2, 0));
        sketch.Label($"threshold", On(0, 0));
        DrawWind(
            sketch, runway, circuits.MaxBy(view => view.Circuit.Plan.Wind.Speed.Knots).Circuit.Plan.Wind,
            On((lowX + length) / 2, (lowY + highY) / 2));
        return sketch.Done(
            $"Seen from above, to scale, landing to the right; only the runway is drawn three times as wide. Rings mark where the turns begin.",
            FindingOf(circuits),
            ["", .. circuits.Select(view => view.Name)],
            Row("base turn past abeam", circuits, view => $"{view.Circuit.BaseTurnPastAbeam:nmi 0.00}"),
            Row("touchdown point behind the wing", circuits, view => $"{view.Circuit.AngleBehindWing:0}"),
            Row("final begins before the threshold", circuits, view => $"{view.Circuit.LengthOfFinal:nmi 0.00}"),
            Row("height there", circuits, view => $"{view.Circuit.HeightRollingOut:ft 0}"));
    }

    private static Words FindingOf(IReadOnlyList<(string Name, Circuit Circuit)> circuits) => Each(circuits, view =>
        (Words)$"{Capital(view.Name)}: the turn to base begins {view.Circuit.BaseTurnPastAbeam:nmi 0.00} past abeam, final {view.Circuit.LengthOfFinal:nmi 0.00} before the threshold, {view.Circuit.HeightRollingOut:ft 0} up. ");

    private static void DrawStrip(Sketch sketch, Runway runway, Func<double, double, Point> on, double scale)
    {
        double length = runway.LengthAvailable.Meters, half = Math.Max(3 * RunwayPaint.HalfWidth, 3 / scale);
        sketch.Area(PicturePart.Runway, [on(0, -half), on(length, -half), on(length, half), on(0, half)]);
        sketch.Line(PicturePart.Surface.Named("threshold"), on(0, -1.8 * half), on(0, 1.8 * half));
    }

    private static void DrawTrack(Sketch sketch, Circuit circuit, SeriesStyle ink, Func<double, double, Point> on)
    {
        sketch.Line(PicturePart.Path.Named("track"), ink, [.. circuit.Track.Select(p => on(p.X.Meters, p.Y.Meters))]);
        foreach (CircuitLeg turn in (CircuitLeg[])[circuit.TurnToBase, circuit.TurnToFinal])
        {
            Point at = on(turn.Begin.X.Meters, turn.Begin.Y.Meters);
            sketch.Line(PicturePart.Path.Named("turn-begins"), ink with { Dash = "" },
                [.. Enumerable.Range(0, 13)
                    .Select(i =>
                        new Point(at.X + 4.5 * Math.Cos(i * Math.PI / 6), at.Y + 4.5 * Math.Sin(i * Math.PI / 6)))]);
        }
    }

    /// <summary>An arrow that goes with the wind, through a point inside the circuit.</summary>
    private static void DrawWind(Sketch sketch, Runway runway, Wind wind, Point through)
    {
        double from = (wind.From - runway.Direction).Radians;
        bool isCalm = wind.Speed.Knots < 0.05;
        double half = isCalm ? 0 : 22;
        (double sin, double cos) = Math.SinCos(from);
        // Along the landing is to the right, and to the right of it is down.
        var tip = new Point(through.X - half * cos, through.Y - half * sin);
        if (!isCalm) sketch.Line(
            PicturePart.Arrow.Named("wind"), new Point(through.X + half * cos, through.Y + half * sin), tip);
        sketch.Label(isCalm ? (Words)"no wind" : (Words)$"wind {wind.From:000} {wind.Speed:0}", through);
    }
}
