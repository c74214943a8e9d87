using System.Text.RegularExpressions;
using FlapAero.Charts;

namespace FlapAero.Notebooks;

/// <summary>Words as Markdown for a student's notebook, and without Markdown for a verdict.</summary>
internal static partial class MarkdownText
{
    /// <summary>The Markdown, its values escaped so that none of them becomes markup.</summary>
    public static string Of(Words words) => words.Join(literal => literal, value => Special().Replace(value, @"\$0")).Trim();

    /// <summary>The words alone: emphasis and dollar signs gone, TeX left as it stands.</summary>
    public static string Plain(Words words) => Marks().Replace(words.ToString(), "").Trim();

    [GeneratedRegex(@"[\\*_`\[\]<>$]", RegexOptions.CultureInvariant)]
    private static partial Regex Special();

    [GeneratedRegex(@"[*`$]", RegexOptions.CultureInvariant)]
    private static partial Regex Marks();
}
