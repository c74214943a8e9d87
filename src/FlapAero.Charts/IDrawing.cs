namespace FlapAero.Charts;

/// <summary>What a <c>figure</c> element needs of what it shows: a chart or a picture.</summary>
internal interface IDrawing
{
    string Title { get; }

    string Id { get; }

    string CaptionText { get; }

    string FindingText { get; }

    string ToSvg();
}
