using System.Text.RegularExpressions;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules;

/// <summary>
/// A number with a unit is computed where it is explained: typed, it is wrong with the next aeroplane and in the next unit. A scenario
/// and the question before an answer may give one. An angle or a share may be the trade's own rule, such as a point 45° behind the wing,
/// and is left to the author.
/// </summary>
internal sealed partial class TypedNumbers : ILessonRule
{
    public IEnumerable<LessonFault> Faults(LessonNotebook lesson) =>
        from cell in lesson.Cells.Where((cell, at) => cell.Role is CellRole.Explain or CellRole.Compute && !IsQuestion(lesson, at))
        from text in ProseOfACell.Texts(cell)
        from found in Number().Matches(text).Select(match => match.Value).Distinct()
        select new LessonFault(lesson.FileName, cell, $"has the typed number \"{found}\" in its prose",
            "a number with a unit is computed there: put it into lesson.Say as {value}, or give it in words where it is a round one of a rule");

    private static bool IsQuestion(LessonNotebook lesson, int at) => at + 1 < lesson.Cells.Count && lesson.Cells[at + 1].Role == CellRole.Answer;

    [GeneratedRegex(
        @"(?<![\w.,])[0-9]+(?:[.,][0-9]+)*[ \u00A0\u202F]?(?:knots|kt|ft/min|ft|feet|metres|meters|km/h|m/s|mph|nm|km|m|lbf|lb|kg|rpm|kW|hp|hPa|°C|minutes|seconds|min|s|A|Ah|V|W)(?![\w°/])",
        RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}
