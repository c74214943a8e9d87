using UnitsNet;

namespace FlapAero.Charts;

public static partial class Pictures
{
    /// <summary>How much wider the runway is drawn than it is long, so that its paint can be seen.</summary>
    private const double Widened = 4;

    private const double RowHeight = 20;

    /// <summary>
    /// The runway from above, its length to scale: threshold, aiming point, end of the first third, and for each
    /// landing where the wheels touch, the nose comes down and the aeroplane stops. The first landing stands above
    /// it, the second below.
    /// </summary>
    /// <param name="title">The title.</param>
    /// <param name="runway">The runway.</param>
    /// <param name="landings">One or two landings.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="RefusedInputException">There are no landings, or more than two.</exception>
    public static Picture RunwayFromAbove(
        string title, Runway runway, params IReadOnlyList<LandedView> landings)
    {
        ArgumentNullException.ThrowIfNull(runway);
        ArgumentNullException.ThrowIfNull(landings);
        if (landings.Count is < 1 or > 2)
            throw Require.RefusedWhole(
                nameof(landings), $"A runway is drawn with one or two landings; here are {landings.Count}.");
        double length = runway.LengthAvailable.Meters,
            longest = Math.Max(length, landings.Max(landing => landing.Result.StopDistance.Meters));
        double scale = (Picture.Width - 16) / longest, aiming = FinalPath.AimingPoint(landings[0].Configuration.UsualPilot.ThresholdHeight, LandingPilot.Usual.PathAngle).Meters;
        double half = Widened * RunwayPaint.HalfWidth * scale;
        bool isAlone = landings.Count == 1;
        double middle = (isAlone ? 7 : 4) * RowHeight + 18 + half;
        var sketch = new Sketch(title, middle + half + (isAlone ? 8 : 6 * RowHeight + 20));
        Point On(double along, double across) => new(8 + scale * along, middle + Widened * scale * across);
        sketch.Area(
            PicturePart.Runway,
            [On(0, -RunwayPaint.HalfWidth), On(length, -RunwayPaint.HalfWidth), On(length, RunwayPaint.HalfWidth),
                On(0, RunwayPaint.HalfWidth)]);
        sketch.Areas(
            PicturePart.Paint, RunwayPaint.Of(runway.Name, length, aiming)
                .Select(area => area.Select(p => On(p.Along, p.Across)).ToArray()));
        double third = runway.EndOfFirstThird.Meters;
        sketch.Line(
            PicturePart.Level.Named("first-third"), On(third, -RunwayPaint.HalfWidth - 3),
            On(third, RunwayPaint.HalfWidth + 3));
        for (int i = 0; i < landings.Count; i++) DrawRoll(
            sketch, landings[i], i == 0 ? -1 : 1, middle, half, scale, runway, aiming, isAlone);
        return sketch.Done(
            $"Seen from above, landing to the right. Lengths are to scale, the runway is drawn {Widened:0} times as wide. The bar is the roll, thick once the nose is down and the brakes are on. The aiming point is where the usual path of {LandingPilot.Usual.PathAngle:0.0} meets the runway.",
            FindingOf(runway, landings),
            ["", .. landings.Select(landing => landing.Name)],
            Row("wheels touch", landings, landing => $"{landing.Result.TouchdownDistance:ft 0}"),
            Row("nose down, brakes", landings, landing => $"{landing.Result.NoseLowerDistance:ft 0}"),
            Row("stop", landings, landing => $"{landing.Result.StopDistance:ft 0}"),
            Row("end of the first third", landings, _ => $"{runway.EndOfFirstThird:ft 0}"),
            Row("end of the runway", landings, _ => $"{runway.LengthAvailable:ft 0}"));
    }

    private static Words FindingOf(Runway runway, IReadOnlyList<LandedView> landings) => Each(landings, landing =>
    {
        Length beyond = landing.Result.TouchdownDistance - runway.EndOfFirstThird;
        Words third = beyond > Length.Zero ? (Words)$"{beyond:ft 0} beyond the first third"
            : (Words)$"{-beyond:ft 0} before the end of the first third";
        Length left = runway.LengthAvailable - landing.Result.StopDistance;
        Words end = left >= Length.Zero ? (Words)$"{left:ft 0} before the end"
            : (Words)$"{-left:ft 0} past the end";
        return (Words)$"{Capital(landing.Name)}: the wheels touch {third}; the aeroplane stops {end}. ";
    });

    /// <summary>
    /// A landing on one side of the runway: what lies nearer to the threshold has its label nearer to the runway, so
    /// no line crosses a label.
    /// </summary>
    private static void DrawRoll(
        Sketch sketch, LandedView landing, int side, double middle, double half, double scale, Runway runway,
        double aiming, bool isAlone)
    {
        SeriesStyle ink = Palette.For(landing.Configuration);
        LandingResult result = landing.Result;
        double At(Length along) => 8 + scale * along.Meters;
        double lane = middle + side * (half + 8), edge = middle + side * (half + 2);
        sketch.Line(
            PicturePart.Path.Named("roll-nose-up"), ink with { Dash = "" },
            new Point(At(result.TouchdownDistance), lane), new Point(At(result.NoseLowerDistance), lane));
        sketch.Line(
            (PicturePart.Path with { Width = 7 }).Named("roll-braked"), ink with { Dash = "" },
            new Point(At(result.NoseLowerDistance), lane), new Point(At(result.StopDistance), lane));
        var marks = new List<(Words Text, double X, string Color)>
        {
            ($"touches {result.TouchdownDistance:ft 0}", At(result.TouchdownDistance), ink.Text),
            ($"nose down {result.NoseLowerDistance:ft 0}", At(result.NoseLowerDistance), ink.Text),
            ($"stops {result.StopDistance:ft 0}", At(result.StopDistance), ink.Text),
        };
        if (side < 0) marks.Add(
            ($"first third {runway.EndOfFirstThird:ft 0}", At(runway.EndOfFirstThird), FigureLayout.Ink));
        if (side > 0 || isAlone) marks.AddRange(
        [
            ($"aiming point", At(Length.FromMeters(aiming)), FigureLayout.Ink),
            ($"threshold", At(Length.Zero), FigureLayout.Ink),
            ($"end {runway.LengthAvailable:ft 0}", At(runway.LengthAvailable), FigureLayout.Ink),
        ]);
        int row = 0;
        foreach ((Words text, double x, string color) in marks.OrderBy(mark => mark.X))
        {
            double y = middle + side * (half + 27 + row++ * RowHeight);
            double width = TextSize.Width(LabelText.Plain(text.ToString()), PictureLabels.FontSize) * 1.06;
            sketch.Line(PicturePart.Measure.Named("leader"), new Point(x, edge), new Point(x, y - side * 8));
            // Left of its own line, or over it where that would leave the drawing.
            sketch.Standing(text, new Point(Math.Max(x, 2 + width), y), color, LabelStand.End);
        }
        sketch.Heading(
            landing.Name, new Point(2, middle + side * (half + 27 + (row - 1) * RowHeight)), ink.Text,
            LabelStand.Start);
    }
}
