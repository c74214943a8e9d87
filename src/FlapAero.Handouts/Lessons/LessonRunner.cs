using System.Globalization;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts.Lessons;

/// <summary>Runs a lesson from its first cell to its last and stops at the first that fails.</summary>
internal static class LessonRunner
{
    public static async Task<RanLesson> RunAsync(
        LessonNotebook notebook, Func<ILessonKernel> newKernel, IProgress<HandoutProgress>? progress, CancellationToken cancellationToken)
    {
        var outputs = new Dictionary<string, IReadOnlyList<CellOutput>>(StringComparer.Ordinal);
        using ILessonKernel kernel = newKernel();
        int done = 0;
        progress?.Report(new HandoutProgress(notebook.Slug, 0, notebook.Cells.Count));
        foreach (LessonCell cell in notebook.Cells)
        {
            cancellationToken.ThrowIfCancellationRequested();
            if (cell.IsCode)
            {
                CellResult result = await kernel.RunAsync(cell.Source, cancellationToken).ConfigureAwait(false);
                if (result.Failure is { } failure)
                    throw new HandoutException($"{Where(notebook, cell)} failed: {failure}");
                if (cell.Role == CellRole.Check)
                    FindWrongCheck(notebook, cell, result);
                outputs.Add(cell.Id, result.Outputs);
            }
            progress?.Report(new HandoutProgress(notebook.Slug, ++done, notebook.Cells.Count));
        }
        return new RanLesson(notebook, outputs);
    }

    public static string Where(LessonNotebook notebook, LessonCell cell) =>
        string.Create(CultureInfo.InvariantCulture, $"Lesson {notebook.Number}, {notebook.Slug}, {cell}");

    /// <summary>The notebook holds the right answers: a check that does not pass is a fault of the lesson.</summary>
    private static void FindWrongCheck(LessonNotebook notebook, LessonCell cell, CellResult result)
    {
        string where = Where(notebook, cell);
        int checks = 0;
        foreach (CellOutput output in result.Outputs.Where(o => o.IsHtml))
            foreach (AngleSharp.Dom.IElement check in Fragment.Parse(output.Text, where).All(".check"))
            {
                checks++;
                if (check.GetAttribute("data-outcome") is var outcome && outcome != "passed")
                    throw new HandoutException($"{where} does not pass with the notebook's own answer (outcome {outcome ?? "missing"}); it says: \"{check.TextContent.ReplaceLineEndings(" ").Trim()}\"");
            }
        if (checks == 0)
            throw new HandoutException($"{where} checked nothing; a check puts out lesson.Check(...).");
    }
}
