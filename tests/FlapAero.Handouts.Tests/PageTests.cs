using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using FlapAero.Charts;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Leaks;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;
using FlapAero.Notebooks;
using FlapAero.Tests;

namespace FlapAero.Handouts.Tests;

[Collection<TestsOfWholePages>]
[Trait("Speed", "slow")]
public sealed partial class PageTests(WholePages pages)
{
    public static TheoryData<string> All => [WholePages.Student, WholePages.Instructor, WholePages.Index];

    [Theory]
    [MemberData(nameof(All))]
    public void Page_Any_HasOneTopHeadingAndNoJump(string name)
    {
        int[] levels = [.. pages.Document(name).QuerySelectorAll("h1, h2, h3, h4, h5, h6").Select(h => h.LocalName[1] - '0')];

        Assert.Equal(1, levels[0]);
        Assert.Single(levels, 1);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1, $"h{pair.First} then h{pair.Second}"));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Page_Any_HasUniqueIdsAndLinksThatLead(string name)
    {
        IHtmlDocument document = pages.Document(name);
        List<string> ids = [.. document.QuerySelectorAll("[id]").Select(e => e.Id!)];

        Assert.Equal(ids.Distinct(StringComparer.Ordinal), ids);
        Assert.All(document.QuerySelectorAll("a[href^='#']"), a => Assert.Contains(a.GetAttribute("href")![1..], ids));
        Assert.All(document.QuerySelectorAll("a:not([href^='#'])"), a => Assert.Matches("^(index|[0-9]{2}-[a-z-]+(\\.instructor|\\.key|\\.sheet-[0-9]+(\\.key)?)?)\\.(html|ipynb)$", a.GetAttribute("href")!));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Page_Any_RequestsNothing(string name)
    {
        IHtmlDocument document = pages.Document(name);
        foreach (IElement element in document.All)
            foreach (string attribute in new[] { "src", "href", "srcset", "poster", "data", "action", "xlink:href" })
                if (element.GetAttribute(attribute) is { } value)
                    Assert.DoesNotMatch("^([a-z]+:)?//", value);
        string styles = string.Concat(document.QuerySelectorAll("style").Select(s => s.TextContent).Concat(document.All.Select(e => e.GetAttribute("style") ?? "")));
        Assert.DoesNotMatch(Fetch(), styles);
        Assert.StartsWith("data:", Assert.Single(document.QuerySelectorAll("link")).GetAttribute("href"), StringComparison.Ordinal);
        Assert.StartsWith("default-src 'none'", document.QuerySelector("meta[http-equiv]")!.GetAttribute("content"), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Page_Any_CarriesTheCautionLanguageAndLandmarks(string name)
    {
        IHtmlDocument document = pages.Document(name);

        Assert.Contains(Caution.Text, document.QuerySelector("body > .caution")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(Caution.Short, document.QuerySelector("footer")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("en", document.DocumentElement.GetAttribute("lang"));
        Assert.Equal("#content", document.QuerySelector("body > a:first-child")!.GetAttribute("href"));
        Assert.All(new[] { "header", "main", "footer" }, landmark => Assert.Single(document.QuerySelectorAll(landmark)));
    }

    [Theory]
    [InlineData(WholePages.Student)]
    [InlineData(WholePages.Instructor)]
    public void Page_Lesson_FiguresHaveCaptionAlternativeDrawingAndNumbers(string name)
    {
        IHtmlCollection<IElement> figures = pages.Document(name).QuerySelectorAll("figure.plot");

        Assert.Equal(2, figures.Length);
        Assert.Equal(2, figures.Select(f => f.Id).Distinct().Count());
        Assert.All(figures, figure =>
        {
            Assert.NotEmpty(figure.QuerySelector("figcaption")!.TextContent);
            Assert.NotEmpty(figure.QuerySelector(".plot-drawing[role=img]")!.GetAttribute("aria-label")!);
            Assert.Equal("0 0 720 400", figure.QuerySelector(".plot-drawing svg")!.GetAttribute("viewBox"));
            Assert.NotNull(figure.QuerySelector(".plot-numbers table tbody tr"));
            Assert.Contains("\"type\":\"scatter\"", figure.QuerySelector("script.plot-data")!.TextContent, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Page_Lesson_CarriesPlotlyOnlyWithAFigure()
    {
        Assert.Contains(FigureScript.PlotlyNotice.Trim(), pages.Text(WholePages.Student), StringComparison.Ordinal);
        Assert.DoesNotContain("plotly.js", pages.Text("05-other.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("plotly.js", pages.Text(WholePages.Index), StringComparison.Ordinal);
    }

    /// <summary>The largest lesson's own words, figures and pictures take 246 000 bytes.</summary>
    [Theory]
    [InlineData(WholePages.Student)]
    [InlineData(WholePages.Instructor)]
    public void Page_WithFigures_LeavesAWholeLessonRoomInEightHundredThousandBytes(string name)
    {
        int own = PageShell.CarriedAlike.Aggregate(pages.Text(name), (rest, script) => rest.Replace(script, "", StringComparison.Ordinal)).Length;

        Assert.InRange(pages.Text(name).Length - own, 300_000, 545_000);
    }

    [Fact]
    public void StudentPage_Answers_AreNowhereInTheFile()
    {
        // plotly.js has numbers of its own, the style sheet and the script that checks name outcomes; the rest is the lesson's.
        string text = ArtefactText.WithoutScripts(pages.Text(WholePages.Student));
        string ours = text[text.IndexOf("</style>", StringComparison.Ordinal)..];

        Assert.DoesNotContain(WholeLesson.Answer, ours, StringComparison.Ordinal);
        Assert.DoesNotContain(WholeLesson.Solution, ours, StringComparison.Ordinal);
        Assert.DoesNotContain(WholeLesson.InstructorWords, ours, StringComparison.Ordinal);
        Assert.DoesNotContain("data-outcome", ours, StringComparison.Ordinal);
        Assert.Empty(pages.Document(WholePages.Student).QuerySelectorAll(".solution, .check, .answer, .instructor"));
    }

    [Fact]
    public void StudentPage_AnswerCell_ShowsTheStudentsCodeAWriteInAndTheCheckLine()
    {
        IElement answer = Assert.Single(pages.Document(WholePages.Student).QuerySelectorAll(".cell.reply"));

        Assert.Equal("var mine = 0.0; // your answer in knots", answer.QuerySelector("pre code")!.TextContent);
        Assert.Equal("Slowest speed  kt", answer.QuerySelector(".write-in label")!.TextContent);
        Assert.NotNull(answer.QuerySelector(".write-in input"));
        Assert.Equal("Check it in the notebook.", answer.QuerySelector(".check-line")!.TextContent);
    }

    [Fact]
    public void StudentPage_Prediction_IsOneBoxWithItsWriteIn()
    {
        IElement box = Assert.Single(pages.Document(WholePages.Student).QuerySelectorAll(".cell.predict"));

        Assert.Equal("How much does the turn take?", box.QuerySelector("h2")!.TextContent);
        Assert.StartsWith("The stall speed grows by", box.QuerySelector(".write-in label")!.TextContent, StringComparison.Ordinal);
        Assert.Null(box.QuerySelector("pre"));
    }

    [Fact]
    public void StudentPage_Code_StandsFoldedAndOnlyOfComputations()
    {
        IHtmlDocument document = pages.Document(WholePages.Student);

        Assert.All(document.QuerySelectorAll("details.code"), d => Assert.False(d.HasAttribute("open")));
        Assert.Equal(3, document.QuerySelectorAll("details.code summary").Count(s => s.TextContent == "How this is computed"));
        Assert.DoesNotContain("artifacts/lessons", document.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Null(document.QuerySelector(".exercise details.code"));
    }

    [Fact]
    public void InstructorPage_Everything_IsThereAndAnswersAreFolded()
    {
        IHtmlDocument document = pages.Document(WholePages.Instructor);

        Assert.Equal(2, document.QuerySelectorAll("details.answer > .solution").Length);
        Assert.All(document.QuerySelectorAll(".solution, .check"), e => Assert.False(e.Closest("details.answer")!.HasAttribute("open")));
        Assert.Contains(WholeLesson.InstructorWords, document.QuerySelector(".cell.teaching")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("instructor's page", document.QuerySelector("aside.for-instructor")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("artifacts/lessons", document.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void LessonPage_Maths_BecomesMathMlInProseAndOutputs()
    {
        IHtmlDocument document = pages.Document(WholePages.Instructor);

        Assert.Equal(8, document.QuerySelectorAll("math").Length);
        Assert.All(document.QuerySelectorAll("math"), math => Assert.NotEmpty(math.GetAttribute("alttext")!));
        Assert.Equal(2, document.QuerySelectorAll("div.math math[display=block]").Length);
        Assert.DoesNotContain("\\(", pages.Document(WholePages.Student).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void LessonPage_FormulaBeforeAComma_KeepsIt()
    {
        IElement scenario = pages.Document(WholePages.Student).QuerySelector(".cell.scenario")!;

        Assert.EndsWith(",", Assert.Single(scenario.QuerySelectorAll(".kept")).TextContent, StringComparison.Ordinal);
        Assert.EndsWith(" so", scenario.QuerySelector("p:has(.kept)")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void LessonPage_FormulaAloneOnALine_StandsByItself()
    {
        IElement part = pages.Document("05-other.html").QuerySelector("main .explain:has(math)")!;

        Assert.Equal("block", Assert.Single(part.QuerySelectorAll("math")).GetAttribute("display"));
        Assert.Equal("airspeed equals 1.3 times stall speed", part.QuerySelector("math")!.GetAttribute("alttext"));
        Assert.Equal("div", part.QuerySelector(".math")!.LocalName);
    }

    [Fact]
    public void LessonPage_MarkdownHtml_StaysText() =>
        Assert.Contains("<sub> is no tag", pages.Document(WholePages.Student).QuerySelector("th em")!.ParentElement!.TextContent, StringComparison.Ordinal);

    [Fact]
    public void LessonPage_Links_LeadToPagesOrAreText()
    {
        IElement sources = pages.Document(WholePages.Student).QuerySelector(".cell.sources")!;

        Assert.Equal("05-other.html", Assert.Single(sources.QuerySelectorAll("a")).GetAttribute("href"));
        Assert.Contains("https://example.org/margin", sources.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void LessonPage_Contents_ListsEveryPart()
    {
        IHtmlDocument document = pages.Document(WholePages.Student);

        Assert.Equal(
            document.QuerySelectorAll("main h2").Select(h => (h.Id, h.TextContent)),
            document.QuerySelectorAll("nav a").Select(a => (a.GetAttribute("href")?[1..], a.TextContent)));
        Assert.Contains("Problems", document.QuerySelectorAll("nav a").Select(a => a.TextContent));
    }

    [Fact]
    public void IndexPage_Lessons_ShowNumberTitleSummaryMinutesAndEveryFile()
    {
        IHtmlCollection<IElement> lessons = pages.Document(WholePages.Index).QuerySelectorAll("ol.lessons > li");

        Assert.Equal(["4", "5"], lessons.Select(l => l.GetAttribute("value")));
        Assert.Equal(Files("", "", ".ipynb", ".sheet-1"), lessons[0].QuerySelectorAll("a").Select(a => a.GetAttribute("href")));
        Assert.Equal(
            Files(".instructor", ".key", ".sheet-1.key"),
            pages.Document(WholePages.Index).QuerySelector(".instructors li")!.QuerySelectorAll("a").Select(a => a.GetAttribute("href")));
        Assert.Contains("What the bank does to the stall.", lessons[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("40 minutes", lessons[0].TextContent, StringComparison.Ordinal);

        static IEnumerable<string> Files(params string[] parts) => parts.Select(part => "04-stall-in-turn" + (part == ".ipynb" ? part : part + ".html"));
    }

    /// <summary>Whoever is handed the home page meets the instructor's files neither among the lessons nor in the drawing.</summary>
    [Fact]
    public void IndexPage_InstructorsFiles_StandApartAfterTheLessons()
    {
        IHtmlDocument index = pages.Document(WholePages.Index);
        IElement apart = index.QuerySelector("section.instructors")!;

        Assert.All(
            index.QuerySelectorAll("a[href$='.html']").Where(link => link.GetAttribute("href")!.Contains(".key", StringComparison.Ordinal) || link.GetAttribute("href")!.Contains(".instructor", StringComparison.Ordinal)).ToArray(),
            link => Assert.True(link.Closest("section.instructors") == apart, link.GetAttribute("href")));
        Assert.NotEmpty(apart.QuerySelectorAll("a"));
        Assert.True(index.QuerySelector("ol.lessons")!.CompareDocumentPosition(apart).HasFlag(DocumentPositions.Following));
    }

    [GeneratedRegex("@import|url\\(\\s*[\"']?(?!#|data:)", RegexOptions.IgnoreCase)]
    private static partial Regex Fetch();

    /// <summary>A number to change is one of the cell's code: in other units its own stays.</summary>
    [Theory]
    [InlineData(DisplayUnits.Aviation)]
    [InlineData(DisplayUnits.SI)]
    public void ChangeOneNumber_InAnyUnits_IsThatOfTheCode(DisplayUnits units)
    {
        using var mathematics = new Mathematics();
        var lesson = new RanLesson(LessonCopies.Named("power-on-the-approach"), new Dictionary<string, IReadOnlyList<CellOutput>>())
        {
            Input = LessonInput.Standard with { Units = units },
        };

        string page = new LessonPage(lesson, Edition.Student, mathematics, Paper.A4).ToHtml();

        Assert.Contains("data-values=\"5\u00A0kt;10\u00A0kt;", page.Replace("&nbsp;", "\u00A0", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
