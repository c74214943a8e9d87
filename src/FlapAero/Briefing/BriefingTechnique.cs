using UnitsNet;

namespace FlapAero;

/// <summary>
/// How a briefing's circuits and landings are flown, the same with flaps and without; a reason stands with each value. What is not
/// here is <see cref="LandingPilot.Usual"/>'s.
/// </summary>
public static class BriefingTechnique
{
    /// <summary>Downwind, level, over the stalling speed with flaps up: 85 kt of a trainer that stalls at 53 kt with its flaps up, common practice.</summary>
    public static double LevelMultiple => 1.6;

    /// <summary>From power reduced to the end of base, on downwind over the stalling speed with flaps up, on base over its own: 75 kt of the same trainer, common practice.</summary>
    public static double DescentMultiple => 1.4;

    /// <summary>Final over its own stalling speed, before the gust additive: the regulation's 1.3 [cfr-23].</summary>
    public static double FinalMultiple => 1.3;

    /// <summary>Descent on downwind and base until final: common practice.</summary>
    public static Speed Descent { get; } = Speed.FromFeetPerMinute(500);

    /// <summary>Downwind from the centreline, as in the demo circuits: in a calm the base turn then begins near the trade's 45°.</summary>
    public static Length Spacing { get; } = Length.FromNauticalMiles(0.9);

    /// <summary>Bank in the turns: invented, as in the demo circuits.</summary>
    public static Angle Bank { get; } = Angle.FromDegrees(20);

    /// <summary>Steepest bank: common practice.</summary>
    public static Angle BankLimit { get; } = Angle.FromDegrees(30);

    /// <summary>Share of the gust factor that is added on final: one half [afh].</summary>
    public static double GustShare => 0.5;

    /// <summary>Height at the end of the turn to final above <see cref="StabilisedBy"/>: 50 ft to settle before the gate, invented.</summary>
    public static Length RollOutAbove { get; } = Length.FromFeet(50);

    /// <summary>By when the aeroplane is stabilised or goes around: common practice.</summary>
    public static Length StabilisedBy { get; } = Length.FromFeet(300);

    /// <summary>Between two heights over the threshold that are tried: finer nobody aims.</summary>
    public static Length ThresholdHeightStep { get; } = Length.FromFeet(5);

    /// <summary>To what a distance is rounded, used up upwards and available downwards: finer the model is not.</summary>
    public static Length DistanceStep { get; } = Length.FromMeters(10);

    /// <summary>How much faster than briefed final may be: 10 kt [faa-other].</summary>
    public static Speed FastBy { get; } = Speed.FromKnots(10);

    /// <summary>How much slower: 5 kt [faa-other].</summary>
    public static Speed SlowBy { get; } = Speed.FromKnots(5);
}
