namespace FlapAero.Charts;

/// <summary>
/// An aeroplane from the side, invented and of no type: only the height of the wing, its chord and incidence, the
/// flap, the propeller and the tail's clearance are an aeroplane file's. In metres: x ahead of where the main wheels
/// stand, z above the ground with the fuselage level.
/// </summary>
internal sealed class AeroplaneOutline
{
    /// <summary>The flap's share of the chord: invented, for the drawing.</summary>
    internal const double FlapShare = 0.25;

    /// <summary>Where an aeroplane without a limit in its file has it, for the drawing.</summary>
    private const double UsualTailLimitDegrees = 9;

    /// <summary>How far the attitude goes beyond its limit before the tail touches, for the drawing.</summary>
    private const double MarginDegrees = 1.5;

    private const double TailArm = 4.9;

    private readonly Configuration _configuration;

    internal AeroplaneOutline(Configuration configuration)
    {
        _configuration = configuration;
        Wing wing = configuration.Aeroplane.Wing;
        WingHeight = Math.Clamp(wing.HeightOnWheels.Meters, 0.7, 2.2);
        Chord = Math.Clamp(wing.Area.SquareMeters / wing.Span.Meters, 0.8, 2.2);
        double limit = configuration.Aeroplane.TailLimitAttitude?.Degrees ?? UsualTailLimitDegrees;
        Tail = new Point(
            -TailArm, TailArm * Math.Tan(double.DegreesToRadians(Math.Clamp(limit, 3, 14) + MarginDegrees)));
    }

    internal double WingHeight { get; }

    internal double Chord { get; }

    /// <summary>The tail's lowest point.</summary>
    internal Point Tail { get; }

    /// <summary>
    /// The wing's quarter-chord point, about which the drawings turn and from which forces are drawn.
    /// </summary>
    internal Point Quarter => new(0.35, WingHeight);

    internal IReadOnlyList<Point> Body =>
    [
        new(2.42, 1.12), new(2.3, 1.3), new(1.15, 1.46), new(0.6, 1.98), new(-0.75, 2.0), new(-1.9, 1.62),
        new(-4.35, 1.42), new(-4.95, 2.5),
        new(-5.4, 2.5), new(-5.3, Tail.Y + 0.25), Tail, new(-1.3, 0.72), new(1.5, 0.66), new(2.28, 0.9),
    ];

    internal IReadOnlyList<Point> Glass =>
        [new(1.08, 1.46), new(0.58, 1.9), new(-0.7, 1.92), new(-1.2, 1.62), new(-0.7, 1.42)];

    internal IReadOnlyList<Point> Tailplane => [new(-4.3, 1.3), new(-5.2, 1.26)];

    internal IReadOnlyList<Point> Legs => [new(0.25, 0.7), new(0, 0.2)];

    internal IReadOnlyList<Point> NoseLeg => [new(1.75, 0.68), new(1.72, 0.18)];

    internal IReadOnlyList<(Point Centre, double Radius)> Wheels => [(new(0, 0.21), 0.21), (new(1.72, 0.18), 0.18)];

    internal IReadOnlyList<Point> Propeller
    {
        get
        {
            double half = Math.Min(_configuration.Aeroplane.Propeller.Diameter.Meters / 2, 1.05);
            return [new(2.46, 1.12 - half), new(2.46, 1.12 + half)];
        }
    }

    /// <summary>The wing's section ahead of the flap.</summary>
    internal IReadOnlyList<Point> WingSection =>
    [
        OnChord(0, 0), OnChord(0.03, 0.035), OnChord(0.12, 0.07), OnChord(0.3, 0.085), OnChord(0.55, 0.07),
        OnChord(0.75, 0.04),
        OnChord(0.75, -0.02), OnChord(0.3, -0.04), OnChord(0.05, -0.03),
    ];

    /// <summary>The flap from its hinge to the trailing edge, at its angle.</summary>
    internal IReadOnlyList<Point> Flap
    {
        get
        {
            double down = _configuration.Flaps.Deflection.Radians;
            return [OnChord(1 - FlapShare, 0),
                OnChord(1 - FlapShare + FlapShare * Math.Cos(down), -FlapShare * Math.Sin(down))];
        }
    }

    /// <summary>A point by its shares of the chord behind the leading edge and above the chord line.</summary>
    private Point OnChord(double behind, double above)
    {
        double ahead = (0.25 - behind) * Chord, up = above * Chord,
            incidence = _configuration.Aeroplane.Wing.Incidence.Radians;
        (double sin, double cos) = Math.SinCos(incidence);
        return new Point(Quarter.X + ahead * cos - up * sin, Quarter.Y + ahead * sin + up * cos);
    }
}

/// <summary>Where an outline stands in a picture: turned to its attitude about a point, and to scale.</summary>
/// <param name="Pivot">The point of the outline that stands still.</param>
/// <param name="At">Where it stands in the picture.</param>
/// <param name="Pitch">The attitude in radians, nose up positive.</param>
/// <param name="Scale">Pixels for a metre.</param>
internal sealed record Placement(Point Pivot, Point At, double Pitch, double Scale)
{
    internal Point Of(Point outline)
    {
        double ahead = outline.X - Pivot.X, up = outline.Y - Pivot.Y;
        (double sin, double cos) = Math.SinCos(Pitch);
        return new Point(At.X + Scale * (ahead * cos - up * sin), At.Y - Scale * (ahead * sin + up * cos));
    }

    internal Point[] Of(IEnumerable<Point> outline) => [.. outline.Select(Of)];

    internal void Draw(Sketch sketch, AeroplaneOutline aeroplane, SeriesStyle ink)
    {
        sketch.Line(PicturePart.Measure.Named("propeller"), Of(aeroplane.Propeller));
        sketch.Line(PicturePart.Surface.Named("leg"), Of(aeroplane.Legs));
        sketch.Line(PicturePart.Surface.Named("leg"), Of(aeroplane.NoseLeg));
        foreach ((Point centre, double radius) in aeroplane.Wheels) sketch.Area(
            PicturePart.Wheel, Round(Of(centre), Scale * radius));
        sketch.Area(PicturePart.Body, Of(aeroplane.Body));
        sketch.Area(PicturePart.Glass, Of(aeroplane.Glass));
        sketch.Line(PicturePart.Surface.Named("tailplane"), Of(aeroplane.Tailplane));
        sketch.Area(PicturePart.Wing, Of(aeroplane.WingSection));
        sketch.Line(PicturePart.Flap, ink with { Dash = "" }, Of(aeroplane.Flap));
    }

    private static Point[] Round(Point centre, double radius) =>
        [.. Enumerable.Range(0, 16)
            .Select(i =>
                new Point(
                    centre.X + radius * Math.Cos(i * Math.PI / 8), centre.Y + radius * Math.Sin(i * Math.PI / 8)))];
}
