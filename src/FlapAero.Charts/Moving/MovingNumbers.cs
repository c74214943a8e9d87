namespace FlapAero.Charts;

/// <summary>
/// The numbers of a figure that moves, with the value that moves it in the first column: its lines at the first, the
/// starting and the last value, and its levels and marks at about ten values. What stands still is said once.
/// </summary>
internal static class MovingNumbers
{
    private const int MostRowsAValue = 5;
    private const int MostValues = 10;

    internal static IReadOnlyList<NumbersTable> Of(MovingFigure figure)
    {
        IReadOnlyList<(string Name, string Text)>[] notes = [.. figure.Frames.Select(frame => NumbersTable.Of(frame).Notes)];
        int[] places = [.. Enumerable.Range(0, notes.Max(note => note.Count))];
        bool Stands(int place) => notes.All(note => place < note.Count && note[place] == notes[0][place]);
        NumbersTable lines = LinesOf(figure, [.. places.Where(Stands).Select(place => notes[0][place])]);
        int[] moving = [.. places.Where(place => !Stands(place))];
        return moving.Length == 0 ? [lines] : [lines, PointsOf(figure, notes, moving)];
    }

    private static NumbersTable LinesOf(MovingFigure figure, IReadOnlyList<(string Name, string Text)> notes)
    {
        Figure first = figure.Frames[0];
        NumbersTable Lines(int i) => NumbersTable.Of(figure.Frames[i].Keeping([], []));
        bool stand = figure.Frames.All(frame => frame.Lines.Zip(first.Lines).All(pair =>
            pair.First.X.SequenceEqual(pair.Second.X) && pair.First.Y.SequenceEqual(pair.Second.Y)));
        if (stand) return new NumbersTable(Lines(0).Headings, Lines(0).Rows, notes);
        int[] chosen = [.. new[] { 0, figure.StartIndex, figure.Values.Count - 1 }.Distinct()];
        return new NumbersTable(
            [NumbersTable.Heading(figure.Control), .. Lines(0).Headings],
            [.. chosen.SelectMany(i => Some(Lines(i).Rows, MostRowsAValue).Select(row => (IReadOnlyList<string>)[At(figure, i), .. row]))], notes);
    }

    /// <summary>Each place is a column. Where what stands there changes its name, the name stands with the value.</summary>
    private static NumbersTable PointsOf(MovingFigure figure, IReadOnlyList<(string Name, string Text)>[] notes, int[] places)
    {
        string? NameOf(int place) => notes.Where(note => place < note.Count).Select(note => note[place].Name).Distinct().ToArray() is [var name] ? name : null;
        string Cell(int i, int place) => place >= notes[i].Count ? "–"
            : NameOf(place) is null ? $"{notes[i][place].Name}: {notes[i][place].Text}" : notes[i][place].Text;
        IEnumerable<int> chosen = Some([.. Enumerable.Range(0, notes.Length)], MostValues).Append(figure.StartIndex).Append(notes.Length - 1).Distinct().Order();
        return new NumbersTable(
            [NumbersTable.Heading(figure.Control), .. places.Select(place => NameOf(place) ?? "point")],
            [.. chosen.Select(i => (IReadOnlyList<string>)[At(figure, i), .. places.Select(place => Cell(i, place))])], []);
    }

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
