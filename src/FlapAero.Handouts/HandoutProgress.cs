namespace FlapAero.Handouts;

/// <summary>How far a lesson has run, or the printing is.</summary>
/// <param name="Lesson">The lesson's slug; <see cref="Printing"/> for the PDFs.</param>
/// <param name="Done">The cells done (those of further sheets are counted again), or the PDFs.</param>
/// <param name="Of">How many there are.</param>
/// <param name="LessonsLeft">How many lessons are not done yet.</param>
public sealed record HandoutProgress(string Lesson, int Done, int Of, int LessonsLeft)
{
    /// <summary>What stands for the lesson while pages are printed.</summary>
    public const string Printing = "";

    /// <summary>Whether the lesson was not run because nothing it depends on has changed.</summary>
    public bool IsUnchanged { get; init; }
}
