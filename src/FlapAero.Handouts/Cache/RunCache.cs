using System.Text.Json;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Cache;

/// <summary>Keeps what lessons put out, so that a lesson is run again only when its code, its inputs or this build have changed.</summary>
internal sealed class RunCache(ContentCache cache)
{
    /// <summary>The lesson as it ran before, or null.</summary>
    public RanLesson? Find(LessonNotebook notebook, LessonInput input)
    {
        if (cache.Find(KeyOf(notebook, input)) is not { } content)
            return null;
        try
        {
            return JsonSerializer.Deserialize<Run>(content) is { } run
                ? new RanLesson(notebook, Outputs(run.Cells))
                {
                    Input = input,
                    Changes = run.Changes.ToDictionary(c => c.Id, c => (IReadOnlyDictionary<string, IReadOnlyList<CellOutput>>)Outputs(c.Values), StringComparer.Ordinal),
                    Sheets = [.. run.Sheets.Select(s => new RanSheet(s.Number, s.Seed, Outputs(s.Cells)))],
                }
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    public void Keep(RanLesson lesson, LessonInput input) => cache.Keep(KeyOf(lesson.Notebook, input), JsonSerializer.SerializeToUtf8Bytes(
        new Run(Cells(lesson.Outputs), [.. lesson.Changes.Select(c => new Change(c.Key, Cells(c.Value)))], [.. lesson.Sheets.Select(s => new Sheet(s.Number, s.Seed, Cells(s.Outputs)))])));

    /// <summary>A run depends on the code cells alone: new prose makes new pages of the old run.</summary>
    private static string KeyOf(LessonNotebook notebook, LessonInput input)
    {
        ContentKey key = new ContentKey("run").With(Build.Id).With(input).With(input.Sheets);
        foreach (LessonCell cell in notebook.Cells.Where(c => c.IsCode))
            key.WithRunOf(cell);
        return key + ".run";
    }

    private static List<Cell> Cells(IReadOnlyDictionary<string, IReadOnlyList<CellOutput>> outputs) =>
        [.. outputs.Select(o => new Cell(o.Key, [.. o.Value.Select(KernelMessages.Output.Of)]))];

    private static Dictionary<string, IReadOnlyList<CellOutput>> Outputs(IReadOnlyList<Cell> cells) => cells.ToDictionary(
        c => c.Id, c => (IReadOnlyList<CellOutput>)[.. c.Outputs.Select(o => o.ToCellOutput())], StringComparer.Ordinal);

    private sealed record Run(IReadOnlyList<Cell> Cells, IReadOnlyList<Change> Changes, IReadOnlyList<Sheet> Sheets);

    private sealed record Change(string Id, IReadOnlyList<Cell> Values);

    private sealed record Sheet(int Number, int Seed, IReadOnlyList<Cell> Cells);

    private sealed record Cell(string Id, IReadOnlyList<KernelMessages.Output> Outputs);
}
