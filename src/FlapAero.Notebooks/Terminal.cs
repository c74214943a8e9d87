using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using System.Text;
using FlapAero.Files;

namespace FlapAero.Notebooks;

/// <summary>
/// Where a lesson runs as a program of its own: shows in a terminal what a notebook shows under its cells, in the same
/// words and numbers. Writes to the console of the process.
/// </summary>
public static class Terminal
{
    /// <summary>The columns that text is wrapped at.</summary>
    public const int Columns = 80;

    /// <summary>Begins a program: numbers are the same under every culture, and a failure is told in three lines.</summary>
    public static void Begin()
    {
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        AppDomain.CurrentDomain.UnhandledException += (_, failed) =>
        {
            if (failed.ExceptionObject is not Exception e) return;
            Console.Error.WriteLine(PlainText.Of(Explain(e)));
            Environment.Exit(1);
        };
    }

    /// <summary>Shows prose.</summary>
    /// <param name="markdown">Markdown.</param>
    public static void Say(string markdown)
    {
        ArgumentNullException.ThrowIfNull(markdown);
        Write(Prose(markdown, Columns));
    }

    /// <summary>Shows the value of a cell as a notebook would, in words.</summary>
    /// <param name="value">The value; nothing is shown where there is none.</param>
    public static void Show(object? value)
    {
        if (value is not null) Write(TextOf(value));
    }

    /// <summary>Markdown wrapped at a number of columns; headings, lists, tables and formulas keep their lines.</summary>
    /// <param name="markdown">Markdown.</param>
    /// <param name="columns">The most columns a line takes, unless a word is longer.</param>
    /// <returns>The wrapped text.</returns>
    public static string Prose(string markdown, int columns) =>
        TerminalLayout.Lines(TerminalLayout.Joined(markdown), columns);

    internal static string TextOf(object value) =>
        value is Said said ? Prose(said.ToString(), Columns) : TerminalLayout.Lines(Formatters.Text(value), Columns);

    private static void Write(string text) => Console.WriteLine(PlainText.Of(text) + "\n");

    /// <summary>What, where, and what to try.</summary>
    internal static string Explain(Exception exception)
    {
        exception = PlainWords.Innermost(exception);
        string words = PlainWords.Of(exception).ReplaceLineEndings(" ");
        StackFrame? frame = new StackTrace(exception, fNeedFileInfo: true).GetFrames()
            .FirstOrDefault(f => f.GetFileName() is not null && f.GetMethod()?.Module.Assembly == Assembly.GetEntryAssembly());
        string where = frame is null ? "outside the lesson's own lines"
            : string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileName(frame.GetFileName())}, line {frame.GetFileLineNumber()}");
        return $"The lesson stopped: {words}\nWhere: {where}\nTry: undo the last change there; or export the lesson again.";
    }
}
