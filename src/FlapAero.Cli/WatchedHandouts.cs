using System.Diagnostics;
using System.Globalization;
using FlapAero.Handouts;
using FlapAero.Handouts.Watching;

namespace FlapAero.Cli;

/// <summary>The part of <c>flapaero handouts --watch</c> that follows the first build: it makes anew what is saved, until it is stopped.</summary>
internal static class WatchedHandouts
{
    public static async Task<int> RunAsync(
        HandoutBuilder builder, HandoutOptions wanted, TextWriter output, TextWriter error, CancellationToken cancellationToken)
    {
        if (!Directory.Exists(wanted.NotebooksFolder))
            throw new HandoutException($"The folder of notebooks {wanted.NotebooksFolder} does not exist; name one with --notebooks.");
        using var saved = new SavedFiles(wanted.NotebooksFolder, wanted.AeroplaneFile is { } file ? [file] : []);
        try
        {
            bool isGood = await BuildAsync(builder, wanted, isFirst: true, output, error, cancellationToken);
            Task warming = isGood ? builder.WarmAsync(wanted, cancellationToken) : Task.CompletedTask;
            await output.WriteLineAsync($"Watching {wanted.NotebooksFolder}: save a notebook, and its open page shows it. Ctrl+C ends it.");
            while (true)
            {
                await saved.WaitAsync(cancellationToken);
                await warming;
                await BuildAsync(builder, wanted, isFirst: false, output, error, cancellationToken);
            }
        }
        catch (OperationCanceledException)
        {
            await error.WriteLineAsync("Stopped watching; the pages of the last good build stay. The next handouts without --watch makes them without what reloads them.");
            return ExitCode.Stopped;
        }
        finally
        {
            WatchedPages.RemoveList(wanted.OutputFolder);
        }
    }

    private static async Task<bool> BuildAsync(
        HandoutBuilder builder, HandoutOptions wanted, bool isFirst, TextWriter output, TextWriter error, CancellationToken cancellationToken)
    {
        var clock = Stopwatch.StartNew();
        try
        {
            HandoutReport report = await builder.BuildAsync(wanted, null, cancellationToken);
            await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture,
                $"{report.CellsRun} cells run, pages written in {clock.Elapsed.TotalSeconds:0.0} s; start with {Path.Combine(wanted.OutputFolder, "index.html")}"));
            return true;
        }
        // A name that no lesson has is a slip of the call; later on, a notebook that is being renamed.
        catch (Exception e) when (e is HandoutException || e is UnknownLessonException && !isFirst)
        {
            await error.WriteLineAsync($"{e.Message}\nThe last good pages stay; mend the notebook and save it.");
            return false;
        }
    }
}
