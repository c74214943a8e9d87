namespace FlapAero.Charts;

/// <summary>A place that a label of some size may take.</summary>
/// <param name="Box">Where it would stand.</param>
/// <param name="Anchor">What it would label.</param>
/// <param name="Leader">The side of the box that a thin line leads to from the anchor.</param>
internal readonly record struct LabelPlace(Box Box, Point Anchor, Leader Leader = Leader.None);

/// <summary>The places in which a label may stand, the usual ones first.</summary>
internal static class LabelPlaces
{
    private const double Gap = 6;

    /// <summary>Right, above, below, left of a point; then farther off, with a leader.</summary>
    internal static IEnumerable<LabelPlace> AroundPoint(Point at, double width, double height)
    {
        yield return new LabelPlace(new Box(at.X + Gap + 3, at.Y - height / 2, width, height), at);
        foreach (double side in (double[])[0, -0.5, -1])
        {
            yield return new LabelPlace(new Box(at.X + side * width, at.Y - height - Gap, width, height), at);
            yield return new LabelPlace(new Box(at.X + side * width, at.Y + Gap, width, height), at);
        }
        yield return new LabelPlace(new Box(at.X - Gap - 3 - width, at.Y - height / 2, width, height), at);
        foreach (double side in (double[])[0, -1])
            yield return new LabelPlace(new Box(at.X + side * width, at.Y - height - 2.5 * Gap, width, height), at);
        foreach (LabelPlace far in FarFrom(at, width, height)) yield return far;
    }

    /// <summary>Farther off, with a leader.</summary>
    private static IEnumerable<LabelPlace> FarFrom(Point at, double width, double height)
    {
        foreach (double far in (double[])[25, 45, 70, 100])
        {
            foreach (double rise in (double[])[-0.4, -1, 0.4, 1])
            {
                yield return new LabelPlace(new Box(at.X + far * 0.7, at.Y + far * rise - height / 2, width, height), at, Leader.ToLeft);
                yield return new LabelPlace(new Box(at.X - far * 0.7 - width, at.Y + far * rise - height / 2, width, height), at, Leader.ToRight);
            }
            foreach (double side in (double[])[-0.5, 0, -1])
            {
                yield return new LabelPlace(new Box(at.X + side * width, at.Y - far - height, width, height), at, Leader.ToBottom);
                yield return new LabelPlace(new Box(at.X + side * width, at.Y + far, width, height), at, Leader.ToTop);
            }
        }
    }

    /// <summary>Above or below a level, starting, centred or ending at the point; then farther off, with a leader.</summary>
    internal static IEnumerable<LabelPlace> AlongLine(Point at, double width, double height)
    {
        foreach (double side in (double[])[0, -0.5, -1])
        {
            yield return new LabelPlace(new Box(at.X + side * width, at.Y - height - 2, width, height), at);
            yield return new LabelPlace(new Box(at.X + side * width, at.Y + 3, width, height), at);
        }
        foreach (LabelPlace far in FarFrom(at, width, height)) yield return far;
    }
}
