using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Briefings;

/// <summary>A briefing sheet as a page of its own: one sheet of paper, no script, nothing fetched.</summary>
public static class BriefingPage
{
    /// <summary>The page.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="paper">The paper that it is printed on.</param>
    /// <returns>A whole HTML page, the same bytes for the same sheet.</returns>
    public static string ToHtml(BriefingSheet sheet, Paper paper) => ToHtml(sheet, paper, null);

    internal static string ToHtml(BriefingSheet sheet, Paper paper, SchoolMarks? school)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return ToHtml(BriefingSheet.Title, sheet.Briefing, sheet.ToHtmlFragment(headingLevel: 1), paper, school);
    }

    /// <summary>The same for the exercise, step by step.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="paper">The paper that it is printed on.</param>
    /// <returns>A whole HTML page, the same bytes for the same sheet.</returns>
    public static string ToHtml(ExerciseSheet sheet, Paper paper) => ToHtml(sheet, paper, null);

    internal static string ToHtml(ExerciseSheet sheet, Paper paper, SchoolMarks? school)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return ToHtml(ExerciseSheet.Title, sheet.Briefing, sheet.ToHtmlFragment(headingLevel: 1), paper, school);
    }

    /// <summary>The same for the correction drills.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="paper">The paper that it is printed on.</param>
    /// <returns>A whole HTML page, the same bytes for the same sheet.</returns>
    public static string ToHtml(DrillSheet sheet, Paper paper) => ToHtml(sheet, paper, null);

    internal static string ToHtml(DrillSheet sheet, Paper paper, SchoolMarks? school)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return ToHtml(DrillSheet.Title, sheet.Briefing, sheet.ToHtmlFragment(headingLevel: 1), paper, school);
    }

    private static string ToHtml(string sheet, Briefing briefing, string fragment, Paper paper, SchoolMarks? school)
    {
        string title = $"{sheet}, {briefing.Request.Aeroplane.Name}, runway {briefing.Request.Runway.Name}";
        string size = paper == Paper.A4 ? "@page { size: A4 }" : "@page { size: Letter }";
        return SheetShell.Of(title, [size, Assets.Typeface, Assets.BriefingStyle, school?.MarginCss() ?? ""], school?.LogoHtml() + fragment);
    }
}
