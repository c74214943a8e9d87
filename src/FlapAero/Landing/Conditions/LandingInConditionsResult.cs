using FlapAero.Equations;

namespace FlapAero;

/// <summary>A landing in conditions that came to its stop. Immutable.</summary>
public sealed class LandingInConditionsResult : CompletedLanding
{
    internal LandingInConditionsResult(in LandingOutcome outcome, IReadOnlyList<ConditionsState> states)
        : base(outcome) =>
        Trajectory = [.. states.Select(state => new LandingMoment(state))];

    /// <summary>The landing moment by moment, both ends of each stage included.</summary>
    public IReadOnlyList<LandingMoment> Trajectory { get; }
}
