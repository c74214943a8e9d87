using System.Globalization;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Rules.AfterARun;
using FlapAero.Notebooks;

namespace FlapAero.Lessons.Tests;

/// <summary>What an author may do wrong and only a run shows, planted in a lesson that has been run: check --run tells it with its place.</summary>
[Trait("Speed", "slow")]
public sealed class AuthorsFaultTests
{
    private const string Slug = "power-on-the-approach", File = "05-power-on-the-approach.ipynb";

    private const string Check = "is-it-the-right-engine-speed", Earlier = "the-usual-setting", Question = "your-turn";

    [Fact]
    public async Task Faults_MistakeThatIsTheAnswer_IsTold()
    {
        string told = Assert.Single(await ToldAsync(Check, source => source.Replace(
            "new Mistake(today.EngineSpeed(today.ReferenceSpeed(air), path),", "new Mistake(today.EngineSpeed(today.ReferenceSpeed(air), steeper),", StringComparison.Ordinal)));

        Assert.All([File, "\"Is it the right engine speed?\"", "That is for the lesson's path", "passes as the answer", "rpm", "tolerance, 15 rpm"], word => Assert.Contains(word, told, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Faults_QuestionWithoutASlip_IsTold()
    {
        string told = Assert.Single(await ToldAsync(Check, source => source[..source.IndexOf(",\n    new Mistake", StringComparison.Ordinal)] + ")"));

        Assert.All([File, "\"Is it the right engine speed?\"", "no typical slip of \"Engine speed\"", "at least one"], word => Assert.Contains(word, told, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Faults_AnswerAboveItsOwnBox_IsTold()
    {
        AnswerKey key = (await LessonRun.OfAsync(Slug)).ToRan() is var ran ? ran.KeysOf(ran.Notebook.Cells.Single(cell => cell.Id == Check))[0] : throw new InvalidOperationException();
        string number = string.Create(CultureInfo.InvariantCulture, $"{key.Value + 5:0} rpm");

        string told = Assert.Single(await ToldAsync(Question, source => $"{source} About {number}?"));

        Assert.All([File, "\"Your turn\"", number, "above the box of cell \"My engine speed\"", "never the answer"], word => Assert.Contains(word, told, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Faults_PredictionGivenAwayBeforeItsQuestion_IsTold()
    {
        string told = Assert.Single(await ToldAsync(Earlier, source => $"{source} It is {Shown("fewerGuess")} less."));

        Assert.All([File, "\"The usual setting\"", "fewerGuess of " + File, Shown("fewerGuess"), "read before its question"], word => Assert.Contains(word, told, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Faults_PredictionGivenAwayInAnEarlierLesson_IsTold()
    {
        RanLesson lesson = (await LessonRun.OfAsync(Slug)).ToRan(), earlier = (await LessonRun.OfAsync("start-here")).ToRan();
        LessonCell scenario = earlier.Notebook.Cells.First(cell => cell is { Role: CellRole.Scenario, IsCode: false });
        RanLesson planted = With(earlier, scenario, $"{scenario.Source} It is {Shown("fewerGuess")} less.", null);

        string told = Assert.Single(RunRules.Faults(lesson, [planted]).Select(fault => fault.Words));

        Assert.All(["00-start-here.ipynb", $"\"{scenario.Title}\"", "fewerGuess of " + File, Shown("fewerGuess")], word => Assert.Contains(word, told, StringComparison.Ordinal));
        Assert.Empty(RunRules.Faults(lesson, [earlier]));
    }

    [Fact]
    public async Task Faults_NoFigure_IsTold()
    {
        RanLesson lesson = (await LessonRun.OfAsync(Slug)).ToRan();
        Dictionary<string, IReadOnlyList<CellOutput>> bare = lesson.Outputs.ToDictionary(
            cell => cell.Key, cell => (IReadOnlyList<CellOutput>)[.. cell.Value.Where(output => output.Read.QuerySelector("figure") is null)]);

        string[] told = [.. RunRules.Faults(new RanLesson(lesson.Notebook, bare), []).Select(fault => fault.Words)];

        Assert.Contains(told, line => line.StartsWith($"{File} shows 0 figures; allowed are 2 to 5", StringComparison.Ordinal));
        Assert.Contains(told, line => line.StartsWith($"{File} shows no figure that its reader moves", StringComparison.Ordinal));
    }

    private static string Shown(string prediction) => PredictionsGivenAway.Compared(LessonRun.OfAsync(Slug).Result.ToRan())
        .Single(compared => compared.Name == prediction).Facts.GetProperty("shown").GetString()!;

    /// <summary>What is told of the lesson with one cell written otherwise; that cell alone is run again.</summary>
    private static async Task<string[]> ToldAsync(string cell, Func<string, string> write)
    {
        LessonRun run = await LessonRun.OfAsync(Slug);
        LessonCell old = run.Lesson.Cells.Single(one => one.Id == cell);
        string source = write(old.Source);
        Assert.NotEqual(old.Source, source);
        return [.. RunRules.Faults(With(run.ToRan(), old, source, old.IsCode ? (await run.RunAsync(source)).Outputs : null), []).Select(fault => fault.Words)];
    }

    private static RanLesson With(RanLesson lesson, LessonCell old, string source, IReadOnlyList<CellOutput>? outputs)
    {
        var written = new LessonCell(old.Id, old.Role, old.Title, old.IsCode, source) { Label = old.Label, Unit = old.Unit };
        LessonNotebook of = lesson.Notebook;
        var notebook = new LessonNotebook(of.FileName, new LessonFacts(of.Number, of.Title, of.Summary, of.Minutes), [.. of.Cells.Select(cell => cell == old ? written : cell)]);
        return new RanLesson(notebook, lesson.Outputs.ToDictionary(cell => cell.Key, cell => cell.Key == old.Id && outputs is not null ? outputs : cell.Value));
    }
}
