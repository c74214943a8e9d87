using System.Globalization;
using System.Text;
using AngleSharp.Dom;
using FlapAero.Charts;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Pages;

/// <summary>What the instructor's page says beside the lesson: the minutes of each section, and notes that lead to the cells they name.</summary>
internal sealed class InstructorPart(RanLesson lesson, PageBody body)
{
    private LessonNotebook Notebook => lesson.Notebook;

    /// <summary>The id under which a cell is found; headings have ids of their own, which follow their words.</summary>
    public static string PlaceOf(LessonCell cell) => "cell-" + cell.Id;

    /// <summary>The minutes of the section that begins with this cell; nothing where none does.</summary>
    public static string MinutesOf(LessonCell cell) => cell.Minutes == 0 ? "" : $"<p class=\"minutes\">{Minutes(cell.Minutes)}</p>\n";

    /// <summary>Whether two notes share a frame: those in front of the lesson do.</summary>
    public static bool Joins(LessonCell cell, LessonCell? before) =>
        cell.Role == CellRole.Instructor && before?.Role == CellRole.Instructor;

    /// <summary>Writes a note, and what the lesson itself knows of its subject.</summary>
    /// <param name="note">The note.</param>
    /// <param name="before">The cell before it.</param>
    public void Write(LessonCell note, LessonCell? before)
    {
        string where = LessonRunner.Where(Notebook, note);
        List<Fragment> parts = note.IsCode ? Said(note, lesson.OutputsOf(note)) : [Fragment.Parse(LessonMarkdown.ToHtml(note.Source), where)];
        if (parts.Count == 0 || !parts[0].StartsWithHeading)
            body.Heading(note.Title, 3);
        foreach (Fragment part in parts)
        {
            Resolve(note, part);
            body.Add(part, where);
        }
        body.Add(SumOf(note));
        if (note.Note == InstructorNote.Plan)
            body.Add(Fragment.Parse(Schedule(), where), where);
        else if (note.Note == InstructorNote.Guess && before is not null)
            body.Add(Given(before));
        else if (note.Note == InstructorNote.Change && before is { Values.Count: > 0 })
            WriteEnds(before);
    }

    /// <summary>The sections with their minutes, and their sum.</summary>
    private string Schedule()
    {
        var table = new StringBuilder("<table class=\"numbers schedule\"><caption>The minutes of each section</caption>"
            + "<thead><tr><th scope=\"col\">section</th><th scope=\"col\">minutes</th></tr></thead><tbody>");
        foreach (LessonCell section in TeachingPlan.Sections(Notebook))
            table.Append(CultureInfo.InvariantCulture,
                $"<tr><th scope=\"row\"><a href=\"#{PlaceOf(section)}\">{HtmlText.Escape(TeachingPlan.NameOf(section))}</a></th><td>{section.Minutes}</td></tr>");
        return table.Append(CultureInfo.InvariantCulture, $"</tbody><tfoot><tr><th scope=\"row\">Together</th><td>{Notebook.Minutes}</td></tr></tfoot></table>\n").ToString();
    }

    /// <summary>Leads a note's links to their cells, and writes beside each the minutes that it has there.</summary>
    private void Resolve(LessonCell note, Fragment words)
    {
        foreach (IElement link in words.All("a[href^='#']").ToArray())
        {
            if (Notebook.Cells.FirstOrDefault(cell => "#" + cell.Id == link.GetAttribute("href")) is not { } cell || !TeachingPlan.CanBeNamed(cell))
                continue;
            link.SetAttribute("href", "#" + PlaceOf(cell));
            if (note.Names.FirstOrDefault(named => named.Cell == cell.Id) is { } named)
                link.Insert(AdjacentPosition.AfterEnd, $" <span class=\"takes\">({Minutes(named.Minutes)})</span>");
        }
    }

    /// <summary>The sum of what a note names; nothing where it names nothing.</summary>
    private static string SumOf(LessonCell note) => note.Names.Count == 0 ? "" : note.Note == InstructorNote.LeaveOut
        ? $"<p class=\"sum\">All of this together saves {Minutes(note.Names.Sum(named => named.Minutes))}.</p>\n"
        : $"<p class=\"sum\">Together this takes {Minutes(note.Names.Sum(named => named.Minutes))}.</p>\n";

    /// <summary>What the model gives for a prediction: the first comparison after it, before the next.</summary>
    private string Given(LessonCell commit)
    {
        string? given = Notebook.Cells.SkipWhile(cell => cell != commit).Skip(1).TakeWhile(cell => cell.Role != CellRole.Commit).Where(cell => cell.IsCode)
            .SelectMany(cell => lesson.OutputsOf(cell)).SelectMany(output => output.Read.QuerySelectorAll(".compared")).FirstOrDefault()?.TextContent;
        return given is null ? "" : $"<p class=\"given\"><strong>{HtmlText.Escape(given.Trim())}</strong></p>\n";
    }

    /// <summary>What the class sees with the first and the last of the values that it may try.</summary>
    private void WriteEnds(LessonCell changed)
    {
        foreach (ChangedNumber value in new[] { changed.Values[0], changed.Values[^1] })
        {
            body.Add($"<p class=\"end\"><strong>What the class sees with {HtmlText.Escape($"{value.Text} {changed.Unit}".Trim())}:</strong></p>\n");
            foreach (Fragment part in Said(changed, lesson.OutputsOf(changed, value)))
                body.Add(part, LessonRunner.Where(Notebook, changed));
        }
    }

    private List<Fragment> Said(LessonCell cell, IReadOnlyList<CellOutput> outputs) =>
        [.. outputs.Select(output => Fragment.ForInstructor(output, LessonRunner.Where(Notebook, cell))).Where(part => !part.IsEmpty)];

    private static string Minutes(int minutes) => string.Create(CultureInfo.InvariantCulture, $"{minutes} min");
}
