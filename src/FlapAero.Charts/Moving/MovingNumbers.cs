namespace FlapAero.Charts;

/// <summary>
/// The numbers of a figure that moves, at the first, the starting and the last value of what moves it: what one reads
/// off it, and its lines. What stands still is said once.
/// </summary>
internal static class MovingNumbers
{
    private const int MostRowsAValue = 5;

    internal static NumbersTable ReadingsOf(MovingFigure figure)
    {
        int[] chosen = Chosen(figure);
        IReadOnlyList<Reading>[] readings = [.. chosen.Select(i => figure.Frames[i].Readings)];
        return new NumbersTable(
            ["reading", .. chosen.Select(i => $"at {figure.Texts[i]}")],
            [.. Names(readings).Select(name => (IReadOnlyList<string>)[name.Text, .. readings.Select(frame => ValueOf(frame, name.Text, name.Place))])]);
    }

    internal static NumbersTable LinesOf(MovingFigure figure)
    {
        Figure first = figure.Frames[0];
        NumbersTable Lines(int i) => NumbersTable.Of(figure.Frames[i]);
        bool stand = figure.Frames.All(frame => frame.Lines.Zip(first.Lines).All(pair =>
            pair.First.X.SequenceEqual(pair.Second.X) && pair.First.Y.SequenceEqual(pair.Second.Y)));
        return stand ? Lines(0) : new NumbersTable(
            [NumbersTable.Heading(figure.Control), .. Lines(0).Headings],
            [.. Chosen(figure).SelectMany(i => Some(Lines(i).Rows, MostRowsAValue).Select(row => (IReadOnlyList<string>)[At(figure, i), .. row]))]);
    }

    private static int[] Chosen(MovingFigure figure) => [.. new[] { 0, figure.StartIndex, figure.Values.Count - 1 }.Distinct()];

    /// <summary>All names in the order in which they first come; two marks may have one name, so each has its place among its like.</summary>
    private static IEnumerable<(string Text, int Place)> Names(IEnumerable<IReadOnlyList<Reading>> frames) => frames
        .SelectMany(frame => frame.Select((reading, i) => (reading.Name, frame.Take(i).Count(before => before.Name == reading.Name)))).Distinct();

    private static string ValueOf(IReadOnlyList<Reading> frame, string name, int place) =>
        frame.Where(reading => reading.Name == name).Skip(place).FirstOrDefault()?.Value ?? "–";

    /// <summary>The value alone: its unit stands in the heading.</summary>
    private static string At(MovingFigure figure, int i) =>
        QuantityText.Of(figure.Values[i], NumbersTable.StepPattern(figure.Values));

    /// <summary>Every second or third of a list that is too long, and so on: round values stay round.</summary>
    private static IEnumerable<T> Some<T>(IReadOnlyList<T> all, int most)
    {
        int step = (all.Count + most - 1) / most;
        return all.Where((_, i) => i % step == 0);
    }
}
