using System.Runtime.Intrinsics;

namespace FlapAero.Equations;

/// <summary>Landings. One landing and many run the same code, in one lane or in as many as the hardware has.</summary>
internal static class LandingSolver
{
    /// <summary>Share by which a step of the integrator may be wrong, by its own estimate.</summary>
    public const double DefaultTolerance = 1e-6;

    // Large against the cost of handing it out, small against a scatter; a multiple of every number of lanes.
    private const int Block = 256;

    /// <summary>Flies one landing.</summary>
    /// <exception cref="RefusedInputException">
    /// The input makes no sense; it says which, as <paramref name="voice"/> calls it.
    /// </exception>
    public static LandingOutcome Solve(
        in LandingInput input, double tolerance = DefaultTolerance, LandingVoice? voice = null, in LandingManner manner = default)
    {
        LandingCheck.Input(input, voice: voice);
        LandingOutcome outcome = FlyOne(input, tolerance, manner);
        LandingCheck.Computed(input, outcome, voice: voice);
        return outcome;
    }

    /// <summary>Flies many landings on the calling thread. Allocates nothing.</summary>
    /// <exception cref="RefusedInputException">
    /// An input makes no sense; the message says which and in what row.
    /// </exception>
    public static void Solve(
        ReadOnlySpan<LandingInput> inputs, Span<LandingOutcome> outcomes, double tolerance = DefaultTolerance)
    {
        CheckInputs(inputs, outcomes.Length);
        Fly(inputs, outcomes, tolerance);
        CheckOutcomes(inputs, outcomes);
    }

    /// <summary>
    /// Flies many landings on all cores. The blocks do not depend on the cores, and so neither do the results. Side by side in lanes only
    /// where none has a manner of its own.
    /// </summary>
    /// <exception cref="RefusedInputException">
    /// An input makes no sense; the message says which and in what row.
    /// </exception>
    public static void SolveInParallel(
        LandingInput[] inputs, LandingOutcome[] outcomes, LandingManner[]? manners = null, double tolerance = DefaultTolerance,
        CancellationToken cancellationToken = default)
    {
        CheckInputs(inputs, outcomes.Length);
        int blocks = (inputs.Length + Block - 1) / Block;
        Parallel.For(0, blocks, new ParallelOptions { CancellationToken = cancellationToken }, block =>
        {
            int first = block * Block;
            int count = Math.Min(Block, inputs.Length - first);
            if (manners is null)
                Fly(inputs.AsSpan(first, count), outcomes.AsSpan(first, count), tolerance);
            for (int i = first; manners is not null && i < first + count; i++)
                outcomes[i] = FlyOne(inputs[i], tolerance, manners[i]);
        });
        CheckOutcomes(inputs, outcomes);
    }

    private static LandingOutcome FlyOne(in LandingInput input, double tolerance, in LandingManner manner)
    {
        LandingOutcome outcome = LandingOutcome.Unreached;
        LaneSolver<ScalarLane>.Solve(new ReadOnlySpan<LandingInput>(in input), new Span<LandingOutcome>(ref outcome), tolerance, manner);
        return outcome;
    }

    private static void Fly(ReadOnlySpan<LandingInput> inputs, Span<LandingOutcome> outcomes, double tolerance)
    {
        outcomes[..inputs.Length].Fill(LandingOutcome.Unreached);
        // Not 512 bits: measured, a landing in eight lanes takes as long as in four, its spilled vectors straddling cache lines.
        if (Vector256.IsHardwareAccelerated)
            InGroups<Lanes4>(inputs, outcomes, tolerance);
        else
            InGroups<ScalarLane>(inputs, outcomes, tolerance);
    }

    private static void CheckInputs(ReadOnlySpan<LandingInput> inputs, int room)
    {
        if (room < inputs.Length)
            throw RefusedInputException.OfWhole(
                "outcomes", FormattableString.Invariant($"There is room for {room} outcomes of {inputs.Length} landings."));
        for (int i = 0; i < inputs.Length; i++)
            LandingCheck.Input(inputs[i], i);
    }

    private static void CheckOutcomes(ReadOnlySpan<LandingInput> inputs, ReadOnlySpan<LandingOutcome> outcomes)
    {
        for (int i = 0; i < inputs.Length; i++)
            LandingCheck.Computed(inputs[i], outcomes[i], i);
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
