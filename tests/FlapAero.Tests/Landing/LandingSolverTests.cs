using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>One landing, some, and many: the same answers, and the same refusals by their place.</summary>
public sealed class LandingSolverTests
{
    private static readonly LandingInput Usual = UsualLanding.Setup.Checked();

    // Finite, and of no aeroplane: the speed collapses in the hold-off before the lift coefficient is as large as that.
    private static readonly LandingInput Collapsing = Usual with { MaximumLift = 1e6, ZeroLiftDrag = 3, PowerCutHeight = 3, PowerCutTime = 0 };

    [Theory]
    [InlineData(0), InlineData(1), InlineData(3), InlineData(4), InlineData(5), InlineData(9)]
    public void Solve_AnyNumberOfLandings_IsEachAlone(int count)
    {
        LandingInput[] inputs = Mixed(count);
        // More room than landings: what is beyond them is left alone.
        var outcomes = new LandingOutcome[count + 1];
        LandingSolver.Solve(inputs, outcomes);
        AssertEachAlone(inputs, outcomes);
        Assert.Equal(default, outcomes[count]);
    }

    [Theory]
    [InlineData(1), InlineData(256), InlineData(515)]
    public void SolveInParallel_AnyNumberOfLandings_IsEachAlone(int count)
    {
        LandingInput[] inputs = Mixed(count);
        var outcomes = new LandingOutcome[count];
        LandingSolver.SolveInParallel(inputs, outcomes, cancellationToken: TestContext.Current.CancellationToken);
        AssertEachAlone(inputs, outcomes);
    }

    [Fact]
    public void InGroups_ScalarLanes_IsEachAlone()
    {
        LandingInput[] inputs = Mixed(3);
        var outcomes = new LandingOutcome[3];
        Array.Fill(outcomes, LandingOutcome.Unreached);
        LandingSolver.InGroups<ScalarLane>(inputs, outcomes, LandingSolver.DefaultTolerance);
        AssertEachAlone(inputs, outcomes);
    }

    // Lanes in which each stage ends the landing of another lane.
    [Fact]
    public void Solve_EveryRefusalSideBySide_IsEachAlone()
    {
        LandingInput[] inputs = [.. ReferenceLandings.Refusals.Select(r => r.Input).Append(Usual).Append(Usual with { ThresholdHeight = 1000, HoldOffHeight = 900 })];
        foreach (int stride in (int[])[1, 3, 5])
        {
            LandingInput[] mixed = [.. Enumerable.Range(0, 20).Select(i => inputs[i * stride % inputs.Length])];
            var outcomes = new LandingOutcome[mixed.Length];
            LandingSolver.Solve(mixed, outcomes);
            for (int i = 0; i < mixed.Length; i++)
            {
                LandingOutcome alone = LandingSolver.Solve(mixed[i]);
                Assert.Equal(alone.Refusal, outcomes[i].Refusal);
                Assert.Equal(alone.Shown, outcomes[i].Shown, 1e-6 * Math.Abs(alone.Shown));
                Assert.Equal(alone.Limit, outcomes[i].Limit, 1e-6 * Math.Abs(alone.Limit));
            }
        }
    }

    [Fact]
    public void Solve_TooLittleRoom_IsRefusedWithBothNumbers()
    {
        string serial = Assert.Throws<RefusedInputException>(() => LandingSolver.Solve(Mixed(3), new LandingOutcome[2])).Message;
        Assert.StartsWith("There is room for 2 outcomes of 3 landings.", serial, StringComparison.Ordinal);
        var error = Assert.Throws<RefusedInputException>(() =>
            LandingSolver.SolveInParallel(Mixed(3), new LandingOutcome[2], cancellationToken: TestContext.Current.CancellationToken));
        Assert.Equal("outcomes", error.ParamName);
    }

    [Fact]
    public void Solve_OneThatCannotBeComputed_IsNamedByItsPlace()
    {
        Assert.DoesNotContain("Landing", Assert.Throws<RefusedInputException>(() => LandingSolver.Solve(Collapsing)).Message, StringComparison.Ordinal);
        string serial = Assert.Throws<RefusedInputException>(() => LandingSolver.Solve([Usual, Collapsing], new LandingOutcome[2])).Message;
        Assert.StartsWith("Landing 2: ", serial, StringComparison.Ordinal);
        Assert.Contains("cannot be computed", serial, StringComparison.Ordinal);
        string parallel = Assert.Throws<RefusedInputException>(() => LandingSolver.SolveInParallel(
            [Usual, Usual, Collapsing], new LandingOutcome[3], cancellationToken: TestContext.Current.CancellationToken)).Message;
        Assert.StartsWith("Landing 3: ", parallel, StringComparison.Ordinal);
        string senseless = Assert.Throws<RefusedInputException>(() => LandingSolver.SolveInParallel(
            [Usual, Usual with { Mass = 0 }], new LandingOutcome[2], cancellationToken: TestContext.Current.CancellationToken)).Message;
        Assert.StartsWith("Landing 2: mass: 0", senseless, StringComparison.Ordinal);
    }

    [Fact]
    public void SolveInParallel_Cancelled_Stops()
    {
        using CancellationTokenSource source = new();
        source.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() =>
            LandingSolver.SolveInParallel(Mixed(3), new LandingOutcome[3], cancellationToken: source.Token));
    }

    // The values that show a refusal, by the model's own formulas.
    [Fact]
    public void Solve_RefusedInTheAir_ShowsTheValuesThatSayWhy()
    {
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Refusals)
        {
            LandingOutcome outcome = LandingSolver.Solve(landing.Input);
            Textbook book = new(landing.Input);
            double touchdownLift = landing.Input.TouchdownLiftFraction * landing.Input.MaximumLift;
            double sink = new ApproachPath<ScalarLane>([landing.Input]).Sink.Value, speed = outcome.FlareStartSpeed;
            if (outcome.Refusal == LandingRefusal.LiftLimitBeforeRoundOut)
            {
                Assert.Equal(book.Lift(speed, sink, sink / landing.Input.FlareTimeConstant) / book.Dynamic(speed), outcome.Shown, 1e-9);
                Assert.Equal(touchdownLift, outcome.Limit, 1e-12);
            }
            else if (outcome.Refusal == LandingRefusal.NeverSlowsToTouchdown)
            {
                Assert.Equal(touchdownLift, book.Weight / book.Dynamic(outcome.Limit), 1e-9);
                Assert.True(outcome.Shown > outcome.Limit);
                Assert.True(double.IsNaN(outcome.HoldOffEndTime) && double.IsNaN(outcome.TouchdownTime));
            }
        }
    }

    [Fact]
    public void Unreached_EveryValue_IsNoNumber()
    {
        LandingOutcome outcome = LandingOutcome.Unreached;
        foreach (double value in LandingOutcome.Results(outcome))
            Assert.True(double.IsNaN(value));
        Assert.Equal(13, LandingOutcome.Results(outcome).Length);
        Assert.All(
            (double[])[outcome.FlareStartTime, outcome.HoldOffEndTime, outcome.HoldOffEndHeight, outcome.NoseLowerTime],
            value => Assert.True(double.IsNaN(value)));
        Assert.Equal((LandingRefusal.None, 0.0, 0.0), (outcome.Refusal, outcome.Shown, outcome.Limit));
    }

    // Landed and refused ones in turn.
    private static LandingInput[] Mixed(int count) =>
    [
        .. Enumerable.Range(0, count).Select(i => i % 3 == 2
            ? ReferenceLandings.Refusals[i % ReferenceLandings.Refusals.Count].Input
            : Usual with { Headwind = 0.01 * (i % 7) }),
    ];

    private static void AssertEachAlone(LandingInput[] inputs, LandingOutcome[] outcomes)
    {
        Dictionary<LandingInput, LandingOutcome> known = [];
        for (int i = 0; i < inputs.Length; i++)
        {
            if (!known.TryGetValue(inputs[i], out LandingOutcome alone))
                known[inputs[i]] = alone = LandingSolver.Solve(inputs[i]);
            Assert.Equal(alone.Refusal, outcomes[i].Refusal);
            Assert.Equal(alone.StopDistance, outcomes[i].StopDistance, 1e-6);
            Assert.Equal(alone.HoldOffEndTime, outcomes[i].HoldOffEndTime, 1e-6);
        }
    }
}
