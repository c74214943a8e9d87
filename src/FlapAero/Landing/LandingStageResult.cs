using UnitsNet;

namespace FlapAero;

/// <summary>One stage of a landing: how long it lasted and how far it went. Immutable.</summary>
public sealed class LandingStageResult
{
    internal LandingStageResult(LandingStage stage, double startTime, double endTime, double startDistance, double endDistance)
    {
        Stage = stage;
        Start = Duration.FromSeconds(startTime);
        Lasts = Duration.FromSeconds(endTime - startTime);
        StartDistance = Length.FromMeters(startDistance);
        Length = Length.FromMeters(endDistance - startDistance);
    }

    /// <summary>The stage.</summary>
    public LandingStage Stage { get; }

    /// <summary>When it begins, from the threshold.</summary>
    public Duration Start { get; }

    /// <summary>How long it lasts.</summary>
    public Duration Lasts { get; }

    /// <summary>Where it begins, from the threshold.</summary>
    public Length StartDistance { get; }

    /// <summary>How far it goes over the ground; for <see cref="LandingStage.HoldOff"/>, round-out and float together.</summary>
    public Length Length { get; }
}
