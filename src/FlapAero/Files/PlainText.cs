using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;

namespace FlapAero.Files;

/// <summary>
/// Text that a terminal shows and does not obey: a file's names and values may hold sequences that clear the screen, rename
/// the window or, in texts written from right to left, show words in another order than they have.
/// </summary>
internal static class PlainText
{
    /// <summary>How many characters of somebody's text a message carries.</summary>
    public const int Longest = 60;

    /// <summary>The text with each such character spelt out, as <c>\u001b</c>; line ends and tabs stay.</summary>
    public static string Of(string text)
    {
        int first = 0;
        while (first < text.Length && !IsCommand(text, first))
            first++;
        if (first == text.Length)
            return text;
        var plain = new StringBuilder(text, 0, first, text.Length + 32);
        for (int i = first; i < text.Length; i++)
        {
            if (IsCommand(text, i))
                plain.Append(CultureInfo.InvariantCulture, $"\\u{(int)text[i]:x4}");
            else
                plain.Append(text[i]);
        }

        return plain.ToString();
    }

    private static bool IsCommand(string text, int at) => text[at] switch
    {
        '\n' or '\t' => false,
        '\r' => at + 1 == text.Length || text[at + 1] != '\n',
        // What turns the direction of writing, and two line ends that no terminal counts as such.
        '\u061C' or '\u200E' or '\u200F' or (>= '\u2028' and <= '\u202E') or (>= '\u2066' and <= '\u2069') => true,
        char other => char.IsControl(other),
    };

    /// <summary>Text in quotes, on one line and not endless, whatever the file holds.</summary>
    public static string Quoted(string text) => $"\"{JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(Short(text))}\"";

    /// <summary>The start of a text that a message can carry.</summary>
    public static string Short(string text) => text.Length <= Longest ? text : text[..Longest] + "…";
}
