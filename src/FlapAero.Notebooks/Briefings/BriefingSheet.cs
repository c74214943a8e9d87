namespace FlapAero.Notebooks;

/// <summary>
/// A briefing on one sheet: what an instructor and a student read before a landing without flaps. A cell may end in one. Immutable.
/// </summary>
/// <example><code>BriefingSheet.Of(Briefing.For(DemoBriefings.Flight).Value)</code></example>
public sealed class BriefingSheet : LessonResult
{
    /// <summary>What every sheet says of itself.</summary>
    public const string Caution = Notebooks.Caution.OfABriefing;

    private readonly IReadOnlyList<SheetPart> _parts;
    private readonly SheetMarks _marks;

    private BriefingSheet(Briefing briefing, SheetMarks marks)
    {
        (Briefing, _marks) = (briefing, marks);
        _parts = marks.Round([.. BriefingFacts.Of(briefing), .. BriefingTables.Of(briefing), .. BriefingWords.Of(briefing, marks)]);
    }

    /// <summary>The heading.</summary>
    public static string Title => "Landing without flaps: briefing";

    /// <summary>The numbers.</summary>
    public Briefing Briefing { get; }

    /// <summary>A briefing as a sheet.</summary>
    /// <param name="briefing">The briefing.</param>
    /// <returns>The sheet.</returns>
    public static BriefingSheet Of(Briefing briefing) => Of(briefing, SheetMarks.None);

    internal static BriefingSheet Of(Briefing briefing, SheetMarks marks)
    {
        ArgumentNullException.ThrowIfNull(briefing);
        return new(briefing, marks);
    }

    /// <inheritdoc/>
    public override string ToHtml() => ToHtmlFragment(headingLevel: 3);

    /// <summary>The sheet as one HTML element.</summary>
    /// <param name="headingLevel">The level of its title, 1 to 5; the parts' headings are one below.</param>
    /// <returns>HTML with semantic classes only.</returns>
    public string ToHtmlFragment(int headingLevel)
    {
        Require.Between(headingLevel, 1, 5, "level of the heading", "A page has six, and the parts' are one below.");
        return SheetHtml.Of(Title, _marks.Caution, _parts, headingLevel);
    }

    /// <inheritdoc/>
    public override string ToString() => SheetText.Of(Title, _marks.Caution, _parts);
}
