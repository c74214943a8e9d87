using System.Globalization;

namespace FlapAero.Files;

/// <summary>Lists that a person reads: the first of them, and how many more there are.</summary>
internal static class Listing
{
    /// <summary>More than this nobody reads; the rest are usually the same slip again.</summary>
    public const int Longest = 50;

    /// <summary>All lines of a short list; the first ones of a long list and <c>and 312 more</c>.</summary>
    public static IEnumerable<string> Capped(IReadOnlyList<string> lines) => lines.Count <= Longest
        ? lines
        : lines.Take(Longest).Append(More(lines.Count - Longest));

    /// <summary>The line in place of those that are not listed.</summary>
    public static string More(int count) => string.Create(CultureInfo.InvariantCulture, $"and {count} more");
}
