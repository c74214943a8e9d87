using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;
using FlapAero.Notebooks;
using FlapAero.Tests;

namespace FlapAero.Handouts.Tests.Schools;

/// <summary>What a school puts on pages, and what its file chooses of the lessons.</summary>
public sealed class SchoolMarksTests : IDisposable
{
    private const string Svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" onload=\"alert(1)\"><script>alert(2)</script><rect width=\"1\" height=\"1\"/></svg>";

    private readonly string _root = Directory.CreateTempSubdirectory("flapaero-marks-").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public void ToHtml_School_ShowsItsTextsAsTextAndItsLogoAsAPicture()
    {
        File.WriteAllText(Path.Combine(_root, "logo.svg"), Svg);
        string page = Page(Marks("""{ "name": "<b>A</b>", "footLine": "foot & line", "caution": "<script>alert(3)</script>", "logo": "logo.svg" }"""));
        Assert.Contains("&lt;b&gt;A&lt;/b&gt;", page, StringComparison.Ordinal);
        Assert.Contains("<p class=\"school-foot\">foot &amp; line</p>", page, StringComparison.Ordinal);
        Assert.Contains(Caution.Text, page, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;alert(3)&lt;/script&gt;", page, StringComparison.Ordinal);
        Assert.Contains("<img class=\"logo\" src=\"data:image/svg+xml;base64,", page, StringComparison.Ordinal);
        Assert.Contains("@top-left { content: \"foot \\26  line \\3c b\\3e A", page, StringComparison.Ordinal);
        Assert.DoesNotContain("alert(2)", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_NoSchool_HasNoTraceOfOne() => Assert.DoesNotContain("school", Page(null)[Page(null).IndexOf("<body", StringComparison.Ordinal)..].Split("<script>")[0], StringComparison.Ordinal);

    [Fact]
    public void InputsOf_AnotherSchoolOrLogo_IsAnotherPage()
    {
        LessonNotebook lesson = LessonCopies.All[0];
        string Of(SchoolMarks? marks) => MadeLesson.InputsOf(lesson, LessonInput.Standard, Paper.A4, marks);
        string[] keys =
        [
            Of(null), Of(Marks("""{ "name": "A" }""")), Of(Marks("""{ "name": "B" }""")), Of(Marks("""{ "name": "A", "caution": "c" }""")),
            Of(Marks("""{ "name": "A", "footLine": "f" }""")), Of(WithLogo("<svg xmlns=\"http://www.w3.org/2000/svg\"/>")), Of(WithLogo(Svg)),
        ];
        Assert.Equal(keys.Length, keys.Distinct().Count());
        Assert.Equal(Of(Marks("""{ "name": "A" }""")), Of(Marks("""{ "name": "A", "paper": "a4" }""")));
    }

    [Fact]
    public void InOrder_ListOfASchool_ChoosesAndOrdersTheLessons()
    {
        IReadOnlyList<LessonNotebook> all = LessonCopies.All;
        Assert.Equal([7, 1, 4], LessonChoice.InOrder(all, ["7", "1", "4"]).Select(lesson => lesson.Number));
        Assert.Equal(all, LessonChoice.InOrder(all, []));
        Assert.Throws<UnknownLessonException>(() => LessonChoice.InOrder(all, ["99"]));
    }

    private SchoolMarks WithLogo(string svg)
    {
        File.WriteAllText(Path.Combine(_root, "logo.svg"), svg);
        return Marks("""{ "name": "A", "logo": "logo.svg" }""");
    }

    private SchoolMarks Marks(string json) => SchoolMarks.Of(School.Parse(json, "school.json"), Path.Combine(_root, "school.json"));

    private static string Page(SchoolMarks? school) => PageShell.ToHtml(new PageFrame("t", "index", "skip", "<h1>t</h1>", "", "<p>m</p>") { School = school });
}
