namespace FlapAero.Notebooks;

/// <summary>
/// What goes wrong between the gate and the wheels on one page: cue, action, numbers, limit, and when to go around; and what the go-around
/// itself is worth. A cell may end in one. Immutable.
/// </summary>
/// <example><code>DrillSheet.Of(Briefing.For(DemoBriefings.Flight).Value)</code></example>
public sealed class DrillSheet : LessonResult
{
    private readonly IReadOnlyList<SheetPart> _parts;
    private readonly SheetMarks _marks;

    private DrillSheet(Briefing briefing, SheetMarks marks)
    {
        (Briefing, _marks) = (briefing, marks);
        Drills = CorrectionDrills.For(briefing);
        SheetPart[] drills = [DrillWords.Of(Drills), DrillWords.GoArounds(Drills), DrillWords.Note(Drills)];
        // A runway that this landing does not fit is still one to approach and to go around from.
        _parts = marks.Round(briefing.Fits
            ? [BriefingFacts.Flight(briefing), .. drills]
            : [BriefingFacts.Flight(briefing), BriefingVerdict.Of(briefing), .. drills]);
    }

    /// <summary>The heading.</summary>
    public static string Title => "Landing without flaps: correction drills";

    /// <summary>The flight.</summary>
    public Briefing Briefing { get; }

    /// <summary>The numbers.</summary>
    public CorrectionDrills Drills { get; }

    /// <summary>The drills of a briefed flight.</summary>
    /// <param name="briefing">The briefing.</param>
    /// <returns>The sheet.</returns>
    public static DrillSheet Of(Briefing briefing) => Of(briefing, SheetMarks.None);

    internal static DrillSheet Of(Briefing briefing, SheetMarks marks)
    {
        ArgumentNullException.ThrowIfNull(briefing);
        return new(briefing, marks);
    }

    /// <inheritdoc/>
    public override string ToHtml() => ToHtmlFragment(headingLevel: 3);

    /// <summary>The sheet as one HTML element.</summary>
    /// <param name="headingLevel">The level of its title, 1 to 4; the drills' headings are two below.</param>
    /// <returns>HTML with semantic classes only.</returns>
    public string ToHtmlFragment(int headingLevel)
    {
        Require.Between(headingLevel, 1, 4, "level of the heading", "A page has six, and the drills' are two below.");
        return SheetHtml.Of(Title, _marks.Caution, _parts, headingLevel);
    }

    /// <inheritdoc/>
    public override string ToString() => SheetText.Of(Title, _marks.Caution, _parts);
}
