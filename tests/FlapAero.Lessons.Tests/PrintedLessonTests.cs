using FlapAero.Handouts;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;
using FlapAero.Tests;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace FlapAero.Lessons.Tests;

/// <summary>What a class gets on paper: whole pages, and no hint that stands under its question.</summary>
[Trait("Speed", "slow")]
public sealed class PrintedLessonTests(Printer printer) : IClassFixture<Printer>
{
    /// <summary>Fewer lines are a foot, or the end of a paragraph, on a sheet of paper of their own.</summary>
    private const int FewestLines = 7;

    /// <summary>The page's margin, where the caution and the page's number stand, in points.</summary>
    private const double Margin = 55;

    private static readonly HashSet<Edition> Printed = [Edition.Student, Edition.Instructor, Edition.Key, Edition.Sheets];

    public static TheoryData<string> Lessons => [.. LessonCopies.All.Select(lesson => lesson.Slug)];

    [Theory, MemberData(nameof(Lessons))]
    public async Task Paper_OfALesson_HasNoPageOfAFewLinesAndNoHeadingAtItsEnd(string slug)
    {
        Paper paper = slug.Length % 2 == 0 ? Paper.A4 : Paper.Letter;
        // The sheet's key is the end of the lesson's key.
        foreach (Artefact artefact in (await OnPaperAsync(slug, paper)).Where(a => !a.Name.EndsWith(".sheet-1.key.html", StringComparison.Ordinal)))
        {
            using PdfDocument pdf = PdfDocument.Open(await printer.PrintAsync(artefact.Content, paper));
            foreach (Page page in pdf.GetPages())
            {
                List<List<Letter>> lines = Lines(page);
                string text = string.Join('\n', lines.Select(Text));
                Assert.True(lines.Count >= FewestLines, $"{artefact.Name}, page {page.Number} on {paper}, has only this:\n{text}");
                Assert.False(IsHeading(lines[^1]), $"{artefact.Name}, page {page.Number} on {paper}, ends with a heading: {Text(lines[^1])}");
                if (artefact.IsForStudents)
                    Assert.DoesNotContain("Hint", text, StringComparison.Ordinal);
            }
        }
    }

    /// <summary>The pages of a lesson that has been run; its own problems stand on its sheet.</summary>
    private static async Task<IReadOnlyList<Artefact>> OnPaperAsync(string slug, Paper paper)
    {
        LessonRun run = await LessonRun.OfAsync(slug);
        var outputs = run.Results.ToDictionary(result => result.Key, result => result.Value.Outputs);
        using var mathematics = new Mathematics();
        return LessonArtefacts.Of(new RanLesson(run.Lesson, outputs) { Sheets = [new RanSheet(1, 1, outputs)] }, mathematics, new ArtefactChoice(Printed, paper));
    }

    private static List<List<Letter>> Lines(Page page) =>
        [.. page.Letters.Where(letter => letter.StartBaseLine.Y > Margin && letter.Value.Trim().Length > 0)
            .GroupBy(letter => Math.Round(letter.StartBaseLine.Y / 3)).OrderByDescending(line => line.Key).Select(line => line.ToList())];

    private static bool IsHeading(List<Letter> line) =>
        line.TrueForAll(letter => letter.PointSize >= 11.5 && letter.FontName?.Contains("Bold", StringComparison.Ordinal) == true);

    private static string Text(List<Letter> line) => string.Concat(line.Select(letter => letter.Value));
}
