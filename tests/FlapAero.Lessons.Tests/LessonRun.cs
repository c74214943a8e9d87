using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>A lesson as it is, with one or the other aeroplane, run once for all tests: what its cells said, and its kernel for further cells.</summary>
internal sealed partial class LessonRun
{
    /// <summary>The aeroplane that a lesson takes where none is named.</summary>
    private const string Usual = nameof(DemoAeroplanes.TrainerH4);

    private static readonly ConcurrentDictionary<(string, string), Lazy<Task<LessonRun>>> Runs = new();

    private readonly InteractiveKernel _kernel = new();

    private LessonRun(LessonNotebook lesson) => Lesson = lesson;

    public LessonNotebook Lesson { get; }

    public IReadOnlyDictionary<string, CellResult> Results { get; private set; } = new Dictionary<string, CellResult>();

    public static Task<LessonRun> OfAsync(string slug, string aeroplane = Usual) =>
        Runs.GetOrAdd((slug, aeroplane), _ => new(() => StartAsync(slug, aeroplane))).Value;

    /// <summary>The run as handouts are made of it.</summary>
    public RanLesson ToRan() => new(Lesson, Results.ToDictionary(result => result.Key, result => result.Value.Outputs));

    /// <summary>All that a cell said, whatever lines its prose stands in.</summary>
    public string Said(string cell) => string.Concat(Results[cell].Outputs.Select(output => output.ForInstructor)).Replace('\n', ' ');

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

    /// <summary>A problem for each seed, all in one cell: compiling a cell takes longer than working it.</summary>
    public static async Task<IReadOnlyList<CellOutput>> DrawAsync(LessonCell problem, Func<string, Task<CellResult>> run, IReadOnlyList<int> seeds)
    {
        CellResult result = await run($$"""
            Problem DrawnFor(Lesson lesson)
            {
            {{Returned(problem)}}
            }
            foreach (int seed in new[] { {{string.Join(", ", seeds)}} })
                display(DrawnFor(Lesson.Begin(seed, lesson.Aeroplane)));
            """);
        Assert.True(result.Failure is null, result.Failure);
        Assert.Equal(seeds.Count, result.Outputs.Count(output => output.Kept?.Key is not null));
        return result.Outputs;
    }

    /// <summary>The cell of a problem as the body of a function that returns it.</summary>
    public static string Returned(LessonCell problem) => Statement().Replace(problem.Source, "return lesson.") + ";";

    private static async Task<LessonRun> StartAsync(string slug, string aeroplane)
    {
        var run = new LessonRun(LessonCopies.Named(slug));
        var results = new Dictionary<string, CellResult>();
        foreach (LessonCell cell in run.Lesson.Cells.Where(cell => cell.IsCode))
            results.Add(cell.Id, await run.RunAsync(aeroplane == Usual ? cell.Source : LessonCopies.Begun(cell, $"aeroplane: DemoAeroplanes.{aeroplane}")));
        run.Results = results;
        string name = aeroplane == Usual ? DemoAeroplanes.TrainerH4.Name : DemoAeroplanes.TrainerL2.Name;
        Assert.Contains($"Lesson ready: {name},", run.Said(run.Lesson.Cells.Single(cell => cell.Role == CellRole.Setup).Id), StringComparison.Ordinal);
        return run;
    }

    [GeneratedRegex(@"^lesson\.", RegexOptions.Multiline)]
    private static partial Regex Statement();
}
