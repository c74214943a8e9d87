using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>A moment of a landing in conditions: where the aeroplane is, and what the wind does at its wing. Immutable.</summary>
public sealed class LandingMoment
{
    private readonly ConditionsState _state;

    internal LandingMoment(in ConditionsState state)
    {
        _state = state;
        Point = new LandingPoint(state.State);
    }

    /// <summary>Stage, time, place, speed, lift and thrust.</summary>
    public LandingPoint Point { get; }

    /// <summary>w at the wing, the gust included.</summary>
    public Speed Headwind => Speed.FromMetersPerSecond(_state.Headwind);

    /// <summary>ẇ as the wing meets it: positive where the headwind grows, which feeds the airspeed.</summary>
    public Acceleration HeadwindRate => Acceleration.FromMetersPerSecondSquared(_state.WindRate);

    /// <summary>D.</summary>
    public Force Drag => Force.FromNewtons(_state.Drag);
}
