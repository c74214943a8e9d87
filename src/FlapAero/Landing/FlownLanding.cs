using FlapAero.Equations;

namespace FlapAero;

/// <summary>A landing as it was asked for, and what became of it.</summary>
internal sealed record FlownLanding(
    LandingInput Input, LandingManner Manner, LandingOutcome Outcome, double Interval, bool TailEndsHoldOff)
{
    /// <summary>The landing moment by moment.</summary>
    public List<TrajectoryState> Sample() =>
        TrajectorySampler.Sample(Input, Outcome, Interval, LandingSolver.DefaultTolerance, Manner);
}
