using System.Text;

namespace FlapAero.Notebooks;

/// <summary>A sheet's parts as text for a terminal, 100 columns wide at most.</summary>
internal static class SheetText
{
    private const int Width = 100;

    public static string Of(string title, string caution, IReadOnlyList<SheetPart> parts)
    {
        var text = new StringBuilder();
        text.Append(title.ToUpperInvariant()).Append('\n');
        Wrapped(text, caution, "");
        foreach (SheetPart part in parts)
        {
            text.Append('\n');
            if (part.Heading is { } heading) text.Append(heading.ToUpperInvariant()).Append('\n');
            Append(text, part);
        }

        return Plain(text.ToString());
    }

    private static void Append(StringBuilder text, SheetPart part)
    {
        switch (part)
        {
            case StatementPart statement:
                Wrapped(text, $">> {statement.Loud.ToUpperInvariant()} {statement.Quiet}", "   ");
                break;
            case FactsPart facts:
                Columns(text, [.. facts.Facts.Select(f => new[] { f.Term, f.Fact })]);
                break;
            case GlancePart glance:
                Columns(text, [.. glance.Numbers.Select(n => new[] { n.Label, n.Number, n.With })]);
                break;
            case TablePart table:
                text.Append(table.Caption.ToUpperInvariant()).Append('\n');
                Columns(text, [[.. table.Headings], .. table.Rows.Select(row => row.ToArray())]);
                break;
            case ListPart list:
                int number = 0;
                foreach (string item in list.Items) Wrapped(text, $"{++number}. {item}", "   ");
                break;
            case StepsPart steps:
                int at = 0;
                foreach (Step step in steps.Steps)
                {
                    Wrapped(text, $"{++at}. {step.Name}: {step.Do}", "   ");
                    if (step.Numbers.Length > 0) Wrapped(text, "   " + step.Numbers, "   ");
                    Wrapped(text, $"   Often wrong: {step.Error} Lesson {step.Lesson}.", "   ");
                }

                break;
            case DrillsPart drills:
                int drilled = 0;
                foreach (Drill drill in drills.Drills)
                {
                    text.Append(++drilled).Append(". ").Append(drill.Name).Append('\n');
                    Wrapped(text, $"   Cue: {drill.Cue}", "   ");
                    Wrapped(text, $"   Action: {drill.Action}", "   ");
                    Wrapped(text, $"   Numbers: {drill.Numbers}", "   ");
                    Wrapped(text, $"   Limit: {drill.Limit}", "   ");
                    Wrapped(text, $"   Go around: {drill.GoAround}", "   ");
                }

                break;
            case NotePart note:
                Wrapped(text, note.Text, "");
                break;
            case BlanksPart blanks:
                text.AppendJoin("  ", blanks.Labels.Select(label => $"{label} {new string('_', 14)}")).Append('\n');
                break;
        }
    }

    /// <summary>Columns as wide as their widest cell; the last one wraps.</summary>
    private static void Columns(StringBuilder text, string[][] rows)
    {
        int last = rows[0].Length - 1;
        int[] widths = [.. Enumerable.Range(0, last).Select(column => rows.Max(row => row[column].Length) + 2)];
        string indent = new(' ', widths.Sum());
        foreach (string[] row in rows)
        {
            var line = new StringBuilder();
            for (int column = 0; column < last; column++) line.Append(row[column].PadRight(widths[column]));
            Wrapped(text, line.Append(row[last]).ToString(), indent);
        }
    }

    private static void Wrapped(StringBuilder text, string line, string indent)
    {
        while (line.Length > Width)
        {
            int at = line.LastIndexOf(' ', Width);
            if (at <= indent.Length) break;
            text.Append(line.AsSpan(0, at).TrimEnd()).Append('\n');
            line = indent + line[(at + 1)..];
        }

        text.Append(line.TrimEnd()).Append('\n');
    }

    /// <summary>Terminals and pipes are happier with plain spaces; lines were broken while the others still held.</summary>
    private static string Plain(string text) => text
        .Replace(QuantityText.NoBreakSpace, ' ')
        .Replace(QuantityText.NarrowNoBreakSpace, ' ');
}
