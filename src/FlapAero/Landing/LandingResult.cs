using FlapAero.Equations;

namespace FlapAero;

/// <summary>A landing that came to its stop. Immutable.</summary>
public sealed class LandingResult : CompletedLanding
{
    internal LandingResult(in LandingInput input, in LandingOutcome outcome, double interval)
        : base(outcome)
    {
        List<TrajectoryState> states = TrajectorySampler.Sample(input, outcome, interval, LandingSolver.DefaultTolerance);
        Trajectory = [.. states.Select(s => new LandingPoint(s))];
        RollEnergy = [.. RollWork.Along(input, states).Select(w => new RollEnergyPoint(w))];
        Stages =
        [
            new(LandingStage.Approach, 0, outcome.FlareStartTime, 0, outcome.FlareStartDistance),
            new(LandingStage.HoldOff, outcome.FlareStartTime, outcome.HoldOffEndTime, outcome.FlareStartDistance, outcome.HoldOffEndDistance),
            new(LandingStage.Settling, outcome.HoldOffEndTime, outcome.TouchdownTime, outcome.HoldOffEndDistance, outcome.TouchdownDistance),
            new(LandingStage.RollNoseHigh, outcome.TouchdownTime, outcome.NoseLowerTime, outcome.TouchdownDistance, outcome.NoseLowerDistance),
            new(LandingStage.RollBraking, outcome.NoseLowerTime, outcome.StopTime, outcome.NoseLowerDistance, outcome.StopDistance),
        ];
    }

    /// <summary>The stages in their order.</summary>
    public IReadOnlyList<LandingStageResult> Stages { get; }

    /// <summary>One stage by its name.</summary>
    /// <remarks>Formula: none. Range: every stage. Source: [canonical-landing].</remarks>
    /// <param name="stage">Which.</param>
    /// <returns>How long it lasted and how far it went.</returns>
    /// <exception cref="RefusedInputException">A value that is no stage.</exception>
    /// <example><code>Landing.Fly(landing).Result!.Stage(LandingStage.RollBraking).Length.Meters // 33.0</code></example>
    public LandingStageResult Stage(LandingStage stage) =>
        Stages.FirstOrDefault(one => one.Stage == stage)
        ?? throw Require.Refused(
            nameof(stage), "stage", (int)stage, string.Join(", ", Stages.Select(one => one.Stage)), "A landing has no others.");

    /// <summary>The landing moment by moment, both ends of each stage included.</summary>
    public IReadOnlyList<LandingPoint> Trajectory { get; }

    /// <summary>Where the energy of motion goes on the roll, at the trajectory's moments from the touchdown to the stop.</summary>
    public IReadOnlyList<RollEnergyPoint> RollEnergy { get; }
}
