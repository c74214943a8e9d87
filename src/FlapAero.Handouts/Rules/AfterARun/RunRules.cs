using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules.AfterARun;

/// <summary>Every rule that needs a run. A new one is a class beside the others and a line here.</summary>
internal static class RunRules
{
    private static readonly IRunRule[] All =
    [
        new MistakesOfAnswers(),
        new AnswersInQuestions(),
        new PredictionsGivenAway(),
        new FiguresOfALesson(),
    ];

    public static IEnumerable<LessonFault> Faults(RanLesson lesson, IReadOnlyList<RanLesson> before) => All.SelectMany(rule => rule.Faults(lesson, before));
}
