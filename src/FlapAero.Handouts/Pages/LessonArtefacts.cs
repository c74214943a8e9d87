using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Pages;

/// <summary>Every file that is made of one run of a lesson.</summary>
internal static class LessonArtefacts
{
    /// <summary>The wanted artefacts, in the order of the editions; sheets and their keys by number.</summary>
    /// <param name="lesson">The lesson, run, with its sheets.</param>
    /// <param name="mathematics">Sets the formulas.</param>
    /// <param name="choice">What is wanted.</param>
    /// <exception cref="HandoutException">A cell's output is nothing that a page can take.</exception>
    public static IReadOnlyList<Artefact> Of(RanLesson lesson, Mathematics mathematics, ArtefactChoice choice)
    {
        var made = new List<Artefact>();
        foreach (Edition edition in Enum.GetValues<Edition>().Where(choice.Editions.Contains))
            switch (edition)
            {
                case Edition.Student or Edition.Instructor:
                    made.Add(new Artefact(PageShell.FileName(lesson.Notebook, edition), new LessonPage(lesson, edition, mathematics).ToHtml(), edition == Edition.Student, true));
                    break;
                default:
                    break;
            }
        return made;
    }
}
