namespace FlapAero.Charts;

/// <summary>
/// Reads a figure as a person does who sees it: the lines' own points, joined by straight stretches. Distances are
/// compared in shares of what the figure's lines cover, so that a unit changes nothing.
/// </summary>
internal sealed class ReadOff
{
    /// <summary>In radians: lines that part by less run together, they do not meet.</summary>
    private const double LeastAngle = 0.01;

    /// <summary>Meetings nearer to each other are one.</summary>
    private const double Near = 0.01;

    /// <summary>A peak that rises less above a line's ends is none.</summary>
    private const double LeastRise = 0.01;

    /// <summary>A line that meets another more often wavers about it: the first and the last say enough.</summary>
    private const int MostMeetings = 3;

    private readonly Figure _figure;
    private readonly double _left;
    private readonly double _wide;
    private readonly double _tall;

    private ReadOff(Figure figure)
    {
        _figure = figure;
        Extent extent = FigureLayout.ExtentOf(figure);
        _left = extent.LowX;
        (_wide, _tall) = (Math.Max(extent.HighX - extent.LowX, double.Epsilon), Math.Max(extent.HighY - extent.LowY, double.Epsilon));
    }

    internal static IReadOnlyList<Reading> Of(Figure figure)
    {
        var read = new ReadOff(figure);
        return
        [
            .. figure.SaidReadings.Select(said => new Reading(said.Name, said.Value.ToString())),
            .. figure.Marks.Select(mark => new Reading(mark.Name, read.AtSample(mark.X, mark.Y))),
            .. figure.Levels.Select(level => new Reading(level.Name, read.Y(level.Y))),
            .. figure.Lines.Where(line => !line.IsBars).SelectMany(read.AtLevels),
            .. figure.Lines.SelectMany((line, i) => figure.Lines.Skip(i + 1).SelectMany(other => read.WhereMeet(line, other))),
            .. figure.Lines.SelectMany(read.HighestAndLowest),
            .. figure.Lines.Where(line => !line.IsBars).Select(read.FromEndToEnd),
        ];
    }

    private IEnumerable<Reading> AtLevels(Series line)
    {
        foreach (Level level in _figure.Levels)
            foreach (Reading reading in Meetings($"{line.Name} meets {level.Name}", Crossings(line, Across(level.Y)), p => X(p.X)))
                yield return reading;
        if (_figure.Levels.All(level => level.Y != 0))
            foreach (Reading reading in Meetings($"{line.Name} is zero", Crossings(line, Across(0)), p => X(p.X)))
                yield return reading;
    }

    private IEnumerable<Reading> WhereMeet(Series line, Series other) => line.IsBars || other.IsBars ? []
        : Meetings($"{line.Name} and {other.Name} meet", Crossings(line, other), p => At(p.X, p.Y));

    private static IEnumerable<Reading> Meetings(string name, IEnumerable<Point> where, Func<Point, string> say)
    {
        Point[] points = [.. where];
        if (points.Length > MostMeetings) return [new Reading(name, $"first at {say(points[0])}, last at {say(points[^1])}")];
        return points.Length == 0 ? [] : [new Reading(name, string.Join("; ", points.Select(say)))];
    }

    private IEnumerable<Reading> HighestAndLowest(Series line)
    {
        int highest = IndexOf(line, (a, b) => a > b), lowest = IndexOf(line, (a, b) => a < b);
        double least = LeastRise * _tall;
        if (line.IsBars || line.Y[highest] > Math.Max(line.Y[0], line.Y[^1]) + least)
            yield return new Reading($"highest of {line.Name}", Extreme(line, highest));
        if (line.Y[lowest] < Math.Min(line.Y[0], line.Y[^1]) - least && !line.IsBars)
            yield return new Reading($"lowest of {line.Name}", Extreme(line, lowest));
    }

    private string Extreme(Series line, int i) => $"{Y(line.Y[i])} at {Sample(line.X[i], line.X)}";

    private Reading FromEndToEnd(Series line) => new(
        line.Name,
        line.X.All(x => x == line.X[0]) ? X(line.X[0])
        : line.Y.All(y => y == line.Y[0]) ? $"{Y(line.Y[0])} from {Sample(line.X[0])} to {Sample(line.X[^1])}"
        : $"from {AtSample(line.X[0], line.Y[0])} to {AtSample(line.X[^1], line.Y[^1])}");

    private static int IndexOf(Series line, Func<double, double, bool> isMore)
    {
        int most = 0;
        for (int i = 1; i < line.Y.Count; i++) if (isMore(line.Y[i], line.Y[most])) most = i;
        return most;
    }

    /// <summary>A level, from before the figure to past it.</summary>
    private Series Across(double y) => new("", [_left - _wide, _left + 2 * _wide], [y, y]);

    /// <summary>Where two lines cross, in the order of the first; lines that lie on each other do not cross.</summary>
    private IEnumerable<Point> Crossings(Series line, Series other)
    {
        Point? before = null;
        for (int i = 1; i < line.X.Count; i++)
            for (int k = 1; k < other.X.Count; k++)
                if (Crossing(line, i, other, k) is { } at && (before is not { } last || Distance(at, last) > Near))
                    yield return (before = at).Value;
    }

    private Point? Crossing(Series line, int i, Series other, int k)
    {
        (double x, double y, double dx, double dy) = Stretch(line, i);
        // Most stretches pass by.
        if (Math.Max(line.Y[i - 1], line.Y[i]) < Math.Min(other.Y[k - 1], other.Y[k]) || Math.Min(line.Y[i - 1], line.Y[i]) > Math.Max(other.Y[k - 1], other.Y[k])) return null;
        if (Math.Max(line.X[i - 1], line.X[i]) < Math.Min(other.X[k - 1], other.X[k]) || Math.Min(line.X[i - 1], line.X[i]) > Math.Max(other.X[k - 1], other.X[k])) return null;
        (double u, double v, double du, double dv) = Stretch(other, k);
        double cross = dx * dv - dy * du;
        if (cross == 0) return null;
        double along = ((u - x) * dv - (v - y) * du) / cross, there = ((u - x) * dy - (v - y) * dx) / cross;
        const double Dust = 1e-9;
        if (along is < -Dust or > 1 + Dust || there is < -Dust or > 1 + Dust) return null;
        var at = new Point((x + along * dx) * _wide, (y + along * dy) * _tall);
        return PassesThrough(at, line, i, other, k) ? at : null;
    }

    /// <summary>
    /// Whether of the four ways that lead from a point the other line's two lie on both sides of the line's: lines that
    /// touch, part or lie on each other do not cross. Where a line begins or ends it says so itself.
    /// </summary>
    private bool PassesThrough(Point at, Series line, int i, Series other, int k)
    {
        double?[] ways = [Way(at, line, i - 1, -1), Way(at, line, i, 1), Way(at, other, k - 1, -1), Way(at, other, k, 1)];
        if (ways.Any(way => way is null)) return false;
        double Turn(int from, int to) => (ways[to]!.Value - ways[from]!.Value + 4 * Math.PI) % (2 * Math.PI);
        (double own, double first, double second) = (Turn(0, 1), Turn(0, 2), Turn(0, 3));
        bool Apart(double turn) => turn > LeastAngle && turn < 2 * Math.PI - LeastAngle && Math.Abs(turn - own) > LeastAngle;
        return Apart(first) && Apart(second) && (first < own) != (second < own);
    }

    /// <summary>The direction in which a line leads away from a point; none where it ends there.</summary>
    private double? Way(Point at, Series line, int i, int step)
    {
        while (i + step >= 0 && i + step < line.X.Count && Distance(at, new Point(line.X[i], line.Y[i])) < Near) i += step;
        double dx = (line.X[i] - at.X) / _wide, dy = (line.Y[i] - at.Y) / _tall;
        return Math.Max(Math.Abs(dx), Math.Abs(dy)) < 1e-6 ? null : Math.Atan2(dy, dx);
    }

    /// <summary>A stretch between two points in shares of what the figure covers.</summary>
    private (double X, double Y, double Dx, double Dy) Stretch(Series line, int i) => (
        line.X[i - 1] / _wide, line.Y[i - 1] / _tall, (line.X[i] - line.X[i - 1]) / _wide, (line.Y[i] - line.Y[i - 1]) / _tall);

    private double Distance(Point a, Point b) => Math.Sqrt(Math.Pow((a.X - b.X) / _wide, 2) + Math.Pow((a.Y - b.Y) / _tall, 2));

    private string AtSample(double x, double y) => $"{Sample(x)}, {Y(y)}";

    /// <summary>A value that was chosen has no more digits than it, or those chosen with it, need.</summary>
    private string Sample(double value, params IReadOnlyList<double> chosen) => _figure.X.WithUnit(QuantityText.Of(
        value, Ticks.Pattern(Math.Min(Decimals(_wide), NumbersTable.ExactDecimals([value, .. chosen]) ?? int.MaxValue))));

    private string At(double x, double y) => $"{X(x)}, {Y(y)}";

    private string X(double value) => _figure.X.WithUnit(QuantityText.Of(value, Ticks.Pattern(Decimals(_wide))));

    private string Y(double value) => _figure.Y.WithUnit(QuantityText.Of(value, Ticks.Pattern(Decimals(_tall))));

    /// <summary>Decimals that show about three digits of what the figure covers.</summary>
    private static int Decimals(double range) => Math.Clamp(2 - (int)Math.Floor(Math.Log10(range)), 0, 6);
}
