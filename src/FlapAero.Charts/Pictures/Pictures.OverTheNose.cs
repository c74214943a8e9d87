using UnitsNet;

namespace FlapAero.Charts;

/// <summary>The drawings of the lessons, computed from the same numbers as the figures.</summary>
public static partial class Pictures
{
    private const double CowlingDegrees = 8;

    /// <summary>The cowling's edge below the eye's level line: invented, for the drawing.</summary>
    public static Angle CowlingBelowEye { get; } = Angle.FromDegrees(CowlingDegrees);

    /// <summary>
    /// The runway over the nose, in true perspective from the pilot's eye: two or three views side by side, each with
    /// the nose where the flight puts it. Frames of one picture that moves take the same views at other speeds or
    /// heights.
    /// </summary>
    /// <param name="title">The title.</param>
    /// <param name="runway">The runway; its width is invented.</param>
    /// <param name="views">One to three views.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="RefusedInputException">There are no views, or more than three.</exception>
    public static Picture ViewOverTheNose(string title, Runway runway, params IReadOnlyList<PilotsView> views)
    {
        ArgumentNullException.ThrowIfNull(runway);
        ArgumentNullException.ThrowIfNull(views);
        if (views.Count is < 1 or > 3)
            throw Require.RefusedWhole(
                nameof(views), $"A view over the nose shows one to three views side by side; here are {views.Count}.");
        var sketch = new Sketch(title, 262);
        double width = (Picture.Width - 8 * (views.Count - 1)) / views.Count;
        for (int i = 0; i < views.Count; i++)
            DrawView(sketch, runway, views[i], new Box(i * (width + 8) + 1.5, 46, width - 3, 214.5), i == 0);
        return sketch.Done(
            $"True perspective. Invented: eye {PilotsView.EyeAboveWheels:0} above the wheels, cowling {CowlingBelowEye:0} below its level line, runway {Length.FromMeters(2 * RunwayPaint.HalfWidth):m 0} wide. The ring marks where the path leads.",
            FindingOf(views),
            ["", .. views.Select(view => view.Name)],
            [.. RowsOf(views)]);
    }

    private static IEnumerable<IReadOnlyList<Words>> RowsOf(IReadOnlyList<PilotsView> views)
    {
        IReadOnlyList<Words>[] rows =
        [
            Row("speed, CAS", views, view => $"{view.Flight.Airspeed.Calibrated}"),
            Row("eye above the runway", views, view => $"{view.EyeHeight:ft 0}"),
            Row("wheels before the threshold", views, view => $"{view.BeforeThreshold:ft 0}"),
            Row("ring past the threshold", views, view => $"{view.RingPastThreshold:ft 0}"),
            Row("pitch attitude", views, view => $"{view.Flight.PitchAttitude:+0.0}"),
            Row("path below the level line", views, view => $"{view.PathBelowLevelLine:0.0}"),
            Row("path above the cowling's edge", views, view => $"{CowlingBelowEye - view.PathBelowLevelLine:+0.0}"),
        ];
        // In a crosswind alone, so that a lesson's table is about what the lesson is about.
        return views.Any(IsTurned) ? rows.Append(Row("nose to the right of the centreline", views, view => $"{view.Crab:+0.0}")) : rows;
    }

    private static bool IsTurned(PilotsView view) => Math.Abs(view.Crab.Degrees) >= 0.05;

    private static Words FindingOf(IReadOnlyList<PilotsView> views) => Each(views, view =>
    {
        Angle above = CowlingBelowEye - view.PathBelowLevelLine;
        Words nose = $"{Capital(view.Name)}: nose {view.Flight.PitchAttitude:+0.0}; ring ";
        Words place = view.RingPastThreshold >= Length.Zero ? (Words)$"{view.RingPastThreshold:ft 0} past the threshold, "
            : (Words)$"{-view.RingPastThreshold:ft 0} before the threshold, ";
        Words end = above > Angle.Zero ? (Words)$"{above:0.0} above the cowling. "
            : (Words)$"hidden, {-above:0.0} below the cowling's edge. ";
        Words turned = !IsTurned(view) ? (Words)$"" : view.Crab > Angle.Zero ? (Words)$"The nose points {view.Crab:0.0} to the right. "
            : (Words)$"The nose points {-view.Crab:0.0} to the left. ";
        return (Words)$"{nose}{place}{end}{turned}";
    });

    private static void DrawView(Sketch sketch, Runway runway, PilotsView view, Box box, bool isFirst)
    {
        double pitch = view.Flight.PitchAttitude.Radians, middle = box.Left + box.Width / 2;
        // From 3.5° above the level line to 2.2° below the cowling's edge.
        double above = Math.Tan(double.DegreesToRadians(3.5)),
            below = Math.Tan(double.DegreesToRadians(CowlingDegrees + 2.2));
        double focal = box.Height / (above + below);
        double nose = middle + Aside(view, focal, box);
        var eye = new Perspective(pitch, focal, new Point(nose, box.Top + focal * above)) { Yaw = view.Crab.Radians };
        double horizon = Math.Clamp(eye.Above(-pitch), box.Top, box.Bottom);
        sketch.Area(PicturePart.Sky, box.Corners());
        sketch.Area(PicturePart.Ground, (box with { Top = horizon, Height = box.Bottom - horizon }).Corners());
        DrawRunway(sketch, runway, view, eye, box);
        sketch.Line(PicturePart.Horizon, new Point(box.Left, horizon), new Point(box.Right, horizon));
        DrawPathPoint(sketch, RingOf(view, eye, middle), box);
        sketch.Area(PicturePart.Cowling, Cowling(box, nose, IsTurned(view) ? 3 : 1, eye.Above(-double.DegreesToRadians(CowlingDegrees))));
        double level = eye.Centre.Y;
        sketch.Line(PicturePart.Level, new Point(box.Left, level), new Point(box.Right, level));
        sketch.Area(PicturePart.Frame.Named("frame"), box.Corners(), view.Style, isLine: true);
        sketch.Heading(view.Name, new Point(middle, 11), view.Style.Text);
        sketch.Standing(
            $"nose {view.Flight.PitchAttitude:+0.0}", new Point(middle, 32), view.Style.Text, LabelStand.Middle);
        if (!isFirst) return;
        Box room = box.Grown(-5);
        sketch.Label("horizon", new Point(box.Left + 16, horizon), room);
        sketch.Label("level line", new Point(box.Right - 24, level), room);
    }

    private static void DrawRunway(Sketch sketch, Runway runway, PilotsView view, Perspective eye, Box box)
    {
        double before = view.BeforeThreshold.Meters, down = -view.EyeHeight.Meters,
            length = runway.LengthAvailable.Meters;
        double aiming = FinalPath.AimingPoint(view.Flight.Configuration.UsualPilot.ThresholdHeight, -view.PathOverGround).Meters;
        IReadOnlyList<Point> Seen(IEnumerable<(double Along, double Across)> area) =>
            Clip.Area(
                eye.See([.. area.Select(p => new Space(before + p.Along, p.Across, down + runway.Slope * p.Along))]),
                box);
        double half = RunwayPaint.HalfWidth;
        sketch.Area(PicturePart.Runway, Seen([(0, -half), (length, -half), (length, half), (0, half)]));
        // One element for all of the paint keeps a picture that moves small.
        sketch.Areas(PicturePart.Paint, RunwayPaint.Of(runway.Name, length, aiming).Select(Seen));
    }

    /// <summary>Where the path leads, as it is seen: straight below the level line, or aside where the nose is turned.</summary>
    private static Point RingOf(PilotsView view, Perspective eye, double middle) => IsTurned(view)
        ? eye.See(new Space((view.BeforeThreshold + view.RingPastThreshold).Meters, 0, -view.EyeHeight.Meters))
        : new Point(middle, eye.Above(-view.PathBelowLevelLine.Radians));

    private static void DrawPathPoint(Sketch sketch, Point at, Box box)
    {
        var ring = Enumerable.Range(0, 25)
            .Select(i => new Point(at.X + 6 * Math.Cos(i * Math.PI / 12), at.Y + 6 * Math.Sin(i * Math.PI / 12)));
        sketch.Line(PicturePart.PathPoint, [.. Clip.Area([.. ring], box)]);
    }

    /// <summary>A pilot whose nose is turned looks between it and the runway, and never loses the runway.</summary>
    private static double Aside(PilotsView view, double focal, Box box)
    {
        if (!IsTurned(view)) return 0;
        double turned = focal * Math.Tan(view.Crab.Radians);
        return turned - Math.Sign(turned) * Math.Min(Math.Abs(turned) / 2, 0.3 * box.Width);
    }

    private static IReadOnlyList<Point> Cowling(Box box, double nose, int times, double top)
    {
        var edge = Enumerable.Range(-12 * times, 24 * times + 1).Select(i => new Point(
            nose + i * box.Width / 24, top + 16 * Math.Pow(i / 12.0, 2) + 6 * Math.Pow(i / 12.0, 4)));
        return Clip.Area([.. edge, new Point(box.Right, box.Bottom), new Point(box.Left, box.Bottom)], box);
    }

    /// <summary>What is said of each, one after the other.</summary>
    private static Words Each<T>(IEnumerable<T> views, Func<T, Words> said)
    {
        var words = new Words(0, 0);
        foreach (T view in views) words.AppendFormatted(said(view));
        return words;
    }

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    private static IReadOnlyList<Words> Row<T>(string name, IEnumerable<T> views, Func<T, Words> value) =>
        [name, .. views.Select(value)];
}
