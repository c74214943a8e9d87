using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Exporting;

/// <summary>The lines of a program, and from which cell each of them came.</summary>
internal sealed class ProgramLines
{
    private readonly List<(string Text, LessonCell? Cell)> _lines = [];

    public void Add(string text) => AddOf(null, text);

    public void AddOf(LessonCell? cell, string text) => _lines.AddRange(text.Split('\n').Select(line => (line, cell)));

    /// <summary>The cell of a line, counted from 1; null for the program's own lines.</summary>
    public LessonCell? CellAt(int line) => line >= 1 && line <= _lines.Count ? _lines[line - 1].Cell : null;

    public override string ToString() => string.Join('\n', _lines.Select(line => line.Text.TrimEnd())) + "\n";
}
