using FlapAero.Handouts;
using Spectre.Console;

namespace FlapAero.Cli;

/// <summary>Shows how far the lessons are: a bar each on a terminal, a few plain lines where the output goes elsewhere.</summary>
internal static class ProgressLines
{
    public static async Task<T> ForAsync<T>(TextWriter output, Func<IProgress<HandoutProgress>, Task<T>> work)
    {
        if (output != Console.Out || Console.IsOutputRedirected)
            return await work(new Plain(output));
        // The lessons' kernel takes the console while a cell runs; the bars keep the writer from before.
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output) });
        if (!console.Profile.Capabilities.Interactive)
            return await work(new Plain(output));
        return await console.Progress()
            .Columns(new TaskDescriptionColumn { Alignment = Justify.Left }, new ProgressBarColumn(), new CellsColumn())
            .StartAsync(context => work(new Bars(context)));
    }

    private sealed class Plain(TextWriter output) : IProgress<HandoutProgress>
    {
        public void Report(HandoutProgress value)
        {
            // A line at the start and at each third keeps a log short.
            int third = Math.Max(1, (value.Of + 2) / 3);
            if (value.Done == value.Of || value.Done % third == 0)
                output.WriteLine(FormattableString.Invariant($"{value.Lesson}: {value.Done} of {value.Of} cells"));
        }
    }

    private sealed class Bars(ProgressContext context) : IProgress<HandoutProgress>
    {
        private readonly Dictionary<string, ProgressTask> _bars = new(StringComparer.Ordinal);

        public void Report(HandoutProgress value)
        {
            if (!_bars.TryGetValue(value.Lesson, out ProgressTask? bar))
                _bars.Add(value.Lesson, bar = context.AddTask(Markup.Escape(value.Lesson), maxValue: value.Of));
            bar.Value = value.Done;
        }
    }

    private sealed class CellsColumn : ProgressColumn
    {
        public override Spectre.Console.Rendering.IRenderable Render(
            Spectre.Console.Rendering.RenderOptions options, ProgressTask task, TimeSpan deltaTime) =>
            new Text(FormattableString.Invariant($"{task.Value:0} of {task.MaxValue:0} cells"));
    }
}
