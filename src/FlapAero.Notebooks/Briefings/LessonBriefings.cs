namespace FlapAero.Notebooks;

/// <summary>The papers of a flight as a lesson shows them: the paper, or in a sentence why there is none.</summary>
public static class LessonBriefings
{
    /// <summary>The briefing sheet.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="outcome">The briefing; none where the aeroplane has no flaps to lose.</param>
    /// <returns>The sheet or the sentence.</returns>
    public static LessonResult SheetOrWhyNot(this Lesson lesson, Outcome<Briefing, IReadOnlyList<string>>? outcome)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        if (outcome is null)
            return lesson.Say($"No sheet: {lesson.Aeroplane.Name} has no flaps to lose, and lands as always.");
        return outcome.Happened ? BriefingSheet.Of(outcome.Value)
            : lesson.Say($"No sheet, and so no landing there: {string.Join(" ", outcome.Refusal!)}");
    }

    /// <summary>The exercise, step by step.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="outcome">The briefing; none where the aeroplane has no flaps to lose.</param>
    /// <returns>The steps or the sentence.</returns>
    public static LessonResult ExerciseOrWhyNot(this Lesson lesson, Outcome<Briefing, IReadOnlyList<string>>? outcome)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return outcome is { Happened: true } ? ExerciseSheet.Of(outcome.Value)
            : lesson.Say($"Where there is no sheet, there are no steps to fly by it.");
    }

    /// <summary>The drills for what goes wrong on the way to the wheels.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="outcome">The briefing; none where the aeroplane has no flaps to lose.</param>
    /// <returns>The drills or the sentence.</returns>
    public static LessonResult DrillsOrWhyNot(this Lesson lesson, Outcome<Briefing, IReadOnlyList<string>>? outcome)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return outcome is { Happened: true } ? DrillSheet.Of(outcome.Value)
            : lesson.Say($"Where there is no sheet, there are no drills by its numbers.");
    }
}
