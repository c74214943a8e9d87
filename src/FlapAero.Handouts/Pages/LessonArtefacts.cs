using FlapAero.Handouts.Leaks;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Pages;

/// <summary>Every file that is made of one run of a lesson.</summary>
internal static class LessonArtefacts
{
    /// <summary>The wanted artefacts, in the order of the editions; each sheet is followed by its key.</summary>
    /// <param name="lesson">The lesson, run, with its sheets.</param>
    /// <param name="mathematics">Sets the formulas.</param>
    /// <param name="choice">What is wanted.</param>
    /// <exception cref="HandoutException">A cell's output is nothing that a page can take, or an answer got into what students are given.</exception>
    public static IReadOnlyList<Artefact> Of(RanLesson lesson, Mathematics mathematics, ArtefactChoice choice)
    {
        var made = new List<Artefact>();
        foreach (Edition edition in Enum.GetValues<Edition>().Where(choice.Editions.Contains))
            if (edition == Edition.Sheets)
                foreach (RanSheet sheet in HasProblems(lesson) ? lesson.Sheets : [])
                {
                    made.Add(new Artefact(PageShell.SheetName(lesson.Notebook, sheet.Number, isKey: false), SheetPage.Of(lesson.Notebook, sheet, mathematics, choice.Look), true, true));
                    made.Add(new Artefact(PageShell.SheetName(lesson.Notebook, sheet.Number, isKey: true), KeyPage.Of(lesson.Notebook, sheet, mathematics, choice.Look), false, true));
                }
            else
                made.Add(One(lesson, mathematics, choice, edition));
        RefuseLeaks(lesson, made);
        return made;
    }

    /// <summary>An answer in what students get is a fault, of a lesson or of ours: better no file than that one.</summary>
    private static void RefuseLeaks(RanLesson lesson, IReadOnlyList<Artefact> made)
    {
        Secrets secrets = Secrets.Of(lesson);
        Dictionary<string, Secrets> ofSheets = lesson.Sheets.ToDictionary(s => PageShell.SheetName(lesson.Notebook, s.Number, isKey: false), s => Secrets.Of(lesson, s));
        List<string> leaks = [.. made.Where(a => a.IsForStudents).SelectMany(a => LeakSearch.In(a, ofSheets.GetValueOrDefault(a.Name, secrets)))];
        if (leaks.Count > 0)
            throw new HandoutException($"Students would get answers of lesson {lesson.Notebook.Slug}; nothing was written:\n" + string.Join('\n', leaks.Select(l => "  " + l)));
    }

    private static Artefact One(RanLesson lesson, Mathematics mathematics, ArtefactChoice choice, Edition edition)
    {
        string name = PageShell.FileName(lesson.Notebook, edition);
        return edition switch
        {
            Edition.Key => new Artefact(name, KeyPage.Of(lesson, mathematics, choice.Look), false, true),
            Edition.Notebook => new Artefact(name, StudentNotebook.Of(lesson), true, false),
            _ => new Artefact(name, new LessonPage(lesson, edition, mathematics, choice.Look, choice.HasEngine).ToHtml(), edition == Edition.Student, true),
        };
    }

    private static bool HasProblems(RanLesson lesson) => lesson.Notebook.Cells.Any(c => c.Role == CellRole.Problem);
}
