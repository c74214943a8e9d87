using System.Globalization;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using FlapAero.Handouts.Leaks;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>The instructor's side of a lesson: in front, with its minutes, beside what it is about, and on no student's page.</summary>
[Collection<TestsOfArtefacts>]
[Trait("Speed", "slow")]
public sealed class InstructorPartTests(ApproachSpeedArtefacts lesson)
{
    private IHtmlDocument Page => Read(ApproachSpeedArtefacts.Instructor);

    private IEnumerable<LessonCell> Notes => lesson.Lesson.Notebook.Cells.Where(cell => cell.Role == CellRole.Instructor);

    [Fact]
    public void Page_InstructorsPart_ComesRightBehindTheOpeningAndInOneFrame()
    {
        IElement[] cells = [.. Page.QuerySelectorAll("main > .cell")];

        Assert.Contains("opening", cells[0].ClassList);
        Assert.Contains("teaching", cells[1].ClassList);
        Assert.Contains("scenario", cells[2].ClassList);
        Assert.Equal(
            ["Lesson plan", "Ten minutes before a flight", "When ten minutes are gone", "Questions to ask aloud", "Where the model stops being true"],
            cells[1].QuerySelectorAll("h2, h3").Select(heading => heading.TextContent));
        Assert.Single(cells[1].QuerySelectorAll(".tag"));
    }

    [Fact]
    public void Page_Minutes_StandAtEachSectionAndAddUpInTheTable()
    {
        IHtmlDocument page = Page;
        LessonCell[] sections = [.. TeachingPlan.Sections(lesson.Lesson.Notebook)];
        IElement table = page.QuerySelector(".teaching table.schedule")!;
        int[] minutes = [.. table.QuerySelectorAll("tbody td").Select(cell => Number(cell.TextContent))];

        Assert.Equal(sections.Select(section => section.Minutes), minutes);
        Assert.Equal(minutes.Sum(), Number(table.QuerySelector("tfoot td")!.TextContent));
        Assert.StartsWith($"{minutes.Sum()} minutes", page.QuerySelector("header .facts")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(sections.Length, page.QuerySelectorAll(".minutes").Length);
        foreach ((IElement link, LessonCell section) in table.QuerySelectorAll("tbody a").Zip(sections))
        {
            IElement cell = page.GetElementById(link.GetAttribute("href")![1..])!;
            Assert.Equal($"{section.Minutes} min", cell.FirstElementChild!.TextContent);
            Assert.Equal(link.TextContent, cell.QuerySelector("h2, h3")!.TextContent);
        }
    }

    [Fact]
    public void Page_TenMinutesAndWhatIsLeftOut_LeadToTheirCellsWithTheirMinutes()
    {
        IHtmlDocument page = Page;
        foreach (LessonCell note in Notes.Where(note => note.Names.Count > 0))
        {
            IElement heading = page.QuerySelectorAll(".teaching h3").Single(h => h.TextContent == note.Title);
            IElement list = Following(heading).First(e => e is IHtmlOrderedListElement or IHtmlUnorderedListElement);
            IElement[] links = [.. list.QuerySelectorAll("a")];

            Assert.Equal(note.Names.Select(named => "#cell-" + named.Cell), links.Select(link => link.GetAttribute("href")));
            Assert.All(links, link => Assert.NotNull(page.GetElementById(link.GetAttribute("href")![1..])));
            Assert.Equal(note.Names.Select(named => $"({named.Minutes} min)"), list.QuerySelectorAll(".takes").Select(takes => takes.TextContent));
            Assert.Contains($" {note.Names.Sum(named => named.Minutes)} min.", list.NextElementSibling!.TextContent, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Page_UsualGuess_StandsRightBehindItsPredictionWithWhatTheModelGives()
    {
        IElement[] predictions = [.. Page.QuerySelectorAll(".cell.predict")];

        Assert.Equal(3, predictions.Length);
        Assert.All(predictions, prediction =>
        {
            IElement note = prediction.NextElementSibling!;
            Assert.Contains("teaching", note.ClassList);
            Assert.StartsWith("Usual guess: ", note.QuerySelector("h3")!.TextContent, StringComparison.Ordinal);
            Assert.Contains(": the model gives ", note.QuerySelector(".given")!.TextContent, StringComparison.Ordinal);
        });
        Assert.Equal(3, predictions.Select(prediction => prediction.NextElementSibling!.QuerySelector(".given")!.TextContent).Distinct().Count());
    }

    [Fact]
    public void Page_AnswerToChangeOneNumber_HasWhatTheClassSeesAtBothEnds()
    {
        IElement change = Page.QuerySelector(".cell.change")!;
        IElement note = change.NextElementSibling!;
        string[] ends = [.. note.QuerySelectorAll(".end").Select(end => end.TextContent)];
        IElement[] seen = [.. change.QuerySelectorAll(".changed")];

        Assert.Contains("teaching", note.ClassList);
        Assert.Equal(["What the class sees with 0.75:", "What the class sees with 1:"], ends);
        Assert.Equal([Words(seen[0]), Words(seen[^1])], note.QuerySelectorAll(".end").Select(end => Words(end.NextElementSibling!)));
    }

    [Fact]
    public void Students_GetNothingOfTheInstructors()
    {
        string[] sentences = [.. Notes.SelectMany(note => note.Source.Split(". ")).Select(ArtefactText.Normal).Where(words => words.Length > 30)];
        Assert.True(sentences.Length > 20);
        foreach (Artefact artefact in lesson.All.Where(artefact => artefact.IsForStudents))
        {
            string text = ArtefactText.Normal(artefact.Content);
            Assert.All(sentences, sentence => Assert.DoesNotContain(sentence, text, StringComparison.Ordinal));
        }
        IHtmlDocument page = Read(ApproachSpeedArtefacts.Student);
        Assert.Empty(page.QuerySelectorAll(".teaching, .minutes, .takes, .schedule, .given, [id^='cell-']"));
    }

    /// <summary>A student's notebook says how long the lesson takes, in its first cell, and no section's minutes.</summary>
    [Fact]
    public void StudentsNotebook_Time_IsThatOfAllSections()
    {
        LessonNotebook copy = LessonNotebook.Parse(ApproachSpeedArtefacts.Notebook, lesson.Text(ApproachSpeedArtefacts.Notebook));

        Assert.Equal(lesson.Lesson.Notebook.Minutes, copy.Minutes);
        Assert.All(copy.Cells, cell => Assert.Equal(0, cell.Minutes));
        Assert.Contains($"\n\n**It takes** about {copy.Minutes} minutes.\n\n", copy.Cells[0].Source, StringComparison.Ordinal);
        Assert.Empty(TeachingPlan.Faults(copy));
    }

    private static IEnumerable<IElement> Following(IElement element)
    {
        for (IElement? next = element.NextElementSibling; next is not null; next = next.NextElementSibling)
            yield return next;
    }

    private IHtmlDocument Read(string name) => new HtmlParser().ParseDocument(lesson.Text(name));

    private static string Words(IElement element) => string.Join(' ', element.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
