using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules.AfterARun;

/// <summary>A rule of lessons that is known only from what the lessons put out.</summary>
internal interface IRunRule
{
    /// <summary>Each place where a lesson breaks the rule.</summary>
    /// <param name="lesson">The lesson, run as its notebook has it.</param>
    /// <param name="before">The lessons that a student has read before, in their order.</param>
    IEnumerable<LessonFault> Faults(RanLesson lesson, IReadOnlyList<RanLesson> before);
}
