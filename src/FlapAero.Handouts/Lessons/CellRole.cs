namespace FlapAero.Handouts.Lessons;

/// <summary>What a cell is for in a lesson; it stands in the cell's metadata, never in its text.</summary>
public enum CellRole
{
    /// <summary>The title, what the student can do afterwards, what is taken for granted, the time, the caution.</summary>
    Opening,

    /// <summary>The references and the start of the lesson; on no page.</summary>
    Setup,

    /// <summary>An invented place, day and aeroplane.</summary>
    Scenario,

    /// <summary>Prose, or code that says prose with numbers in it.</summary>
    Explain,

    /// <summary>A question to commit to before computing.</summary>
    Predict,

    /// <summary>The place for the prediction.</summary>
    Commit,

    /// <summary>One idea computed.</summary>
    Compute,

    /// <summary>The student's own answer.</summary>
    Answer,

    /// <summary>The test of the answer.</summary>
    Check,

    /// <summary>One marked number to change.</summary>
    Change,

    /// <summary>A problem drawn from a seed.</summary>
    Problem,

    /// <summary>For the instructor alone.</summary>
    Instructor,

    /// <summary>The sources by key.</summary>
    Sources,
}
