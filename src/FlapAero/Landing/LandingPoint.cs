using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>A moment of a landing. Immutable; values are where they were computed, in SI, and quantities on asking.</summary>
public sealed class LandingPoint
{
    private readonly TrajectoryState _state;

    internal LandingPoint(in TrajectoryState state) => _state = state;

    /// <summary>The stage; where two meet there is a point of each.</summary>
    public LandingStage Stage => _state.Stage;

    /// <summary>Time since the threshold.</summary>
    public Duration Time => Duration.FromSeconds(_state.Time);

    /// <summary>Distance over the ground from the threshold.</summary>
    public Length Distance => Length.FromMeters(_state.Distance);

    /// <summary>Height of the wheels.</summary>
    public Length Height => Length.FromMeters(_state.Height);

    /// <summary>True airspeed along the path.</summary>
    public Speed Airspeed => Speed.FromMetersPerSecond(_state.Speed);

    /// <summary>Sink rate, positive down.</summary>
    public Speed SinkRate => Speed.FromMetersPerSecond(_state.Sink);

    /// <summary>C_L.</summary>
    public double LiftCoefficient => _state.Lift;

    /// <summary>Thrust.</summary>
    public Force Thrust => Force.FromNewtons(_state.Thrust);

    /// <summary>Drag.</summary>
    public Force Drag => Force.FromNewtons(_state.Drag);

    /// <summary>w at the wing, a gust included.</summary>
    public Speed Headwind => Speed.FromMetersPerSecond(_state.Headwind);

    /// <summary>ẇ as the wing meets it: positive where the headwind grows, which feeds the airspeed.</summary>
    public Acceleration HeadwindRate => Acceleration.FromMetersPerSecondSquared(_state.WindRate);

    /// <summary>Energy height h + V²/2g.</summary>
    public Length EnergyHeight => Length.FromMeters(EnergyLaws.Height(_state.Height, _state.Speed));
}
