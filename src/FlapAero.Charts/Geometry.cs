namespace FlapAero.Charts;

internal readonly record struct Point(double X, double Y);

internal readonly record struct Box(double Left, double Top, double Width, double Height)
{
    internal double Right => Left + Width;

    internal double Bottom => Top + Height;

    internal double Overlap(Box other) =>
        Math.Max(0, Math.Min(Right, other.Right) - Math.Max(Left, other.Left))
        * Math.Max(0, Math.Min(Bottom, other.Bottom) - Math.Max(Top, other.Top));

    internal IReadOnlyList<Point> Corners() => [new(Left, Top), new(Right, Top), new(Right, Bottom), new(Left, Bottom)];

    internal bool Contains(Point point) => point.X >= Left && point.X <= Right && point.Y >= Top && point.Y <= Bottom;

    internal Box Grown(double by) => new(Left - by, Top - by, Width + 2 * by, Height + 2 * by);

    /// <summary>Length of the part of a line from a to b that lies inside (Liang and Barsky's clipping).</summary>
    internal double LengthInside(Point a, Point b)
    {
        // Most lines pass by.
        if (Math.Max(a.X, b.X) < Left || Math.Min(a.X, b.X) > Right || Math.Max(a.Y, b.Y) < Top || Math.Min(a.Y, b.Y) > Bottom) return 0;
        double dx = b.X - a.X, dy = b.Y - a.Y, enter = 0, leave = 1;
        Clip(-dx, a.X - Left);
        Clip(dx, Right - a.X);
        Clip(-dy, a.Y - Top);
        Clip(dy, Bottom - a.Y);
        return leave > enter ? (leave - enter) * Math.Sqrt(dx * dx + dy * dy) : 0;

        void Clip(double p, double q)
        {
            if (p < 0) enter = Math.Max(enter, q / p);
            if (p > 0) leave = Math.Min(leave, q / p);
        }
    }
}

/// <summary>The size that a drawing takes on some screen, in the pixels of a drawing whose letters keep their size.</summary>
internal readonly record struct View(double Width, double Height);

/// <summary>
/// Widths of text in a wide system sans-serif (DejaVu Sans, rounded up), to place labels without measuring them: what has
/// room there has room in any other.
/// </summary>
internal static class TextSize
{
    internal static double Width(string text, double size) => size * text.Sum(c => c switch
    {
        'i' or 'j' or 'l' or 'I' or '\'' => 0.29,
        ' ' or '.' or ',' or '\u00A0' or 'J' => 0.32,
        't' or 'f' or 'r' or '(' or ')' or ':' or ';' or '/' or '-' or '!' or '|' => 0.4,
        '\u202F' => 0.2,
        'm' or 'W' or '%' => 0.98,
        'w' or 'M' or '×' or '−' or '+' or '=' or '±' or 'Δ' => 0.85,
        'D' or 'G' or 'H' or 'N' or 'O' or 'Q' or 'U' => 0.77,
        >= 'A' and <= 'Z' => 0.69,
        'c' or 'k' or 's' or 'v' or 'x' or 'y' or 'z' or '°' => 0.57,
        _ => 0.63,
    });

    /// <summary>Breaks a label into lines of at most so many pixels, at spaces only.</summary>
    internal static IReadOnlyList<IReadOnlyList<Notation.Run>> Wrap(IEnumerable<Notation.Run> label, double width, double size)
    {
        var lines = new List<List<Notation.Run>>();
        foreach (List<Notation.Run> word in Words(label))
            if (lines.Count > 0 && Width(Notation.ToPlain([.. lines[^1], .. word]) + " ", size) <= width)
                lines[^1].AddRange([new Notation.Run(" ", Notation.Kind.Text), .. word]);
            else lines.Add(word);
        return lines;
    }

    /// <summary>A label in as few lines as its room allows, of much the same width: no unit stands alone on the last.</summary>
    internal static IReadOnlyList<IReadOnlyList<Notation.Run>> Balanced(IEnumerable<Notation.Run> label, double width, double size)
    {
        Notation.Run[] runs = [.. label];
        IReadOnlyList<IReadOnlyList<Notation.Run>> lines = Wrap(runs, width, size), best;
        double widest;
        do
        {
            (best, widest) = (lines, WidestOf(lines));
            lines = Wrap(runs, widest - 0.01, size);
        }
        while (lines.Count == best.Count && WidestOf(lines) < widest);
        return best;

        double WidestOf(IEnumerable<IReadOnlyList<Notation.Run>> of) => Widest(of.Select(Notation.ToPlain), size);
    }

    internal static double Widest(IEnumerable<string> lines, double size) =>
        lines.Select(line => Width(line, size)).DefaultIfEmpty(0).Max();

    private static List<List<Notation.Run>> Words(IEnumerable<Notation.Run> label)
    {
        var words = new List<List<Notation.Run>> { new() };
        foreach (Notation.Run run in label)
        {
            string[] pieces = run.Text.Split(' ');
            for (int i = 0; i < pieces.Length; i++)
            {
                if (i > 0) words.Add([]);
                if (pieces[i].Length > 0) words[^1].Add(run with { Text = pieces[i] });
            }
        }
        words.RemoveAll(word => word.Count == 0);
        return words;
    }
}
