namespace FlapAero;

/// <summary>The stages of a canonical landing, in their order. The power has a schedule of its own through all of them.</summary>
public enum LandingStage
{
    /// <summary>From the threshold to the round-out, at a sink rate that is held.</summary>
    Approach,

    /// <summary>Round-out and hold-off: the sink dies away until the lift is the touchdown's.</summary>
    HoldOff,

    /// <summary>Settling at the touchdown lift until the wheels are down.</summary>
    Settling,

    /// <summary>Roll with the nose held off.</summary>
    RollNoseHigh,

    /// <summary>Roll with the nose down, braking to the stop.</summary>
    RollBraking,
}
