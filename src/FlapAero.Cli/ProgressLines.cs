using FlapAero.Files;
using FlapAero.Handouts;
using Spectre.Console;

namespace FlapAero.Cli;

/// <summary>Shows how far the lessons are and what is left: a bar each on a terminal, a few plain lines where the output goes elsewhere.</summary>
internal static class ProgressLines
{
    public static async Task<T> ForAsync<T>(TextWriter output, Func<IProgress<HandoutProgress>, Task<T>> work)
    {
        // Bars need the terminal itself; what they name is made plain by them.
        if (!GuardedWriter.IsConsole(output) || Console.IsOutputRedirected)
            return await work(new Plain(output));
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Out) });
        if (!console.Profile.Capabilities.Interactive)
            return await work(new Plain(output));
        return await console.Progress()
            .Columns(new TaskDescriptionColumn { Alignment = Justify.Left }, new ProgressBarColumn(), new CountColumn())
            .StartAsync(context => work(new Bars(context)));
    }

    private static string Words(HandoutProgress value)
    {
        if (value.Lesson == HandoutProgress.Printing)
            return FormattableString.Invariant($"printing: {value.Done} of {value.Of} PDFs");
        string cells = value.IsUnchanged ? "unchanged" : FormattableString.Invariant($"{value.Done} of {value.Of} cells");
        return $"{value.Lesson}: {cells}{(value.Done == value.Of ? Left(value.LessonsLeft) : "")}";
    }

    private static string Left(int lessons) => lessons switch
    {
        0 => "",
        1 => "; 1 lesson left",
        _ => FormattableString.Invariant($"; {lessons} lessons left"),
    };

    private sealed class Plain(TextWriter output) : IProgress<HandoutProgress>
    {
        public void Report(HandoutProgress value)
        {
            // A line at the start and at each third keeps a log short.
            int third = Math.Max(1, (value.Of + 2) / 3);
            if (value.Done == value.Of || value.Done % third == 0)
                output.WriteLine(Words(value));
        }
    }

    private sealed class Bars(ProgressContext context) : IProgress<HandoutProgress>
    {
        private readonly Dictionary<string, ProgressTask> _bars = new(StringComparer.Ordinal);
        private ProgressTask? _lessons;

        public void Report(HandoutProgress value)
        {
            bool printing = value.Lesson == HandoutProgress.Printing;
            if (!printing)
            {
                _lessons ??= context.AddTask("lessons", maxValue: Math.Max(1, value.LessonsLeft + (value.Done == value.Of ? 1 : 0)));
                _lessons.Value = _lessons.MaxValue - value.LessonsLeft;
            }
            if (!_bars.TryGetValue(value.Lesson, out ProgressTask? bar))
                _bars.Add(value.Lesson, bar = context.AddTask(printing ? "PDFs" : Markup.Escape(PlainText.Of(value.Lesson)), maxValue: value.Of));
            bar.Value = value.Done;
            if (value.IsUnchanged)
                bar.Description = Markup.Escape(PlainText.Of($"{value.Lesson}, unchanged"));
        }
    }

    private sealed class CountColumn : ProgressColumn
    {
        public override Spectre.Console.Rendering.IRenderable Render(
            Spectre.Console.Rendering.RenderOptions options, ProgressTask task, TimeSpan deltaTime) =>
            new Text(FormattableString.Invariant($"{task.Value:0} of {task.MaxValue:0}"));
    }
}
