namespace FlapAero.Handouts.Lessons;

/// <summary>What a note to the instructor is for; it stands in the metadata of an instructor's cell as <c>note</c>.</summary>
public enum InstructorNote
{
    /// <summary>Objective, content and what to bring; the minutes of the sections are printed under it.</summary>
    Plan,

    /// <summary>Questions to ask aloud, with good answers.</summary>
    Questions,

    /// <summary>What to leave out when ten minutes are gone, cell by cell.</summary>
    LeaveOut,

    /// <summary>What to show in ten minutes before a flight, in order.</summary>
    BeforeFlight,

    /// <summary>Where the model stops being true.</summary>
    Limits,

    /// <summary>The usual wrong guess of the prediction right before it, and what to say to it.</summary>
    Guess,

    /// <summary>What the class sees at the ends of the values of the cell right before it, and why.</summary>
    Change,
}
