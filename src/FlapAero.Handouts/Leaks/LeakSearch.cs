using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using FlapAero.Handouts.Pages;
using FlapAero.Notebooks;
using FlapAero.Notebooks.Seals;

namespace FlapAero.Handouts.Leaks;

/// <summary>
/// Searches what students get for what they must not get. Three rules: in an answer's own part of a file no number may pass
/// as the answer; anywhere in the file the answer with its unit may stand only where the lesson itself says it (a table
/// that a problem asks to be read is content); and no sentence and no line of code that is kept from students may stand
/// anywhere.
/// </summary>
internal static partial class LeakSearch
{
    /// <summary>What leaks in an artefact, a line each; nothing where all is well.</summary>
    public static IReadOnlyList<string> In(Artefact artefact, Secrets secrets) =>
        artefact.Name.EndsWith(".ipynb", StringComparison.Ordinal) ? InNotebook(artefact, secrets) : InPage(artefact, secrets);

    /// <summary>What leaks in bare text, such as that of a PDF: the second and third rule.</summary>
    public static IReadOnlyList<string> InText(string name, string text, Secrets secrets)
    {
        var leaks = new List<string>();
        string normal = ArtefactText.Normal(text);
        leaks.AddRange(secrets.Words.Where(words => normal.Contains(words, StringComparison.Ordinal)).Select(words => $"{name} says \"{words}\""));
        var numbers = new WrittenNumbers(text);
        Lazy<WrittenNumbers> toldNumbers = new(() => new(secrets.Told)), tried = new(() => new(secrets.Tried));
        foreach (AnswerKey key in secrets.Keys.Where(k => k.Value is not null))
        {
            IReadOnlyList<UnitSpelling> units = UnitsOf(key);
            string[] written = [.. Written(numbers, key, units).Distinct()];
            HashSet<string> told = written.Length == 0 ? [] : [.. Written(toldNumbers.Value, key, units)];
            if (written.Length > 0 && (key.Question.Length > 0 || secrets.HasOwnAeroplane))
                told.UnionWith(Written(tried.Value, key, units).Where(n => key.Question.Length > 0 || n.Count(char.IsAsciiDigit) <= 2));
            leaks.AddRange(written.Where(n => !told.Contains(n)).Select(n => $"{name} has the answer of \"{key.What}\": {n}"));
        }
        return leaks;
    }

    private static List<string> InPage(Artefact artefact, Secrets secrets)
    {
        using IHtmlDocument page = new HtmlParser().ParseDocument(ArtefactText.Own(artefact.Content));
        var leaks = new List<string>(InText(artefact.Name, ArtefactText.Of(page), secrets));
        foreach (AnswerKey key in secrets.Keys)
            foreach (IElement form in page.QuerySelectorAll("form.try").Where(f => f.GetAttribute("data-seal") == key.Seal))
            {
                IElement part = (IElement)(form.Closest(".cell") ?? form).Clone();
                part.QuerySelector("form.try")!.RemoveAttribute("data-seal");
                OwnNames.RemoveFrom(part);
                leaks.AddRange(InOwnPart(artefact.Name, ArtefactText.Of(part), key));
                if (key.Choices.Count > 0 && part.QuerySelectorAll(".options > li").Select(Outline).Distinct().Skip(1).Any())
                    leaks.Add($"{artefact.Name} marks one option of \"{key.What}\"");
            }
        return leaks;
    }

    private static List<string> InNotebook(Artefact artefact, Secrets secrets)
    {
        JsonNode root = JsonNode.Parse(artefact.Content)!;
        var leaks = new List<string>(InText(artefact.Name, ArtefactText.Of(root), secrets));
        List<JsonObject> cells = [.. root["cells"]!.AsArray().Select(c => c!.AsObject())];
        foreach (AnswerKey key in secrets.Keys)
        {
            int check = cells.FindIndex(c => ArtefactText.Of(c["source"]).Contains(DecodedStart(key), StringComparison.Ordinal));
            if (check < 0)
                continue;
            // A check, the answer before it, and a problem's question before that.
            int first = key.Question.Length > 0 ? check - 2 : check - 1;
            leaks.AddRange(InOwnPart(artefact.Name, string.Concat(cells.Skip(first).Take(check - first + 1).Select(c => WithoutSeal(c, key))), key));
        }
        return leaks;
    }

    private static IEnumerable<string> InOwnPart(string name, string text, AnswerKey key)
    {
        if (key.Value is { } value && new WrittenNumbers(text).FirstWithin(value, key.Tolerance!.Value, UnitsOf(key)) is { } number)
            yield return $"{name} has a number beside \"{key.What}\" that passes as its answer: {number}";
        if (key.Choices.Count > 0 && Letter().Matches(text).FirstOrDefault(m => string.Equals(m.Groups["letter"].Value, key.Answer, StringComparison.OrdinalIgnoreCase)) is { } letter)
            yield return $"{name} has the answer of \"{key.What}\": {letter.Value}";
    }

    private static IEnumerable<string> Written(WrittenNumbers numbers, AnswerKey key, IReadOnlyList<UnitSpelling> units) =>
        numbers.WithUnit(key.Value!.Value, key.Tolerance!.Value, units);

    private static IReadOnlyList<UnitSpelling> UnitsOf(AnswerKey key) => NumberSeal.Parse(key.Seal).Units;

    /// <summary>A piece of the seal's own text that no other seal has: its tag or, of a choice, its first verdict.</summary>
    private static string DecodedStart(AnswerKey key) =>
        key.Value is null ? ChoiceSeal.Parse(key.Seal).Verdicts[0] : NumberSeal.Parse(key.Seal).Right[0].Tag;

    /// <summary>The seal's own numbers (rounds, factors of units) are no answer; it is searched for sentences with the whole.</summary>
    private static string WithoutSeal(JsonObject cell, AnswerKey key)
    {
        JsonObject copy = cell.DeepClone().AsObject();
        copy["source"] = string.Concat(copy["source"]!.AsArray().Select(line => line!.GetValue<string>())).Replace(key.Seal, "", StringComparison.Ordinal);
        return ArtefactText.Of(copy);
    }

    /// <summary>An option without its words and its letter.</summary>
    private static string Outline(IElement option)
    {
        string tag(IElement e) => $"<{e.LocalName} {string.Join(' ', e.Attributes.Where(a => a.Name is not "value").Select(a => a.Name + "=" + a.Value))}>";
        return tag(option) + string.Concat(option.QuerySelectorAll("label, input").Select(tag));
    }

    [GeneratedRegex(@"\b(?:answer|right|correct)\b\W{0,5}(?:(?:is|one|option)\W+){0,2}(?<letter>[a-f])\b(?!\w)(?! \w)|\b(?<letter>[a-f]) is (?:right|correct)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Letter();
}
