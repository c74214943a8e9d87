namespace FlapAero.Charts;

/// <summary>A label in its place, in pixels of the drawing. The anchor is the point that it speaks of.</summary>
/// <param name="Lines">Its lines of text.</param>
/// <param name="Box">Where it stands.</param>
/// <param name="Anchor">What it labels.</param>
/// <param name="Color">Its colour.</param>
/// <param name="Leader">The side of the box that a thin line leads to from the anchor.</param>
internal sealed record PlacedLabel(IReadOnlyList<IReadOnlyList<Notation.Run>> Lines, Box Box, Point Anchor, string Color, Leader Leader)
{
    /// <summary>Whether a label stands to its point as this one does to its own, so that it seems to move with the point.</summary>
    internal bool StandsAs(PlacedLabel other) => Leader == other.Leader
        && Math.Abs(Box.Left - Anchor.X - other.Box.Left + other.Anchor.X) < 0.5 && Math.Abs(Box.Top - Anchor.Y - other.Box.Top + other.Anchor.Y) < 0.5
        && Lines.SelectMany(line => line).SequenceEqual(other.Lines.SelectMany(line => line));

    /// <summary>The side of its box that is nearest to what it names.</summary>
    internal LabelSide Side => Leader switch
    {
        Leader.ToLeft => LabelSide.Left,
        Leader.ToRight => LabelSide.Right,
        Leader.ToTop or Leader.ToBottom => LabelSide.Middle,
        _ => ((Anchor.X - Box.Left) / Box.Width) switch { < 0.25 => LabelSide.Left, > 0.75 => LabelSide.Right, _ => LabelSide.Middle },
    };

    /// <summary>Where the thin line ends.</summary>
    internal Point LeaderEnd => Leader switch
    {
        Leader.ToTop => new Point(Box.Left + Box.Width / 2, Box.Top),
        Leader.ToBottom => new Point(Box.Left + Box.Width / 2, Box.Bottom),
        Leader.ToRight => new Point(Box.Right + 3, Box.Top + Box.Height / 2),
        _ => new Point(Box.Left - 3, Box.Top + Box.Height / 2),
    };
}

/// <summary>Whether a thin line leads to a label, and to which side of it.</summary>
internal enum Leader { None, ToLeft, ToRight, ToTop, ToBottom }

/// <summary>The side on which a label's lines of text stand one below the other.</summary>
internal enum LabelSide { Left, Middle, Right }

/// <summary>
/// Where everything stands in a drawing of a given size: margins, scales, ticks, and labels that do not collide.
/// Both drawings take it from here, so they look alike.
/// </summary>
internal sealed class FigureLayout
{
    internal const string Ink = "#222222";
    internal const string Grey = "#444444";
    internal const string Grid = "#DDDDDD";

    /// <summary>How far from every other line a line must be where a thin line leads from it to its label, in sizes of letters.</summary>
    internal const double Apart = 0.32;

    /// <summary>The least size that a plot has in some view, in sizes of letters: what is apart there is so in all.</summary>
    private static readonly (double Across, double Up) LeastPlot = (13, 12.5);

    /// <summary>The greatest size: what is one there is so in all.</summary>
    private static readonly (double Across, double Up) MostPlot = (50, 28);

    private readonly Dictionary<(Series, Series), bool> _one = [];
    private readonly Figure _figure;
    private readonly Lazy<IReadOnlyList<PlacedLabel>> _labels;

    /// <param name="figure">The figure.</param>
    /// <param name="width">The drawing's width in pixels.</param>
    /// <param name="height">The drawing's height in pixels.</param>
    /// <param name="fontSize">The letters' size in pixels.</param>
    /// <param name="views">The other sizes that the drawing takes: labels are placed for each.</param>
    /// <param name="leastRight">The least right margin, for figures that are to share one.</param>
    /// <param name="before">The labels of a figure much like this one, near which its own stay where they can.</param>
    internal FigureLayout(
        Figure figure, double width, double height, double fontSize, IReadOnlyList<View> views, double leastRight = 0, IReadOnlyList<PlacedLabel>? before = null)
    {
        (_figure, Width, FontSize) = (figure, width, fontSize);
        Extent extent = ExtentOf(figure);
        XTicks = Ticks.Within(extent.LowX, extent.HighX, 6);
        YTicks = Ticks.Around(extent.LowY, extent.HighY, 6);

        LineHeight = fontSize * 1.2;
        YTitle = TextSize.Balanced(figure.Y.Title, width - 12, fontSize);
        double left = TextSize.Widest(YTicks.Labels, fontSize) + 14;
        double right = Math.Max(Math.Max(leastRight, RightMarginOfLabels(figure)), TextSize.Width(XTicks.Labels.LastOrDefault(""), fontSize) / 2 + 6);
        double WidthOf(IEnumerable<string> labels) => labels.Sum(text => TextSize.Width(text, fontSize) + 14);
        if (WidthOf(XTicks.Labels) > width - left - right) XTicks = Ticks.Within(extent.LowX, extent.HighX, 3);
        // Centred below the plot, it must not run over the nearer edge of the drawing.
        double centre = (left + width - right) / 2;
        XTitle = TextSize.Balanced(figure.X.Title, 2 * Math.Min(centre, width - centre) - 8, fontSize);
        double top = YTitle.Count * LineHeight + 18;
        double bottom = LineHeight + 14 + XTitle.Count * LineHeight;
        (RightMargin, BottomMargin) = (right, bottom);
        Plot = new Box(left, top, width - left - right, height - top - bottom);
        if (figure.IsToScale)
        {
            double across = XTicks.To - XTicks.From, up = YTicks.To - YTicks.From;
            double scale = Math.Min(Plot.Width / across, Plot.Height / up);
            Plot = Plot with { Width = scale * across, Height = scale * up };
            for (int most = 5; most >= 3 && WidthOf(XTicks.Labels) > Plot.Width; most--) XTicks = Ticks.Within(extent.LowX, extent.HighX, most);
        }
        Height = Plot.Bottom + bottom;
        _labels = new Lazy<IReadOnlyList<PlacedLabel>>(() => new LabelPlacer(figure, this, [new View(width, height), .. views], before ?? []).Place());
    }

    internal double Width { get; }

    internal double Height { get; }

    internal double FontSize { get; }

    internal double LineHeight { get; }

    internal Box Plot { get; }

    internal Ticks XTicks { get; }

    internal Ticks YTicks { get; }

    internal double RightMargin { get; }

    internal double BottomMargin { get; }

    /// <summary>The axes' titles broken into lines.</summary>
    internal IReadOnlyList<IReadOnlyList<Notation.Run>> XTitle { get; }

    internal IReadOnlyList<IReadOnlyList<Notation.Run>> YTitle { get; }

    /// <summary>Placed when asked for: it takes longer than all else here.</summary>
    internal IReadOnlyList<PlacedLabel> Labels => _labels.Value;

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

    /// <summary>Whether a line runs to the right edge.</summary>
    private bool EndsAtEdge(Series line) =>
        !line.IsBars && line.X[EndOf(line)] >= XTicks.To - (XTicks.To - XTicks.From) * 0.02;

    /// <summary>Whether a line's label stands in the margin: not where another line ends at the same place, for then it could be either's.</summary>
    internal bool IsNamedInMargin(Series line)
    {
        if (!EndsAtEdge(line)) return false;
        int end = EndOf(line);
        return !_figure.Lines.Where(other => other != line && !AreOne(line, other)).Any(other => IsAt(line, end, Shares(other, LeastPlot), LeastPlot, Apart))
            && !_figure.Levels.Any(level => IsAt(line, end, [Share(XTicks.From, level.Y, LeastPlot), Share(XTicks.To, level.Y, LeastPlot)], LeastPlot, Apart));
    }

    /// <summary>Whether two lines lie on each other all along in every view, so that both names are right at either.</summary>
    internal bool AreOne(Series line, Series other)
    {
        if (line.IsBars || other.IsBars) return false;
        if (!_one.TryGetValue((line, other), out bool are))
            _one[(line, other)] = _one[(other, line)] = are = LiesOn(line, other) || LiesOn(other, line);
        return are;
    }

    private bool LiesOn(Series line, Series other)
    {
        Point[] there = Shares(other, MostPlot);
        return line.X.Select((_, i) => i).All(i => IsAt(line, i, there, MostPlot, 0.2));
    }

    /// <summary>Whether a line has a point within so many sizes of letters of a path.</summary>
    private bool IsAt(Series line, int point, Point[] path, (double Across, double Up) plot, double within)
    {
        Point at = Share(line.X[point], line.Y[point], plot);
        Box around = new Box(at.X, at.Y, 0, 0).Grown(within);
        return Enumerable.Range(1, path.Length - 1).Any(i => around.Contains(path[i]) || around.LengthInside(path[i - 1], path[i]) > 0);
    }

    private Point[] Shares(Series line, (double Across, double Up) plot) => line.IsBars
        ? [.. line.X.SelectMany((x, i) => (Point[])[Share(x - line.BarStep / 2, line.Y[i], plot), Share(x + line.BarStep / 2, line.Y[i], plot)])]
        : [.. line.X.Select((x, i) => Share(x, line.Y[i], plot))];

    /// <summary>Where a point lies in a plot of so many sizes of letters.</summary>
    private Point Share(double x, double y, (double Across, double Up) plot) =>
        new((x - XTicks.From) / (XTicks.To - XTicks.From) * plot.Across, (y - YTicks.From) / (YTicks.To - YTicks.From) * plot.Up);

    internal IReadOnlyList<IReadOnlyList<Notation.Run>> MarginLines(string name) =>
        TextSize.Wrap(Notation.Parse(name), MarginLabelWidth, FontSize);

    private double MarginLabelWidth => Math.Max(74, Width * 0.24);

    private double RightMarginOfLabels(Figure figure) => figure.Lines.Where(IsNamedInMargin)
        .Select(line => TextSize.Widest(MarginLines(line.Name).Select(Notation.ToPlain), FontSize) + 20).DefaultIfEmpty(0).Max();

    /// <summary>The layouts of figures with the same axes, in the same place in each: what does not move stands still.</summary>
    internal static IReadOnlyList<FigureLayout> Alike(IReadOnlyList<Figure> figures, double width, double height, double fontSize, IReadOnlyList<View> views)
    {
        double right = figures.Max(figure => new FigureLayout(figure, width, height, fontSize, []).RightMargin);
        var layouts = new List<FigureLayout>();
        foreach (Figure figure in figures)
            layouts.Add(new FigureLayout(figure, width, height, fontSize, views, right, layouts.LastOrDefault()?.Labels));
        return layouts;
    }

    /// <summary>What the axes must hold: the data, the foot and the full width of bars, and what the axes are told to reach.</summary>
    internal static Extent ExtentOf(Figure figure)
    {
        IEnumerable<Series> bars = figure.Lines.Where(line => line.IsBars);
        double[] xs =
        [
            .. figure.Lines.SelectMany(l => l.X), .. figure.Marks.Select(m => m.X),
            .. bars.SelectMany(b => (double[])[b.X[0] - b.BarStep / 2, b.X[^1] + b.BarStep / 2]),
        ];
        double[] ys =
        [
            .. figure.Lines.SelectMany(l => l.Y), .. figure.Levels.Select(l => l.Y), .. figure.Marks.Select(m => m.Y), .. bars.Select(_ => 0.0),
        ];
        return new Extent(
            Math.Min(xs.Min(), figure.X.Lowest ?? xs[0]), Math.Max(xs.Max(), figure.X.Highest ?? xs[0]),
            Math.Min(ys.Min(), figure.Y.Lowest ?? ys[0]), Math.Max(ys.Max(), figure.Y.Highest ?? ys[0]));
    }
}

/// <summary>From where to where a figure's axes reach, in their units.</summary>
internal readonly record struct Extent(double LowX, double HighX, double LowY, double HighY);
