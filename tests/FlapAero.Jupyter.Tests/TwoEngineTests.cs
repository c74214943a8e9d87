using AngleSharp.Html.Parser;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Tests;

namespace FlapAero.Jupyter.Tests;

/// <summary>
/// The same lessons in two engines: the real Jupyter kernel, in a German user's folder with spaces and umlauts, as the front
/// end saved them, and the kernel in process that makes the handouts. One may go some day; that must not be noticed.
/// </summary>
[Trait("Speed", "slow")]
public sealed class TwoEngineTests(InstalledJupyter jupyter)
{
    private static readonly IReadOnlyList<LessonNotebook> All = LessonNotebook.ReadFolder(RepositoryRoot.Path("notebooks"));

    /// <summary>The lessons' files in their order.</summary>
    internal static IReadOnlyList<string> Files { get; } = [.. All.Select(lesson => lesson.FileName)];

    public static TheoryData<string> Lessons => [.. Files];

    [Theory]
    [MemberData(nameof(Lessons))]
    public async Task Run_SameLessonInBothEngines_SaysTheSame(string file)
    {
        LessonNotebook lesson = All.Single(l => l.FileName == file);

        SavedNotebook saved = (await jupyter.FrontEnd.RunAsync(file)).Saved;
        (var inProcess, var plainTexts) = await InProcessAsync(lesson);

        Assert.Empty(Differences.Between(saved.Outputs, inProcess));
        Assert.True(saved.PlainTexts.Values.Sum(texts => texts.Count) > 10);
        Assert.Empty(Differences.Between(saved.PlainTexts, plainTexts));
        foreach (LessonCell check in lesson.Cells.Where(cell => cell.Role == CellRole.Check))
            Assert.Equal("passed", Outcome(saved.Outputs[check.Id]));
        AssertNoticesPlantedDifferences(lesson, inProcess);
    }

    /// <summary>Without a front end, as a school's server runs notebooks: what is saved is the same.</summary>
    [Fact]
    public async Task Run_LessonWithoutAFrontEnd_SaysTheSame()
    {
        string file = All[0].FileName;

        SavedNotebook ran = await jupyter.RunAsync(Path.Combine(jupyter.Notebooks, file));

        Assert.Empty(Differences.Between((await jupyter.FrontEnd.RunAsync(file)).Saved.Outputs, ran.Outputs));
        Machine.AssertNotIn(ran.Text, jupyter.Checkout);
    }

    /// <summary>A comparison that finds nothing proves something only if it would find a difference.</summary>
    private static void AssertNoticesPlantedDifferences(LessonNotebook lesson, Dictionary<string, IReadOnlyList<Output>> outputs)
    {
        foreach (LessonCell cell in lesson.Cells.Where(cell => cell.IsCode && outputs[cell.Id].Count > 0 && cell.Role != CellRole.Setup))
        {
            Output last = outputs[cell.Id][^1];
            int digit = last.Text.IndexOfAny([.. "0123456789"]);
            if (digit < 0)
                continue;
            string changed = last.Text[..digit] + (last.Text[digit] == '9' ? '8' : (char)(last.Text[digit] + 1)) + last.Text[(digit + 1)..];
            var planted = new Dictionary<string, IReadOnlyList<Output>>(outputs) { [cell.Id] = [.. outputs[cell.Id].SkipLast(1), last with { Text = changed }] };

            Assert.StartsWith(cell.Id + ":", Assert.Single(Differences.Between(outputs, planted)), StringComparison.Ordinal);
        }
    }

    /// <summary>What each cell puts out, and what the values it shows are in plain text.</summary>
    private static async Task<(Dictionary<string, IReadOnlyList<Output>> Outputs, Dictionary<string, IReadOnlyList<Output>> PlainTexts)> InProcessAsync(LessonNotebook lesson)
    {
        Dictionary<string, IReadOnlyList<Output>> outputs = [], plainTexts = [];
        using var kernel = new InteractiveKernel();
        foreach (LessonCell cell in lesson.Cells.Where(cell => cell.IsCode))
        {
            var plain = new PlainTexts();
            using IDisposable listening = kernel.KernelEvents.Subscribe(plain);
            CellResult result = await kernel.RunAsync(cell.Source, TestContext.Current.CancellationToken);
            Assert.Null(result.Failure);
            outputs.Add(cell.Id, [.. result.Outputs.Select(output => new Output(output.IsHtml ? "html" : "text", output.ForInstructor.TrimEnd()))]);
            plainTexts.Add(cell.Id, plain.Shown);
        }
        return (outputs, plainTexts);
    }

    private static string? Outcome(IReadOnlyList<Output> outputs) =>
        new HtmlParser().ParseDocument(string.Concat(outputs.Select(output => output.Text))).QuerySelectorAll(".check").Single().GetAttribute("data-outcome");
}
