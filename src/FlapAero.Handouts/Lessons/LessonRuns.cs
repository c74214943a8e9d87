using FlapAero.Handouts.Cache;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts.Lessons;

/// <summary>Runs lessons side by side, those that have not changed not at all, and makes the files of each.</summary>
internal sealed class LessonRuns(Func<ILessonKernel> newKernel, int sideBySide, RunCache cache, bool fresh, int lessons, IProgress<HandoutProgress>? progress)
{
    private readonly Lock _reporting = new();
    private int _left = lessons;

    /// <summary>How many cells ran; none of a lesson that was taken from before.</summary>
    public int CellsRun { get; private set; }

    /// <summary>Runs them all, also after one has failed: an author wants to hear of all faults at once.</summary>
    /// <returns>The lessons in the order they came.</returns>
    /// <exception cref="HandoutException">At least one failed; a line each.</exception>
    public async Task<List<MadeLesson>> RunAsync(
        IReadOnlyList<LessonNotebook> notebooks, LessonInput input, ArtefactChoice choice, CancellationToken cancellationToken)
    {
        if (notebooks.Count == 0)
            return [];
        var made = new MadeLesson?[notebooks.Count];
        var faults = new string?[notebooks.Count];
        using var mathematics = new Lazily(() => new Mathematics());
        using var rendering = new SemaphoreSlim(1);
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = sideBySide, CancellationToken = cancellationToken };
        await Parallel.ForAsync(0, notebooks.Count, parallel, async (n, stop) =>
        {
            try
            {
                RanLesson lesson = await RunOneAsync(notebooks[n], input, mathematics, stop).ConfigureAwait(false);
                await rendering.WaitAsync(stop).ConfigureAwait(false);
                try
                {
                    made[n] = new MadeLesson(lesson.Notebook, LessonArtefacts.Of(lesson, mathematics.Value, choice));
                }
                finally
                {
                    rendering.Release();
                }
            }
            catch (HandoutException e)
            {
                faults[n] = e.Message;
            }
        }).ConfigureAwait(false);
        List<string> messages = [.. faults.OfType<string>()];
        return messages.Count > 0 ? throw new HandoutException(string.Join('\n', messages)) : [.. made.Select(m => m!)];
    }

    private async Task<RanLesson> RunOneAsync(LessonNotebook notebook, LessonInput input, Lazily mathematics, CancellationToken cancellationToken)
    {
        if (!fresh && cache.Find(notebook, input) is { } before)
        {
            Report(notebook, 1, 1, isUnchanged: true);
            return before;
        }
        RanLesson lesson = await LessonRunner.RunAsync(notebook, input, newKernel, (done, of) =>
        {
            Report(notebook, done, of, isUnchanged: false);
            // Not before the opening and the setup: a kernel that starts takes all the cores there are.
            if (done > 1)
                mathematics.Begin();
        }, cancellationToken).ConfigureAwait(false);
        cache.Keep(lesson, input);
        return lesson;
    }

    /// <summary>Tells how far a lesson is.</summary>
    public void Report(LessonNotebook notebook, int done, int of, bool isUnchanged)
    {
        lock (_reporting)
        {
            if (done == of)
                _left--;
            if (done == of && !isUnchanged)
                CellsRun += of;
            progress?.Report(new HandoutProgress(notebook.Slug, done, of, _left) { IsUnchanged = isUnchanged });
        }
    }

    /// <summary>Reading the formula setter takes a while that overlaps with the first lesson's run.</summary>
    private sealed class Lazily(Func<Mathematics> make) : IDisposable
    {
        private readonly Lazy<Task<Mathematics>> _making = new(() => Task.Run(make));

        public Mathematics Value => _making.Value.GetAwaiter().GetResult();

        public void Begin() => _ = _making.Value;

        public void Dispose()
        {
            if (_making.IsValueCreated)
                Value.Dispose();
        }
    }
}
