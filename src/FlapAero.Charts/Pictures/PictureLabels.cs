namespace FlapAero.Charts;

/// <summary>
/// Places the labels of a picture: those with a place of their own first, each other where it hides no label and as few
/// lines as can be, with a thin line to what it speaks of where it stands away.
/// </summary>
internal static class PictureLabels
{
    internal const double FontSize = 16;
    internal const double LineHeight = FontSize * 1.2;

    private static readonly double[] Distances = [5, 14, 24, 36, 50, 66, 84];

    internal static IReadOnlyList<PlacedLabel> Place(Picture picture)
    {
        Point[][] lines =
            [.. picture.Shapes.Where(shape => shape.Part.IsClear).Select(shape => shape.Points.ToArray())];
        var placed = new PlacedLabel[picture.Labels.Count];
        for (int i = 0; i < placed.Length; i++)
            if (picture.Labels[i].Stand != LabelStand.Placed) placed[i] = Standing(picture.Labels[i]);
        for (int i = 0; i < placed.Length; i++)
            if (picture.Labels[i].Stand == LabelStand.Placed)
                placed[i] =
                    Best(picture.Labels[i], [.. placed.Where(other => other is not null)], lines, picture.Labels);
        return placed;
    }

    private static PlacedLabel Standing(PictureLabel label)
    {
        IReadOnlyList<IReadOnlyList<Notation.Run>> text = [Notation.Parse(label.Text.ToString())];
        double width = Widest(text);
        double left =
            label.Anchor.X - label.Stand switch { LabelStand.Middle => width / 2, LabelStand.End => width, _ => 0 };
        return new PlacedLabel(
            text, new Box(left, label.Anchor.Y - LineHeight / 2, width, LineHeight), label.Anchor, label.Color,
            Leader.None);
    }

    private static PlacedLabel Best(
        PictureLabel label, IReadOnlyList<PlacedLabel> placed, Point[][] lines, IReadOnlyList<PictureLabel> all)
    {
        var text = TextSize.Wrap(Notation.Parse(label.Text.ToString()), label.Room.Width, FontSize);
        double width = Widest(text), height = text.Count * LineHeight;
        int order = 0;
        return Candidates(label.Anchor, width, height)
            .Select(c => new PlacedLabel(text, c.Box, label.Anchor, label.Color, c.Leader))
            .MinBy(candidate => Cost(candidate, label, placed, lines, all) + 0.05 * order++)!;
    }

    private static IEnumerable<(Box Box, Leader Leader)> Candidates(Point at, double width, double height)
    {
        foreach (double away in Distances)
        {
            bool isNear = away < 12;
            foreach (double shift in (double[])[0, -0.3, 0.3, -0.5, 0.5])
            {
                double left = at.X - width / 2 + shift * (width + 2 * away);
                yield return (
                    new Box(left, at.Y - away - height, width, height), isNear ? Leader.None : Leader.ToBottom);
                yield return (new Box(left, at.Y + away, width, height), isNear ? Leader.None : Leader.ToTop);
            }
            foreach (double rise in (double[])[0, -0.6, 0.6])
                yield return (
                    new Box(at.X + away + 2, at.Y - height / 2 + rise * away, width, height), isNear ? Leader.None
                        : Leader.ToLeft);
            if (isNear) yield return (new Box(at.X - away - 2 - width, at.Y - height / 2, width, height), Leader.None);
        }
    }

    private static double Cost(
        PlacedLabel label, PictureLabel wanted, IReadOnlyList<PlacedLabel> placed, Point[][] lines,
        IReadOnlyList<PictureLabel> all)
    {
        Box box = label.Box.Grown(1.5);
        double area = box.Width * box.Height;
        double outside = 1 - box.Overlap(wanted.Room.Grown(1.5)) / area;
        double hidden = placed.Sum(other => box.Overlap(other.Box.Grown(1)))
            + all.Where(other => other != wanted)
                .Sum(other => box.Overlap(new Box(other.Anchor.X - 3, other.Anchor.Y - 3, 6, 6)));
        double crossed = 0;
        foreach (Point[] line in lines)
            for (int i = 1; i < line.Length; i++) crossed += box.LengthInside(line[i - 1], line[i]);
        double leader = label.Leader == Leader.None ? 0
            : 4 + Length(label) / 4 + 300
                * placed.Count(other => other.Box.LengthInside(label.Anchor, label.LeaderEnd) > 0);
        double under =
            200 * placed.Count(
                other => other.Leader != Leader.None && box.LengthInside(other.Anchor, other.LeaderEnd) > 0);
        return (outside > 0.01 ? 400 : 0) + 600 * outside + (hidden > 0 ? 300 : 0) + 900 * hidden / area + 1.6
            * crossed + leader + under;
    }

    private static double Length(PlacedLabel label) => Math.Sqrt(
        Math.Pow(label.Anchor.X - label.LeaderEnd.X, 2) + Math.Pow(label.Anchor.Y - label.LeaderEnd.Y, 2));

    private static double Widest(IReadOnlyList<IReadOnlyList<Notation.Run>> text) =>
        TextSize.Widest(text.Select(Notation.ToPlain), FontSize);
}
