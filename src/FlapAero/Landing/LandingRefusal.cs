namespace FlapAero;

/// <summary>Why a landing cannot happen. Thread-safe: a plain value. The default, <see cref="None"/>, is a landing that happened.</summary>
public enum LandingRefusal
{
    /// <summary>Nothing stood in the way.</summary>
    None = 0,

    /// <summary>The round-out would have to begin above the height at the threshold.</summary>
    RoundOutAboveThresholdHeight,

    /// <summary>Holding the path takes less thrust than the idling engine gives.</summary>
    PathSteeperThanIdleGlide,

    /// <summary>The round-out asks for the touchdown lift at its first moment.</summary>
    LiftLimitBeforeRoundOut,

    /// <summary>The aeroplane floats for 120 s and does not slow to the touchdown lift.</summary>
    NeverSlowsToTouchdown,

    /// <summary>The aeroplane does not come down to the runway within 60 s of the end of the hold-off.</summary>
    NeverSettles,

    /// <summary>The nose would come down at an airspeed at which the aeroplane already stands in its headwind.</summary>
    StopsBeforeNoseLowers,

    /// <summary>No deceleration is left while the nose is held off, or 300 s pass.</summary>
    DoesNotSlowOnTheRoll,

    /// <summary>No deceleration is left under braking, or 300 s pass.</summary>
    DoesNotStop,
}
