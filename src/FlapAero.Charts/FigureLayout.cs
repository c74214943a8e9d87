namespace FlapAero.Charts;

/// <summary>A label in its place, in pixels of the drawing. The anchor is the point that it speaks of.</summary>
/// <param name="Lines">Its lines of text.</param>
/// <param name="Box">Where it stands.</param>
/// <param name="Anchor">What it labels.</param>
/// <param name="Color">Its colour.</param>
/// <param name="Leader">The side of the box that a thin line leads to from the anchor.</param>
internal sealed record PlacedLabel(IReadOnlyList<IReadOnlyList<Notation.Run>> Lines, Box Box, Point Anchor, string Color, Leader Leader)
{
    /// <summary>Where the thin line ends.</summary>
    internal Point LeaderEnd => Leader switch
    {
        Leader.ToTop => new Point(Box.Left + Box.Width / 2, Box.Top),
        Leader.ToBottom => new Point(Box.Left + Box.Width / 2, Box.Bottom),
        _ => new Point(Box.Left - 3, Box.Top + Box.Height / 2),
    };
}

/// <summary>Whether a thin line leads to a label, and to which side of it.</summary>
internal enum Leader { None, ToLeft, ToTop, ToBottom }

/// <summary>
/// Where everything stands in a drawing of a given size: margins, scales, ticks, and labels that do not collide.
/// Both drawings take it from here, so they look alike.
/// </summary>
internal sealed class FigureLayout
{
    internal const string Ink = "#222222";
    internal const string Grey = "#444444";
    internal const string Grid = "#DDDDDD";

    internal FigureLayout(Figure figure, double width, double height, double fontSize, params IReadOnlyList<double> stretches)
    {
        (Width, Height, FontSize) = (width, height, fontSize);
        double[] xs = [.. figure.Lines.SelectMany(l => l.X), .. figure.Marks.Select(m => m.X)];
        double[] ys = [.. figure.Lines.SelectMany(l => l.Y), .. figure.Levels.Select(l => l.Y), .. figure.Marks.Select(m => m.Y)];
        foreach (Series bars in figure.Lines.Where(line => line.IsBars))
        {
            xs = [.. xs, bars.X[0] - bars.BarStep / 2, bars.X[^1] + bars.BarStep / 2];
            ys = [.. ys, 0];
        }
        (double lowX, double highX) = (Low(xs, figure.X), High(xs, figure.X));
        XTicks = Ticks.Within(lowX, highX, 6);
        YTicks = Ticks.Around(Low(ys, figure.Y), High(ys, figure.Y), 6);

        LineHeight = fontSize * 1.2;
        YTitle = TextSize.Wrap(figure.Y.Title, width - 12, fontSize);
        double left = TextSize.Widest(YTicks.Labels, fontSize) + 14;
        double right = Math.Max(RightMarginOfLabels(figure), TextSize.Width(XTicks.Labels.LastOrDefault(""), fontSize) / 2 + 6);
        if (XTicks.Labels.Sum(text => TextSize.Width(text, fontSize) + 14) > width - left - right) XTicks = Ticks.Within(lowX, highX, 3);
        // Centred below the plot, it must not run over the nearer edge of the drawing.
        double centre = (left + width - right) / 2;
        XTitle = TextSize.Wrap(figure.X.Title, 2 * Math.Min(centre, width - centre) - 8, fontSize);
        double top = YTitle.Count * LineHeight + 18;
        double bottom = LineHeight + 14 + XTitle.Count * LineHeight;
        Plot = new Box(left, top, width - left - right, height - top - bottom);
        Labels = new LabelPlacer(figure, this, [1, .. stretches]).Place();
    }

    internal double Width { get; }

    internal double Height { get; }

    internal double FontSize { get; }

    internal double LineHeight { get; }

    internal Box Plot { get; }

    internal Ticks XTicks { get; }

    internal Ticks YTicks { get; }

    /// <summary>The axes' titles broken into lines.</summary>
    internal IReadOnlyList<IReadOnlyList<Notation.Run>> XTitle { get; }

    internal IReadOnlyList<IReadOnlyList<Notation.Run>> YTitle { get; }

    internal IReadOnlyList<PlacedLabel> Labels { get; }

    internal double ToX(double value) => Plot.Left + (value - XTicks.From) / (XTicks.To - XTicks.From) * Plot.Width;

    internal double ToY(double value) => Plot.Bottom - (value - YTicks.From) / (YTicks.To - YTicks.From) * Plot.Height;

    internal IReadOnlyList<Point> ToPoints(Series line) => [.. line.X.Select((x, i) => new Point(ToX(x), ToY(line.Y[i])))];

    /// <summary>The bars of a series as boxes, with a gap between them.</summary>
    internal IEnumerable<Box> ToBars(Series series)
    {
        double width = 0.86 * series.BarStep * Plot.Width / (XTicks.To - XTicks.From), zero = ToY(0);
        return series.X.Select((x, i) => (X: ToX(x), Y: ToY(series.Y[i])))
            .Select(top => new Box(top.X - width / 2, Math.Min(top.Y, zero), width, Math.Abs(zero - top.Y)));
    }

    /// <summary>The index of a line's end: its rightmost point.</summary>
    internal static int EndOf(Series line)
    {
        int end = line.X.Count - 1;
        for (int i = 0; i < line.X.Count; i++) if (line.X[i] > line.X[end]) end = i;
        return end;
    }

    /// <summary>Whether a line runs to the right edge, where its label stands in the margin.</summary>
    internal bool EndsAtEdge(Series line) =>
        !line.IsBars && line.X[EndOf(line)] >= XTicks.To - (XTicks.To - XTicks.From) * 0.02;

    internal IReadOnlyList<IReadOnlyList<Notation.Run>> MarginLines(string name) =>
        TextSize.Wrap(Notation.Parse(name), MarginLabelWidth, FontSize);

    private double MarginLabelWidth => Math.Max(74, Width * 0.24);

    private double RightMarginOfLabels(Figure figure) => figure.Lines.Where(EndsAtEdge)
        .Select(line => TextSize.Widest(MarginLines(line.Name).Select(Notation.ToPlain), FontSize) + 20).DefaultIfEmpty(0).Max();

    private static double Low(double[] values, Axis axis) => Math.Min(values.Min(), axis.Lowest ?? double.PositiveInfinity);

    private static double High(double[] values, Axis axis) => Math.Max(values.Max(), axis.Highest ?? double.NegativeInfinity);
}
