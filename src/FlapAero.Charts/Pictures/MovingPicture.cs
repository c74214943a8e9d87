using System.Text.Json.Nodes;

namespace FlapAero.Charts;

/// <summary>
/// A picture with one value that the reader moves: a picture for each value, all of the same shapes. It is drawn at
/// its start where nothing can move. Immutable.
/// </summary>
public sealed class MovingPicture
{
    private readonly MovingControl _control;

    private MovingPicture(MovingControl control, IReadOnlyList<Picture> frames) =>
        (_control, Frames) = (control, frames);

    /// <summary>What moves.</summary>
    public Axis Control => _control.Axis;

    /// <summary>The control's values in its unit.</summary>
    public IReadOnlyList<double> Values => _control.Values;

    /// <summary>The value that the picture starts with.</summary>
    public double Start => Values[_control.Start];

    /// <summary>The picture at each value.</summary>
    public IReadOnlyList<Picture> Frames { get; }

    /// <summary>The title.</summary>
    public string Title => StartFrame.Title;

    /// <summary>The picture's name in a page.</summary>
    public string Id => StartFrame.Id;

    /// <summary>The numbers at the first, the starting and the last value.</summary>
    public NumbersTable Numbers
    {
        get
        {
            int[] chosen = [.. new[] { 0, _control.Start, Values.Count - 1 }.Distinct()];
            return new NumbersTable(
                [NumbersTable.Heading(Control), .. Frames[0].Numbers.Headings],
                [.. chosen.SelectMany(
                    i => Frames[i].Numbers.Rows.Select(row => (IReadOnlyList<string>)[_control.Texts[i], .. row]))]);
        }
    }

    private Picture StartFrame => Frames[_control.Start];

    /// <summary>A picture for each value of something that the reader moves.</summary>
    /// <param name="control">What moves: a name, a symbol and a unit.</param>
    /// <param name="values">Its values in its unit, rising, 2 to <see cref="MovingFigure.MostValues"/> of them.</param>
    /// <param name="start">The value, one of them, that the picture starts with and that is drawn on paper.</param>
    /// <param name="at">From a value to the picture at that value.</param>
    /// <returns>The picture that moves.</returns>
    /// <exception cref="RefusedInputException">
    /// Too few or too many values, values that do not rise, a start that is none of them; at some value no picture,
    /// or one of another title, caption or kind. The message says at which value.
    /// </exception>
    public static MovingPicture Of(Axis control, IEnumerable<double> values, double start, Func<double, Picture> at)
    {
        ArgumentNullException.ThrowIfNull(control);
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(at);
        double[] all = [.. values];
        Picture first = at(all.Length > 0 ? all[0] : start);
        var moving = new MovingControl(first.Title, control, all, start);
        var frames = new List<Picture>();
        for (int i = 0; i < all.Length; i++)
        {
            Picture frame = i == 0 ? first : Frame(at, moving, first.Title, i);
            if (!SameParts(frame, first))
                throw moving.Refusal(
                    $"it is made of other parts, or has another caption, at {moving.Axis.Name} {moving.Texts[i]} than at {moving.Texts[0]}; each value needs the same ones");
            frames.Add(frame);
        }
        if (frames.TrueForAll(frame => frame.ToSvg() == frames[0].ToSvg()))
            throw moving.Refusal(
                $"it is the same at every value of its control \"{control.Name}\"; what is drawn must depend on the value");
        return new MovingPicture(moving, frames);
    }

    /// <summary>The drawing at the start.</summary>
    /// <returns>An <c>svg</c> element.</returns>
    public string ToSvg() => StartFrame.ToSvg();

    /// <summary>For each value what changes in the drawing, with the value and the finding in words.</summary>
    /// <returns>A JSON object that is safe inside a script element.</returns>
    public string ToJson()
    {
        IReadOnlyList<IReadOnlyList<SvgElement>> drawn = [.. Frames.Select(PictureSvg.Elements)];
        // What ever changes stands in every frame, so that each follows on any other.
        int[] moving =
            [.. Enumerable.Range(0, drawn[0].Count)
                .Where(i => drawn.Any(frame => frame[i].ToString() != drawn[0][i].ToString()))];
        JsonObject[] frames = [.. Frames.Select((frame, i) => new JsonObject
        {
            ["finding"] = LabelText.Html(frame.FindingText),
            ["parts"] = new JsonArray([.. moving.Select(part => Part(drawn, i, part))]),
            ["value"] = _control.Texts[i],
        })];
        return PlotlyDrawing.Text(
            new JsonObject
            {
                ["moving"] =
                new JsonObject { ["frames"] = new JsonArray(frames), ["start"] = _control.Start }
            });
    }

    /// <summary>The picture in another system of units; also the value that moves.</summary>
    /// <param name="units">The units.</param>
    /// <returns>The same picture in these units.</returns>
    public MovingPicture In(DisplayUnits units)
    {
        if (units == DisplayUnits.Aviation) return this;
        (Axis control, double factor) = Control.In(units);
        return new MovingPicture(
            new MovingControl(Title, control, [.. Values.Select(value => value * factor)], Start * factor),
            [.. Frames.Select(frame => frame.In(units))]);
    }

    /// <summary>The picture for a page.</summary>
    /// <returns>A <c>figure</c> element.</returns>
    public string ToHtml() => Html().ForPage();

    /// <summary>The picture for a notebook; see <see cref="Picture.ToNotebookHtml"/>.</summary>
    /// <returns>A <c>figure</c> element.</returns>
    public string ToNotebookHtml() => Html().ForNotebook();

    /// <summary>The picture in words: title, caption, the finding at the start, what moves, numbers.</summary>
    /// <returns>Plain text.</returns>
    public override string ToString() =>
        $"{Title}\n{LabelText.Plain(StartFrame.CaptionText)}\n{LabelText.Plain(StartFrame.FindingText)}\n{_control.RangeWords(Notation.ToPlain(Control.NameAndSymbol), text => text)}\n{Numbers}";

    private FigureHtml Html() =>
        new(StartFrame, ToJson(), _control.ToHtml(StartFrame.FindingText), _control.RangeHtml(), "", Numbers);

    private static Picture Frame(Func<double, Picture> at, MovingControl control, string title, int i)
    {
        try
        {
            Picture frame = at(control.Values[i])
                ?? throw new InvalidOperationException("the function gives no picture.");
            return frame.Title == title ? frame
                : throw new InvalidOperationException($"the function gives another picture, \"{frame.Title}\".");
        }
        catch (Exception e) when (e is ArgumentException or InvalidOperationException or ArithmeticException)
        {
            throw Require.RefusedWhole(
                null, $"The picture \"{title}\" is refused at {control.Axis.Name} {control.Texts[i]}: {PlainWords.Of(e)}", e);
        }
    }

    private static bool SameParts(Picture frame, Picture first) => frame.Height == first.Height
        && frame.CaptionText == first.CaptionText
        && frame.Shapes.Select(shape => shape.Part).SequenceEqual(first.Shapes.Select(shape => shape.Part))
            && frame.Labels.Count == first.Labels.Count;

    /// <summary>Which element, and what of it differs anywhere: attributes by name, and what stands in it.</summary>
    private static JsonObject Part(IReadOnlyList<IReadOnlyList<SvgElement>> drawn, int frame, int part)
    {
        SvgElement element = drawn[frame][part], first = drawn[0][part];
        var change = new JsonObject { ["at"] = part };
        foreach ((string name, string value) in element.Attributes)
            if (drawn.Any(
                other =>
                    other[part].Attributes.First(a => a.Name == name).Value != first.Attributes.First(
                        a => a.Name == name).Value))
                change[name] = value;
        if (drawn.Any(other => other[part].Inner != first.Inner)) change["inner"] = element.Inner;
        return change;
    }
}
