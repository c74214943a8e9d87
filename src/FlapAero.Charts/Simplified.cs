namespace FlapAero.Charts;

/// <summary>A line with fewer points that nobody can tell from the first: Ramer, Douglas and Peucker's rule.</summary>
internal static class Simplified
{
    internal static IReadOnlyList<Point> Line(IReadOnlyList<Point> points, double tolerance)
    {
        bool[] keep = new bool[points.Count];
        keep[0] = keep[^1] = true;
        var open = new Stack<(int From, int To)>([(0, points.Count - 1)]);
        while (open.TryPop(out (int From, int To) part))
        {
            int furthest = -1;
            double distance = tolerance;
            for (int i = part.From + 1; i < part.To; i++)
                if (Distance(points[i], points[part.From], points[part.To]) is double d && d > distance)
                    (furthest, distance) = (i, d);
            if (furthest < 0) continue;
            keep[furthest] = true;
            open.Push((part.From, furthest));
            open.Push((furthest, part.To));
        }
        return [.. points.Where((_, i) => keep[i])];
    }

    /// <summary>From a point to the stretch between two others.</summary>
    private static double Distance(Point p, Point a, Point b)
    {
        double dx = b.X - a.X, dy = b.Y - a.Y, square = dx * dx + dy * dy;
        double along = square == 0 ? 0 : Math.Clamp(((p.X - a.X) * dx + (p.Y - a.Y) * dy) / square, 0, 1);
        return Math.Sqrt(Math.Pow(p.X - a.X - along * dx, 2) + Math.Pow(p.Y - a.Y - along * dy, 2));
    }
}
