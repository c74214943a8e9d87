namespace FlapAero.Charts;

/// <summary>
/// A figure with one value that the reader moves: a figure for each value, all with the same axes. It is drawn at its
/// start where nothing can move. Made by <see cref="Figure.Moving"/>. Immutable.
/// </summary>
public sealed class MovingFigure
{
    /// <summary>How many values a control takes at most: a page carries a figure for each.</summary>
    public const int MostValues = 50;

    private readonly MovingControl _control;

    internal MovingFigure(MovingControl control, IReadOnlyList<Figure> frames) => (_control, Frames) = (control, frames);

    /// <summary>What moves.</summary>
    public Axis Control => _control.Axis;

    /// <summary>The control's values in its unit.</summary>
    public IReadOnlyList<double> Values => _control.Values;

    /// <summary>The value that the figure starts with.</summary>
    public double Start => Values[StartIndex];

    /// <summary>The figure at each value.</summary>
    public IReadOnlyList<Figure> Frames { get; }

    /// <summary>The title.</summary>
    public string Title => StartFrame.Title;

    /// <summary>The figure's name in a page: <c>fig-</c> and the title in lower case.</summary>
    public string Id => StartFrame.Id;

    /// <summary>What one reads off the figure, see <see cref="Figure.Readings"/>: a row each, a column for the first, the starting and the last value.</summary>
    public NumbersTable Readings => MovingNumbers.ReadingsOf(this);

    /// <summary>The numbers of its lines at the first, the starting and the last value.</summary>
    public NumbersTable Numbers => MovingNumbers.LinesOf(this);

    /// <summary>The static drawing, at the start.</summary>
    /// <returns>An <c>svg</c> element.</returns>
    public string ToSvg() => StartFrame.ToSvg();

    /// <summary>The live drawing: data, layout and config for plotly.js, and for each value what differs from the start.</summary>
    /// <returns>A JSON object that is safe inside a script element.</returns>
    public string ToPlotlyJson() => PlotlyFrames.Json(this);

    /// <summary>The figure in another system of units, see <see cref="Figure.In"/>; also the value that moves.</summary>
    /// <param name="units">The units.</param>
    /// <returns>The same figure in these units.</returns>
    public MovingFigure In(DisplayUnits units)
    {
        if (units == DisplayUnits.Aviation) return this;
        (Axis control, double factor) = Control.In(units);
        Figure[] frames = [.. Frames.Select(frame => frame.In(units))];
        return new MovingFigure(new MovingControl(Title, control, [.. Values.Select(value => value * factor)], Start * factor), frames);
    }

    /// <summary>The figure for a page.</summary>
    /// <returns>A <c>figure</c> element.</returns>
    public string ToHtml() => Html().ForPage();

    /// <summary>The figure for a notebook; see <see cref="Figure.ToNotebookHtml"/>.</summary>
    /// <returns>A <c>figure</c> element.</returns>
    public string ToNotebookHtml() => Html().ForNotebook();

    /// <summary>The figure in words: title, caption, the finding at the start, what moves, readings, numbers.</summary>
    /// <returns>Plain text.</returns>
    public override string ToString() =>
        $"{Title}\n{LabelText.Plain(StartFrame.CaptionText)}\n{LabelText.Plain(StartFrame.FindingText)}\n{_control.RangeWords(Notation.ToPlain(Control.NameAndSymbol), text => text)}\n{Readings}\n{Numbers}";

    /// <summary>The values with their unit.</summary>
    internal IReadOnlyList<string> Texts => _control.Texts;

    internal int StartIndex => _control.Start;

    private Figure StartFrame => Frames[StartIndex];

    private FigureHtml Html() =>
        new(StartFrame, ToPlotlyJson(), _control.ToHtml(StartFrame.FindingText), _control.RangeHtml(), ReadingsHtml.Table(Readings), Numbers);
}
