using System.Text;
using FlapAero.Handouts.Cache;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;

namespace FlapAero.Handouts.Lessons;

/// <summary>A lesson and the files made of it.</summary>
internal sealed class MadeLesson
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    public MadeLesson(LessonNotebook notebook, IReadOnlyList<Artefact> artefacts)
    {
        Notebook = notebook;
        Artefacts = artefacts;
        foreach (Artefact artefact in artefacts)
            Files.Add(artefact.Name, Utf8.GetBytes(artefact.Content));
    }

    public LessonNotebook Notebook { get; }

    public IReadOnlyList<Artefact> Artefacts { get; }

    /// <summary>The bytes of each file by its name; PDFs are added after the pages.</summary>
    public Dictionary<string, byte[]> Files { get; } = new(StringComparer.Ordinal);

    /// <summary>The hash of all that a lesson's files are made from. How many sheets there are changes none of them.</summary>
    public static string InputsOf(LessonNotebook notebook, LessonInput input, Paper paper, SchoolMarks? school = null)
    {
        ContentKey key = new ContentKey("lesson").With(Build.Id).With(paper.ToString()).With(school?.Key() ?? "").With(input)
            .With(notebook.FileName).With(notebook.Title).With(notebook.Summary).With(notebook.Minutes);
        foreach (LessonCell cell in notebook.Cells)
            key.WithRunOf(cell).With(cell.Title).With(cell.Label).With(cell.Unit).With(cell.StudentSource);
        return key.ToString();
    }
}
