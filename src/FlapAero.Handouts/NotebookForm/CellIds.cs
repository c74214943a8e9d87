using System.Globalization;
using System.Text.RegularExpressions;

namespace FlapAero.Handouts.NotebookForm;

/// <summary>
/// Ids that a person can read in a diff and that stay when cells move. Editors draw random ones; here an id is made from
/// the cell's title once, and keeps.
/// </summary>
internal static partial class CellIds
{
    /// <summary>As long as nbformat allows.</summary>
    private const int Longest = 64;

    /// <summary>Why an id cannot stay, as the end of a sentence; null where it can.</summary>
    public static string? WhyNot(string? id, string title)
    {
        if (string.IsNullOrEmpty(id))
            return "has no id";
        if (id == Slug(title))
            return null;
        if (id.Length > Longest || !Readable().IsMatch(id))
            return $"has the id \"{id}\", which is not small letters, digits and single hyphens, at most 64";
        return Drawn().IsMatch(id) ? $"has the id \"{id}\", which looks drawn at random" : null;
    }

    /// <summary>An id from a cell's title that no other cell has, and that from now on none may take.</summary>
    public static string Claim(string title, HashSet<string> taken)
    {
        string wanted = Slug(title) is { Length: > 0 } slug ? slug : "cell";
        string id = wanted;
        for (int n = 2; !taken.Add(id); n++)
        {
            string end = string.Create(CultureInfo.InvariantCulture, $"-{n}");
            id = wanted[..Math.Min(wanted.Length, Longest - end.Length)].TrimEnd('-') + end;
        }
        return id;
    }

    internal static string Slug(string title) => Charts.Slug.Of(title, longest: Longest);

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$", RegexOptions.CultureInvariant)]
    private static partial Regex Readable();

    /// <summary>Hexadecimal of the usual lengths, a UUID, or one long word with digits amid its letters.</summary>
    [GeneratedRegex("^([0-9a-f]{8}|[0-9a-f]{12,}|[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}|(?=[a-z0-9]{8,}$)[a-z0-9]*([0-9][a-z]+[0-9]|[a-z][0-9]+[a-z])[a-z0-9]*)$", RegexOptions.CultureInvariant)]
    private static partial Regex Drawn();
}
