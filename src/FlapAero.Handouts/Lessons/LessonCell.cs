namespace FlapAero.Handouts.Lessons;

/// <summary>One cell of a lesson, as its notebook holds it.</summary>
public sealed class LessonCell
{
    internal LessonCell(string id, CellRole role, string title, bool isCode, string source)
    {
        Id = id;
        Role = role;
        Title = title;
        IsCode = isCode;
        Source = source;
    }

    /// <summary>The cell's stable id in its notebook.</summary>
    public string Id { get; }

    /// <summary>What the cell is for.</summary>
    public CellRole Role { get; }

    /// <summary>The cell's title, from its metadata.</summary>
    public string Title { get; }

    /// <summary>Whether the cell is code; else it is Markdown.</summary>
    public bool IsCode { get; }

    /// <summary>The cell's text, with LF line ends.</summary>
    public string Source { get; }

    /// <summary>What is to be written in or changed (commit, answer and change cells), or empty.</summary>
    public string Label { get; internal init; } = "";

    /// <summary>The unit of what is written in or changed, or empty.</summary>
    public string Unit { get; internal init; } = "";

    /// <summary>The text of an answer cell in the student's copy, or empty.</summary>
    public string StudentSource { get; internal init; } = "";

    /// <summary>The minutes of the section that the cell begins, or 0.</summary>
    public int Minutes { get; internal init; }

    /// <summary>What an instructor's cell is for, or null.</summary>
    public InstructorNote? Note { get; internal init; }

    /// <summary>The cells that a note names, in its order, with their minutes there.</summary>
    internal IReadOnlyList<TimedCell> Names { get; init; } = [];

    /// <summary>The cell with each of the values that a page lets its reader try; none where it has none.</summary>
    internal IReadOnlyList<ChangedNumber> Values { get; init; } = [];

    /// <summary>These values as the notebook writes them.</summary>
    internal string ValuesText => string.Join(' ', Values.Select(value => value.Text));

    /// <summary>How messages name the cell.</summary>
    public override string ToString() => $"cell \"{Title}\" ({Id})";
}
