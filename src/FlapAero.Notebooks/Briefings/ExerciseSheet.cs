namespace FlapAero.Notebooks;

/// <summary>
/// The exercise on one page, in the order of flight: what to do at each step, by which numbers, what goes wrong there, and the lesson that
/// says why. A cell may end in one. Immutable.
/// </summary>
/// <example><code>ExerciseSheet.Of(Briefing.For(DemoBriefings.Flight).Value)</code></example>
public sealed class ExerciseSheet : LessonResult
{
    private readonly IReadOnlyList<SheetPart> _parts;
    private readonly SheetMarks _marks;

    private ExerciseSheet(Briefing briefing, SheetMarks marks)
    {
        (Briefing, _marks) = (briefing, marks);
        SheetPart flight = BriefingFacts.Flight(briefing);
        // A runway that this landing does not fit is still one to approach and to go around from.
        _parts = marks.Round(briefing.Fits
            ? [flight, ExerciseSteps.Of(briefing)]
            : [flight, BriefingVerdict.Of(briefing), ExerciseSteps.Of(briefing)]);
    }

    /// <summary>The heading.</summary>
    public static string Title => "Landing without flaps: the exercise, step by step";

    /// <summary>The numbers.</summary>
    public Briefing Briefing { get; }

    /// <summary>A briefed flight as an exercise.</summary>
    /// <param name="briefing">The briefing.</param>
    /// <returns>The sheet.</returns>
    public static ExerciseSheet Of(Briefing briefing) => Of(briefing, SheetMarks.None);

    internal static ExerciseSheet Of(Briefing briefing, SheetMarks marks)
    {
        ArgumentNullException.ThrowIfNull(briefing);
        return new(briefing, marks);
    }

    /// <inheritdoc/>
    public override string ToHtml() => ToHtmlFragment(headingLevel: 3);

    /// <summary>The sheet as one HTML element.</summary>
    /// <param name="headingLevel">The level of its title, 1 to 4; the steps' headings are two below.</param>
    /// <returns>HTML with semantic classes only.</returns>
    public string ToHtmlFragment(int headingLevel)
    {
        Require.Between(headingLevel, 1, 4, "level of the heading", "A page has six, and the steps' are two below.");
        return SheetHtml.Of(Title, _marks.Caution, _parts, headingLevel);
    }

    /// <inheritdoc/>
    public override string ToString() => SheetText.Of(Title, _marks.Caution, _parts);
}
