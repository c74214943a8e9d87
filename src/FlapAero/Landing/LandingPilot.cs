using System.Globalization;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// How a pilot lands whatever aeroplane it is: <see cref="Usual"/>, of whom every other is a named change. Immutable, thread-safe. Values
/// that make no sense are refused when a landing is flown. All values are invented but for the multiple; the reason stands with each.
/// </summary>
public sealed record LandingPilot
{
    private LandingPilot()
    {
    }

    /// <summary>
    /// The pilot whom every landing has unless another is named: on the path over the threshold at 1.3 V_S, power kept to the round-out and
    /// then closed smoothly, held off until the wing or the tail ends it.
    /// </summary>
    public static LandingPilot Usual { get; } = new();

    /// <summary>Lower over the threshold, the throttle closed at once, held off closer to the stall, the nose down soon for the brakes.</summary>
    public static LandingPilot ShortField { get; } = Usual with
    {
        ThresholdHeight = Length.FromFeet(30),
        PowerCutTime = Duration.FromSeconds(1.5),
        TouchdownLiftFraction = 0.9,
        NoseLowerSpeedFraction = 0.95,
    };

    /// <summary>Begins the round-out high and draws it out: half as long again.</summary>
    public static LandingPilot Early { get; } = Usual with { FlareTimeConstant = 1.5 * Usual.FlareTimeConstant };

    /// <summary>Begins the round-out low and pulls harder.</summary>
    public static LandingPilot Late { get; } = Usual with { FlareTimeConstant = 0.7 * Usual.FlareTimeConstant };

    /// <summary>Closes the throttle from the threshold on.</summary>
    public static LandingPilot ThrottleClosedFromThreshold { get; } = Usual.ClosingThrottleAtThreshold();

    /// <summary>h_t: the height over the threshold that landing distances are counted from.</summary>
    public Length ThresholdHeight { get; init; } = Length.FromFeet(50);

    /// <summary>V_t over the configuration's own stalling speed: the trade's and the regulation's multiple [cfr-23].</summary>
    public double SpeedMultiple { get; init; } = 1.3;

    /// <summary>What is added to that, in calibrated airspeed: for a gust, or too much.</summary>
    public Speed SpeedAdditive { get; init; } = Speed.Zero;

    /// <summary>γ_p: a little steeper than the usual 3°, as light aeroplanes come down with full flaps. The same without.</summary>
    public Angle PathAngle { get; init; } = Angle.FromDegrees(3.5);

    /// <summary>τ: the sink dies away in a few seconds, and the round-out pulls about a tenth of a g.</summary>
    public Duration FlareTimeConstant { get; init; } = Duration.FromSeconds(1.5);

    /// <summary>h_h: wheels a foot above the runway, as low as a student holds them.</summary>
    public Length HoldOffHeight { get; init; } = Length.FromMeters(0.3);

    /// <summary>f: the touchdown at about 1.12 V_S; a naval handbook has 15 percent above the stall [naval-aviators].</summary>
    public double TouchdownLiftFraction { get; init; } = 0.8;

    /// <summary>h_c: where the throttle begins to close; none where that is when the round-out begins.</summary>
    public Length? PowerCutHeight { get; init; }

    /// <summary>t_c: smoothly.</summary>
    public Duration PowerCutTime { get; init; } = Duration.FromSeconds(4);

    /// <summary>f_n: elevator and patience hold the nose up while the first seventh of the speed goes.</summary>
    public double NoseLowerSpeedFraction { get; init; } = 0.85;

    /// <summary>What firm braking takes of a surface's coefficient: 0.3 of the textbooks' 0.4 on dry asphalt.</summary>
    public double BrakingShare { get; init; } = 0.75;

    /// <summary>Too fast, or slower where negative.</summary>
    /// <remarks>Formula: added to <see cref="SpeedAdditive"/>. Range: to 100 kt either way. Source: [common-practice].</remarks>
    /// <param name="by">By how much, in calibrated airspeed.</param>
    /// <returns>The pilot.</returns>
    /// <exception cref="RefusedInputException">A speed outside the range.</exception>
    /// <example><code>LandingPilot.Usual.Fast(Speed.FromKnots(10)).SpeedAdditive.Knots // 10.0</code></example>
    public LandingPilot Fast(Speed by) => this with
    {
        SpeedAdditive = SpeedAdditive
            + Require.Between(by, Speed.FromKnots(-100), Speed.FromKnots(100), "speed to add", "More is another aeroplane's approach."),
    };

    /// <summary>The same pilot, who closes the throttle from the threshold on.</summary>
    /// <remarks>Formula: h_c = h_t. Range: any pilot. Source: [common-practice].</remarks>
    /// <returns>The pilot.</returns>
    /// <exception cref="RefusedInputException">Never: a height that makes no sense is refused when the landing is flown.</exception>
    /// <example><code>LandingPilot.Usual.ClosingThrottleAtThreshold().PowerCutHeight!.Value.Feet // 50.0</code></example>
    public LandingPilot ClosingThrottleAtThreshold() => this with { PowerCutHeight = ThresholdHeight };

    /// <summary>Multiple, path and height.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{SpeedMultiple:0.##} V_S and {SpeedAdditive.Knots:0.#} kt at {ThresholdHeight.Feet:0} ft, {PathAngle.Degrees:0.0}°");
}
