using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>A landing that came to its stop. Distances over the ground from the threshold, times from there. Immutable.</summary>
public sealed class LandingResult
{
    private readonly LandingOutcome _outcome;

    internal LandingResult(in LandingInput input, in LandingOutcome outcome, double interval)
    {
        _outcome = outcome;
        Trajectory = [.. TrajectorySampler.Sample(input, outcome, interval, LandingSolver.DefaultTolerance).Select(s => new LandingPoint(s))];
        Stages =
        [
            new(LandingStage.Approach, 0, outcome.FlareStartTime, 0, outcome.FlareStartDistance),
            new(LandingStage.HoldOff, outcome.FlareStartTime, outcome.HoldOffEndTime, outcome.FlareStartDistance, outcome.HoldOffEndDistance),
            new(LandingStage.Settling, outcome.HoldOffEndTime, outcome.TouchdownTime, outcome.HoldOffEndDistance, outcome.TouchdownDistance),
            new(LandingStage.RollNoseHigh, outcome.TouchdownTime, outcome.NoseLowerTime, outcome.TouchdownDistance, outcome.NoseLowerDistance),
            new(LandingStage.RollBraking, outcome.NoseLowerTime, outcome.StopTime, outcome.NoseLowerDistance, outcome.StopDistance),
        ];
    }

    /// <summary>T_a, the thrust that holds the path at the threshold.</summary>
    public Force ApproachThrust => Force.FromNewtons(_outcome.ApproachThrust);

    /// <summary>h_f, wheel height at which the round-out begins.</summary>
    public Length FlareHeight => Length.FromMeters(_outcome.FlareHeight);

    /// <summary>True airspeed at the round-out's beginning.</summary>
    public Speed FlareStartAirspeed => Speed.FromMetersPerSecond(_outcome.FlareStartSpeed);

    /// <summary>True airspeed at the end of the hold-off.</summary>
    public Speed HoldOffEndAirspeed => Speed.FromMetersPerSecond(_outcome.HoldOffEndSpeed);

    /// <summary>Where the wheels touch.</summary>
    public Length TouchdownDistance => Length.FromMeters(_outcome.TouchdownDistance);

    /// <summary>When the wheels touch.</summary>
    public Duration TouchdownTime => Duration.FromSeconds(_outcome.TouchdownTime);

    /// <summary>V_td, true airspeed along the path.</summary>
    public Speed TouchdownAirspeed => Speed.FromMetersPerSecond(_outcome.TouchdownSpeed);

    /// <summary>Sink rate at the touchdown, positive down.</summary>
    public Speed TouchdownSink => Speed.FromMetersPerSecond(_outcome.TouchdownSink);

    /// <summary>Where the nose comes down.</summary>
    public Length NoseLowerDistance => Length.FromMeters(_outcome.NoseLowerDistance);

    /// <summary>Where the aeroplane stands.</summary>
    public Length StopDistance => Length.FromMeters(_outcome.StopDistance);

    /// <summary>When it stands.</summary>
    public Duration StopTime => Duration.FromSeconds(_outcome.StopTime);

    /// <summary>From the touchdown to the stop.</summary>
    public Length GroundRoll => Length.FromMeters(_outcome.StopDistance - _outcome.TouchdownDistance);

    /// <summary>The stages in their order.</summary>
    public IReadOnlyList<LandingStageResult> Stages { get; }

    /// <summary>The landing moment by moment, both ends of each stage included.</summary>
    public IReadOnlyList<LandingPoint> Trajectory { get; }
}
