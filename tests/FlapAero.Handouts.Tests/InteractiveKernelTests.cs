using System.Globalization;
using FlapAero.Handouts.Kernels;

namespace FlapAero.Handouts.Tests;

[Trait("Speed", "slow")]
public sealed class InteractiveKernelTests : IAsyncLifetime
{
    private readonly InteractiveKernel _kernel = new();

    /// <summary>Set by the test, read by a cell: only the same copy of this assembly has it.</summary>
    public static string Token { get; set; } = "";

    private KernelTurn _turn = null!;

    public async ValueTask InitializeAsync() => _turn = await KernelTurn.TakeAsync();

    public ValueTask DisposeAsync()
    {
        _kernel.Dispose();
        _turn.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task RunAsync_DisplayedConsoleAndReturned_ComeInTheirOrder()
    {
        CellResult result = await RunAsync("display(HTML(\"<b>one</b>\"));\nConsole.WriteLine(\"two\");\nConsole.WriteLine(\"three\");\nHTML(\"<i>four</i>\")");

        Assert.Null(result.Failure);
        Assert.Equal([("<b>one</b>", true), ("two\nthree", false), ("<i>four</i>", true)], result.Outputs.Select(o => (o.Text, o.IsHtml)));
    }

    [Fact]
    public async Task RunAsync_NextCell_SeesWhatTheFirstDeclared()
    {
        await RunAsync("var knots = 51;");

        Assert.Contains("52", Assert.Single((await RunAsync("knots + 1")).Outputs).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_FreshKernel_DoesNotSeeAnotherKernelsCells()
    {
        await RunAsync("var knots = 51;");
        using var other = new InteractiveKernel();

        Assert.Contains("'knots' does not exist", (await other.RunAsync("knots", TestContext.Current.CancellationToken)).Failure, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_Exception_GivesMessageAndTypeWithoutStack()
    {
        CellResult result = await RunAsync("void Land() => throw new InvalidOperationException(\"no runway\");\nLand();");

        Assert.Equal("no runway (InvalidOperationException)", result.Failure);
    }

    [Fact]
    public async Task RunAsync_WrappedExceptionOfOurs_GivesTheInnermostMessageAlone()
    {
        Token = "x";
        CellResult result = await RunAsync("#r \"somewhere/FlapAero.Handouts.Tests.dll\"\nthrow new AggregateException(new FlapAero.Handouts.Tests.OurException(\"the wing has stalled\"));");

        Assert.Equal("the wing has stalled", result.Failure);
    }

    [Fact]
    public async Task RunAsync_CompileError_GivesLineAndWords()
    {
        CellResult result = await RunAsync("var a = 1;\nint b = \"c\";");

        Assert.Equal("It does not compile: line 2: Cannot implicitly convert type 'string' to 'int'", result.Failure);
    }

    [Fact]
    public async Task RunAsync_OurAssemblyByAnyPath_IsTheLoadedCopy()
    {
        Token = "the host's own";

        CellResult result = await RunAsync("#r \"../artifacts/lessons/FlapAero.Handouts.Tests.dll\"\nFlapAero.Handouts.Tests.InteractiveKernelTests.Token");

        Assert.Null(result.Failure);
        Assert.Equal("the host's own", Assert.Single(result.Outputs).Text);
    }

    [Theory]
    [InlineData("#r \"../artifacts/lessons/FlapAero.Notebooks.dll\"\n1")]
    [InlineData("#r \"nuget: FlapAero.Notebooks, *-*\"\n1")]
    public async Task RunAsync_LessonsReference_NeedsNeitherABuiltFolderNorAFeed(string cell) =>
        Assert.Null((await RunAsync(cell)).Failure);

    [Fact]
    public async Task RunAsync_UnknownAssemblyOfOurs_SaysWhatMayBeReferenced()
    {
        CellResult result = await RunAsync("#r \"../artifacts/lessons/FlapAero.Nothing.dll\"");

        Assert.Contains("FlapAero.Nothing.dll", result.Failure, StringComparison.Ordinal);
        Assert.Contains("FlapAero.Notebooks.dll", result.Failure, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_CommaCulture_CellComputesInTheInvariantOne()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal("51.5", Assert.Single((await RunAsync("51.5.ToString()")).Outputs).Text);
            Assert.Equal("de-DE", CultureInfo.CurrentCulture.Name);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public async Task RunAsync_CancelledInACellThatNeverEnds_ComesBack()
    {
        using var source = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        Task<CellResult> run = _kernel.RunAsync("#r \"FlapAero.Handouts.Tests.dll\"\nFlapAero.Handouts.Tests.Endless.Enter();", source.Token);
        Assert.True(await Endless.Entered.Task.WaitAsync(TestContext.Current.CancellationToken));
        await source.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => run);
        Endless.Leave.SetResult();
    }

    [Fact]
    public async Task RunAsync_RefusalOfTheLibrary_IsItsMessageAlone()
    {
        CellResult result = await RunAsync("#r \"FlapAero.Notebooks.dll\"\nFlapAero.LoadFactor.InTurn(UnitsNet.Angle.FromDegrees(90))");

        Assert.StartsWith("bank: 90° is refused; allowed is -85° to 85°.", result.Failure, StringComparison.Ordinal);
        Assert.DoesNotContain("(", result.Failure, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Expect_CellsThatFollow_GiveWhatTheyGiveWithoutIt()
    {
        _kernel.Expect(["var knots = 51;", "knots++;", "knots", "Console.Write(knots);"]);

        Assert.Empty((await RunAsync("var knots = 51;")).Outputs);
        Assert.Empty((await RunAsync("knots++;")).Outputs);
        Assert.Contains("52", Assert.Single((await RunAsync("knots")).Outputs).Text, StringComparison.Ordinal);
        Assert.Equal("52", Assert.Single((await RunAsync("Console.Write(knots);")).Outputs).Text);
    }

    [Fact]
    public async Task Expect_CellThatDoesNotCompile_FailsWhenItsTurnComesAndNoOtherDoes()
    {
        _kernel.Expect(["Console.Write(1);", "nothing", "Console.Write(2);"]);

        Assert.Equal("1", Assert.Single((await RunAsync("Console.Write(1);")).Outputs).Text);
        Assert.Contains("'nothing' does not exist", (await RunAsync("nothing")).Failure, StringComparison.Ordinal);
        Assert.Equal("2", Assert.Single((await RunAsync("Console.Write(2);")).Outputs).Text);
    }

    [Fact]
    public async Task Expect_OtherCellInstead_IsRunAndWhatWasExpectedIsNot()
    {
        _kernel.Expect(["var a = 1;", "var b = 2;", "a + b"]);
        await RunAsync("var a = 10;");
        await RunAsync("var b = 20;");

        Assert.Contains("30", Assert.Single((await RunAsync("a + b")).Outputs).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_AfterAnException_KeepsWhatWasDeclared()
    {
        _kernel.Expect(["var a = 1; throw new InvalidOperationException();", "a"]);
        await RunAsync("var a = 1; throw new InvalidOperationException();");

        Assert.Contains("1", Assert.Single((await RunAsync("a")).Outputs).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("(string)null", 1)]
    [InlineData("(string)null;", 0)]
    [InlineData("Console.Out.Flush()", 0)]
    public async Task RunAsync_NoValueOrNull_IsToldApart(string code, int outputs) =>
        Assert.Equal(outputs, (await RunAsync(code)).Outputs.Count);

    private Task<CellResult> RunAsync(string code) => _kernel.RunAsync(code, TestContext.Current.CancellationToken);
}

/// <summary>An exception of this project's, as the kernel sees it.</summary>
public sealed class OurException(string message) : Exception(message);

/// <summary>A call that does not return until it is let go.</summary>
public static class Endless
{
    public static TaskCompletionSource<bool> Entered { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public static TaskCompletionSource Leave { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public static void Enter()
    {
        Entered.SetResult(true);
        Leave.Task.GetAwaiter().GetResult();
    }
}
