using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// A moment of a roll: what has taken the energy so far, each as a share of the energy of motion over the ground at the touchdown,
/// ½ m (V_td − w)². A share is negative where a force pushes: a wind from behind at the end, a slope down, a propeller that pulls.
/// With what is left they add up to 1. Immutable. Source: [canonical-landing].
/// </summary>
public sealed class RollEnergyPoint
{
    private readonly RollWorkState _state;

    internal RollEnergyPoint(in RollWorkState state) => _state = state;

    /// <summary>The stage; where the two meet there is a point of each.</summary>
    public LandingStage Stage => _state.Stage;

    /// <summary>Distance over the ground since the touchdown.</summary>
    public Length SinceTouchdown => Length.FromMeters(_state.Distance);

    /// <summary>Speed over the ground.</summary>
    public Speed GroundSpeed => Speed.FromMetersPerSecond(_state.GroundSpeed);

    /// <summary>Taken by the aeroplane's drag.</summary>
    public double Drag => _state.Taken.Drag;

    /// <summary>Taken by the wheels, rolling first and then braked.</summary>
    public double Wheels => _state.Taken.Wheels;

    /// <summary>Taken by the idling propeller.</summary>
    public double Propeller => _state.Taken.Propeller;

    /// <summary>Taken by a slope uphill.</summary>
    public double Slope => _state.Taken.Slope;

    /// <summary>Still there: (V − w)²/(V_td − w)².</summary>
    public double Left => _state.Left;
}
