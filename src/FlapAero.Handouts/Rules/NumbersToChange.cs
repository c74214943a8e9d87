using System.Globalization;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules;

/// <summary>A number to change is tried on the page too, with values that show where it leads.</summary>
internal sealed class NumbersToChange : ILessonRule
{
    /// <summary>Fewer do not show whether a curve bends.</summary>
    public const int FewestValues = 4;

    public IEnumerable<LessonFault> Faults(LessonNotebook lesson) => lesson.Cells
        .Where(cell => cell.Role == CellRole.Change && cell.Values.Count < FewestValues)
        .Select(cell => new LessonFault(lesson.FileName, cell,
            string.Create(CultureInfo.InvariantCulture, $"has {cell.Values.Count} \"values\" to try on the page"),
            string.Create(CultureInfo.InvariantCulture, $"needed are {FewestValues} to 9 rising numbers in its flapaero metadata with \"label\" and \"unit\", its own number among them")));
}
