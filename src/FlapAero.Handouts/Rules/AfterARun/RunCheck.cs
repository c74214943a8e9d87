using FlapAero.Handouts.Cache;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules.AfterARun;

/// <summary>
/// Runs lessons, those that have not changed not at all, and holds them against the rules that need a run. A lesson is read after those of
/// lower numbers in its folder, so those run too.
/// </summary>
internal sealed class RunCheck(KernelCommand command, KernelLimits limits, int sideBySide, string? cacheFolder) : IDisposable
{
    private readonly KernelProcessPool _pool = new(command, limits);
    private readonly RunCache _cache = new(new ContentCache(cacheFolder));

    public void Dispose() => _pool.Dispose();

    /// <summary>The faults of the lessons that are asked for, a line each.</summary>
    /// <param name="lessons">All lessons of a folder that can be read, in their order.</param>
    /// <param name="asked">Those whose faults are told.</param>
    /// <param name="ran">Told of each lesson that has run.</param>
    /// <param name="cancellationToken">Stops between cells.</param>
    public async Task<IReadOnlyList<string>> FaultsAsync(
        IReadOnlyList<LessonNotebook> lessons, IReadOnlySet<string> asked, Action<LessonNotebook> ran, CancellationToken cancellationToken)
    {
        LessonNotebook[] needed = [.. lessons.Take(1 + lessons.Select((lesson, at) => asked.Contains(lesson.FileName) ? at : -1).Max())];
        var outcomes = new (RanLesson? Lesson, string Fault)[needed.Length];
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = sideBySide, CancellationToken = cancellationToken };
        await Parallel.ForAsync(0, needed.Length, parallel, async (n, stop) =>
        {
            try
            {
                outcomes[n] = (await RunAsync(needed[n], stop).ConfigureAwait(false), "");
            }
            catch (HandoutException e)
            {
                outcomes[n] = (null, e.Message);
            }
            ran(needed[n]);
        }).ConfigureAwait(false);

        var faults = new List<string>();
        var before = new List<RanLesson>();
        foreach (((RanLesson? lesson, string fault), LessonNotebook notebook) in outcomes.Zip(needed))
        {
            if (asked.Contains(notebook.FileName))
                faults.AddRange(lesson is null ? [fault] : RunRules.Faults(lesson, before).Select(found => found.Words));
            if (lesson is not null)
                before.Add(lesson);
        }
        return faults;
    }

    private async Task<RanLesson> RunAsync(LessonNotebook lesson, CancellationToken cancellationToken)
    {
        if (_cache.Find(lesson, LessonInput.Standard) is { } before)
            return before;
        RanLesson ran = await LessonRunner.RunAsync(lesson, LessonInput.Standard, _pool.NewKernel, (_, _) => { }, cancellationToken).ConfigureAwait(false);
        _cache.Keep(ran, LessonInput.Standard);
        return ran;
    }
}
