using FlapAero.Handouts.Rules;
using FlapAero.Notebooks;
using static System.FormattableString;

namespace FlapAero.Handouts.Lessons;

/// <summary>
/// How a lesson is taught: its sections with their minutes, and the notes to the instructor. The rule for all lessons stands
/// here: what is named exists, each note stands where it is read, and a lesson is no longer than an instructor has.
/// </summary>
internal static class TeachingPlan
{
    /// <summary>A lesson takes no longer: three quarters of an hour, and five minutes to settle down.</summary>
    public const int MostMinutes = 50;

    /// <summary>What is shown before a flight takes no longer; what may be left out saves as much.</summary>
    public const int BriefMinutes = 10;

    /// <summary>So many things are shown before a flight.</summary>
    public const int BriefThings = 3;

    private static readonly InstructorNote[] InFront =
        [InstructorNote.Plan, InstructorNote.Questions, InstructorNote.LeaveOut, InstructorNote.BeforeFlight, InstructorNote.Limits];

    /// <summary>The cells that begin a section, in their order.</summary>
    public static IEnumerable<LessonCell> Sections(LessonNotebook lesson) => lesson.Cells.Where(cell => cell.Minutes > 0);

    /// <summary>What a section is called: the problems have one heading together.</summary>
    public static string NameOf(LessonCell section) => section.Role == CellRole.Problem ? "Problems" : section.Title;

    /// <summary>Whether a note may send its reader to a cell: one that has a heading of its own.</summary>
    public static bool CanBeNamed(LessonCell cell) => cell.Role is CellRole.Scenario or CellRole.Explain or CellRole.Predict
        or CellRole.Compute or CellRole.Change or CellRole.Answer or CellRole.Problem;

    /// <summary>What keeps a lesson from being taught by its page. A text that asks nothing of a class is no lesson yet.</summary>
    public static IEnumerable<string> Faults(LessonNotebook lesson)
    {
        if (!lesson.Cells.Any(cell => cell.Role is CellRole.Commit or CellRole.Problem || cell.Note is not null))
            return [];
        if (LessonRules.IsStudentsCopy(lesson))
            return [];
        return TimeFaults(lesson).Concat(NoteFaults(lesson)).Concat(lesson.Cells.Where(cell => cell.Note is not null).SelectMany(note => NamesFaults(lesson, note)))
            .Select(words => $"{lesson.FileName}{words}");
    }

    private static IEnumerable<string> TimeFaults(LessonNotebook lesson)
    {
        // Where none has any, the reader of notebooks says so once.
        if (lesson.Cells.All(cell => cell.Minutes == 0))
            yield break;
        foreach (LessonCell cell in lesson.Cells.Where((cell, at) => Begins(lesson, cell, at) && cell.Minutes == 0))
            yield return $", {cell} begins a section and has no \"minutes\" in its flapaero metadata; needed are whole minutes.";
        if (lesson.Minutes > MostMinutes)
            yield return Invariant($" takes {lesson.Minutes} minutes, the sum of its sections; allowed are {MostMinutes}: leave something out, or make it optional.");
    }

    /// <summary>Whether an instructor needs to know how long what begins here takes.</summary>
    private static bool Begins(LessonNotebook lesson, LessonCell cell, int at) => cell.Role switch
    {
        CellRole.Scenario or CellRole.Predict or CellRole.Change => true,
        CellRole.Problem => lesson.Cells.First(c => c.Role == CellRole.Problem) == cell,
        CellRole.Explain => at + 1 < lesson.Cells.Count && lesson.Cells[at + 1].Role == CellRole.Answer,
        _ => false,
    };

    private static IEnumerable<string> NoteFaults(LessonNotebook lesson)
    {
        List<LessonCell> cells = [.. lesson.Cells];
        int first = cells.FindIndex(cell => cell.Minutes > 0);
        foreach (InstructorNote note in InFront)
        {
            LessonCell[] found = [.. cells.Where(cell => cell.Note == note)];
            if (found.Length != 1)
                yield return Invariant($" has {found.Length} instructor's cells with the note \"{NoteReader.Name(note)}\"; needed is exactly one.");
            else if (first >= 0 && cells.IndexOf(found[0]) > first)
                yield return $", {found[0]} comes after the lesson has begun; the instructor reads it before {cells[first]}.";
        }
        for (int at = 0; at < cells.Count; at++)
        {
            InstructorNote? needed = NoteBehind(cells[at].Role), there = at + 1 < cells.Count ? cells[at + 1].Note : null;
            if (needed is not null && there != needed)
                yield return $", {cells[at]} is not followed by an instructor's cell with the note \"{NoteReader.Name(needed.Value)}\"; one stands right behind it.";
            if (cells[at].Note is InstructorNote.Guess or InstructorNote.Change && (at == 0 || NoteBehind(cells[at - 1].Role) != cells[at].Note))
                yield return $", {cells[at]} stands behind no cell that its note \"{NoteReader.Name(cells[at].Note!.Value)}\" is about.";
            if (cells[at] is { Role: CellRole.Instructor, Note: null })
                yield return $", {cells[at]} has no \"note\" in its flapaero metadata; allowed are {string.Join(", ", NoteReader.Names)}.";
        }
    }

    private static InstructorNote? NoteBehind(CellRole role) =>
        role switch { CellRole.Commit => InstructorNote.Guess, CellRole.Change => InstructorNote.Change, _ => null };

    private static IEnumerable<string> NamesFaults(LessonNotebook lesson, LessonCell note)
    {
        (string Text, string Place)[] links = [.. LessonMarkdown.LinksWithin(note.Source)];
        foreach ((string text, string place) in links)
            if (lesson.Cells.FirstOrDefault(cell => cell.Id == place) is not { } cell || !CanBeNamed(cell))
                yield return $", {note} names #{place}, which is no section of this lesson: name a cell with a heading of its own by its id.";
            else if (text != cell.Title)
                yield return $", {note} calls {cell} \"{text}\"; it is called \"{cell.Title}\".";
        if (note.Note is not (InstructorNote.LeaveOut or InstructorNote.BeforeFlight))
        {
            if (note.Names.Count > 0)
                yield return $", {note} has \"cells\"; only the notes leave-out and before-flight have.";
            yield break;
        }
        if (!note.Names.Select(named => named.Cell).SequenceEqual(links.Select(link => link.Place)))
            yield return $", {note} has the \"cells\" {Listed(note.Names.Select(n => n.Cell))} and names {Listed(links.Select(l => l.Place))} in its text; both are the same, in one order.";
        int sum = note.Names.Sum(named => named.Minutes);
        if (note.Note == InstructorNote.BeforeFlight)
        {
            if (note.Names.Count != BriefThings)
                yield return Invariant($", {note} shows {note.Names.Count} things; before a flight there are {BriefThings}.");
            if (sum > BriefMinutes)
                yield return Invariant($", {note} takes {sum} minutes; allowed are {BriefMinutes}.");
            yield break;
        }
        if (sum < BriefMinutes)
            yield return Invariant($", {note} saves {sum} minutes; needed are {BriefMinutes}, so that a late class still ends in time.");
        foreach (IGrouping<LessonCell, TimedCell> saved in note.Names.Where(n => SectionOf(lesson, n.Cell) is not null).GroupBy(n => SectionOf(lesson, n.Cell)!))
            if (saved.Sum(n => n.Minutes) > saved.Key.Minutes)
                yield return Invariant($", {note} saves {saved.Sum(n => n.Minutes)} minutes of {saved.Key}, which takes {saved.Key.Minutes}.");
    }

    /// <summary>The section that a cell belongs to: the last that began before it.</summary>
    private static LessonCell? SectionOf(LessonNotebook lesson, string id)
    {
        LessonCell? section = null;
        foreach (LessonCell cell in lesson.Cells)
        {
            section = cell.Minutes > 0 ? cell : section;
            if (cell.Id == id)
                return section;
        }
        return null;
    }

    private static string Listed(IEnumerable<string> ids) => $"[{string.Join(", ", ids)}]";
}
