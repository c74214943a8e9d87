using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Notebooks;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>Each formula of each lesson can be heard: its text holds words and numbers alone.</summary>
[Trait("Speed", "slow")]
public sealed partial class FormulaTests
{
    public static TheoryData<string> Lessons => [.. LessonCopies.All.Select(lesson => lesson.Slug)];

    [Theory, MemberData(nameof(Lessons))]
    public async Task Formula_OfALesson_IsSaidInWords(string slug)
    {
        LessonRun run = await LessonRun.OfAsync(slug);
        using var mathematics = new Mathematics();

        string page = string.Concat(run.Lesson.Cells.Where(cell => cell.Role != CellRole.Setup)
            .SelectMany(cell => cell.IsCode
                ? run.Results[cell.Id].Outputs.Select(output => Fragment.ForInstructor(output, slug))
                : [Fragment.Parse(LessonMarkdown.ToHtml(cell.Source), slug)])
            .Select(part => part.ToHtml(new IdRegistry(), mathematics)));

        IElement[] formulas = [.. new HtmlParser().ParseDocument(page).QuerySelectorAll("math")];
        Assert.NotEmpty(formulas);
        Assert.All(formulas, formula => Assert.Matches(Words(), formula.GetAttribute("alttext")));
    }

    [GeneratedRegex("^[A-Za-z0-9][A-Za-z0-9 ,.']*$", RegexOptions.CultureInvariant)]
    private static partial Regex Words();
}
