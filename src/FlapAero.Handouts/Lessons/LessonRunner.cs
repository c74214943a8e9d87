using System.Globalization;
using FlapAero.Handouts.Kernels;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Lessons;

/// <summary>Runs a lesson from its first cell to its last, then its problems again for each sheet; stops at the first cell that fails.</summary>
internal sealed class LessonRunner(LessonNotebook notebook, LessonInput input, ILessonKernel kernel, Action<int, int> progress)
{
    /// <summary>Sheets count from 1.</summary>
    private const int OfTheLesson = 0;

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
        bool hasProblems = notebook.Cells.Any(cell => cell.Role == CellRole.Problem);
        int[] seeds = hasProblems ? [.. SheetSeeds.Of(input.Seed, input.Sheets)] : [];
        Step[] steps = [.. Steps(seeds)];
        kernel.Expect([.. steps.Where(step => step.Cell.IsCode).Select(step => step.Source)]);
        var outputs = new Dictionary<string, IReadOnlyList<CellOutput>>(StringComparer.Ordinal);
        Dictionary<string, IReadOnlyList<CellOutput>>[] ofSheets = [.. seeds.Select(_ => new Dictionary<string, IReadOnlyList<CellOutput>>(StringComparer.Ordinal))];
        var changes = notebook.Cells.Where(cell => cell.Values.Count > 0).ToDictionary(
            cell => cell.Id, _ => new Dictionary<string, IReadOnlyList<CellOutput>>(StringComparer.Ordinal), StringComparer.Ordinal);
        int done = 0, all = steps.Count(step => step.IsCounted);
        progress(done, all);
        foreach (Step step in steps)
        {
            cancellationToken.ThrowIfCancellationRequested();
            IReadOnlyList<CellOutput> made = step.Cell.IsCode ? await RunAsync(step, cancellationToken).ConfigureAwait(false) : [];
            if (step.Value is { } value)
                changes[step.Cell.Id].Add(value.Text, made);
            // What the setup puts out draws figures in a notebook; a page has its own.
            else if (step.Cell.IsCode && step.Sheet == OfTheLesson && step.Cell.Role != CellRole.Setup)
                outputs.Add(step.Cell.Id, made);
            if (step.Sheet != OfTheLesson && step.Cell.Role == CellRole.Problem)
                ofSheets[step.Sheet - 1].Add(step.Cell.Id, made);
            if (step.IsCounted)
                progress(++done, all);
        }
        return new RanLesson(notebook, outputs)
        {
            Input = input,
            Changes = changes.ToDictionary(c => c.Key, c => (IReadOnlyDictionary<string, IReadOnlyList<CellOutput>>)c.Value, StringComparer.Ordinal),
            Sheets = [.. seeds.Select((seed, n) => new RanSheet(n + 1, seed, ofSheets[n]))],
        };
    }

    /// <summary>
    /// All cells in the order in which they run, known beforehand. The lesson comes first; each sheet begins anew and has the problems.
    /// </summary>
    private IEnumerable<Step> Steps(int[] seeds)
    {
        LessonCell setup = notebook.Cells.First(cell => cell.Role == CellRole.Setup);
        foreach (LessonCell cell in notebook.Cells)
        {
            // The cell's own number comes last: later cells take what it leaves.
            foreach (ChangedNumber value in cell.Values.Where(value => !value.IsOwn))
                yield return new Step(cell, value.Source, OfTheLesson, $" with {value.Text}", value);
            yield return new Step(cell, cell == setup ? input.Begun(cell.Source) : cell.Source, OfTheLesson, "");
        }
        foreach ((int n, int seed) in seeds.Index())
        {
            string on = string.Create(CultureInfo.InvariantCulture, $" on sheet {n + 1} (seed {seed})");
            yield return new Step(setup, input.BegunAgain(seed), n + 1, on);
            foreach (LessonCell cell in notebook.Cells.Where(cell => cell.Role == CellRole.Problem))
                yield return new Step(cell, cell.Source, n + 1, on);
        }
    }

    private async Task<IReadOnlyList<CellOutput>> RunAsync(Step step, CancellationToken cancellationToken)
    {
        CellResult result = await kernel.RunAsync(step.Source, cancellationToken).ConfigureAwait(false);
        if (result.Failure is { } failure)
            throw new HandoutException($"{Where(notebook, step.Cell)}{step.On} failed: {failure}");
        if (step.Cell.Role == CellRole.Check)
            FindWrongCheck(step.Cell, result);
        return result.Outputs;
    }

    /// <summary>The notebook holds the right answers: a check that does not pass is a fault of the lesson.</summary>
    private void FindWrongCheck(LessonCell cell, CellResult result)
    {
        KeyOutput[] checks = [.. result.Outputs.Select(o => o.Kept).OfType<KeyOutput>().Where(kept => kept.Outcome is not null)];
        if (checks.FirstOrDefault(check => check.Outcome != CheckOutcome.Passed) is { } wrong)
            throw new HandoutException($"{Where(notebook, cell)} does not pass with the notebook's own answer (outcome {wrong.Outcome!.Value.ToString().ToLowerInvariant()}); it says: \"{wrong.Words.ReplaceLineEndings(" ").Trim()}\"");
        if (checks.Length == 0)
            throw new HandoutException($"{Where(notebook, cell)} checked nothing; a check puts out lesson.Check(...).");
    }

    /// <summary>One run of one cell.</summary>
    /// <param name="Cell">The cell.</param>
    /// <param name="Source">What is run of a code cell.</param>
    /// <param name="Sheet">The sheet it is run for, from 1; 0 for the lesson itself.</param>
    /// <param name="On">The sheet or the value in words, for a message; empty for the lesson itself.</param>
    /// <param name="Value">The value that the cell is run with, where it is not its own.</param>
    private sealed record Step(LessonCell Cell, string Source, int Sheet, string On, ChangedNumber? Value = null)
    {
        /// <summary>Whether it is one of the lesson's cells or a problem; a new beginning for a sheet and another value are neither.</summary>
        public bool IsCounted => Value is null && (Sheet == OfTheLesson || Cell.Role == CellRole.Problem);
    }
}
