using System.Text;
using FlapAero.Handouts.Cache;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Publishing;
using FlapAero.Handouts.Schools;
using FlapAero.Handouts.Watching;

namespace FlapAero.Handouts;

/// <summary>Makes the pages: reads, runs, builds all in memory, and only then writes.</summary>
public sealed class HandoutBuilder : IDisposable
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    private readonly Func<ILessonKernel> _newKernel;
    private readonly int _sideBySide;
    private readonly KernelProcessPool? _pool;
    private readonly WatchedPages _watched = new();

    /// <summary>Makes a builder that runs lessons in this process, one after the other; a cell that never ends cannot be stopped there.</summary>
    public HandoutBuilder()
        : this(() => new InteractiveKernel())
    {
    }

    /// <summary>Makes a builder over another kernel; lessons run one after the other.</summary>
    /// <param name="newKernel">Gives a fresh kernel for each lesson.</param>
    public HandoutBuilder(Func<ILessonKernel> newKernel)
    {
        ArgumentNullException.ThrowIfNull(newKernel);
        _newKernel = newKernel;
        _sideBySide = 1;
    }

    /// <summary>Makes a builder that runs lessons in processes of their own, side by side.</summary>
    /// <param name="command">Starts <see cref="KernelServer"/>.</param>
    /// <param name="limits">What a cell may take.</param>
    /// <param name="sideBySide">The most lessons to run at once, 1 or more.</param>
    public HandoutBuilder(KernelCommand command, KernelLimits limits, int sideBySide)
    {
        ArgumentNullException.ThrowIfNull(command);
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(sideBySide);
        _pool = new KernelProcessPool(command, limits);
        _newKernel = _pool.NewKernel;
        _sideBySide = sideBySide;
    }

    /// <summary>Ends the processes.</summary>
    public void Dispose() => _pool?.Dispose();

    /// <summary>Runs a lesson for nothing but its process, which then runs the next one sooner.</summary>
    /// <param name="options">The lessons, of which the first that is wanted is run.</param>
    /// <param name="cancellationToken">Stops it.</param>
    public async Task WarmAsync(HandoutOptions options, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(options);
        try
        {
            LessonNotebook first = LessonChoice.Of(LessonNotebook.ReadFolder(options.NotebooksFolder), options.Lessons)[0];
            await LessonRunner.RunAsync(first, LessonInput.Standard, _newKernel, (_, _) => { }, cancellationToken).ConfigureAwait(false);
        }
        catch (HandoutException)
        {
            // The next build says what is wrong with the lesson.
        }
    }

    /// <summary>Builds what is wanted of the wanted lessons, and the index of all.</summary>
    /// <param name="options">Where from, where to, what of which.</param>
    /// <param name="progress">Told of each cell; calls come one at a time, from any thread.</param>
    /// <param name="cancellationToken">Stops before anything is written.</param>
    /// <returns>What was done.</returns>
    /// <exception cref="HandoutException">A notebook, a cell, a check, a formula, the aeroplane's file or a folder refused; nothing was written.</exception>
    /// <exception cref="UnknownLessonException">A wanted lesson is not there, or one that the school's file names.</exception>
    public async Task<HandoutReport> BuildAsync(HandoutOptions options, IProgress<HandoutProgress>? progress, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(options);
        IReadOnlyList<LessonNotebook> notebooks = LessonNotebook.ReadFolder(options.NotebooksFolder);
        SchoolMarks? school = options.SchoolFile is { } named ? SchoolMarks.Read(named) : null;
        IReadOnlyList<LessonNotebook> listed = school is null ? notebooks : LessonChoice.InOrder(notebooks, school.School.Lessons);
        IReadOnlyList<LessonNotebook> wanted = options.Lessons.Count > 0 ? LessonChoice.Of(notebooks, options.Lessons) : listed;
        AeroplaneText? aeroplane = options.AeroplaneFile is { } file ? AeroplaneText.Read(file) : null;
        int sheets = options.Editions.Contains(Edition.Sheets) ? options.Sheets : 0;
        var input = new LessonInput(options.Seed, sheets, aeroplane, options.Units, school is null ? null : SchoolFileText.Of(options.SchoolFile!));
        using OutputFolder output = OutputFolder.Open(options.OutputFolder);
        var cache = new ContentCache(options.CacheFolder);

        var plan = new BuildPlan(wanted, input, options, output, school);
        var runs = new LessonRuns(_newKernel, _sideBySide, new RunCache(cache), options.Fresh, wanted.Count, progress);
        foreach (LessonNotebook unchanged in plan.Unchanged.Keys)
            runs.Report(unchanged, 1, 1, isUnchanged: true);
        List<MadeLesson> made = await runs.RunAsync(
            plan.ToMake, input, new ArtefactChoice(options.Editions, options.Paper, options.HasEngine, school), cancellationToken).ConfigureAwait(false);
        string? notPrinted = options.Pdf ? await PdfFiles.AddAsync(made, options, cache, progress, cancellationToken).ConfigureAwait(false) : null;

        foreach (MadeLesson lesson in made.Where(_ => options.IsWatched))
            _watched.AddTo(lesson.Files);
        var set = new PageSetBuilder(output.Present);
        foreach (MadeLesson lesson in made)
            set.Add(lesson.Notebook.Stem, plan.Inputs[lesson.Notebook], notPrinted is null ? plan.Choice : "", lesson.Files);
        set.AddIndex(Utf8.GetBytes(IndexPage.ToHtml(listed, name => set.WillHave(name, output), new PageLook(options.Paper, school), options.HasEngine)));
        cancellationToken.ThrowIfCancellationRequested();
        output.Write(set.Files, set.Outdated, set.ToSet());
        cache.Tidy();
        if (options.IsWatched)
            _watched.WriteList(options.OutputFolder);
        return new HandoutReport(
            [.. wanted.SelectMany(n => plan.Unchanged.GetValueOrDefault(n) ?? [.. made.Single(m => m.Notebook == n).Files.Keys]), PageSetBuilder.Index],
            set.Outdated, runs.CellsRun, notPrinted);
    }
}
