namespace FlapAero.Charts;

/// <summary>
/// A drawing of things rather than of values: a runway, an aeroplane, forces. Shapes and labels as data, computed
/// from the numbers of the model, with a caption, a finding and the numbers. Made by <see cref="Pictures"/>.
/// Immutable.
/// </summary>
public sealed class Picture : IDrawing
{
    internal const double Width = 400;

    internal Picture(
        string title, double height, IReadOnlyList<PictureShape> shapes, IReadOnlyList<PictureLabel> labels,
            PictureWords words)
    {
        Require.Words(title, "title of the picture");
        (Title, Height, Shapes, Labels, Said) = (title.Trim(), height, shapes, labels, words);
    }

    /// <summary>The title.</summary>
    public string Title { get; }

    /// <summary>What the picture shows, with what is invented in it and what is not to scale.</summary>
    public string CaptionText => Said.Caption.ToString().Trim();

    /// <summary>What is to be seen in it, with its numbers: the alternative text.</summary>
    public string FindingText => Said.Finding.ToString().Trim();

    /// <summary>The picture's numbers: a row for each thing, a column for each view.</summary>
    public NumbersTable Numbers => new(
        Said.Headings, [.. Said.Rows.Select(row => (IReadOnlyList<string>)[.. row.Select(cell => cell.ToString())])]);

    /// <summary>The picture's name in a page: <c>fig-</c> and the title in lower case.</summary>
    public string Id => "fig-" + Slug.Of(Title, otherwise: "picture");

    internal double Height { get; }

    internal IReadOnlyList<PictureShape> Shapes { get; }

    internal IReadOnlyList<PictureLabel> Labels { get; }

    internal PictureWords Said { get; }

    /// <summary>The drawing: SVG without ids, styles or script.</summary>
    /// <returns>An <c>svg</c> element.</returns>
    public string ToSvg() => PictureSvg.Draw(this);

    /// <summary>The picture for a page: drawing, caption, alternative text and numbers.</summary>
    /// <returns>A <c>figure</c> element.</returns>
    public string ToHtml() => Html().ForPage();

    /// <summary>
    /// The picture for a notebook: as for a page, its drawing as an image that viewers without scripts show.
    /// </summary>
    /// <returns>A <c>figure</c> element.</returns>
    public string ToNotebookHtml() => Html().ForNotebook();

    /// <summary>The picture in another system of units: the quantities in its labels, words and numbers.</summary>
    /// <param name="units">The units.</param>
    /// <returns>The same picture in these units.</returns>
    public Picture In(DisplayUnits units) => units == DisplayUnits.Aviation ? this
        : new Picture(
            Title, Height, Shapes, [.. Labels.Select(label => label with { Text = label.Text.In(units) })],
            Said.In(units));

    /// <summary>Says first what the reader is to look for.</summary>
    /// <param name="words">One or two sentences; quantities in them are put into words.</param>
    /// <returns>The picture with these words before what its caption says of itself.</returns>
    public Picture LookFor(Words words)
    {
        ArgumentNullException.ThrowIfNull(words);
        Words caption = $"{words} {Said.Caption}";
        return new Picture(Title, Height, Shapes, Labels, Said with { Caption = caption });
    }

    /// <summary>Says other words of what is to be seen.</summary>
    /// <param name="words">One or two sentences; quantities in them are put into words.</param>
    /// <returns>The picture with these words.</returns>
    public Picture Finding(Words words)
    {
        ArgumentNullException.ThrowIfNull(words);
        return new Picture(Title, Height, Shapes, Labels, Said with { Finding = words });
    }

    /// <summary>The picture in words: title, caption, finding, numbers.</summary>
    /// <returns>Plain text.</returns>
    public override string ToString() =>
        $"{Title}\n{LabelText.Plain(CaptionText)}\n{LabelText.Plain(FindingText)}\n{Numbers}";

    private FigureHtml Html() => new(this, "", "", "", "", Numbers);
}

/// <summary>What is said of a picture.</summary>
/// <param name="Caption">What it shows.</param>
/// <param name="Finding">What is to be seen.</param>
/// <param name="Headings">Of the numbers' columns.</param>
/// <param name="Rows">The numbers, a text for each column.</param>
internal sealed record PictureWords(
    Words Caption, Words Finding, IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<Words>> Rows)
{
    internal PictureWords In(DisplayUnits units) => new(
        Caption.In(units), Finding.In(units), Headings,
        [.. Rows.Select(row => (IReadOnlyList<Words>)[.. row.Select(cell => cell.In(units))])]);
}
