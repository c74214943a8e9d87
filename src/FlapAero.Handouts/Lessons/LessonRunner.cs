using System.Globalization;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts.Lessons;

/// <summary>Runs a lesson from its first cell to its last, then its problems again for each further sheet; stops at the first cell that fails.</summary>
internal sealed class LessonRunner(LessonNotebook notebook, LessonInput input, ILessonKernel kernel, Action<int, int> progress)
{
    private readonly LessonCell[] _problems = [.. notebook.Cells.Where(cell => cell.Role == CellRole.Problem)];
    private int _done;

    private int Steps => notebook.Cells.Count + (Math.Max(1, input.Sheets) - 1) * _problems.Length;

    /// <summary>Runs a lesson in a kernel of its own.</summary>
    /// <param name="notebook">The lesson.</param>
    /// <param name="input">The class's choices.</param>
    /// <param name="newKernel">Gives a fresh kernel.</param>
    /// <param name="progress">Told the steps done and the steps there are.</param>
    /// <param name="cancellationToken">Stops between cells, and waiting for one.</param>
    /// <exception cref="HandoutException">A cell failed, or a check did not pass.</exception>
    public static async Task<RanLesson> RunAsync(
        LessonNotebook notebook, LessonInput input, Func<ILessonKernel> newKernel, Action<int, int> progress, CancellationToken cancellationToken)
    {
        using ILessonKernel kernel = newKernel();
        return await new LessonRunner(notebook, input, kernel, progress).RunAsync(cancellationToken).ConfigureAwait(false);
    }

    public static string Where(LessonNotebook notebook, LessonCell cell) =>
        string.Create(CultureInfo.InvariantCulture, $"Lesson {notebook.Number}, {notebook.Slug}, {cell}");

    private async Task<RanLesson> RunAsync(CancellationToken cancellationToken)
    {
        LessonCell setup = notebook.Cells.First(cell => cell.Role == CellRole.Setup);
        progress(0, Steps);
        var outputs = new Dictionary<string, IReadOnlyList<CellOutput>>(StringComparer.Ordinal);
        foreach (LessonCell cell in notebook.Cells)
        {
            cancellationToken.ThrowIfCancellationRequested();
            if (cell.IsCode)
                outputs.Add(cell.Id, await RunAsync(cell, cell == setup ? input.Begun(cell.Source) : cell.Source, "", cancellationToken).ConfigureAwait(false));
            progress(++_done, Steps);
        }
        return new RanLesson(notebook, outputs) { Input = input, Sheets = await RunSheetsAsync(setup, outputs, cancellationToken).ConfigureAwait(false) };
    }

    private async Task<IReadOnlyList<RanSheet>> RunSheetsAsync(
        LessonCell setup, Dictionary<string, IReadOnlyList<CellOutput>> first, CancellationToken cancellationToken)
    {
        if (_problems.Length == 0)
            return [];
        var sheets = new List<RanSheet>();
        foreach (int seed in SheetSeeds.Of(input.Seed, input.Sheets))
        {
            int number = sheets.Count + 1;
            var outputs = new Dictionary<string, IReadOnlyList<CellOutput>>(StringComparer.Ordinal);
            string on = string.Create(CultureInfo.InvariantCulture, $" on sheet {number} (seed {seed})");
            if (number > 1)
                await RunAsync(setup, input.BegunAgain(seed), on, cancellationToken).ConfigureAwait(false);
            foreach (LessonCell cell in _problems)
            {
                cancellationToken.ThrowIfCancellationRequested();
                outputs.Add(cell.Id, number == 1 ? first[cell.Id] : await RunAsync(cell, cell.Source, on, cancellationToken).ConfigureAwait(false));
                if (number > 1)
                    progress(++_done, Steps);
            }
            sheets.Add(new RanSheet(number, seed, outputs));
        }
        return sheets;
    }

    private async Task<IReadOnlyList<CellOutput>> RunAsync(LessonCell cell, string source, string on, CancellationToken cancellationToken)
    {
        CellResult result = await kernel.RunAsync(source, cancellationToken).ConfigureAwait(false);
        if (result.Failure is { } failure)
            throw new HandoutException($"{Where(notebook, cell)}{on} failed: {failure}");
        if (cell.Role == CellRole.Check)
            FindWrongCheck(cell, result);
        return result.Outputs;
    }

    /// <summary>The notebook holds the right answers: a check that does not pass is a fault of the lesson.</summary>
    private void FindWrongCheck(LessonCell cell, CellResult result)
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
