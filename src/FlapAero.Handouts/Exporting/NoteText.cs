using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;
using static System.FormattableString;

namespace FlapAero.Handouts.Exporting;

/// <summary>A cell's prose where no link leads anywhere and no page prints what its metadata say.</summary>
internal static class NoteText
{
    /// <summary>The prose: notes name their cells with their minutes, the plan has its sections, the opening says how long all takes.</summary>
    public static string Of(LessonNotebook lesson, LessonCell cell)
    {
        string text = cell.Source;
        if (cell.Role == CellRole.Opening)
            return text + Invariant($"\n\n**It takes** about {lesson.Minutes} minutes.");
        if (cell.Role != CellRole.Instructor)
            return text;
        foreach ((string words, string place) in LessonMarkdown.LinksWithin(text).Distinct().ToArray())
        {
            string takes = cell.Names.FirstOrDefault(named => named.Cell == place) is { } named ? Invariant($" ({named.Minutes} min)") : "";
            text = text.Replace($"[{words}](#{place})", words + takes, StringComparison.Ordinal);
        }
        return cell.Note == InstructorNote.Plan ? $"{text}\n\n{Sections(lesson)}" : text;
    }

    private static string Sections(LessonNotebook lesson) => string.Join('\n', TeachingPlan.Sections(lesson)
        .Select(section => Invariant($"- {TeachingPlan.NameOf(section)}: {section.Minutes} min"))
        .Append(Invariant($"- **Together: {lesson.Minutes} min**")));
}
