using System.Globalization;

namespace FlapAero.Charts;

/// <summary>
/// A figure as data: axes, lines, levels, marks, a caption that says what it shows and a finding that says what is
/// to be seen, with its numbers. Immutable: each call returns a new figure. Refused before it is drawn where anything
/// of these is missing or not finite.
/// </summary>
/// <example>
/// <code>
/// new Figure("Stall speed in a level turn", Axis.Of("angle of bank", "φ", "°"), Axis.Of("stall speed", "V_S", "kt CAS"))
///     .Line("flaps up", Samples.Between(0, 60, 1), bank => 55 / Math.Sqrt(Math.Cos(bank * Math.PI / 180)))
///     .Caption("Stall speed against angle of bank.")
///     .Finding($"At 60° of bank the stall speed is 1.41 times that of level flight.")
/// </code>
/// </example>
public sealed partial class Figure : IDrawing
{
    /// <summary>An empty figure: lines, a caption and a finding are still to come.</summary>
    /// <param name="title">The title, which also names the figure on a page.</param>
    /// <param name="x">The horizontal axis.</param>
    /// <param name="y">The vertical axis.</param>
    public Figure(string title, Axis x, Axis y)
    {
        Require.Words(title, "title of the figure");
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        (Title, X, Y) = (title.Trim(), x, y);
    }

    /// <summary>The title.</summary>
    public string Title { get; private init; }

    /// <summary>The horizontal axis.</summary>
    public Axis X { get; private init; }

    /// <summary>The vertical axis.</summary>
    public Axis Y { get; private init; }

    /// <summary>The lines, in the order of their styles.</summary>
    public IReadOnlyList<Series> Lines { get; private init; } = [];

    /// <summary>The horizontal reference lines.</summary>
    public IReadOnlyList<Level> Levels { get; private init; } = [];

    /// <summary>The labelled points.</summary>
    public IReadOnlyList<Mark> Marks { get; private init; } = [];

    /// <summary>What the figure shows; empty until given.</summary>
    public string CaptionText => CaptionWords.ToString().Trim();

    /// <summary>What is to be seen in it, with its numbers: the alternative text; empty until given.</summary>
    public string FindingText => FindingWords.ToString().Trim();

    /// <summary>Whether a length across the drawing is the same length up it, as on a map.</summary>
    public bool IsToScale { get; private init; }

    private Words CaptionWords { get; init; } = "";

    private Words FindingWords { get; init; } = "";

    /// <summary>Adds a line: a function at sampled values.</summary>
    /// <param name="name">Its name, which becomes the label at the line.</param>
    /// <param name="x">Values in the horizontal axis' unit.</param>
    /// <param name="y">From a horizontal to a vertical value, each in its axis' unit.</param>
    /// <returns>A new figure with the line.</returns>
    /// <exception cref="RefusedInputException">
    /// See <see cref="Line(string, IEnumerable{double}, IEnumerable{double})"/>.
    /// </exception>
    public Figure Line(string name, IEnumerable<double> x, Func<double, double> y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        double[] values = [.. x];
        return Line(name, values, values.Select(y));
    }

    /// <summary>Adds a line: points, for example of a path.</summary>
    /// <param name="name">Its name, which becomes the label at the line.</param>
    /// <param name="points">Horizontal and vertical values, each in its axis' unit.</param>
    /// <returns>A new figure with the line.</returns>
    /// <exception cref="RefusedInputException">
    /// See <see cref="Line(string, IEnumerable{double}, IEnumerable{double})"/>.
    /// </exception>
    public Figure Line(string name, IEnumerable<(double X, double Y)> points)
    {
        (double X, double Y)[] values = [.. points];
        return Line(name, values.Select(p => p.X), values.Select(p => p.Y));
    }

    /// <summary>Adds a line: horizontal and vertical values.</summary>
    /// <param name="name">Its name, which becomes the label at the line.</param>
    /// <param name="x">Values in the horizontal axis' unit.</param>
    /// <param name="y">As many values in the vertical axis' unit.</param>
    /// <returns>A new figure with the line.</returns>
    /// <exception cref="RefusedInputException">
    /// Unequal lengths, fewer than two points, a value that is not finite, a name that is taken, or more lines than styles.
    /// </exception>
    public Figure Line(string name, IEnumerable<double> x, IEnumerable<double> y) => Add(name, x, y, isBars: false);

    /// <summary>Adds bars that stand on zero, for example counts of landings; one row of bars a figure.</summary>
    /// <param name="name">Its name, which becomes the label at the bars.</param>
    /// <param name="x">The bars' middles, evenly spaced and rising.</param>
    /// <param name="y">As many heights.</param>
    /// <returns>A new figure with the bars.</returns>
    /// <exception cref="RefusedInputException">
    /// As for a line; or bars unevenly spaced, or a second row of bars.
    /// </exception>
    public Figure Bars(string name, IEnumerable<double> x, IEnumerable<double> y)
    {
        Figure figure = Add(name, x, y, isBars: true);
        Series bars = figure.Lines[^1];
        if (Lines.Any(line => line.IsBars)) throw Refusal($"\"{name}\" would be a second row of bars, which would hide the first. Make two figures");
        for (int i = 1; i < bars.X.Count; i++)
            if (bars.BarStep <= 0 || Math.Abs(bars.X[i] - bars.X[i - 1] - bars.BarStep) > 1e-6 * bars.BarStep)
                throw Refusal($"the bars \"{name}\" are not evenly spaced at bar {i + 1} ({Raw(bars.X[i - 1])} to {Raw(bars.X[i])})");
        return figure;
    }

    /// <summary>Adds bars: a function at evenly spaced values.</summary>
    /// <param name="name">Its name, which becomes the label at the bars.</param>
    /// <param name="x">The bars' middles, evenly spaced and rising.</param>
    /// <param name="y">From a horizontal value to a height.</param>
    /// <returns>A new figure with the bars.</returns>
    /// <exception cref="RefusedInputException">
    /// See <see cref="Bars(string, IEnumerable{double}, IEnumerable{double})"/>.
    /// </exception>
    public Figure Bars(string name, IEnumerable<double> x, Func<double, double> y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        double[] values = [.. x];
        return Bars(name, values, values.Select(y));
    }

    private Figure Add(string name, IEnumerable<double> x, IEnumerable<double> y, bool isBars)
    {
        Require.Words(name, "name of what is drawn");
        double[] xs = [.. x], ys = [.. y];
        if (xs.Length != ys.Length)
            throw Refusal($"the line \"{name}\" has {xs.Length} horizontal but {ys.Length} vertical values; each point needs both");
        if (xs.Length < 2)
            throw Refusal($"the line \"{name}\" has {xs.Length} point(s); a line needs at least two");
        for (int i = 0; i < xs.Length; i++)
            if (!double.IsFinite(xs[i]) || !double.IsFinite(ys[i]))
                throw Refusal($"the line \"{name}\" has a value that is not finite at point {i + 1} ({Raw(xs[i])}, {Raw(ys[i])}); sample only where the calculation has an answer");
        if (Lines.Any(line => line.Name == name.Trim()))
            throw Refusal($"two lines are called \"{name}\"; each needs a name of its own to be told apart");
        if (Lines.Count == Palette.Styles.Count)
            throw Refusal($"\"{name}\" would be line {Lines.Count + 1}; more than {Palette.Styles.Count} cannot be told apart in print. Make two figures");
        return With(lines: [.. Lines, new Series(name.Trim(), xs, ys, isBars)]);
    }

    /// <summary>
    /// Draws the line added last in a style of its own meaning, such as <see cref="Palette.FlapsUp"/>: a flap setting has one colour
    /// and one dash wherever it is drawn. Lines without one take those that are left.
    /// </summary>
    /// <param name="style">A style of <see cref="Palette"/>.</param>
    /// <returns>A new figure.</returns>
    /// <exception cref="RefusedInputException">There is no line yet, the style is not the palette's, or another line has it.</exception>
    public Figure As(SeriesStyle style)
    {
        ArgumentNullException.ThrowIfNull(style);
        if (Lines.Count == 0) throw Refusal("a style is given before there is a line; add .Line(name, x, y) first");
        if (!Palette.Styles.Contains(style)) throw Refusal($"the style of \"{Lines[^1].Name}\" is not one of the palette's, which can be told apart in print");
        if (Lines.Take(Lines.Count - 1).FirstOrDefault(line => line.Style == style) is { } other)
            throw Refusal($"\"{Lines[^1].Name}\" would look like \"{other.Name}\"; give each a style of its own");
        Series last = Lines[^1];
        return With(lines: [.. Lines.Take(Lines.Count - 1), new Series(last.Name, last.X, last.Y, last.IsBars, style)]);
    }

    /// <summary>The style of each line: its own, or of those that are left the next; where some are flap settings', the others keep off them.</summary>
    internal IReadOnlyList<SeriesStyle> LineStyles
    {
        get
        {
            IEnumerable<SeriesStyle> order = Lines.Any(line => line.Style is not null) ? Palette.Styles.Reverse() : Palette.Styles;
            var left = new Queue<SeriesStyle>(order.Where(style => !Lines.Any(line => line.Style == style)));
            return [.. Lines.Select(line => line.Style ?? left.Dequeue())];
        }
    }

    /// <summary>Adds a horizontal reference line.</summary>
    /// <param name="name">Its label.</param>
    /// <param name="y">Its height in the vertical axis' unit.</param>
    /// <returns>A new figure with the level.</returns>
    /// <exception cref="RefusedInputException">The value is not finite.</exception>
    public Figure Level(string name, double y)
    {
        Require.Words(name, "name of what is drawn");
        if (!double.IsFinite(y)) throw Refusal($"the level \"{name}\" is at {Raw(y)}; it needs a finite value");
        return With(levels: [.. Levels, new Level(name.Trim(), y)]);
    }

    /// <summary>Each level with its dash: one of its own, as far as there are enough.</summary>
    internal IEnumerable<(Level Level, string Dash)> LevelDashes =>
        Levels.Select((level, i) => (level, Palette.LevelDashes[i % Palette.LevelDashes.Count]));

    /// <summary>Adds a labelled point.</summary>
    /// <param name="name">Its label.</param>
    /// <param name="x">Where along the horizontal axis, in its unit.</param>
    /// <param name="y">Where along the vertical axis, in its unit.</param>
    /// <returns>A new figure with the mark.</returns>
    /// <exception cref="RefusedInputException">A value is not finite.</exception>
    public Figure Mark(string name, double x, double y)
    {
        Require.Words(name, "name of what is drawn");
        if (!double.IsFinite(x) || !double.IsFinite(y))
            throw Refusal($"the mark \"{name}\" is at ({Raw(x)}, {Raw(y)}); it needs finite values");
        return With(marks: [.. Marks, new Mark(name.Trim(), x, y)]);
    }

    /// <summary>Draws both axes to the same scale, as on a map: circles stay round, angles are true.</summary>
    /// <returns>A new figure to scale.</returns>
    /// <exception cref="RefusedInputException">The axes have different units.</exception>
    /// <example>
    /// <code>
    /// new Figure("From above", Axis.Of("along the runway", "x", "m"), Axis.Of("across it", "y", "m")).ToScale()
    /// </code>
    /// </example>
    public Figure ToScale() => X.Unit == Y.Unit
        ? With(isToScale: true)
        : throw Refusal($"\"{X.Unit}\" across and \"{Y.Unit}\" up have no common scale; a figure to scale has one unit on both axes");

    /// <summary>Says what the figure shows.</summary>
    /// <param name="words">One or two sentences; quantities in them are put into words.</param>
    /// <returns>A new figure with the caption.</returns>
    public Figure Caption(Words words)
    {
        ArgumentNullException.ThrowIfNull(words);
        return With(caption: words);
    }

    /// <summary>Says what is to be seen, with its numbers: the text for those who do not see the figure.</summary>
    /// <param name="words">One or two sentences; quantities in them are put into words.</param>
    /// <returns>A new figure with the finding.</returns>
    public Figure Finding(Words words)
    {
        ArgumentNullException.ThrowIfNull(words);
        return With(finding: words);
    }

    /// <summary>The figure in another system of units: axes, values and the quantities in its words.</summary>
    /// <param name="units">The units.</param>
    /// <returns>The same figure in these units.</returns>
    public Figure In(DisplayUnits units)
    {
        if (units == DisplayUnits.Aviation) return this;
        (Axis x, double perX) = X.In(units);
        (Axis y, double perY) = Y.In(units);
        return With(
            [.. Lines.Select(line => new Series(line.Name, [.. line.X.Select(value => value * perX)], [.. line.Y.Select(value => value * perY)], line.IsBars, line.Style))],
            [.. Levels.Select(level => new Level(level.Name, level.Y * perY))],
            [.. Marks.Select(mark => new Mark(mark.Name, mark.X * perX, mark.Y * perY))],
            CaptionWords.In(units), FindingWords.In(units), x, y,
            predictions: [.. Predictions.Select(prediction => prediction.In(units, prediction.IsAcross ? perX : perY))],
            saidReadings: [.. SaidReadings.Select(said => (said.Name, said.Value.In(units)))]);
    }

    private Figure With(
        IReadOnlyList<Series>? lines = null, IReadOnlyList<Level>? levels = null, IReadOnlyList<Mark>? marks = null,
        Words? caption = null, Words? finding = null, Axis? x = null, Axis? y = null, bool? isToScale = null,
        IReadOnlyList<Prediction>? predictions = null, IReadOnlyList<(string Name, Words Value)>? saidReadings = null,
        IReadOnlyList<string>? unsaidReadings = null) => new(Title, x ?? X, y ?? Y)
        {
            Lines = lines ?? Lines,
            Levels = levels ?? Levels,
            Marks = marks ?? Marks,
            CaptionWords = caption ?? CaptionWords,
            FindingWords = finding ?? FindingWords,
            IsToScale = isToScale ?? IsToScale,
            Predictions = predictions ?? Predictions,
            SaidReadings = saidReadings ?? SaidReadings,
            UnsaidReadings = unsaidReadings ?? UnsaidReadings,
        };

    private RefusedInputException Refusal(string why) => Require.RefusedWhole(null, $"The figure \"{Title}\" is refused: {why}.");

    private static string Raw(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}
