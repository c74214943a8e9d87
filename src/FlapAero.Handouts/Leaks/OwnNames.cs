using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts.Leaks;

/// <summary>
/// The names that a page gives to its fields and headings. They are made of titles, and nobody reads them:
/// "answer-a-tighter-turn"
/// does not say that the answer is a. Every other name is searched, for it could carry an answer.
/// </summary>
internal static class OwnNames
{
    private static readonly string[] References = ["for", "name", "aria-describedby", "aria-labelledby", "aria-controls"];

    /// <summary>Takes the page's own names off a part of it, and what refers to them.</summary>
    public static void RemoveFrom(IElement part)
    {
        HashSet<string> own = [.. Fields(part).Concat(Headings(part))];
        foreach (IElement element in part.QuerySelectorAll("*"))
        {
            if (element.Id is { } id && own.Contains(id))
                element.RemoveAttribute("id");
            foreach (string reference in References)
                if (element.GetAttribute(reference) is { } names && names.Split(' ').All(own.Contains))
                    element.RemoveAttribute(reference);
        }
    }

    /// <summary>A field and what belongs to it, named after a problem's or a check's cell.</summary>
    private static IEnumerable<string> Fields(IElement part) =>
        part.QuerySelectorAll("form.try").Select(form => form.QuerySelector("input")).OfType<IElement>().SelectMany(TryIt.NamesOf);

    /// <summary>A heading whose name repeats its words.</summary>
    private static IEnumerable<string> Headings(IElement part) => part.QuerySelectorAll("[id]").OfType<IHtmlHeadingElement>()
        .Where(heading => Markup.Slug(heading.TextContent) is var slug && (heading.Id == slug || IsNumbered(heading.Id!, slug)))
        .Select(heading => heading.Id!);

    /// <summary>Whether a name is another with the number that tells it from the first of its kind.</summary>
    private static bool IsNumbered(string name, string first) =>
        name.StartsWith(first + "-", StringComparison.Ordinal) && name[(first.Length + 1)..].All(char.IsAsciiDigit);
}
