using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Leaks;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Rules;
using FlapAero.Notebooks;
using FlapAero.Tests;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>Which files are made of a lesson, and what is in each.</summary>
[Collection<TestsOfArtefacts>]
[Trait("Speed", "slow")]
public sealed class ArtefactTests(ApproachSpeedArtefacts lesson)
{
    [Fact]
    public void Of_AllEditions_NamesEachFileAndWhoItIsFor()
    {
        (string, bool, bool)[] expected =
        [
            (ApproachSpeedArtefacts.Student, true, true), (ApproachSpeedArtefacts.Instructor, false, true), (ApproachSpeedArtefacts.Key, false, true),
            .. Enumerable.Range(1, 3).SelectMany(k => new[] { ($"04-approach-speed.sheet-{k}.html", true, true), ($"04-approach-speed.sheet-{k}.key.html", false, true) }),
            (ApproachSpeedArtefacts.Notebook, true, false), (ApproachSpeedArtefacts.Index, true, true),
        ];

        Assert.Equal(expected, lesson.All.Select(a => (a.Name, a.IsForStudents, a.IsPrintable)));
        Assert.All(lesson.All, a => Assert.DoesNotContain("\r", a.Content, StringComparison.Ordinal));
        Assert.All(lesson.All.Where(a => a.IsForStudents), a => Assert.DoesNotContain("data-key", a.Content, StringComparison.Ordinal));
    }

    [Fact]
    public void Of_Letter_AsksForThatPaper()
    {
        using var mathematics = new Mathematics();
        var choice = new ArtefactChoice(new HashSet<Edition> { Edition.Key, Edition.Sheets }, Paper.Letter);

        IReadOnlyList<Artefact> made = LessonArtefacts.Of(lesson.Lesson, mathematics, choice);

        Assert.Equal(7, made.Count);
        Assert.All(made, a => Assert.Contains("@page { size: Letter }", a.Content, StringComparison.Ordinal));
        Assert.All(lesson.All.Where(a => a.IsPrintable), a => Assert.Contains("@page { size: A4 }", a.Content, StringComparison.Ordinal));
    }

    [Fact]
    public void StudentPage_WithTheEngine_LeadsToThePageInWhichItRuns()
    {
        using var mathematics = new Mathematics();
        var choice = new ArtefactChoice(new HashSet<Edition> { Edition.Student, Edition.Instructor }, HasEngine: true);

        string[] made = [.. LessonArtefacts.Of(lesson.Lesson, mathematics, choice).Select(artefact => artefact.Content)];

        const string Way = "<a href=\"engine/04-approach-speed.html\">Run this lesson here</a>";
        Assert.Contains(Way, made[0], StringComparison.Ordinal);
        Assert.DoesNotContain("engine/", made[1], StringComparison.Ordinal);
        IElement without = Page(ApproachSpeedArtefacts.Student).QuerySelector(".runs-here")!;
        Assert.Null(without.QuerySelector("a"));
        Assert.Contains("handouts --engine", without.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Key_Lesson_HasEveryAnswerToleranceMistakeAndSolution()
    {
        IHtmlDocument key = Page(ApproachSpeedArtefacts.Key);
        string text = key.QuerySelector("main")!.TextContent;
        Secrets secrets = Secrets.Of(lesson.Lesson);

        Assert.Equal(8, secrets.Keys.Count);
        Assert.All(secrets.Keys, k => Assert.Contains(k.Answer, text, StringComparison.Ordinal));
        Assert.All(secrets.Keys.SelectMany(k => k.Mistakes), line => Assert.Contains(line.Because, text, StringComparison.Ordinal));
        Assert.Equal(6, key.QuerySelectorAll(".solution").Length);
        Assert.Equal(3, key.QuerySelectorAll("main ul > li").Count(li => li.TextContent.Contains("the model gives", StringComparison.Ordinal)));
        Assert.Contains("not for handing out", key.QuerySelector("aside.for-instructor")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheets_Seeds_DifferAndMatchTheirKeys()
    {
        foreach (RanSheet sheet in lesson.Lesson.Sheets)
        {
            IHtmlDocument page = Page($"04-approach-speed.sheet-{sheet.Number}.html"), key = Page($"04-approach-speed.sheet-{sheet.Number}.key.html");
            string seed = FormattableString.Invariant($"seed {sheet.Seed}");
            Assert.Contains(seed, page.QuerySelector("header")!.TextContent, StringComparison.Ordinal);
            Assert.Contains(seed, key.QuerySelector("header")!.TextContent, StringComparison.Ordinal);
            Assert.Equal(page.QuerySelectorAll(".question").Select(q => q.TextContent), key.QuerySelectorAll(".question").Select(q => q.TextContent));
            Assert.Equal(6, key.QuerySelectorAll("p.answer").Length);
            Assert.Empty(page.QuerySelectorAll(".solution, .answer"));
        }
        Assert.Equal(3, lesson.Lesson.Sheets.Select(s => string.Concat(Page($"04-approach-speed.sheet-{s.Number}.html").QuerySelectorAll(".question").Select(q => q.TextContent))).Distinct().Count());
    }

    [Fact]
    public void Index_Lesson_LinksEveryFileUnderWhoItIsFor()
    {
        IHtmlDocument index = Page(ApproachSpeedArtefacts.Index);
        string[] links = [.. index.QuerySelectorAll("p.files a").Select(a => a.GetAttribute("href")!)];

        Assert.Equal(lesson.All.Where(a => a.Name != ApproachSpeedArtefacts.Index).Select(a => a.Name).Append("04-approach-speed.pdf").Order(StringComparer.Ordinal), links.Order(StringComparer.Ordinal));
        Assert.All(index.QuerySelectorAll("p.files"), p => Assert.Equal(
            p.Closest("section.instructors") is not null,
            p.QuerySelectorAll("a").All(a => a.GetAttribute("href")!.Contains("key", StringComparison.Ordinal) || a.GetAttribute("href")!.Contains("instructor", StringComparison.Ordinal))));
    }

    [Fact]
    public void Notebook_Student_IsALessonWithoutAnswersAndWithLockedChecks()
    {
        LessonNotebook copy = LessonNotebook.Parse(ApproachSpeedArtefacts.Notebook, lesson.Text(ApproachSpeedArtefacts.Notebook));

        Assert.DoesNotContain(copy.Cells, c => c.Role is CellRole.Instructor or CellRole.Problem);
        Assert.Equal(8, copy.Cells.Count(c => c.Role == CellRole.Check));
        Assert.All(copy.Cells.Where(c => c.Role == CellRole.Check), c => Assert.StartsWith("lesson.CheckSealed(", c.Source, StringComparison.Ordinal));
        Assert.Contains("lesson.CheckSealed(mySpeed,", copy.Cells.Single(c => c.Id == "is-it-the-right-approach-speed").Source, StringComparison.Ordinal);
        Assert.Equal(16, lesson.Text(ApproachSpeedArtefacts.Notebook).Split("\"deletable\": false").Length - 1 + lesson.Text(ApproachSpeedArtefacts.Notebook).Split("\"editable\": false").Length - 1);
        Assert.Equal(6, copy.Cells.Count(c => c.Source.Contains("<summary>Hint 1 of", StringComparison.Ordinal)));
    }

    [Fact]
    public void Notebook_Student_ShowsProseAsProseAndCodeThatAPersonReads()
    {
        LessonNotebook copy = LessonNotebook.Parse(ApproachSpeedArtefacts.Notebook, lesson.Text(ApproachSpeedArtefacts.Notebook));
        LessonCell Cell(string id) => copy.Cells.Single(c => c.Id == id);
        IEnumerable<LessonCell> code = copy.Cells.Where(c => c.IsCode && c.Role is not (CellRole.Setup or CellRole.Check));

        Assert.All(code.SelectMany(c => c.Source.Split('\n')), line => Assert.InRange(line.Length, 0, CodeThatIsSeen.MostColumns));
        Assert.All(code, c => Assert.InRange(c.Source.Split('\n').Length, 1, CodeThatIsSeen.MostLines));
        // What tells a prediction's answer stays folded; the numbers in it are the run's, and its code is gone.
        Assert.False(Cell("flaps-lift-and-knots").IsCode);
        Assert.Matches(@"(?s)^## Flaps, lift and knots\n\n<details><summary>I have written.*\$\\sqrt\{ 1\.\d\d \}.*</details>$", Cell("flaps-lift-and-knots").Source);
        // A later cell takes the day's wind from this one.
        Assert.Equal("var wind = Quillmere.Wednesday.Wind;", Cell("what-gusts-add-numbers").Source);
        Assert.Contains("\"source_hidden\": true", lesson.Text(ApproachSpeedArtefacts.Notebook), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Notebook_Student_RunsOpenUntilAnsweredAndPassesThen()
    {
        LessonNotebook copy = LessonNotebook.Parse(ApproachSpeedArtefacts.Notebook, lesson.Text(ApproachSpeedArtefacts.Notebook));
        Queue<AnswerKey> keys = new(Secrets.Of(lesson.Lesson).Keys);
        using KernelTurn turn = await KernelTurn.TakeAsync();
        using var kernel = new InteractiveKernel();
        LessonCell? answer = null;
        foreach (LessonCell cell in copy.Cells.Where(c => c.IsCode))
        {
            CellResult result = await kernel.RunAsync(cell.Source, TestContext.Current.CancellationToken);
            Assert.True(result.Failure is null, $"{cell}: {result.Failure}");
            if (cell.Role == CellRole.Answer)
                answer = cell;
            if (cell.Role != CellRole.Check)
                continue;
            Assert.Equal("open", LessonCopies.Check(result).Outcome);
            AnswerKey key = keys.Dequeue();
            string right = key.Value is { } value ? key.Blank.Replace("0.0", "0", StringComparison.Ordinal).Replace("0", value.ToString("R", System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal) : $"\"{key.Answer}\"";
            await kernel.RunAsync(answer!.Source.Replace(key.Blank, right, StringComparison.Ordinal), TestContext.Current.CancellationToken);
            Assert.Equal(("passed", cell.Id), (LessonCopies.Check(await kernel.RunAsync(cell.Source, TestContext.Current.CancellationToken)).Outcome, cell.Id));
        }
        Assert.Empty(keys);
    }

    private IHtmlDocument Page(string name) => new HtmlParser().ParseDocument(lesson.LightText(name));
}
