using System.Collections.Concurrent;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>A lesson as it is, run once for all tests: what its cells said, and its kernel for further cells.</summary>
internal sealed class LessonRun
{
    private static readonly ConcurrentDictionary<string, Lazy<Task<LessonRun>>> Runs = new();

    private readonly InteractiveKernel _kernel = new();

    private LessonRun(LessonNotebook lesson) => Lesson = lesson;

    public LessonNotebook Lesson { get; }

    public IReadOnlyDictionary<string, CellResult> Results { get; private set; } = new Dictionary<string, CellResult>();

    public static Task<LessonRun> OfAsync(string slug) => Runs.GetOrAdd(slug, s => new(() => StartAsync(s))).Value;

    /// <summary>All that a cell said.</summary>
    public string Said(string cell) => string.Concat(Results[cell].Outputs.Select(output => output.ForInstructor));

    /// <summary>Runs more code where the lesson has been run.</summary>
    public async Task<CellResult> RunAsync(string code)
    {
        CellResult result = await TryAsync(code);
        Assert.True(result.Failure is null, $"{result.Failure}\n{code}");
        return result;
    }

    /// <summary>Runs code that may fail.</summary>
    public Task<CellResult> TryAsync(string code) => _kernel.RunAsync(code, TestContext.Current.CancellationToken);

    /// <summary>A student writes something else into an answer's cell: the check refuses it and says what is wrong.</summary>
    public static async Task RefusesAsync(string slug, string answer, string written, string check, string words)
    {
        LessonRun run = await OfAsync(slug);
        LessonCell Cell(string id) => run.Lesson.Cells.Single(cell => cell.Id == id);
        Assert.Equal(CellRole.Answer, Cell(answer).Role);

        await run.RunAsync(written);
        (string? outcome, string said) = LessonCopies.Check(await run.RunAsync(Cell(check).Source));
        await run.RunAsync(Cell(answer).Source);

        Assert.Equal("wrong", outcome);
        Assert.Contains(words, said, StringComparison.Ordinal);
    }

    private static async Task<LessonRun> StartAsync(string slug)
    {
        var run = new LessonRun(LessonCopies.Named(slug));
        var results = new Dictionary<string, CellResult>();
        foreach (LessonCell cell in run.Lesson.Cells.Where(cell => cell.IsCode))
            results.Add(cell.Id, await run.RunAsync(cell.Source));
        run.Results = results;
        return run;
    }
}
