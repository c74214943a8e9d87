using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules;

/// <summary>A rule of lessons that is known without running one.</summary>
internal interface ILessonRule
{
    /// <summary>Each place where a lesson breaks the rule.</summary>
    IEnumerable<LessonFault> Faults(LessonNotebook lesson);
}
