namespace FlapAero.Handouts;

/// <summary>What is made of a lesson, each for somebody else.</summary>
public enum Edition
{
    /// <summary>The student's page: no answers, no notes.</summary>
    Student,

    /// <summary>The instructor's page: everything.</summary>
    Instructor,

    /// <summary>The answer key: every answer with its tolerance, and nothing else.</summary>
    Key,

    /// <summary>The problem sheets, each with a key of its own.</summary>
    Sheets,

    /// <summary>The student's notebook: no answers, no notes.</summary>
    Notebook,
}
