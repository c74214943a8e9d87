using FlapAero.Handouts.Kernels;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Lessons;

/// <summary>A lesson and what each of its code cells put out.</summary>
internal sealed class RanLesson(LessonNotebook notebook, IReadOnlyDictionary<string, IReadOnlyList<CellOutput>> outputs)
{
    public LessonNotebook Notebook { get; } = notebook;

    /// <summary>The choices it was run with.</summary>
    public LessonInput Input { get; init; } = LessonInput.Standard;

    /// <summary>What each cell with values to try put out with each other than its own: by its id, then by the number.</summary>
    public IReadOnlyDictionary<string, IReadOnlyDictionary<string, IReadOnlyList<CellOutput>>> Changes { get; init; } =
        new Dictionary<string, IReadOnlyDictionary<string, IReadOnlyList<CellOutput>>>();

    /// <summary>Its problem sheets, none with the lesson's own seed.</summary>
    public IReadOnlyList<RanSheet> Sheets { get; init; } = [];

    /// <summary>What each code cell put out, by its id.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<CellOutput>> Outputs { get; } = outputs;

    public IReadOnlyList<CellOutput> OutputsOf(LessonCell cell) => Outputs.GetValueOrDefault(cell.Id, []);

    /// <summary>What a cell put out with one of its values.</summary>
    public IReadOnlyList<CellOutput> OutputsOf(LessonCell cell, ChangedNumber value) =>
        value.IsOwn ? OutputsOf(cell) : Changes.GetValueOrDefault(cell.Id)?.GetValueOrDefault(value.Text) ?? [];

    /// <summary>The keys that a cell's checks and problems kept back, in their order.</summary>
    public IReadOnlyList<AnswerKey> KeysOf(LessonCell cell) => KeysIn(OutputsOf(cell));

    public static IReadOnlyList<AnswerKey> KeysIn(IReadOnlyList<CellOutput> outputs) => [.. outputs.Select(o => o.Kept?.Key).OfType<AnswerKey>()];

    /// <summary>The key of the check that follows an answer, or null where it kept none.</summary>
    public AnswerKey? KeyBehind(LessonCell answer) =>
        Notebook.Cells.SkipWhile(c => c != answer).Skip(1).FirstOrDefault() is { Role: CellRole.Check } check ? KeysOf(check).FirstOrDefault() : null;
}
