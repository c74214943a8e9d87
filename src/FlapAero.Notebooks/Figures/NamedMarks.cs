using FlapAero.Charts;

namespace FlapAero.Notebooks;

/// <summary>Names in a figure whose horizontal axis only counts: each mark stands at the next whole number.</summary>
internal static class NamedMarks
{
    /// <summary>The figure with the marks in their order.</summary>
    public static Figure MarkedInOrder(this Figure figure, IEnumerable<(string Name, double Y)> marks, int first = 1) =>
        marks.Index().Aggregate(figure, (marked, mark) => marked.Mark(mark.Item.Name, first + mark.Index, mark.Item.Y));
}
