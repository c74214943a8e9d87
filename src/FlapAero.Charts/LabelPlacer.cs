namespace FlapAero.Charts;

/// <summary>
/// Places labels: of lines that end at the right edge in the margin, pushed apart; of all others at the first
/// place in which they hide neither a line nor another label.
/// </summary>
/// <param name="figure">The figure.</param>
/// <param name="layout">Where its lines are.</param>
/// <param name="stretches">
/// How many times wider than the layout the drawing may become while labels keep their pixels: a place must do for each.
/// </param>
/// <param name="before">The labels of the figure that is seen before this one, or none: a label that jumps draws the eye.</param>
internal sealed class LabelPlacer(Figure figure, FigureLayout layout, IReadOnlyList<double> stretches, IReadOnlyList<PlacedLabel> before)
{
    /// <summary>What a place may cost more before a label leaves it.</summary>
    private const double Inertia = 30;

    private const double Gap = 6;

    private readonly List<PlacedLabel> _placed = [];
    private readonly List<IReadOnlyList<Point>> _curves =
    [
        .. figure.Lines.Where(line => !line.IsBars).Select(line => Simplified.Line(layout.ToPoints(line), 0.5)),
        .. figure.Lines.Where(line => line.IsBars).SelectMany(layout.ToBars).Select(Outline),
    ];

    private readonly List<Point> _points = [.. figure.Marks.Select(m => new Point(layout.ToX(m.X), layout.ToY(m.Y)))];

    private IReadOnlyList<Drawn> _drawn = [];

    /// <summary>What a label must not hide, as it stands in the drawing made so many times wider.</summary>
    private sealed record Drawn(double Stretch, Box Plot, Point[] Points, Point[][] Curves);

    private readonly record struct Candidate(Box Box, Point Anchor, Leader Leader = Leader.None);

    private sealed record Request(string Name, string Color, double MaximalWidth, IReadOnlyList<Point> Anchors);

    internal IReadOnlyList<PlacedLabel> Place()
    {
        foreach (Level level in figure.Levels)
            _curves.Add([new Point(layout.Plot.Left, layout.ToY(level.Y)), new Point(layout.Plot.Right, layout.ToY(level.Y))]);
        _drawn = [.. stretches.Select(stretch => new Drawn(
            stretch, layout.Plot with { Width = layout.Plot.Width * Across(stretch), Height = layout.Plot.Height * Up(stretch) },
            [.. _points.Select(p => Stretched(p, stretch))], [.. _curves.Select(curve => curve.Select(p => Stretched(p, stretch)).ToArray())]))];
        PlaceInMargin();
        foreach (Mark mark in figure.Marks)
            PlaceBest(new Request(mark.Name, FigureLayout.Ink, layout.Plot.Width * 0.6, [new Point(layout.ToX(mark.X), layout.ToY(mark.Y))]), AroundPoint);
        foreach (Level level in figure.Levels)
            PlaceBest(new Request(level.Name, FigureLayout.Grey, layout.Plot.Width, AlongLevel(level)), AlongLine);
        for (int i = 0; i < figure.Lines.Count; i++)
            if (!layout.EndsAtEdge(figure.Lines[i]))
                PlaceBest(new Request(figure.Lines[i].Name, figure.LineStyles[i].Text, layout.Plot.Width * 0.6, AlongSeries(figure.Lines[i])), AroundPoint);
        return _placed;
    }

    private void PlaceInMargin()
    {
        var labels = figure.Lines.Select((line, i) => (Line: line, Style: figure.LineStyles[i]))
            .Where(entry => layout.EndsAtEdge(entry.Line))
            .Select(entry =>
            {
                int end = FigureLayout.EndOf(entry.Line);
                var anchor = new Point(layout.ToX(entry.Line.X[end]), layout.ToY(entry.Line.Y[end]));
                var lines = layout.MarginLines(entry.Line.Name);
                double height = lines.Count * layout.LineHeight;
                return new PlacedLabel(lines, new Box(layout.Plot.Right + 14, anchor.Y - height / 2, Widest(lines), height), anchor, entry.Style.Text, Leader.ToLeft);
            })
            .OrderBy(label => label.Anchor.Y).ToList();
        double[] tops = PushedApart([.. labels.Select(l => l.Box.Top)], [.. labels.Select(l => l.Box.Height + 2)]);
        for (int i = 0; i < labels.Count; i++)
            _placed.Add(labels[i] with { Box = labels[i].Box with { Top = tops[i] } });
    }

    /// <summary>Moves boxes apart as little as need be: boxes that touch form a stack, centred on where its boxes wanted to be.</summary>
    private double[] PushedApart(double[] wanted, double[] heights)
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
            Math.Max(2, Math.Min(top, layout.Plot.Bottom + layout.LineHeight / 2 - height));
    }

    /// <summary>A bar as a line round it and up its middle, which a label must not cross.</summary>
    private static IReadOnlyList<Point> Outline(Box bar)
    {
        double middle = bar.Left + bar.Width / 2;
        return [new(bar.Left, bar.Bottom), new(bar.Left, bar.Top), new(middle, bar.Top), new(middle, bar.Bottom), new(middle, bar.Top), new(bar.Right, bar.Top), new(bar.Right, bar.Bottom)];
    }

    private IReadOnlyList<Point> AlongLevel(Level level) =>
        [.. ((double[])[0, 1, 0.5, 0.25, 0.75]).Select(part => new Point(layout.Plot.Left + 3 + part * (layout.Plot.Width - 6), layout.ToY(level.Y)))];

    private IReadOnlyList<Point> AlongSeries(Series line)
    {
        IReadOnlyList<Point> points = layout.ToPoints(line);
        if (line.IsBars) return [.. points.OrderBy(point => point.Y)];
        int end = FigureLayout.EndOf(line);
        return [points[end], .. ((double[])[0.85, 0.7, 0.5, 0.3, 0.15, 0]).Select(part => points[(int)(part * (points.Count - 1))])];
    }

    /// <summary>Right, above, below, left of a point; then farther off, with a leader.</summary>
    private static IEnumerable<Candidate> AroundPoint(Point at, double width, double height)
    {
        yield return new Candidate(new Box(at.X + Gap + 3, at.Y - height / 2, width, height), at);
        foreach (double side in (double[])[0, -0.5, -1])
        {
            yield return new Candidate(new Box(at.X + side * width, at.Y - height - Gap, width, height), at);
            yield return new Candidate(new Box(at.X + side * width, at.Y + Gap, width, height), at);
        }
        yield return new Candidate(new Box(at.X - Gap - 3 - width, at.Y - height / 2, width, height), at);
        foreach (double side in (double[])[0, -1])
            yield return new Candidate(new Box(at.X + side * width, at.Y - height - 2.5 * Gap, width, height), at);
        foreach (double far in (double[])[25, 45, 70, 100])
        {
            foreach (double rise in (double[])[-0.4, -1, 0.4, 1])
                yield return new Candidate(new Box(at.X + far * 0.7, at.Y + far * rise - height / 2, width, height), at, Leader.ToLeft);
            yield return new Candidate(new Box(at.X - width / 2, at.Y - far - height, width, height), at, Leader.ToBottom);
            yield return new Candidate(new Box(at.X - width / 2, at.Y + far, width, height), at, Leader.ToTop);
        }
    }

    /// <summary>Above or below a level, starting, centred or ending at the point.</summary>
    private static IEnumerable<Candidate> AlongLine(Point at, double width, double height)
    {
        foreach (double side in (double[])[0, -0.5, -1])
        {
            yield return new Candidate(new Box(at.X + side * width, at.Y - height - 2, width, height), at);
            yield return new Candidate(new Box(at.X + side * width, at.Y + 3, width, height), at);
        }
    }

    private void PlaceBest(Request request, Func<Point, double, double, IEnumerable<Candidate>> candidates)
    {
        var lines = TextSize.Wrap(Notation.Parse(request.Name), request.MaximalWidth, layout.FontSize);
        double width = Widest(lines), height = lines.Count * layout.LineHeight;
        int order = 0;
        PlacedLabel best = request.Anchors
            .SelectMany(anchor => candidates(anchor, width, height))
            .Select(c => new PlacedLabel(lines, c.Box, c.Anchor, request.Color, c.Leader))
            .MinBy(label => Cost(label) + 0.1 * order++ - (before.Any(label.StandsAs) ? Inertia : 0))!;
        _placed.Add(best);
    }

    private double Cost(PlacedLabel label) => _drawn.Sum(drawn => Cost(label, drawn));

    private double Cost(PlacedLabel label, Drawn drawn)
    {
        Box box = Stretched(label, drawn.Stretch).Grown(1.5);
        double area = box.Width * box.Height;
        double outside = 1 - box.Overlap(drawn.Plot.Grown(3)) / area;
        double hidden = _placed.Sum(other => box.Overlap(Stretched(other, drawn.Stretch)))
            + drawn.Points.Sum(p => box.Overlap(new Box(p.X - 6, p.Y - 6, 12, 12)));
        double crossed = 0;
        foreach (Point[] curve in drawn.Curves)
            for (int i = 1; i < curve.Length; i++) crossed += box.LengthInside(curve[i - 1], curve[i]);
        hidden += 10 * _placed.Where(other => other.Leader != Leader.None).Sum(other => label.Box.LengthInside(other.Anchor, other.LeaderEnd));
        double leader = label.Leader == Leader.None ? 0
            : 6 + Distance(label.Anchor, label.LeaderEnd) / 10 + 30 * _placed.Count(other => other.Box.LengthInside(label.Anchor, label.LeaderEnd) > 0);
        return (outside > 0.02 ? 200 : 0) + 300 * outside + 300 * hidden / area + 100 * Math.Min(1, crossed / box.Width) + leader;
    }

    /// <summary>A drawing to scale grows both ways, and only as long as its height lets it; any other grows across.</summary>
    private double Across(double stretch) => figure.IsToScale ? Math.Min(stretch, layout.Growth) : stretch;

    private double Up(double stretch) => figure.IsToScale ? Across(stretch) : 1;

    private Point Stretched(Point point, double stretch) => new(
        layout.Plot.Left + (point.X - layout.Plot.Left) * Across(stretch), layout.Plot.Top + (point.Y - layout.Plot.Top) * Up(stretch));

    private Box Stretched(PlacedLabel label, double stretch)
    {
        Point anchor = Stretched(label.Anchor, stretch);
        return label.Box with { Left = label.Box.Left + anchor.X - label.Anchor.X, Top = label.Box.Top + anchor.Y - label.Anchor.Y };
    }

    private static double Distance(Point a, Point b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2));

    private double Widest(IReadOnlyList<IReadOnlyList<Notation.Run>> lines) =>
        TextSize.Widest(lines.Select(Notation.ToPlain), layout.FontSize);
}
