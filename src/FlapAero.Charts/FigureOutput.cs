namespace FlapAero.Charts;

public sealed partial class Figure
{
    /// <summary>The figure's numbers: at most about ten rows, at round values where the samples have them.</summary>
    public NumbersTable Numbers => NumbersTable.Of(Complete());

    /// <summary>The figure's name in a page: <c>fig-</c> and the title in lower case.</summary>
    public string Id => "fig-" + Slug.Of(Title, otherwise: "figure");

    /// <summary>The static drawing: SVG without ids, styles or script.</summary>
    /// <returns>An <c>svg</c> element.</returns>
    /// <exception cref="InvalidOperationException">The figure has no line, no caption or no finding.</exception>
    public string ToSvg() => SvgDrawing.Draw(Complete());

    /// <summary>The live drawing: data, layout and config for plotly.js, in a fixed order.</summary>
    /// <returns>A JSON object that is safe inside a script element.</returns>
    /// <exception cref="InvalidOperationException">The figure has no line, no caption or no finding.</exception>
    public string ToPlotlyJson() => PlotlyDrawing.Json(Complete());

    /// <summary>The figure for a page: both drawings, the caption, the alternative text and the numbers.</summary>
    /// <returns>A <c>figure</c> element.</returns>
    /// <exception cref="InvalidOperationException">The figure has no line, no caption or no finding.</exception>
    public string ToHtml() => Html().ForPage();

    /// <summary>
    /// The figure for a notebook: as for a page, with its still drawing as a picture, which viewers that run no scripts
    /// show, and with a line of script that has it drawn (see <see cref="FigureScript"/>).
    /// </summary>
    /// <returns>A <c>figure</c> element.</returns>
    /// <exception cref="InvalidOperationException">The figure has no line, no caption or no finding.</exception>
    public string ToNotebookHtml() => Html().ForNotebook();

    /// <summary>The figure in words: title, finding, readings, numbers.</summary>
    /// <returns>Plain text.</returns>
    public override string ToString() =>
        Lines.Count == 0 ? Title : $"{Title}\n{CaptionText}\n{PlainFinding}\n{string.Concat(Readings.Select(reading => $"{reading}\n"))}{NumbersTable.Of(this)}";

    private FigureHtml Html() => new(Complete(), ToPlotlyJson(), "", "", ReadingsHtml.List(Readings), Numbers);

    private string PlainFinding => LabelText.Plain(FindingText);

    internal Figure Complete()
    {
        string? missing = Lines.Count == 0 ? "a line: add .Line(name, x, y)"
            : CaptionText.Length == 0 ? "a caption that says what it shows: add .Caption(\"…\")"
            : FindingText.Length == 0 ? "a finding, which is the text for those who do not see it: add .Finding($\"…\")"
            : null;
        return missing is null ? this : throw new InvalidOperationException($"The figure \"{Title}\" is not drawn: it lacks {missing}.");
    }
}
