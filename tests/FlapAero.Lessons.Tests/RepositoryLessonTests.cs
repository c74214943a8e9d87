using System.Text;
using System.Text.Json;
using AngleSharp.Html.Parser;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Rules;
using FlapAero.Handouts.Rules.AfterARun;
using FlapAero.Notebooks;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>Every lesson of the project is a whole lesson, and its checks know right from wrong.</summary>
public sealed class RepositoryLessonTests
{
    public static TheoryData<string> Lessons => [.. LessonCopies.All.Select(lesson => lesson.Slug)];

    [Theory, MemberData(nameof(Lessons)), Trait("Speed", "slow")]
    public async Task Lesson_InstructorsCopy_PassesItsChecksForEveryAeroplane(string slug)
    {
        LessonNotebook lesson = LessonCopies.Named(slug);
        foreach (string aeroplane in new[] { "TrainerH4", "TrainerL2" })
        {
            // A cell that fails has failed the run.
            IReadOnlyDictionary<string, CellResult> results = (await LessonRun.OfAsync(slug, aeroplane)).Results;

            Assert.Equal(lesson.Cells.Where(cell => cell.IsCode).Select(cell => cell.Id).Order(StringComparer.Ordinal), results.Keys.Order(StringComparer.Ordinal));
            Assert.All(Checks(lesson), cell => Assert.Equal("passed", LessonCopies.Check(results[cell.Id]).Outcome));
        }
    }

    [Theory, MemberData(nameof(Lessons)), Trait("Speed", "slow")]
    public async Task Lesson_OneFlapSetting_SaysSoAndPassesItsChecks(string slug)
    {
        LessonNotebook lesson = LessonCopies.Named(slug);

        var results = await OneFlapSetting.RunAsync(slug);

        Assert.All(results, result => Assert.True(result.Value.Failure is null, $"{result.Key}: {result.Value.Failure}"));
        Assert.All(Checks(lesson), cell => Assert.Equal("passed", LessonCopies.Check(results[cell.Id]).Outcome));
        string said = string.Concat(results.Values.SelectMany(result => result.Outputs).Select(output => output.Text));
        Assert.Contains("one flap setting only", said, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Lessons)), Trait("Speed", "slow")]
    public async Task Lesson_StudentsCopy_FailsItsChecksUntilAnswered(string slug)
    {
        LessonNotebook lesson = LessonCopies.Named(slug);

        var results = await LessonCopies.RunAsync(lesson, cell => cell.Role == CellRole.Answer ? cell.StudentSource : cell.Source);

        Assert.All(results, result => Assert.Null(result.Value.Failure));
        Assert.NotEmpty(Checks(lesson));
        Assert.All(Checks(lesson), cell => Assert.Equal("open", LessonCopies.Check(results[cell.Id]).Outcome));
    }

    [Theory, MemberData(nameof(Lessons)), Trait("Speed", "slow")]
    public async Task Lesson_Problems_DifferFromSeedToSeedAndAreSolvedForEach(string slug)
    {
        LessonRun run = await LessonRun.OfAsync(slug);
        LessonCell[] problems = [.. run.Lesson.Cells.Where(cell => cell.Role == CellRole.Problem)];
        Assert.True(problems.Length >= 5);
        int[] seeds = [.. Enumerable.Range(1, 8)];
        var sheets = seeds.Select(_ => new StringBuilder()).ToList();
        foreach (LessonCell problem in problems)
            foreach ((CellOutput drawn, StringBuilder sheet) in (await LessonRun.DrawAsync(problem, run.TryAsync, seeds)).Zip(sheets))
                sheet.AppendLine(drawn.ForInstructor);

        int different = sheets.Select(sheet => sheet.ToString()).Distinct().Count();
        Assert.True(different >= 6, $"8 seeds gave only {different} different sheets");
    }

    [Theory, MemberData(nameof(Lessons))]
    public void Lesson_Roles_MakeAWholeLesson(string slug)
    {
        LessonNotebook lesson = LessonCopies.Named(slug);

        Assert.Empty(LessonRules.Faults(lesson).Select(fault => fault.Words).Concat(TeachingPlan.Faults(lesson)));
    }

    /// <summary>A mistake that is none, an answer above its box, too few figures: what check tells after a run.</summary>
    [Theory, MemberData(nameof(Lessons)), Trait("Speed", "slow")]
    public async Task Lesson_Run_KeepsEveryRule(string slug)
    {
        RanLesson lesson = (await LessonRun.OfAsync(slug)).ToRan();

        Assert.Contains(lesson.Notebook.Cells.SelectMany(lesson.KeysOf), key => key.Value is not null);
        Assert.Empty(RunRules.Faults(lesson, []).Select(fault => fault.Words));
    }

    /// <summary>Of the code of prose the student's copy keeps what later cells need: all that is left runs.</summary>
    [Theory, MemberData(nameof(Lessons)), Trait("Speed", "slow")]
    public async Task Lesson_StudentsCopy_RunsToItsEnd(string slug)
    {
        LessonRun run = await LessonRun.OfAsync(slug);
        RanLesson ran = run.ToRan();
        using var kernel = new InteractiveKernel();

        foreach (LessonCell cell in LessonNotebook.Parse(run.Lesson.FileName, StudentNotebook.Of(ran)).Cells.Where(cell => cell.IsCode && cell.Role != CellRole.Check))
        {
            CellResult result = await kernel.RunAsync(cell.Source, TestContext.Current.CancellationToken);
            Assert.True(result.Failure is null, $"{cell}: {result.Failure}");
        }
    }

    /// <summary>On the page each prediction is compared with one result.</summary>
    [Theory, MemberData(nameof(Lessons)), Trait("Speed", "slow")]
    public async Task Lesson_Predictions_AreEachComparedOnce(string slug)
    {
        LessonRun run = await LessonRun.OfAsync(slug);
        string?[] asked = [.. run.Lesson.Cells.Where(cell => cell.Role == CellRole.Commit).Select(cell => CellNames.Of(cell.Source).LastVariable)];

        IEnumerable<string> answered = run.Results.Values.SelectMany(result => result.Outputs)
            .SelectMany(output => new HtmlParser().ParseDocument(output.Text).QuerySelectorAll(".compared"))
            .Select(compared => JsonDocument.Parse(compared.GetAttribute("data-facts")!).RootElement.GetProperty("prediction").GetString()!);

        Assert.Equal(asked.Order(), answered.Order());
    }

    [Theory, MemberData(nameof(Lessons)), Trait("Speed", "slow")]
    public async Task Lesson_Prose_HasAtMost900Words(string slug)
    {
        LessonRun run = await LessonRun.OfAsync(slug);
        IEnumerable<string> said = run.Results.Values.SelectMany(result => result.Outputs)
            .SelectMany(output => new HtmlParser().ParseDocument(output.Text).QuerySelectorAll(".said"))
            .Select(prose => prose.TextContent);
        IEnumerable<string> written = run.Lesson.Cells.Where(cell => !cell.IsCode && cell.Role != CellRole.Instructor).Select(cell => cell.Source);

        int words = written.Concat(said).Sum(text => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Count(word => word.Any(char.IsLetter)));

        Assert.InRange(words, 100, 900);
        // What an instructor reads before the class, and beside it.
        int notes = run.Lesson.Cells.Where(cell => cell.Role == CellRole.Instructor)
            .Sum(note => note.Source.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Count(word => word.Any(char.IsLetter)));
        Assert.InRange(notes, 300, 750);
    }

    [Fact]
    public void Readme_Caution_IsThatOfThePages()
    {
        string readme = File.ReadAllText(RepositoryRoot.Path("README.md"));

        Assert.Contains("**Caution.** " + Caution.Text, readme.ReplaceLineEndings("\n").Replace("\n> ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    private static IEnumerable<LessonCell> Checks(LessonNotebook lesson) => lesson.Cells.Where(cell => cell.Role == CellRole.Check);
}
