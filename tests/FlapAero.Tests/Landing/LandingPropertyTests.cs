using CsCheck;
using FlapAero.Equations;

namespace FlapAero.Tests;

public sealed class LandingPropertyTests
{
    private const double Tight = 1e-11;

    /// <summary>The limit that the reference landings are held to. The worst of some 60 000 drawn here, ends that the lift only grazes, come to 1.3e-4.</summary>
    private const double ReferenceLimit = 2e-4;

    [Fact]
    public void Solve_DefaultTolerance_IsCloseToATightOne() =>
        LandingGenerators.Landed.Sample(
            input => AssertClose(LandingSolver.Solve(input, Tight), LandingSolver.Solve(input), ReferenceLimit), iter: 1000);

    [Fact]
    public void Solve_TighterTolerance_Converges()
    {
        double[] worst = [.. new[] { 1e-3, 1e-5, 1e-7, 1e-9 }.Select(tolerance => ReferenceLandings.Cases.Max(
            landing => Worst(LandingSolver.Solve(landing.Input, 1e-13), LandingSolver.Solve(landing.Input, tolerance))))];
        Assert.True(worst[1] < worst[0] && worst[2] < 0.2 * worst[1] && worst[3] < worst[2], string.Join(' ', worst));
        Assert.True(worst[3] < 1e-7, string.Join(' ', worst));
    }

    [Fact]
    public void Solve_Lanes_AreTheScalarInEveryLane() =>
        LandingGenerators.Any.Array[9].Sample(
            inputs =>
            {
                var four = new LandingOutcome[inputs.Length];
                LandingSolver.InGroups<Lanes4>(inputs, four, LandingSolver.DefaultTolerance);
                for (int i = 0; i < inputs.Length; i++)
                {
                    LandingOutcome alone = LandingSolver.Solve(inputs[i]);
                    Assert.Equal(alone.Refusal, four[i].Refusal);
                    if (alone.Refusal == LandingRefusal.None)
                        AssertClose(alone, four[i], 1e-9);
                }
            },
            iter: 500);

    [Fact]
    public void SolveInParallel_ManyLandings_AreThoseOfOneThread()
    {
        LandingInput[] inputs = [.. Enumerable.Range(0, 1000).Select(i => ReferenceLandings.Cases[i % 60].Input with { Headwind = 0.001 * i })];
        var serial = new LandingOutcome[inputs.Length];
        var parallel = new LandingOutcome[inputs.Length];
        LandingSolver.Solve(inputs, serial);
        LandingSolver.SolveInParallel(inputs, parallel, cancellationToken: TestContext.Current.CancellationToken);
        // To the last bit, as far as the groups of lanes are the same: blocks begin where groups do.
        Assert.Equal(serial.Select(o => o.StopDistance), parallel.Select(o => o.StopDistance));
    }

    [Fact]
    public void Solve_FasterThreshold_GoesFurther() => Grows(input => input with { ThresholdSpeed = input.ThresholdSpeed + 1 }, o => o.StopDistance);

    [Fact]
    public void Solve_MoreHeadwind_StopsShorter() => Grows(input => input with { Headwind = input.Headwind - 1 }, o => o.StopDistance);

    [Fact]
    public void Solve_Heavier_TouchesDownFaster() => Grows(input => input with { Mass = 1.02 * input.Mass }, o => o.TouchdownSpeed);

    [Fact]
    public void Solve_LessBraking_RollsFurther() => Grows(input => input with { BrakingFriction = 0.95 * input.BrakingFriction }, o => o.StopDistance);

    [Fact]
    public void Solve_MoreIdleThrust_GoesFurther() => Grows(input => input with { IdleThrust = input.IdleThrust + 5 }, o => o.StopDistance);

    [Fact]
    public void Solve_Downhill_RollsFurther() => Grows(input => input with { RunwaySlope = input.RunwaySlope - 0.002 }, o => o.StopDistance);

    [Fact]
    public void Solve_ManyLandings_AllocateNothing()
    {
        LandingInput[] inputs = [.. ReferenceLandings.Cases.Select(c => c.Input)];
        var outcomes = new LandingOutcome[inputs.Length];
        LandingSolver.Solve(inputs, outcomes);
        LandingSolver.Solve(inputs[0]);

        long before = GC.GetAllocatedBytesForCurrentThread();
        LandingSolver.Solve(inputs, outcomes);
        foreach (ref readonly LandingInput input in inputs.AsSpan())
            LandingSolver.Solve(input);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static void Grows(Func<LandingInput, LandingInput> change, Func<LandingOutcome, double> result) =>
        // Power that is left on is another aeroplane in another wind: it takes what the path took at the threshold.
        LandingGenerators.Landed.Where(input => input.PowerCutHeight > 2).Sample(
            input =>
            {
                LandingOutcome changed = LandingSolver.Solve(change(input));
                return changed.Refusal != LandingRefusal.None || result(changed) > result(LandingSolver.Solve(input));
            },
            iter: 500);

    private static void AssertClose(LandingOutcome expected, LandingOutcome actual, double allowed) =>
        Assert.True(Worst(expected, actual) < allowed, $"off by {Worst(expected, actual):e1}: {expected} {actual}");

    private static double Worst(LandingOutcome expected, LandingOutcome actual)
    {
        ReadOnlySpan<double> e = LandingOutcome.Results(expected), a = LandingOutcome.Results(actual);
        double worst = 0;
        for (int i = 0; i < e.Length; i++)
            worst = Math.Max(worst, Math.Abs(a[i] - e[i]) / Math.Max(Math.Abs(e[i]), 1e-2));
        return worst;
    }
}
