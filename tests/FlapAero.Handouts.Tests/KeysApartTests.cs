using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Pages;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Tests;

/// <summary>What students do not get leaves the kernel apart from what their pages are made of.</summary>
[Trait("Speed", "slow")]
public sealed class KeysApartTests : IAsyncLifetime
{
    private const string Problem = """lesson.Problem("A heavier day", $"At {Speed.FromKnots(53)}?", ["First the load factor."], Speed.FromKnots(61.4), Speed.FromKnots(0.5), $"Multiply by the margin.", new Mistake(Speed.FromKnots(70), "Squared."))""";

    private const string Choice = """lesson.Decide("Land?", $"Now?", [Option.Right("Go around.", "It is safe."), Option.Wrong("Go on.", "It is late.")], "Names the margin.", ["Look."], $"Never late.")""";

    private readonly InteractiveKernel _kernel = new();

    private KernelTurn _turn = null!;

    public async ValueTask InitializeAsync() => _turn = await KernelTurn.TakeAsync();

    public ValueTask DisposeAsync()
    {
        _kernel.Dispose();
        _turn.Dispose();
        return ValueTask.CompletedTask;
    }

    [Theory]
    [InlineData("")]
    [InlineData("display(")]
    public async Task RunAsync_Problem_KeepsAnswerSolutionAndMistakesApart(string call)
    {
        CellOutput output = Assert.Single(await OutputsAsync(call + Problem + (call.Length > 0 ? ");" : "")));

        Assert.All(["61.4", "Multiply", "solution", "Squared", "seal"], word => Assert.DoesNotContain(word, output.Text, StringComparison.OrdinalIgnoreCase));
        Assert.Contains("First the load factor.", output.Text, StringComparison.Ordinal);
        Assert.Contains("Multiply by the margin.", output.ForInstructor, StringComparison.Ordinal);
        Assert.Equal(61.4, output.Kept!.Key!.Value!.Value, 9);
        Assert.Equal("Squared.", Assert.Single(output.Kept.Key.Mistakes).Because);
        Assert.Null(output.Kept.Outcome);
    }

    [Fact]
    public async Task RunAsync_Decision_KeepsReasonAndJudgedOptionsApart()
    {
        CellOutput output = Assert.Single(await OutputsAsync(Choice));

        Assert.All(["Right", "Names the margin", "It is safe", "It is late"], word => Assert.DoesNotContain(word, output.Text, StringComparison.Ordinal));
        Assert.Contains("Go around.", output.Text, StringComparison.Ordinal);
        Assert.Equal("Names the margin.", output.Kept!.Key!.Reason);
        Assert.Single(output.Kept.Key.Choices, option => option.IsRight);
    }

    [Fact]
    public async Task RunAsync_Check_SaysNothingButToTheInstructor()
    {
        CellOutput output = Assert.Single(await OutputsAsync("""lesson.Check("Slowest", Speed.FromKnots(61.4), Speed.FromKnots(61.4), Speed.FromKnots(0.5))"""));

        Assert.Equal("", output.Text);
        Assert.Equal((CheckOutcome.Passed, "Slowest"), (output.Kept!.Outcome, output.Kept.Key!.What));
        Assert.Contains("is right", output.ForInstructor, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_ProblemsInAList_GiveNoSolution() =>
        Assert.DoesNotContain("Multiply", Assert.Single(await OutputsAsync($"new[] {{ {Problem} }}")).Text, StringComparison.Ordinal);

    [Fact]
    public async Task Of_OutputThroughAProcess_StaysApart()
    {
        CellOutput output = Assert.Single(await OutputsAsync(Problem));
        string json = System.Text.Json.JsonSerializer.Serialize(KernelMessages.Output.Of(output));
        CellOutput there = System.Text.Json.JsonSerializer.Deserialize<KernelMessages.Output>(json)!.ToCellOutput();

        Assert.Equal((output.Text, output.ForInstructor, output.Kept!.ToJson()), (there.Text, there.ForInstructor, there.Kept!.ToJson()));
    }

    [Theory]
    [InlineData("<div class=\"solution\">It is 61.4 kt.</div>")]
    [InlineData("<section class=\"problem\"><p class=\"check\">61.4 kt is right.</p></section>")]
    public void ForStudents_AnswerMadeByHand_IsRefused(string html)
    {
        var output = new CellOutput(html, isHtml: true);

        string message = Assert.Throws<HandoutException>(() => Fragment.ForStudents(output, "Lesson 1, turn, cell \"One\" (one)")).Message;

        Assert.StartsWith("Lesson 1, turn, cell \"One\" (one): ", message, StringComparison.Ordinal);
        Assert.Contains("lesson.Problem keep", message, StringComparison.Ordinal);
        Assert.False(Fragment.ForInstructor(output, "here").IsEmpty);
    }

    private async Task<IReadOnlyList<CellOutput>> OutputsAsync(string code)
    {
        CellResult setup = await _kernel.RunAsync(Lesson.SetupCell, TestContext.Current.CancellationToken);
        CellResult result = await _kernel.RunAsync(code, TestContext.Current.CancellationToken);
        Assert.Null(setup.Failure);
        Assert.Null(result.Failure);
        return result.Outputs;
    }
}
