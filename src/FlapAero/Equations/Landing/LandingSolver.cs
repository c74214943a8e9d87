using System.Runtime.Intrinsics;

namespace FlapAero.Equations;

/// <summary>The canonical landing. One landing and many run the same code, in one lane or in as many as the hardware has.</summary>
internal static class LandingSolver
{
    /// <summary>Share by which a step of the integrator may be wrong, by its own estimate.</summary>
    public const double DefaultTolerance = 1e-6;

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
        if (Vector512.IsHardwareAccelerated)
            InGroups<Lanes8>(inputs, outcomes, tolerance);
        else if (Vector256.IsHardwareAccelerated)
            InGroups<Lanes4>(inputs, outcomes, tolerance);
        else
            InGroups<ScalarLane>(inputs, outcomes, tolerance);
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
