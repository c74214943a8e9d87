using FlapAero.Handouts.Kernels;

namespace FlapAero.Handouts.Lessons;

/// <summary>A lesson and what each of its code cells put out.</summary>
internal sealed class RanLesson(LessonNotebook notebook, IReadOnlyDictionary<string, IReadOnlyList<CellOutput>> outputs)
{
    public LessonNotebook Notebook { get; } = notebook;

    /// <summary>The choices it was run with.</summary>
    public LessonInput Input { get; init; } = LessonInput.Standard;

    /// <summary>Its problem sheets; the first has the lesson's own seed.</summary>
    public IReadOnlyList<RanSheet> Sheets { get; init; } = [];

    /// <summary>What each code cell put out, by its id.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<CellOutput>> Outputs { get; } = outputs;

    public IReadOnlyList<CellOutput> OutputsOf(LessonCell cell) => Outputs.GetValueOrDefault(cell.Id, []);
}
