using System.Globalization;
using AngleSharp.Dom;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules.AfterARun;

/// <summary>A lesson is seen: a few figures, and one that the reader moves.</summary>
internal sealed class FiguresOfALesson : IRunRule
{
    public const int Fewest = 2, Most = 5;

    public IEnumerable<LessonFault> Faults(RanLesson lesson, IReadOnlyList<RanLesson> before)
    {
        if (!LessonRules.AsksSomething(lesson.Notebook))
            yield break;
        IElement[] figures = [.. lesson.Outputs.Values.SelectMany(outputs => outputs).SelectMany(output => output.Read.QuerySelectorAll("figure.plot:not(.picture)"))];
        if (figures.Length is < Fewest or > Most)
            yield return new LessonFault(lesson.Notebook.FileName, null,
                string.Create(CultureInfo.InvariantCulture, $"shows {figures.Length} figures"), string.Create(CultureInfo.InvariantCulture, $"allowed are {Fewest} to {Most}"));
        if (!figures.Any(figure => figure.QuerySelector(".plot-control") is not null))
            yield return new LessonFault(lesson.Notebook.FileName, null, "shows no figure that its reader moves", "needed is one: figure.Moving(axis, values, start, at)");
    }
}
