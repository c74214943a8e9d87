using System.Runtime.Intrinsics;

namespace FlapAero.Equations;

/// <summary>The canonical landing. One landing and many run the same code, in one lane or in as many as the hardware has.</summary>
internal static class LandingSolver
{
    /// <summary>Share by which a step of the integrator may be wrong, by its own estimate.</summary>
    public const double DefaultTolerance = 1e-5;

    // Large against the cost of handing it out, small against a scatter; a multiple of every number of lanes.
    private const int Block = 256;

    /// <summary>Flies one landing.</summary>
    /// <exception cref="ArgumentException">The input makes no sense; the message says which.</exception>
    public static LandingOutcome Solve(in LandingInput input, double tolerance = DefaultTolerance)
    {
        LandingCheck.Input(input);
        LandingOutcome outcome = LandingOutcome.Unreached;
        LaneSolver<ScalarLane>.Solve(new ReadOnlySpan<LandingInput>(in input), new Span<LandingOutcome>(ref outcome), tolerance);
        LandingCheck.Computed(input, outcome);
        return outcome;
    }

    /// <summary>Flies many landings on the calling thread. Allocates nothing.</summary>
    /// <exception cref="ArgumentException">An input makes no sense; the message says which and in what row.</exception>
    public static void Solve(
        ReadOnlySpan<LandingInput> inputs, Span<LandingOutcome> outcomes, double tolerance = DefaultTolerance)
    {
        if (outcomes.Length < inputs.Length)
            throw new ArgumentException($"There is room for {outcomes.Length} outcomes of {inputs.Length} landings.", nameof(outcomes));
        for (int i = 0; i < inputs.Length; i++)
            LandingCheck.Input(inputs[i], i);
        outcomes[..inputs.Length].Fill(LandingOutcome.Unreached);
        // Not 512 bits: measured, a landing in eight lanes takes as long as in four, its spilled vectors straddling cache lines.
        if (Vector256.IsHardwareAccelerated)
            InGroups<Lanes4>(inputs, outcomes, tolerance);
        else
            InGroups<ScalarLane>(inputs, outcomes, tolerance);
        for (int i = 0; i < inputs.Length; i++)
            LandingCheck.Computed(inputs[i], outcomes[i], i);
    }

    /// <summary>Flies many landings on all cores. Each is flown as it is alone: the result does not depend on the cores.</summary>
    /// <exception cref="ArgumentException">An input makes no sense; the message says which and in what row.</exception>
    public static void SolveInParallel(
        LandingInput[] inputs, LandingOutcome[] outcomes, double tolerance = DefaultTolerance, CancellationToken cancellationToken = default)
    {
        for (int i = 0; i < inputs.Length; i++)
            LandingCheck.Input(inputs[i], i);
        int blocks = (inputs.Length + Block - 1) / Block;
        Parallel.For(0, blocks, new ParallelOptions { CancellationToken = cancellationToken }, block =>
        {
            int first = block * Block;
            int count = Math.Min(Block, inputs.Length - first);
            Solve(inputs.AsSpan(first, count), outcomes.AsSpan(first, count), tolerance);
        });
    }

    /// <summary>Groups of lanes; a rest that does not fill one is flown landing by landing.</summary>
    internal static void InGroups<T>(ReadOnlySpan<LandingInput> inputs, Span<LandingOutcome> outcomes, double tolerance)
        where T : unmanaged, ILanes<T>
    {
        int first = 0;
        for (; first + T.Count <= inputs.Length; first += T.Count)
            LaneSolver<T>.Solve(inputs.Slice(first, T.Count), outcomes.Slice(first, T.Count), tolerance);
        for (; first < inputs.Length; first++)
            LaneSolver<ScalarLane>.Solve(inputs.Slice(first, 1), outcomes.Slice(first, 1), tolerance);
    }
}
