namespace FlapAero.Handouts.Exporting;

/// <summary>For whom a program is.</summary>
public enum ExportEdition
{
    /// <summary>The student: the student's own answers to write in, no instructor's cells, no problems (their code solves them).</summary>
    Student,

    /// <summary>The instructor: everything, with the right answers.</summary>
    Instructor,
}
