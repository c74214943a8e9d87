using System.Globalization;

namespace FlapAero.Handouts.Lessons;

/// <summary>Finds the lessons that were asked for by number, name or file.</summary>
internal static class LessonChoice
{
    /// <exception cref="UnknownLessonException">No lesson has one of the names.</exception>
    public static IReadOnlyList<LessonNotebook> Of(IReadOnlyList<LessonNotebook> notebooks, IReadOnlyList<string> names)
    {
        if (names.Count == 0)
            return notebooks;
        List<string> unknown = [.. names.Where(name => !notebooks.Any(n => IsNamed(n, name)))];
        if (unknown.Count > 0)
            throw new UnknownLessonException(unknown, [.. notebooks.Select(n => n.Slug)]);
        return [.. notebooks.Where(n => names.Any(name => IsNamed(n, name)))];
    }

    /// <summary>The lessons that a list names, in the list's order; all in their own where it names none.</summary>
    /// <exception cref="UnknownLessonException">No lesson has one of the names.</exception>
    public static IReadOnlyList<LessonNotebook> InOrder(IReadOnlyList<LessonNotebook> notebooks, IReadOnlyList<string> names) =>
        [.. Of(notebooks, names).OrderBy(notebook => names.Index().FirstOrDefault(name => IsNamed(notebook, name.Item)).Index)];

    private static bool IsNamed(LessonNotebook notebook, string name) =>
        name == notebook.Slug || name == notebook.Stem || name == notebook.FileName
        || int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number == notebook.Number;
}
