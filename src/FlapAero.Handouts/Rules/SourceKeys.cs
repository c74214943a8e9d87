using System.Text.RegularExpressions;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules;

/// <summary>A source is named by a key, and each key stands once in docs/references.md, which this assembly carries.</summary>
internal sealed partial class SourceKeys : ILessonRule
{
    private static readonly Lazy<IReadOnlySet<string>> Keys = new(Read);

    public static IReadOnlySet<string> Known => Keys.Value;

    public IEnumerable<LessonFault> Faults(LessonNotebook lesson) =>
        from cell in lesson.Cells
        from text in ProseOfACell.Texts(cell)
        from key in Key().Matches(text).Select(match => match.Groups["key"].Value).Distinct()
        where !Known.Contains(key)
        select new LessonFault(lesson.FileName, cell, $"names the source [{key}], which docs/references.md does not hold",
            $"allowed are its keys{Nearest(key)}; add the source there first, or call it common practice");

    private static string Nearest(string key) =>
        Known.Where(known => known[0] == key[0]).Order(StringComparer.Ordinal).Take(6).ToArray() is { Length: > 0 } near ? $", such as {string.Join(", ", near)}" : "";

    private static HashSet<string> Read()
    {
        using Stream stream = typeof(SourceKeys).Assembly.GetManifestResourceStream("references.md")!;
        using var reader = new StreamReader(stream);
        return [.. Heading().Matches(reader.ReadToEnd()).Select(match => match.Groups["key"].Value)];
    }

    /// <summary>A key in brackets that is no link: small letters, digits and hyphens.</summary>
    [GeneratedRegex(@"(?<![\w\]!\\])\[(?<key>[a-z][a-z0-9]*(?:-[a-z0-9]+)+)\](?!\()", RegexOptions.CultureInvariant)]
    private static partial Regex Key();

    [GeneratedRegex(@"^## \[(?<key>[^\]]+)\]", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex Heading();
}
