using FlapAero.Handouts.Kernels;

namespace FlapAero.Handouts.Lessons;

/// <summary>A lesson and what each of its code cells put out.</summary>
internal sealed class RanLesson(LessonNotebook notebook, IReadOnlyDictionary<string, IReadOnlyList<CellOutput>> outputs)
{
    public LessonNotebook Notebook { get; } = notebook;

    /// <summary>Its problem sheets; the first has the lesson's own seed.</summary>
    public IReadOnlyList<RanSheet> Sheets { get; init; } = [];

    public IReadOnlyList<CellOutput> OutputsOf(LessonCell cell) => outputs.GetValueOrDefault(cell.Id, []);
}
