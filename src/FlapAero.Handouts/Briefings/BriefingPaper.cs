using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Briefings;

/// <summary>Which of a flight's papers is wanted.</summary>
internal enum BriefingKind
{
    Sheet,
    Exercise,
    Drills,
}

/// <summary>One paper of a briefed flight, as text and as a page, with the marks of its school.</summary>
internal static class BriefingPaper
{
    /// <summary>The paper.</summary>
    /// <param name="kind">Which one.</param>
    /// <param name="briefing">The flight.</param>
    /// <param name="paper">What it is printed on.</param>
    /// <param name="marks">The school's marks; none where it is nobody's.</param>
    /// <param name="runway">The school's runway, with its landmarks.</param>
    /// <param name="notes">How runway, weight and weather were chosen.</param>
    public static (string Text, string Html) Of(
        BriefingKind kind, Briefing briefing, Paper paper, SchoolMarks? marks, SchoolRunway? runway, IReadOnlyList<(string Term, string Fact)> notes)
    {
        SheetMarks round = new(marks?.School, runway, notes);
        switch (kind)
        {
            case BriefingKind.Drills:
                DrillSheet drills = DrillSheet.Of(briefing, round);
                return (drills.ToString(), BriefingPage.ToHtml(drills, paper, marks));
            case BriefingKind.Exercise:
                ExerciseSheet exercise = ExerciseSheet.Of(briefing, round);
                return (exercise.ToString(), BriefingPage.ToHtml(exercise, paper, marks));
            default:
                BriefingSheet sheet = BriefingSheet.Of(briefing, round);
                return (sheet.ToString(), BriefingPage.ToHtml(sheet, paper, marks));
        }
    }
}
