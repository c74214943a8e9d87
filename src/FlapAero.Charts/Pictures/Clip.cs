namespace FlapAero.Charts;

/// <summary>Cuts areas and lines to a box, so that a drawing needs no clipping of the viewer's.</summary>
internal static class Clip
{
    /// <summary>An area cut to a box (Sutherland and Hodgman's way: one side after the other).</summary>
    internal static IReadOnlyList<Point> Area(IReadOnlyList<Point> area, Box box)
    {
        IReadOnlyList<Point> cut = Side(area, p => p.X - box.Left);
        cut = Side(cut, p => box.Right - p.X);
        cut = Side(cut, p => p.Y - box.Top);
        return Side(cut, p => box.Bottom - p.Y);
    }

    private static List<Point> Side(IReadOnlyList<Point> area, Func<Point, double> inside)
    {
        var cut = new List<Point>();
        for (int i = 0; i < area.Count; i++)
        {
            (Point from, Point to) = (area[i], area[(i + 1) % area.Count]);
            (double a, double b) = (inside(from), inside(to));
            if (a >= 0) cut.Add(from);
            if (a * b < 0) cut.Add(
                new Point(from.X + a / (a - b) * (to.X - from.X), from.Y + a / (a - b) * (to.Y - from.Y)));
        }
        return cut;
    }
}
