using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using Diagnostic = Microsoft.DotNet.Interactive.Diagnostic;

namespace FlapAero.KernelStart;

/// <summary>An error as a student reads it: three lines that say what is wrong, where, and what to try.</summary>
internal static class ErrorWords
{
    private const string NotBuilt = "CS0006";

    /// <summary>NuGet's number for a package that no feed has.</summary>
    private const string NoSuchPackage = "NU1101";

    /// <summary>The words for a cell that does not compile.</summary>
    /// <param name="faults">What the compiler found; at least one.</param>
    /// <param name="code">The cell.</param>
    public static string OfCompiler(IReadOnlyCollection<Diagnostic> faults, string code)
    {
        // Without the lessons' assembly every name in the cell is unknown too: that is not worth telling.
        Diagnostic first = faults.FirstOrDefault(f => f.Code == NotBuilt)
            ?? faults.OrderBy(f => f.LinePositionSpan.Start.Line).ThenBy(f => f.LinePositionSpan.Start.Character).First();
        string what = first.Code == NotBuilt && first.Message.Contains("FlapAero", StringComparison.Ordinal)
            ? "The lessons' assembly is not built, or this notebook lies outside the project's folder \"notebooks\"; a student's copy of it runs in any folder."
            : Sentence(first.Message);
        int more = first.Code == NotBuilt ? 0 : faults.Count - 1;
        if (more > 0)
            what += string.Create(CultureInfo.InvariantCulture, $" ({more} more after it; the first is often the cause of the others.)");
        return Lines(what, Line(code, first.LinePositionSpan.Start.Line + 1), Advice.OnCompiler(first.Code));
    }

    /// <summary>The words for a cell that failed while it ran.</summary>
    /// <param name="exception">Why, if an exception is known.</param>
    /// <param name="message">Why, if none is.</param>
    /// <param name="code">The cell.</param>
    public static string Of(Exception? exception, string message, string code)
    {
        if (exception is null && message.Contains(NoSuchPackage, StringComparison.Ordinal) && message.Contains("FlapAero", StringComparison.Ordinal))
            return Lines(
                "The lessons' assembly is not where this kernel was set up, and no package FlapAero.Notebooks was found.",
                Line(code, 1), Advice.SetUpOrFeed);
        if (exception is null)
            return Lines(Sentence(message.Split('\n')[0]), "this cell", Advice.Usual);
        exception = PlainWords.Innermost(exception);
        bool isOldAnswer = exception is OldAnswerException;
        bool isRefusal = !isOldAnswer && IsOurs(exception.GetType().Assembly);
        string what = PlainWords.Of(exception);
        return Lines(
            isRefusal || isOldAnswer ? Sentence(what) : $"{Sentence(what)} ({exception.GetType().Name})",
            LineOf(exception) is { } line ? Line(code, line) : "this cell",
            isRefusal ? Advice.Refused : Advice.On(exception));
    }

    /// <summary>The line of the cell that led there: the cell itself is the outermost of the submissions on the stack.</summary>
    private static int? LineOf(Exception exception) =>
        new StackTrace(exception, fNeedFileInfo: true).GetFrames()
            .Where(frame => Outermost(frame.GetMethod()?.DeclaringType)?.Name.StartsWith("Submission#", StringComparison.Ordinal) == true)
            .Select(frame => frame.GetFileLineNumber())
            .LastOrDefault(line => line > 0) is > 0 and var line ? line : null;

    private static Type? Outermost(Type? type) => type?.DeclaringType is { } outer ? Outermost(outer) : type;

    private static bool IsOurs(Assembly? assembly) =>
        assembly?.GetName().Name?.StartsWith("FlapAero", StringComparison.Ordinal) == true;

    private static string Line(string code, int number)
    {
        string[] lines = code.ReplaceLineEndings("\n").Split('\n');
        string where = string.Create(CultureInfo.InvariantCulture, $"line {number} of this cell");
        return number <= lines.Length && lines[number - 1].Trim() is { Length: > 0 } text ? $"{where}: {text}" : where;
    }

    private static string Sentence(string words)
    {
        string line = words.ReplaceLineEndings(" ").Trim();
        return line.Length > 0 && !".!?)".Contains(line[^1], StringComparison.Ordinal) ? line + "." : line;
    }

    private static string Lines(string what, string where, string advice) =>
        WithoutMachine($"What: {what}\nWhere: {where}\nTry: {advice}");

    /// <summary>An error is saved with the notebook: no folder of this machine goes with it.</summary>
    private static string WithoutMachine(string words)
    {
        words = Shortened(words, Environment.CurrentDirectory, ".");
        return Shortened(words, Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), "~");
    }

    /// <summary>A root folder stays: it tells nothing, and every path starts with it.</summary>
    private static string Shortened(string words, string folder, string mark) =>
        folder.Length > 3 ? words.Replace(folder, mark, StringComparison.Ordinal) : words;
}
