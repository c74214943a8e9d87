using System.Globalization;

namespace FlapAero.Charts;

/// <summary>The value that moves a figure: found sound, or refused in the figure's name.</summary>
internal sealed class MovingControl
{
    private readonly string _title;

    internal MovingControl(string title, Axis axis, IReadOnlyList<double> values, double start)
    {
        (_title, Axis, Values) = (title, axis, values);
        if (values.Count is < 2 or > MovingFigure.MostValues)
            throw Refusal($"its control \"{axis.Name}\" has {Words.Of(values.Count)} value(s); allowed are 2 to {MovingFigure.MostValues}, since a figure is computed for each");
        for (int i = 0; i < values.Count; i++)
            if (!double.IsFinite(values[i]) || i > 0 && values[i] <= values[i - 1])
                throw Refusal($"value {i + 1} of its control \"{axis.Name}\" is {Raw(values[i])}; each must be finite and above the one before");
        Start = IndexOf(start);
        if (Start < 0)
            throw Refusal($"its control \"{axis.Name}\" starts at {Raw(start)}; allowed are its values {string.Join(", ", values.Select(Raw))}");
        string pattern = NumbersTable.StepPattern(values);
        Texts = [.. values.Select(value => axis.WithUnit(QuantityText.Of(value, pattern)))];
    }

    internal Axis Axis { get; }

    internal IReadOnlyList<double> Values { get; }

    /// <summary>The values with their unit.</summary>
    internal IReadOnlyList<string> Texts { get; }

    /// <summary>The index of the value to start with.</summary>
    internal int Start { get; }

    /// <summary>The slider with its value and the finding, hidden until a script is there that can move it.</summary>
    internal string ToHtml(string finding)
    {
        string name = Notation.ToHtml(Axis.NameAndSymbol), start = HtmlText.Escape(Texts[Start]);
        return string.Create(CultureInfo.InvariantCulture, $"""
            <div class="plot-control" hidden><label><span>{name}</span> <input type="range" min="0" max="{Values.Count - 1}" step="1" value="{Start}" autocomplete="off" aria-valuetext="{start}"></label>
            <output aria-live="off">{start}</output><p class="plot-finding" aria-live="polite">{LabelText.Html(finding)}</p></div>
            """);
    }

    internal string RangeHtml() => $" <span class=\"plot-range\">{RangeWords(Notation.ToHtml(Axis.NameAndSymbol), HtmlText.Escape)}</span>";

    internal string RangeWords(string name, Func<string, string> value) =>
        $"In the live figure, {name} moves from {value(Texts[0])} to {value(Texts[^1])}; this drawing has it at {value(Texts[Start])}.";

    /// <summary>The figure at each value, with axes that hold them all.</summary>
    internal IReadOnlyList<Figure> Frames(Figure figure, Func<Figure, double, Figure> at)
    {
        var frames = new List<Figure>();
        for (int i = 0; i < Values.Count; i++)
        {
            Figure frame = Frame(figure, at, i);
            if (frames.Count > 0) RefuseOther(frame, frames[0], i);
            frames.Add(frame);
        }
        if (frames.TrueForAll(frame => Content(frame).SequenceEqual(Content(frames[0]))))
            throw Refusal($"it is the same at every value of its control \"{Axis.Name}\"; what is drawn must depend on the value");
        Extent[] extents = [.. frames.Select(FigureLayout.ExtentOf)];
        var all = new Extent(extents.Min(e => e.LowX), extents.Max(e => e.HighX), extents.Min(e => e.LowY), extents.Max(e => e.HighY));
        return [.. frames.Select(frame => frame.Reaching(all))];
    }

    private Figure Frame(Figure figure, Func<Figure, double, Figure> at, int i)
    {
        try
        {
            Figure frame = at(figure, Values[i]) ?? throw new InvalidOperationException("the function gives no figure.");
            if (frame.Title != figure.Title || frame.X != figure.X || frame.Y != figure.Y)
                throw new InvalidOperationException("the function gives another figure; it must add to the figure that it is given.");
            return frame.Complete();
        }
        catch (Exception e) when (e is ArgumentException or InvalidOperationException or ArithmeticException)
        {
            throw Require.RefusedWhole(
                null,
                $"The figure \"{_title}\" is refused at {Axis.Name} {Texts[i]}: {PlainWords.Of(e)}", e);
        }
    }

    private void RefuseOther(Figure frame, Figure first, int i)
    {
        if (!frame.Lines.Select(line => (line.Name, line.IsBars)).SequenceEqual(first.Lines.Select(line => (line.Name, line.IsBars))))
            throw Refusal($"its lines are {Names(first)} at {Axis.Name} {Texts[0]} but {Names(frame)} at {Texts[i]}; each value needs the same lines in the same order");
        if (frame.CaptionText != first.CaptionText)
            throw Refusal($"its caption at {Axis.Name} {Texts[i]} differs from that at {Texts[0]}; what changes belongs in the finding");
    }

    private static string Names(Figure figure) => string.Join(", ", figure.Lines.Select(line => $"\"{line.Name}\""));

    private static IEnumerable<object> Content(Figure figure) =>
    [
        .. figure.Lines.SelectMany(line => line.X.Concat(line.Y)), .. figure.Levels.Select(level => (level.Name, level.Y)),
        .. figure.Marks.Select(mark => (mark.Name, mark.X, mark.Y)),
    ];

    private int IndexOf(double value)
    {
        double near = 1e-9 * (Values[^1] - Values[0]);
        for (int i = 0; i < Values.Count; i++) if (Math.Abs(Values[i] - value) <= near) return i;
        return -1;
    }

    internal RefusedInputException Refusal(string why) => Require.RefusedWhole(null, $"The figure \"{_title}\" is refused: {why}.");

    private static string Raw(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}
