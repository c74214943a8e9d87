using System.Text;
using System.Text.Json;

namespace FlapAero.Notebooks.Seals;

/// <summary>A seal as one word: JSON in base 64.</summary>
internal static class SealText
{
    private static readonly JsonSerializerOptions Options = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    public static string Of<T>(T seal) => Convert.ToBase64String(JsonSerializer.SerializeToUtf8Bytes(seal, Options));

    /// <summary>Reads a seal; a text that a student's copy has lost a letter of is refused in words.</summary>
    public static T Parse<T>(string text, Func<T, bool> isWhole)
    {
        try
        {
            var seal = JsonSerializer.Deserialize<T>(Encoding.UTF8.GetString(Convert.FromBase64String(text)), Options);
            if (seal is not null && isWhole(seal)) return seal;
        }
        catch (Exception e) when (e is FormatException or JsonException)
        {
        }
        throw Require.RefusedWhole(
            nameof(text),
            "The seal of this check is damaged or belongs to another kind of answer: take the cell from a fresh copy of the lesson.");
    }
}
