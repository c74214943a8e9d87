namespace FlapAero.Handouts.Exporting;

/// <summary>For whom a program is.</summary>
public enum ExportEdition
{
    /// <summary>The student: what the student's notebook holds, with answers to write in and checks that hold none.</summary>
    Student,

    /// <summary>The instructor: everything, with the right answers.</summary>
    Instructor,
}
