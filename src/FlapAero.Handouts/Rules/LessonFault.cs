using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules;

/// <summary>One thing about a lesson that its author mends.</summary>
/// <param name="File">The notebook's file name.</param>
/// <param name="Cell">The cell; null where it is the lesson as a whole.</param>
/// <param name="Found">What was found, with its value.</param>
/// <param name="Allowed">What is allowed or needed, and how to mend it.</param>
internal sealed record LessonFault(string File, LessonCell? Cell, string Found, string Allowed)
{
    /// <summary>All of it in one line.</summary>
    public string Words => Cell is null ? $"{File} {Found}; {Allowed}." : $"{File}, {Cell} {Found}; {Allowed}.";
}
