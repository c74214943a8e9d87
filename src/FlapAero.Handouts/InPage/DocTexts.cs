using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.InPage;

/// <summary>What the library's doc comments say, as plain text: what a reader sees of a name while writing a cell.</summary>
internal static partial class DocTexts
{
    /// <summary>By the key of each documented name, and by that key, a blank and a parameter's name.</summary>
    public static IReadOnlyDictionary<string, string> All() => Of(
        new[] { typeof(Aeroplane), typeof(Charts.Palette), typeof(Lesson) }
            .Select(type => Path.ChangeExtension(type.Assembly.Location, ".xml")).Where(File.Exists).Select(XDocument.Load));

    /// <summary>The same as the engine reads it.</summary>
    public static byte[] ToJson() => JsonSerializer.SerializeToUtf8Bytes(All());

    /// <summary>The texts of some assemblies' doc comments, but for what no cell names: equations, and what a compiler wrote.</summary>
    public static IReadOnlyDictionary<string, string> Of(IEnumerable<XDocument> files)
    {
        Dictionary<string, XElement> members = files.SelectMany(file => file.Descendants("member"))
            .Where(m => m.Attribute("name")!.Value is var key && key[2..].StartsWith("FlapAero.", StringComparison.Ordinal) && !key.Contains(".Equations.", StringComparison.Ordinal))
            .ToDictionary(m => m.Attribute("name")!.Value, StringComparer.Ordinal);
        var texts = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach ((string key, XElement written) in members)
        {
            XElement member = written.Element("inheritdoc")?.Attribute("cref") is { } from && members.TryGetValue(from.Value, out XElement? other) ? other : written;
            if (Text(member) is { Length: > 0 } text)
                texts[key] = text;
            foreach (XElement parameter in member.Elements("param"))
                texts[$"{key} {parameter.Attribute("name")!.Value}"] = Plain(parameter);
        }
        return texts;
    }

    private static string Text(XElement member)
    {
        var text = new StringBuilder(Plain(member.Element("summary")));
        foreach (XElement parameter in member.Elements("param"))
            text.Append('\n').Append(parameter.Attribute("name")!.Value).Append(": ").Append(Plain(parameter));
        if (member.Element("returns") is { } returns)
            text.Append("\nGives: ").Append(Plain(returns));
        foreach (XElement refusal in member.Elements("exception"))
            text.Append("\nRefused: ").Append(Plain(refusal));
        return text.ToString().Trim();
    }

    private static string Plain(XElement? part) => part is null ? "" : Blanks().Replace(string.Concat(part.Nodes().Select(Plain)), " ").Trim();

    private static string Plain(XNode node) => node switch
    {
        XText text => text.Value,
        XElement { Name.LocalName: "br" } => " ",
        XElement e when e.Attribute("name") is { } name => name.Value,
        XElement e when e.Attribute("langword") is { } word => word.Value,
        XElement e when e.Value.Length > 0 => string.Concat(e.Nodes().Select(Plain)),
        XElement e when e.Attribute("cref") is { } named => Last().Match(named.Value).Groups[1].Value,
        _ => "",
    };

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    /// <summary>The last name of a key, without the types of its parameters.</summary>
    [GeneratedRegex(@"([^.:]+?)(?:``?\d+)?(?:\(.*)?$")]
    private static partial Regex Last();
}
