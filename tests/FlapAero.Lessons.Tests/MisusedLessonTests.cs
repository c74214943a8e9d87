using System.Text.RegularExpressions;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>What students do to the cells that are theirs. Whatever fails says in a line which name is missing or wrong, and can be put right.</summary>
[Trait("Speed", "slow")]
public sealed class MisusedLessonTests
{
    public static TheoryData<string> Lessons => [.. LessonCopies.All.Select(lesson => lesson.Slug)];

    [Theory, MemberData(nameof(Lessons))]
    public async Task Cells_DeletedOrMovedToTheEnd_AreMissedByNameUntilTheyHaveRun(string slug)
    {
        LessonNotebook lesson = LessonCopies.Named(slug);
        using var kernel = new InteractiveKernel();
        async Task<string?> Failure(LessonCell cell) => (await kernel.RunAsync(cell.Source, TestContext.Current.CancellationToken)).Failure;
        LessonCell[] theirs = [.. Theirs(lesson)];
        HashSet<string> missing = [.. theirs.SelectMany(Declared)];
        var failed = new List<LessonCell>();
        foreach (LessonCell cell in lesson.Cells.Where(c => c.IsCode).Except(theirs))
            if (await Failure(cell) is { } words)
            {
                AssertMessage(words, $"'({string.Join('|', missing)})'");
                missing.UnionWith(Declared(cell));
                failed.Add(cell);
            }
        Assert.All(lesson.Cells.Where(c => c.Role == CellRole.Check), check => Assert.Contains(check, failed));

        foreach (LessonCell cell in lesson.Cells.Where(c => theirs.Contains(c) || failed.Contains(c)))
            Assert.Null(await Failure(cell));
    }

    [Theory, MemberData(nameof(Lessons))]
    public async Task Cells_RunTwice_ChangeNothing(string slug)
    {
        LessonRun run = await LessonRun.OfAsync(slug);
        foreach (LessonCell cell in Theirs(run.Lesson))
        {
            await run.RunAsync(cell.Source);
            Assert.Equal(Outputs(run.Results[cell.Id]), Outputs(await run.RunAsync(cell.Source)));
        }
        foreach (LessonCell check in run.Lesson.Cells.Where(c => c.Role == CellRole.Check))
            Assert.Equal("passed", LessonCopies.Check(await run.RunAsync(check.Source)).Outcome);
    }

    [Theory, MemberData(nameof(Lessons))]
    public async Task Answers_RetypedAsSomethingElse_AreRefusedInWords(string slug)
    {
        LessonRun run = await LessonRun.OfAsync(slug);
        foreach (LessonCell check in run.Lesson.Cells.Where(c => c.Role == CellRole.Check))
        {
            LessonCell answer = run.Lesson.Cells.TakeWhile(c => c != check).Last(c => c.Role == CellRole.Answer);
            string name = CellNames.Of(answer.StudentSource).LastVariable!;
            foreach (string other in new[] { "\"about sixty\"", "Temperature.FromKelvins(3)", "lesson" })
            {
                await run.RunAsync($"var {name} = {other};");
                AssertMessage((await run.TryAsync(check.Source)).Failure, "convert|argument|type");
            }
            // A quantity refuses to be no number, a plain one is refused by its check.
            string noNumber = Regex.Replace(answer.StudentSource, @"\(0\)|= 0(?:\.0)?;", m => m.Value.Replace("0.0", "0", StringComparison.Ordinal).Replace("0", "double.NaN", StringComparison.Ordinal));
            if ((await run.TryAsync(noNumber)).Failure is { } refused)
                AssertMessage(refused.Replace(" (ArgumentException)", "", StringComparison.Ordinal), "NaN is not a valid number");
            else
                Assert.Equal("wrong", LessonCopies.Check(await run.RunAsync(check.Source)).Outcome);
            await run.RunAsync(answer.Source);
        }
    }

    private static IEnumerable<LessonCell> Theirs(LessonNotebook lesson) =>
        lesson.Cells.Where(cell => cell.Role is CellRole.Commit or CellRole.Answer or CellRole.Change);

    private static IEnumerable<string> Declared(LessonCell cell) =>
        Regex.Matches(cell.Source, @"\b([A-Za-z]\w*) =[ \n]|\(((?:\w+, )+\w+)\) =|^[\w<>(), ]+ (\w+)\(", RegexOptions.Multiline)
            .SelectMany(m => m.Groups.Values.Skip(1)).SelectMany(g => g.Value.Split(", ")).Where(name => name.Length > 0);

    private static IEnumerable<(string, bool)> Outputs(CellResult result) => result.Outputs.Select(o => (o.ForInstructor, o.IsHtml));

    private static void AssertMessage(string? words, string says)
    {
        Assert.NotNull(words);
        Assert.True(Regex.IsMatch(words, says), $"{words} does not say {says}");
        Assert.DoesNotContain('\n', words);
        Assert.DoesNotContain("Exception", words, StringComparison.Ordinal);
    }
}
