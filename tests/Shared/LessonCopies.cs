using AngleSharp.Html.Parser;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Tests;

/// <summary>The project's own lessons, and copies of them as students and other classes would have them.</summary>
internal static class LessonCopies
{
    private static readonly string Folder = RepositoryRoot.Path("notebooks");

    public static IReadOnlyList<LessonNotebook> All { get; } = LessonNotebook.ReadFolder(Folder);

    public static LessonNotebook Named(string slug) => All.Single(lesson => lesson.Slug == slug);

    /// <summary>Runs every code cell of a lesson, its source changed first, in a fresh kernel.</summary>
    public static async Task<IReadOnlyDictionary<string, CellResult>> RunAsync(LessonNotebook lesson, Func<LessonCell, string> source)
    {
        var results = new Dictionary<string, CellResult>();
        using var kernel = new InteractiveKernel();
        foreach (LessonCell cell in lesson.Cells.Where(cell => cell.IsCode))
            results.Add(cell.Id, await kernel.RunAsync(source(cell), TestContext.Current.CancellationToken));
        return results;
    }

    /// <summary>The lesson with its setup begun in another way, such as for another aeroplane.</summary>
    public static string Begun(LessonCell cell, string arguments) =>
        cell.Role == CellRole.Setup ? cell.Source.Replace("Lesson.Begin()", $"Lesson.Begin({arguments})", StringComparison.Ordinal) : cell.Source;

    /// <summary>Outcome and words of the one check that a cell put out.</summary>
    public static (string? Outcome, string Words) Check(CellResult result)
    {
        string html = string.Concat(result.Outputs.Select(output => output.ForInstructor));
        var check = new HtmlParser().ParseDocument(html).QuerySelectorAll(".check").Single();
        return (check.GetAttribute("data-outcome"), check.TextContent.Trim());
    }
}
