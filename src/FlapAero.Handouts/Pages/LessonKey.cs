using AngleSharp.Dom;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Pages;

/// <summary>Takes the answer key out of what checks and problems put out.</summary>
internal static class LessonKey
{
    /// <summary>What carries a key.</summary>
    public const string Carrier = "[data-key]";

    /// <summary>The keys in a cell's outputs, in their order.</summary>
    public static IReadOnlyList<AnswerKey> In(IReadOnlyList<CellOutput> outputs, string where) =>
        [.. outputs.Where(o => o.IsHtml).SelectMany(o => Fragment.Parse(o.Text, where).All(Carrier)).Select(Of)];

    public static AnswerKey Of(IElement carrier) => AnswerKey.Parse(carrier.GetAttribute("data-key")!);

    /// <summary>The key of the check that follows an answer, or null where it put none out.</summary>
    public static AnswerKey? Behind(RanLesson lesson, LessonCell answer)
    {
        IReadOnlyList<LessonCell> cells = lesson.Notebook.Cells;
        LessonCell? next = cells.SkipWhile(c => c != answer).Skip(1).FirstOrDefault();
        return next is { Role: CellRole.Check } ? In(lesson.OutputsOf(next), LessonRunner.Where(lesson.Notebook, next)).FirstOrDefault() : null;
    }
}
