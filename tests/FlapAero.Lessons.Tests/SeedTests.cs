using System.Globalization;
using FlapAero.Handouts;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Notebooks;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// Every lesson makes its student's files for other seeds than the first: the search for answers raises no false alarm.
/// <c>SweepSeeds=100</c> in the environment sweeps seeds 1 to 100 with both aeroplanes in place of a few seeds with
/// one.
/// </summary>
[Trait("Speed", "slow")]
public sealed class SeedTests
{
    /// <summary>Seeds that were refused once, and the first sheets of a class.</summary>
    private static readonly int[] Few = [2, 5, 11];

    /// <summary>One for all lessons: reading what sets the maths takes longer than a lesson's formulas.</summary>
    private static readonly Mathematics Maths = new();

    private static readonly int Sweep = int.Parse(Environment.GetEnvironmentVariable("SweepSeeds") ?? "0", CultureInfo.InvariantCulture);

    public static TheoryData<string> Lessons => [.. LessonCopies.All.Select(lesson => lesson.Slug)];

    [Theory, MemberData(nameof(Lessons))]
    public async Task Of_OtherSeeds_TellsNothingToStudentsAndCallsGoingAroundSafe(string slug)
    {
        LessonRun run = await LessonRun.OfAsync(slug);
        int[] seeds = Sweep > 0 ? [.. Enumerable.Range(1, Sweep)] : [.. Few, .. SheetSeeds.Of(1, 4)];
        List<string> refused = await RefusedAsync(run.Lesson, run.Results, run.TryAsync, seeds);
        if (Sweep > 0)
        {
            using var kernel = new InteractiveKernel();
            Task<CellResult> Run(string code) => kernel.RunAsync(code, TestContext.Current.CancellationToken);
            var results = new Dictionary<string, CellResult>();
            foreach (LessonCell cell in run.Lesson.Cells.Where(cell => cell.IsCode))
                results.Add(cell.Id, await Run(LessonCopies.Begun(cell, "aeroplane: DemoAeroplanes.TrainerL2")));
            refused.AddRange((await RefusedAsync(run.Lesson, results, Run, seeds)).Select(message => "TrainerL2 " + message));
        }

        Assert.True(refused.Count == 0, string.Join('\n', refused));
    }

    private static async Task<List<string>> RefusedAsync(
        LessonNotebook lesson, IReadOnlyDictionary<string, CellResult> results, Func<string, Task<CellResult>> run, int[] seeds)
    {
        var problems = new Dictionary<string, IReadOnlyList<CellOutput>>();
        foreach (LessonCell cell in lesson.Cells.Where(c => c.Role == CellRole.Problem))
            problems.Add(cell.Id, await LessonRun.DrawAsync(cell, run, seeds));
        Dictionary<string, IReadOnlyList<CellOutput>> ofLesson = lesson.Cells.Where(c => c.IsCode && c.Role != CellRole.Setup)
            .ToDictionary(c => c.Id, c => results[c.Id].Outputs);
        // A sweep leaves out the whole page: what it has besides the sheet is the same for every seed.
        var choice = new ArtefactChoice(new HashSet<Edition> { Sweep > 0 ? Edition.Sheets : Edition.Student, Edition.Notebook });
        var refused = new List<string>();
        foreach ((int n, int seed) in seeds.Index())
        {
            var outputs = new Dictionary<string, IReadOnlyList<CellOutput>>(ofLesson);
            foreach ((string cell, IReadOnlyList<CellOutput> drawn) in problems)
                outputs[cell] = [drawn[n]];
            var sheet = new RanSheet(1, seed, problems.ToDictionary(p => p.Key, p => outputs[p.Key]));
            AnswerKey[] keys = [.. outputs.Values.SelectMany(o => RanLesson.KeysIn(o))];
            foreach (AnswerKey key in keys.Where(k => k.Value is not null))
                refused.AddRange(SealAttack.Betrays(key.Seal).Select(how => $"seal of \"{key.What}\", seed {seed}: {how}"));
            refused.AddRange(keys.SelectMany(key => key.Choices).Where(c => c.Text == "Go around." && !c.IsRight && !c.IsSafe)
                .Select(_ => $"seed {seed}: going around is called wrong"));
            try
            {
                _ = LessonArtefacts.Of(new RanLesson(lesson, outputs) { Sheets = [sheet] }, Maths, choice);
            }
            catch (HandoutException e)
            {
                refused.Add(string.Create(CultureInfo.InvariantCulture, $"seed {seed}: {e.Message}"));
            }
        }
        return refused;
    }
}
