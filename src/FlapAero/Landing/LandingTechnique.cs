using UnitsNet;

namespace FlapAero;

/// <summary>
/// How the pilot flies a canonical landing. Immutable, thread-safe. Values that make no sense are refused when a landing is flown.
/// A pilot who is fast or high has another <see cref="ThresholdSpeed"/> or <see cref="ThresholdHeight"/>; one who leaves power on, a
/// lower or later cut; early or late is <see cref="LandingSetup.RoundingOutFrom"/>.
/// </summary>
public sealed record LandingTechnique
{
    /// <summary>h_t, height of the wheels at the threshold.</summary>
    public required Length ThresholdHeight { get; init; }

    /// <summary>V_t, true airspeed there.</summary>
    public required Speed ThresholdSpeed { get; init; }

    /// <summary>γ_p, by how much the path descends over the ground; positive.</summary>
    public required Angle PathAngle { get; init; }

    /// <summary>τ, the time over which the sink dies away in the round-out.</summary>
    public required Duration FlareTimeConstant { get; init; }

    /// <summary>h_h, the wheel height that the round-out leads to.</summary>
    public required Length HoldOffHeight { get; init; }

    /// <summary>f, the share of C_Lmax at which the aeroplane settles, if the tail does not end the hold-off before.</summary>
    public required double TouchdownLiftFraction { get; init; }

    /// <summary>h_c, the wheel height at which the throttle begins to close, at or below h_h never; where none is given, as the round-out begins.</summary>
    public Length? PowerCutHeight { get; init; }

    /// <summary>t_c, how long closing it takes.</summary>
    public required Duration PowerCutTime { get; init; }

    /// <summary>What a forward slip adds to C_D until the round-out begins, <see cref="ForwardSlip.DragOf"/>; none where it is zero.</summary>
    public double SlipDragCoefficient { get; init; }

    /// <summary>f_n, the share of the touchdown speed at which the nose comes down.</summary>
    public required double NoseLowerSpeedFraction { get; init; }

    /// <summary>What the pilot takes of the surface's braking, 0 to 1; the usual pilot's where none is given.</summary>
    public double BrakingShare { get; init; } = LandingPilot.Usual.BrakingShare;

    /// <summary>Speed, height and path.</summary>
    public override string ToString() => string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $"{ThresholdSpeed.Knots:0.0} kt at {ThresholdHeight.Feet:0} ft, {PathAngle.Degrees:0.0}°");
}
