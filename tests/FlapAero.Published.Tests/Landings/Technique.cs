using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>
/// How the demo aeroplanes are landed, in one place: the same pilot, runway and habits with flaps and without, so that only the
/// flaps differ. All invented; the reason stands with each value.
/// </summary>
internal static class Technique
{
    /// <summary>The height over the threshold that landing distances are counted from.</summary>
    public static readonly Length ThresholdHeight = Length.FromFeet(50);

    /// <summary>Of the configuration's own stalling speed: the trade's and the regulation's multiple.</summary>
    public const double SpeedMultiple = 1.3;

    /// <summary>A little steeper than the usual 3°: light aeroplanes with full flaps come down so. The same without flaps.</summary>
    public const double PathAngleDegrees = 3.5;

    /// <summary>The sink dies away in a few seconds, and the round-out pulls about a tenth of a g.</summary>
    public const double FlareTimeConstant = 1.5;

    /// <summary>Wheels a foot above the runway: as low as a student holds them.</summary>
    public const double HoldOffHeight = 0.3;

    /// <summary>Close to the stall without its warning being ignored: 5 % of speed is left.</summary>
    public const double TouchdownLiftFraction = 0.9;

    /// <summary>The throttle begins to close across the threshold, as is common practice.</summary>
    public static readonly Length PowerCutHeight = ThresholdHeight;

    /// <summary>Slowly enough to reach idle about when the round-out begins.</summary>
    public const double PowerCutTime = 7;

    /// <summary>
    /// An idling propeller brakes at approach speed, by about twice this, and pulls in the slow half of the roll. One value in place of
    /// the two, as a share of the weight.
    /// </summary>
    public const double IdleThrustOverWeight = -0.005;

    /// <summary>Nose held off: as high as the tail allows. The lift curve of the flap setting turns it into C_L.</summary>
    public static readonly Angle NoseHighAttitude = Angle.FromDegrees(8);

    /// <summary>Elevator and patience hold the nose up while the first seventh of the speed goes.</summary>
    public const double NoseLowerSpeedFraction = 0.85;

    /// <summary>Tyres on dry asphalt, between the textbooks' 0.02 and what grass takes.</summary>
    public const double RollingFriction = 0.03;

    /// <summary>Firm, not locked: below the 0.4 of textbooks, on the whole of what the wheels carry.</summary>
    public const double BrakingFriction = 0.3;
}
