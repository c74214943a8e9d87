using FlapAero.AeroplaneFiles;
using FlapAero.Files;
using FlapAero.Manuals;

namespace FlapAero.Schools;

/// <summary>Texts of a school's file that pages show: one line, of a length that a page has room for, with nothing that commands a screen.</summary>
internal static class SchoolText
{
    public static string? Line(ManualPart part, string key, int longest, FaultList faults)
    {
        if (part.Part.Text(key) is not { } text) return null;
        string line = text.Value.Trim();
        if (line.Length > longest)
        {
            faults.Add(
                text.Line, text.Place, FormattableString.Invariant($"the text has {line.Length} characters"),
                FormattableString.Invariant($"allowed are {longest}: a page has room for no more"));
            return null;
        }

        if (PlainText.Of(line) == line && !line.Any(char.IsControl)) return line;
        faults.Add(text.Line, text.Place, $"{text.Written} holds a line's end or a character that is not shown", "write one line of plain text");
        return null;
    }
}
