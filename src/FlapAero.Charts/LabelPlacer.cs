namespace FlapAero.Charts;

/// <summary>
/// Places labels: of lines that end at the right edge in the margin, pushed apart; of all others at the first
/// place in which they hide neither a line nor another label.
/// </summary>
/// <param name="figure">The figure.</param>
/// <param name="layout">Where its lines are.</param>
/// <param name="views">The sizes that the drawing takes while labels keep their pixels: a place must do for each.</param>
/// <param name="before">The labels of the figure that is seen before this one, or none: a label that jumps draws the eye.</param>
internal sealed class LabelPlacer(Figure figure, FigureLayout layout, IReadOnlyList<View> views, IReadOnlyList<PlacedLabel> before)
{
    /// <summary>What a place may cost more before a label leaves it.</summary>
    private const double Inertia = 30;

    /// <summary>What a label on a label costs: more than all else in all views together.</summary>
    private const double Collision = 2000;

    /// <summary>What a label costs that could be another line's: less than one that cannot be read.</summary>
    private const double Confusion = 250;

    /// <summary>What a line costs that only touches a label: more than a thin line that leads to a clear place.</summary>
    private const double Touch = 40;

    /// <summary>What a bar's edge counts beside a line: more to its own label, whose colour is the bar's.</summary>
    private const double BarEdge = 0.5, OwnBarEdge = 1.5;

    private const int MostPasses = 4;

    private readonly List<PlacedLabel> _placed = [];
    private readonly List<Curve<IReadOnlyList<Point>>> _curves =
    [
        .. figure.Lines.Where(line => !line.IsBars).Select(line => new Curve<IReadOnlyList<Point>>(line, Simplified.Line(layout.ToPoints(line), 0.5))),
        .. figure.Lines.Where(line => line.IsBars).SelectMany(line => layout.ToBars(line).Select(bar => new Curve<IReadOnlyList<Point>>(line, Outline(bar)))),
    ];

    private readonly List<Curve<Point>> _points = [.. figure.Marks.Select(m => new Curve<Point>(m, new Point(layout.ToX(m.X), layout.ToY(m.Y))))];

    private IReadOnlyList<Drawn> _drawn = [];

    /// <summary>How many times wider and taller the plot is in some view.</summary>
    private readonly record struct Stretch(double Across, double Up);

    /// <summary>What a label must not hide, as it stands in some view.</summary>
    private sealed record Drawn(Stretch Stretch, Box Plot, Curve<Point>[] Points, Curve<Point[]>[] Curves);

    /// <summary>What is drawn of a line, a level or a mark.</summary>
    private readonly record struct Curve<T>(object Of, T Drawn);

    private sealed record Request(
        object Of, string Name, string Key, string Color, double MaximalWidth, IReadOnlyList<Point> Anchors, Func<Point, double, double, IEnumerable<LabelPlace>> Around);

    internal IReadOnlyList<PlacedLabel> Place()
    {
        foreach (Level level in figure.Levels)
            _curves.Add(new(level, [new Point(layout.Plot.Left, layout.ToY(level.Y)), new Point(layout.Plot.Right, layout.ToY(level.Y))]));
        _drawn = [.. views.Select(StretchOf).Select(stretch => new Drawn(
            stretch, layout.Plot with { Width = layout.Plot.Width * stretch.Across, Height = layout.Plot.Height * stretch.Up },
            [.. _points.Select(p => new Curve<Point>(p.Of, Stretched(p.Drawn, stretch)))],
            [.. _curves.Select(curve => new Curve<Point[]>(curve.Of, [.. curve.Drawn.Select(p => Stretched(p, stretch))]))]))];
        PlaceInMargin();
        int inMargin = _placed.Count;
        var requests = new List<Request>();
        foreach (Mark mark in figure.Marks)
            requests.Add(new Request(mark, mark.Name, "", FigureLayout.Ink, layout.Plot.Width * 0.6, [new Point(layout.ToX(mark.X), layout.ToY(mark.Y))], LabelPlaces.AroundPoint));
        foreach (Level level in figure.Levels)
            requests.Add(new Request(level, level.Name, "", FigureLayout.Grey, layout.Plot.Width, AlongLevel(level), LabelPlaces.AlongLine));
        for (int i = 0; i < figure.Lines.Count; i++)
            if (!layout.IsNamedInMargin(figure.Lines[i]))
                requests.Add(new Request(figure.Lines[i], figure.Lines[i].Name, figure.LineStyles[i].Key, figure.LineStyles[i].Text, layout.Plot.Width * 0.6, AlongSeries(figure.Lines[i]), LabelPlaces.AroundPoint));
        foreach (Request request in requests) _placed.Add(Best(request));
        // What came first took its place without knowing of what came later.
        for (int pass = 0; pass < MostPasses && _drawn.Any(Collide); pass++)
            for (int i = 0; i < requests.Count; i++)
            {
                _placed.RemoveAt(inMargin + i);
                _placed.Insert(inMargin + i, Best(requests[i]));
            }
        return _placed;
    }

    /// <summary>Whether in some view a label lies on another.</summary>
    private bool Collide(Drawn drawn)
    {
        Box[] boxes = [.. _placed.Select(label => In(drawn, label).Box)];
        return boxes.Where((box, i) => boxes.Skip(i + 1).Any(other => box.Overlap(other) > 0)).Any();
    }

    /// <summary>Pushed apart where the plot is least tall: where it is taller they stand further apart.</summary>
    private void PlaceInMargin()
    {
        Drawn lowest = _drawn.MinBy(drawn => drawn.Stretch.Up)!;
        var labels = figure.Lines.Select((line, i) => (Line: line, Style: figure.LineStyles[i]))
            .Where(entry => layout.IsNamedInMargin(entry.Line))
            .Select(entry =>
            {
                int end = FigureLayout.EndOf(entry.Line);
                var anchor = new Point(layout.ToX(entry.Line.X[end]), layout.ToY(entry.Line.Y[end]));
                var lines = layout.MarginLines(entry.Line.Name);
                double height = lines.Count * layout.LineHeight;
                return new PlacedLabel(lines, new Box(layout.Plot.Right + 14, anchor.Y - height / 2, Widest(lines), height), anchor, entry.Style.Text, Leader.ToLeft);
            })
            .OrderBy(label => label.Anchor.Y).ToList();
        double[] wanted = [.. labels.Select(label => Stretched(label, lowest.Stretch).Top)];
        double[] tops = PushedApart(wanted, [.. labels.Select(l => l.Box.Height + 2)], lowest.Plot);
        for (int i = 0; i < labels.Count; i++)
            _placed.Add(labels[i] with { Box = labels[i].Box with { Top = labels[i].Box.Top + tops[i] - wanted[i] } });
    }

    /// <summary>Moves boxes apart as little as need be: boxes that touch form a stack, centred on where its boxes wanted to be.</summary>
    private double[] PushedApart(double[] wanted, double[] heights, Box plot)
    {
        var stacks = new List<(int First, int Count, double Top, double Height)>();
        for (int i = 0; i < wanted.Length; i++)
        {
            stacks.Add((i, 1, Inside(wanted[i], heights[i]), heights[i]));
            while (stacks.Count > 1 && stacks[^2].Top + stacks[^2].Height > stacks[^1].Top)
            {
                (int first, int count, _, double above) = stacks[^2];
                (_, int more, _, double below) = stacks[^1];
                stacks.RemoveRange(stacks.Count - 2, 2);
                double offset = 0, sum = 0;
                for (int k = first; k < first + count + more; k++) (sum, offset) = (sum + wanted[k] - offset, offset + heights[k]);
                stacks.Add((first, count + more, Inside(sum / (count + more), above + below), above + below));
            }
        }
        double[] tops = new double[wanted.Length];
        foreach ((int first, int count, double top, _) in stacks)
        {
            double at = top;
            for (int k = first; k < first + count; k++) (tops[k], at) = (at, at + heights[k]);
        }
        return tops;

        double Inside(double top, double height) =>
            Math.Max(plot.Top - layout.LineHeight / 2, Math.Min(top, plot.Bottom + layout.LineHeight / 2 - height));
    }

    /// <summary>A bar as a line round it and up its middle, which a label must not cross.</summary>
    private static IReadOnlyList<Point> Outline(Box bar)
    {
        double middle = bar.Left + bar.Width / 2;
        return [new(bar.Left, bar.Bottom), new(bar.Left, bar.Top), new(middle, bar.Top), new(middle, bar.Bottom), new(middle, bar.Top), new(bar.Right, bar.Top), new(bar.Right, bar.Bottom)];
    }

    private IReadOnlyList<Point> AlongLevel(Level level) =>
        [.. ((double[])[0, 1, 0.5, 0.25, 0.75, 0.1, 0.9]).Select(part => new Point(layout.Plot.Left + 3 + part * (layout.Plot.Width - 6), layout.ToY(level.Y)))];

    private IReadOnlyList<Point> AlongSeries(Series line)
    {
        IReadOnlyList<Point> points = layout.ToPoints(line);
        if (line.IsBars) return [.. points.OrderBy(point => point.Y)];
        return
        [
            points[FigureLayout.EndOf(line)],
            .. ((double[])[0.85, 0.7, 0.5, 0.3, 0.15, 0, 0.92, 0.6, 0.4, 0.08]).Select(part => Between(points, part * (points.Count - 1))),
            points.MinBy(point => point.Y),
        ];
    }

    private static Point Between(IReadOnlyList<Point> points, double at)
    {
        int from = Math.Min((int)at, points.Count - 2);
        (Point a, Point b, double part) = (points[from], points[from + 1], at - from);
        return new Point(a.X + part * (b.X - a.X), a.Y + part * (b.Y - a.Y));
    }

    private PlacedLabel Best(Request request)
    {
        int order = 0;
        PlacedLabel? best = null;
        double least = double.PositiveInfinity;
        foreach (IReadOnlyList<IReadOnlyList<Notation.Run>> lines in Wrapped(request))
            foreach (LabelPlace c in request.Anchors.SelectMany(anchor => request.Around(anchor, Widest(lines), lines.Count * layout.LineHeight)))
            {
                var label = new PlacedLabel(lines, c.Box, c.Anchor, request.Color, c.Leader);
                double cost = Cost(label, request.Of) + 0.1 * order++ - (before.Any(label.StandsAs) ? Inertia : 0);
                // Looked at last, since it takes longest.
                if (cost < least) cost += Confusion * _drawn.Count(drawn => IsConfusing(label, request.Of, drawn));
                if (cost < least) (best, least) = (label, cost);
            }
        // Where no place is clear, the label shows its line's dash.
        return request.Key.Length > 0 && _drawn.Any(drawn => IsConfusing(best!, request.Of, drawn))
            ? Best(request with { Name = request.Key + "\u00A0" + request.Name, Key = "" })
            : best!;
    }

    /// <summary>
    /// Whether in a view a label is about as near to another line as to its own, or is led to a place where two lines meet: without
    /// colours it could be either's.
    /// </summary>
    private bool IsConfusing(PlacedLabel label, object of, Drawn drawn)
    {
        PlacedLabel there = In(drawn, label);
        // Letters fill not all of their line's height.
        double air = 0.2 * layout.FontSize;
        Box letters = there.Box with { Top = there.Box.Top + air, Height = there.Box.Height - 2 * air };
        Box around = there.Leader == Leader.None
            ? letters.Grown(DistanceTo(letters, there.Anchor) + 0.2 * layout.FontSize)
            : new Box(there.Anchor.X, there.Anchor.Y, 0, 0).Grown(FigureLayout.Apart * layout.FontSize);
        if (of is Mark)
            return drawn.Points.Any(point => point.Of != of && around.Contains(point.Drawn));
        foreach (Curve<Point[]> curve in drawn.Curves)
            if (curve.Of != of && !(of is Series own && curve.Of is Series other && layout.AreOne(own, other)))
                for (int i = 1; i < curve.Drawn.Length; i++)
                    if (around.LengthInside(curve.Drawn[i - 1], curve.Drawn[i]) > 0) return true;
        return false;
    }

    private static double DistanceTo(Box box, Point point) => Math.Max(
        Math.Max(box.Left - point.X, point.X - box.Right), Math.Max(box.Top - point.Y, point.Y - box.Bottom));

    /// <summary>A label in as few lines as it can, and in as many as it has words.</summary>
    private IEnumerable<IReadOnlyList<IReadOnlyList<Notation.Run>>> Wrapped(Request request)
    {
        var name = Notation.Parse(request.Name);
        var few = TextSize.Wrap(name, request.MaximalWidth, layout.FontSize);
        yield return few;
        var many = TextSize.Wrap(name, Widest(TextSize.Wrap(name, 0, layout.FontSize)) + 1, layout.FontSize);
        if (many.Count > few.Count) yield return many;
    }

    private double Cost(PlacedLabel label, object of) => _drawn.Sum(drawn => Cost(label, of, drawn));

    private double Cost(PlacedLabel label, object of, Drawn drawn)
    {
        PlacedLabel there = In(drawn, label);
        PlacedLabel[] others = [.. _placed.Select(other => In(drawn, other))];
        Box box = there.Box.Grown(2.5);
        double area = box.Width * box.Height;
        double outside = 1 - box.Overlap(drawn.Plot.Grown(3)) / area;
        double hidden = others.Sum(other => box.Overlap(other.Box))
            + drawn.Points.Sum(p => box.Overlap(new Box(p.Drawn.X - 6, p.Drawn.Y - 6, 12, 12)));
        double crossed = 0;
        int touched = 0;
        foreach ((object line, Point[] curve) in drawn.Curves)
        {
            double inside = 0;
            for (int i = 1; i < curve.Length; i++) inside += box.LengthInside(curve[i - 1], curve[i]);
            // On the pale face of a bar letters are read, through a line they are not.
            bool isBar = line is Series { IsBars: true };
            crossed += inside * (!isBar ? 1 : line == of ? OwnBarEdge : BarEdge);
            if (inside > 0 && !isBar) touched++;
        }
        hidden += 10 * others.Where(other => other.Leader != Leader.None).Sum(other => box.LengthInside(other.Anchor, other.LeaderEnd));
        double leader = there.Leader == Leader.None ? 0
            : 6 + Distance(there.Anchor, there.LeaderEnd) / 10 + 300 * others.Count(other => other.Box.LengthInside(there.Anchor, there.LeaderEnd) > 0);
        return (outside > 0.02 ? 200 : 0) + 300 * outside + (others.Any(other => box.Overlap(other.Box) > 0) ? Collision : 0) + (hidden > 0 ? 50 : 0) + 600 * hidden / area + 100 * Math.Min(1, crossed / box.Width) + Touch * touched + leader;
    }

    /// <summary>What the margins leave; a drawing to scale grows both ways alike, until one of them stops it.</summary>
    private Stretch StretchOf(View view)
    {
        double across = (view.Width - layout.Plot.Left - layout.RightMargin) / layout.Plot.Width;
        double up = (view.Height - layout.Plot.Top - layout.BottomMargin) / layout.Plot.Height;
        return figure.IsToScale ? new Stretch(Math.Min(across, up), Math.Min(across, up)) : new Stretch(across, up);
    }

    private Point Stretched(Point point, Stretch stretch) => new(
        layout.Plot.Left + (point.X - layout.Plot.Left) * stretch.Across, layout.Plot.Top + (point.Y - layout.Plot.Top) * stretch.Up);

    private PlacedLabel In(Drawn drawn, PlacedLabel label) =>
        label with { Anchor = Stretched(label.Anchor, drawn.Stretch), Box = Stretched(label, drawn.Stretch) };

    private Box Stretched(PlacedLabel label, Stretch stretch)
    {
        Point anchor = Stretched(label.Anchor, stretch);
        return label.Box with { Left = label.Box.Left + anchor.X - label.Anchor.X, Top = label.Box.Top + anchor.Y - label.Anchor.Y };
    }

    private static double Distance(Point a, Point b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2));

    private double Widest(IReadOnlyList<IReadOnlyList<Notation.Run>> lines) =>
        TextSize.Widest(lines.Select(Notation.ToPlain), layout.FontSize);
}
