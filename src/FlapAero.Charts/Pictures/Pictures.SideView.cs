namespace FlapAero.Charts;

public static partial class Pictures
{
    /// <summary>
    /// The aeroplane from the side in steady flight: horizon, path, the fuselage's level line and the wing's chord
    /// line at their true angles, with the angle of attack and the incidence. One or two flights, one above the
    /// other.
    /// </summary>
    /// <param name="title">The title.</param>
    /// <param name="flights">One or two flights, each with the name of its view.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="RefusedInputException">There are no flights, or more than two.</exception>
    public static Picture SideView(string title, params IReadOnlyList<(string Name, SteadyFlight Flight)> flights)
    {
        ArgumentNullException.ThrowIfNull(flights);
        if (flights.Count is < 1 or > 2)
            throw Require.RefusedWhole(
                nameof(flights),
                $"A side view shows one or two flights, one above the other; here are {flights.Count}.");
        const double tall = 132;
        var sketch = new Sketch(title, tall * flights.Count + 4);
        for (int i = 0; i < flights.Count; i++)
            DrawSide(sketch, flights[i].Name, flights[i].Flight, new Box(2, 2 + i * tall, Picture.Width - 4, tall - 4));
        return sketch.Done(
            $"True angles, nothing stretched. The aeroplane's shape is invented, of no type; wing, incidence and flap angle are the file's.",
            FindingOf(flights),
            ["", .. flights.Select(view => view.Name)],
            Row("speed, CAS", flights, view => $"{view.Flight.Airspeed.Calibrated}"),
            Row("angle of attack α", flights, view => $"{view.Flight.AngleOfAttack:0.0}"),
            Row("incidence i_w", flights, view => $"{view.Flight.Configuration.Aeroplane.Wing.Incidence:0.0}"),
            Row("pitch attitude θ", flights, view => $"{view.Flight.PitchAttitude:+0.0}"),
            Row("path γ", flights, view => $"{view.Flight.PathAngle:+0.0}"),
            Row("flap angle", flights, view => $"{view.Flight.Configuration.Flaps.Deflection:0}"));
    }

    private static Words FindingOf(IReadOnlyList<(string Name, SteadyFlight Flight)> flights) => Each(flights, view =>
        (Words)$"{Capital(view.Name)}: angle of attack {view.Flight.AngleOfAttack:0.0}, pitch attitude {view.Flight.PitchAttitude:+0.0}, on a path of {view.Flight.PathAngle:+0.0}. ");

    private static void DrawSide(Sketch sketch, string name, SteadyFlight flight, Box box)
    {
        SeriesStyle ink = Palette.For(flight.Configuration);
        var outline = new AeroplaneOutline(flight.Configuration);
        double pitch = flight.PitchAttitude.Radians, path = flight.PathAngle.Radians,
            incidence = flight.Configuration.Aeroplane.Wing.Incidence.Radians;
        var pivot = new Point(118, box.Top + 76);
        new Placement(outline.Quarter, pivot, pitch, 19).Draw(sketch, outline, ink);
        const double reach = 152;
        Point On(double angle, double far) => new(pivot.X + far * Math.Cos(angle), pivot.Y - far * Math.Sin(angle));
        sketch.Line(PicturePart.Horizon, pivot, On(0, reach));
        sketch.Line(PicturePart.Path, ink, pivot, On(path, reach));
        sketch.Line(PicturePart.Level, pivot, On(pitch, reach));
        sketch.Line(PicturePart.Chord, pivot, On(pitch + incidence, reach));
        Arc(sketch, "alpha", pivot, 92, path, pitch + incidence);
        Arc(sketch, "theta", pivot, 122, 0, pitch);
        Arc(sketch, "gamma", pivot, 122, path, 0);
        Arc(sketch, "incidence", pivot, 140, pitch, pitch + incidence);
        sketch.Heading(name, new Point(box.Left, box.Top + 10), ink.Text, LabelStand.Start);
        sketch.Standing(
            $"flap {flight.Configuration.Flaps.Deflection:0}", new Point(box.Left, box.Top + 31), ink.Text,
            LabelStand.Start);
        Box free = box with { Left = 150, Width = 136 };
        sketch.Label(
            $"i_w {flight.Configuration.Aeroplane.Wing.Incidence:0.0}", On(pitch + incidence / 2, 140),
            free with { Height = 66 });
        sketch.Label($"α {flight.AngleOfAttack:0.0}", On(path, 92), free with { Top = box.Top + 80, Height = 48 });
        LabelEnds(sketch, On, reach,
        [
            ($"chord line", pitch + incidence, FigureLayout.Ink),
            ($"level θ {flight.PitchAttitude:+0.0}", pitch, FigureLayout.Ink),
            ($"horizon", 0, FigureLayout.Ink), ($"path γ {flight.PathAngle:+0.0}", path, ink.Text),
        ]);
    }

    /// <summary>
    /// Labels beside the ends of lines, pushed apart evenly, the highest line's on top, each led to by a thin line.
    /// </summary>
    private static void LabelEnds(
        Sketch sketch, Func<double, double, Point> on, double reach,
        IReadOnlyList<(Words Text, double Angle, string Color)> lines)
    {
        (Words Text, double Angle, string Color)[] falling = [.. lines.OrderByDescending(line => line.Angle)];
        double middle = falling.Average(line => on(line.Angle, reach).Y), step = PictureLabels.LineHeight + 1;
        for (int i = 0; i < falling.Length; i++)
        {
            Point end = on(falling[i].Angle, reach);
            double y = middle + (i - (falling.Length - 1) / 2.0) * step;
            sketch.Line(PicturePart.Measure.Named("leader"), end, new Point(284, y));
            sketch.Standing(falling[i].Text, new Point(287, y), falling[i].Color, LabelStand.Start);
        }
    }

    private static void Arc(Sketch sketch, string name, Point centre, double radius, double from, double to) =>
        sketch.Line(PicturePart.Arc.Named(name), [.. Enumerable.Range(0, 13).Select(i => from + i / 12.0 * (to - from))
            .Select(angle => new Point(centre.X + radius * Math.Cos(angle), centre.Y - radius * Math.Sin(angle)))]);
}
