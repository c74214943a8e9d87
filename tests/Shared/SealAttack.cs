using System.Text;
using System.Text.Json.Nodes;
using FlapAero.Notebooks.Seals;

namespace FlapAero.Tests;

/// <summary>
/// Takes a seal apart as someone would who has only the seal: what can be read in it must not be the answer.
/// </summary>
internal static class SealAttack
{
    /// <summary>What a seal may tell in numbers; the units' factors are everybody's.</summary>
    private static readonly string[] Told = ["tolerance", "decimals", "rounds"];

    /// <summary>How the seal betrays its answer; nothing where it does not.</summary>
    public static IEnumerable<string> Betrays(string seal)
    {
        JsonObject fields = JsonNode.Parse(Encoding.UTF8.GetString(Convert.FromBase64String(seal)))!.AsObject();
        NumberSeal number = NumberSeal.Parse(seal);
        foreach ((string name, JsonNode? value) in fields)
            if (value is JsonValue && value.GetValueKind() == System.Text.Json.JsonValueKind.Number && !Told.Contains(name))
                yield return $"it tells a number, {name}: {value}";
        string digits = number.Tolerance.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
        if (digits.Replace(".", "", StringComparison.Ordinal).Trim('0').Length > 2)
            yield return $"its tolerance has more than two digits: {digits}";
        foreach (double share in new[] { 0.01, 0.02, 0.03, 0.05, 0.1 })
            if (number.IsRight(number.Tolerance / share))
                yield return $"its tolerance is {share:P0} of the answer, {number.Tolerance / share}";
        foreach (NumberSeal.Piece piece in number.Right.Concat(number.Known.SelectMany(pieces => pieces)))
            if (!piece.Tag.Concat(piece.Words).All(char.IsAsciiHexDigitLower))
                yield return "a piece is not closed";
        if (number.Right.Any(piece => piece.Words.Length != 96))
            yield return "the length of what is right tells its digits";
    }
}
