using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>What every landing that came to its stop has. Distances over the ground from the threshold, times from there. Immutable.</summary>
public abstract class CompletedLanding
{
    private readonly LandingOutcome _outcome;

    private protected CompletedLanding(in LandingOutcome outcome) => _outcome = outcome;

    /// <summary>T_a, the thrust that holds sink rate and airspeed at the threshold, the wind's shear there included.</summary>
    public Force ApproachThrust => Force.FromNewtons(_outcome.ApproachThrust);

    /// <summary>h_f, wheel height at which the round-out begins.</summary>
    public Length FlareHeight => Length.FromMeters(_outcome.FlareHeight);

    /// <summary>Where the round-out begins.</summary>
    public Length FlareStartDistance => Length.FromMeters(_outcome.FlareStartDistance);

    /// <summary>True airspeed there.</summary>
    public Speed FlareStartAirspeed => Speed.FromMetersPerSecond(_outcome.FlareStartSpeed);

    /// <summary>Where the wing has reached the touchdown lift: the hold-off ends.</summary>
    public Length HoldOffEndDistance => Length.FromMeters(_outcome.HoldOffEndDistance);

    /// <summary>True airspeed there.</summary>
    public Speed HoldOffEndAirspeed => Speed.FromMetersPerSecond(_outcome.HoldOffEndSpeed);

    /// <summary>Wheel height there: how far the aeroplane drops.</summary>
    public Length HoldOffEndHeight => Length.FromMeters(_outcome.HoldOffEndHeight);

    /// <summary>Where the wheels touch.</summary>
    public Length TouchdownDistance => Length.FromMeters(_outcome.TouchdownDistance);

    /// <summary>When the wheels touch.</summary>
    public Duration TouchdownTime => Duration.FromSeconds(_outcome.TouchdownTime);

    /// <summary>V_td, true airspeed along the path.</summary>
    public Speed TouchdownAirspeed => Speed.FromMetersPerSecond(_outcome.TouchdownSpeed);

    /// <summary>Sink rate at the touchdown, positive down.</summary>
    public Speed TouchdownSink => Speed.FromMetersPerSecond(_outcome.TouchdownSink);

    /// <summary>Where the nose comes down; at the touchdown with brakes from there.</summary>
    public Length NoseLowerDistance => Length.FromMeters(_outcome.NoseLowerDistance);

    /// <summary>Where the aeroplane stands.</summary>
    public Length StopDistance => Length.FromMeters(_outcome.StopDistance);

    /// <summary>When it stands.</summary>
    public Duration StopTime => Duration.FromSeconds(_outcome.StopTime);

    /// <summary>From the round-out's beginning to the touchdown.</summary>
    public Length Float => Length.FromMeters(_outcome.TouchdownDistance - _outcome.FlareStartDistance);

    /// <summary>From the touchdown to the stop.</summary>
    public Length GroundRoll => Length.FromMeters(_outcome.StopDistance - _outcome.TouchdownDistance);
}
