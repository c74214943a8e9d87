using System.Text;

namespace FlapAero.Notebooks;

/// <summary>Lays text out in lines of a terminal: wraps what is long, aligns what has tabs.</summary>
internal static class TerminalLayout
{
    /// <summary>Each line wrapped, and neighbouring lines with tabs aligned as a table.</summary>
    internal static string Lines(string text, int columns)
    {
        string[] lines = text.Split('\n');
        var laid = new List<string>();
        for (int i = 0; i < lines.Length; i++)
        {
            int end = i;
            while (end < lines.Length && lines[end].Contains('\t', StringComparison.Ordinal)) end++;
            if (end > i)
            {
                laid.AddRange(Aligned(lines[i..end]));
                i = end - 1;
            }
            else
            {
                laid.AddRange(Wrapped(lines[i].TrimEnd(), columns));
            }
        }
        return string.Join('\n', laid);
    }

    /// <summary>The lines of each paragraph as one, as Markdown means them.</summary>
    internal static string Joined(string markdown)
    {
        var text = new StringBuilder();
        bool isFormula = false, joins = false;
        foreach (string line in markdown.ReplaceLineEndings("\n").Trim('\n').Split('\n'))
        {
            string start = line.TrimStart();
            bool isMark = start.StartsWith("$$", StringComparison.Ordinal) || start.StartsWith("```", StringComparison.Ordinal);
            bool isOwn = isFormula || isMark || start.Length == 0 || start[0] is '#' or '|' || IsItem(start) || start[0] == '>';
            if (text.Length > 0) text.Append(joins && !isOwn ? ' ' : '\n');
            text.Append(joins && !isOwn ? start : line);
            if (isMark && !(start.Length > 4 && start.EndsWith("$$", StringComparison.Ordinal))) isFormula = !isFormula;
            joins = !isFormula && !isMark && start.Length > 0 && start[0] is not ('#' or '|') && !line.EndsWith("  ", StringComparison.Ordinal);
        }
        return text.ToString();
    }

    private static IEnumerable<string> Wrapped(string line, int columns)
    {
        int indent = line.Length - line.TrimStart().Length;
        string start = line[indent..];
        if (line.Length <= columns || start.StartsWith('|') || start.StartsWith("$$", StringComparison.Ordinal))
            return [line];
        // What follows the first line of an item or a quotation stands under its words.
        string hanging = new string(' ', indent) + (start.StartsWith("> ", StringComparison.Ordinal) ? "> "
            : IsItem(start) ? new string(' ', start.IndexOf(' ', StringComparison.Ordinal) + 1) : "");
        var lines = new List<string>();
        string current = "";
        foreach (string word in line.Split(' '))
        {
            if (current.TrimEnd().Length > hanging.TrimEnd().Length && current.Length + 1 + word.Length > columns)
            {
                lines.Add(current.TrimEnd());
                current = hanging + word;
            }
            else
            {
                current = lines.Count == 0 && current.Length == 0 ? word : current + " " + word;
            }
        }
        lines.Add(current);
        return lines;
    }

    private static List<string> Aligned(string[] lines)
    {
        List<string[]> rows = [.. lines.Select(line => line.Split('\t'))];
        int[] widths = [.. Enumerable.Range(0, rows.Max(row => row.Length)).Select(column => rows.Max(row => column < row.Length ? row[column].Length : 0))];
        return [.. rows.Select(row => string.Join("  ", row.Select((cell, column) => cell.PadRight(widths[column]))).TrimEnd())];
    }

    private static bool IsItem(string start)
    {
        int space = start.IndexOf(' ', StringComparison.Ordinal);
        return space > 0 && (start[..space] is "-" or "*" or "+" || start[..space].TrimEnd('.').All(char.IsAsciiDigit) && start[space - 1] == '.');
    }
}
