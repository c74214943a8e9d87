using System.Globalization;
using Microsoft.CodeAnalysis;

namespace FlapAero.Explorer;

/// <summary>An error as a student reads it, as in a notebook: three lines that say what is wrong, where, and what to try.</summary>
internal static class ErrorWords
{
    /// <summary>The words for a cell that does not compile.</summary>
    public static string OfCompiler(IEnumerable<Diagnostic> faults, string code)
    {
        Diagnostic[] inOrder = [.. faults.OrderBy(f => f.Location.SourceSpan.Start)];
        string what = Sentence(inOrder[0].GetMessage(CultureInfo.InvariantCulture));
        if (inOrder.Length > 1)
            what += string.Create(CultureInfo.InvariantCulture, $" ({inOrder.Length - 1} more after it; the first is often the cause of the others.)");
        int line = inOrder[0].Location.GetLineSpan().StartLinePosition.Line;
        string[] lines = code.ReplaceLineEndings("\n").Split('\n');
        string where = string.Create(CultureInfo.InvariantCulture, $"line {line + 1} of this cell");
        return Lines(what, line < lines.Length && lines[line].Trim() is { Length: > 0 } text ? $"{where}: {text}" : where, Advice.OnCompiler(inOrder[0].Id));
    }

    /// <summary>The words for a cell that failed while it ran.</summary>
    public static string Of(Exception exception)
    {
        exception = PlainWords.Innermost(exception);
        bool isRefusal = exception.GetType().Assembly.GetName().Name?.StartsWith("FlapAero", StringComparison.Ordinal) == true;
        string what = Sentence(PlainWords.Of(exception));
        return Lines(
            isRefusal ? what : $"{what} ({exception.GetType().Name})", "this cell",
            isRefusal ? Advice.Refused : exception is NullReferenceException ? Advice.NotSet : Advice.Usual);
    }

    private static string Sentence(string words)
    {
        string line = words.ReplaceLineEndings(" ").Trim();
        return line.Length > 0 && !".!?)".Contains(line[^1], StringComparison.Ordinal) ? line + "." : line;
    }

    private static string Lines(string what, string where, string advice) => $"What: {what}\nWhere: {where}\nTry: {advice}";
}
