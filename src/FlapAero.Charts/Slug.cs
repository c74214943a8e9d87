using System.Globalization;
using System.Text;

namespace FlapAero.Charts;

/// <summary>Names from words: small ASCII letters and digits with single hyphens.</summary>
internal static class Slug
{
    /// <param name="words">Any words; an accent is dropped, what is neither letter nor digit becomes a hyphen.</param>
    /// <param name="otherwise">The name where nothing is left of the words.</param>
    /// <param name="longest">The most characters of it.</param>
    public static string Of(string words, string otherwise = "", int longest = int.MaxValue)
    {
        var slug = new StringBuilder();
        foreach (char c in words.Normalize(NormalizationForm.FormD).ToLowerInvariant())
            if (char.IsAsciiLetterOrDigit(c))
                slug.Append(c);
            else if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark && slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
        return slug.ToString(0, Math.Min(slug.Length, longest)).Trim('-') is { Length: > 0 } name ? name : otherwise;
    }
}
