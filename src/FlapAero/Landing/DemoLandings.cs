using UnitsNet;

namespace FlapAero;

/// <summary>
/// Canonical landings of the invented aeroplanes: the same pilot, habits and runway with flaps and without, so that only the flaps
/// differ. Standard sea level, calm, dry and level. All values are invented; the reason stands with each.
/// </summary>
public static class DemoLandings
{
    /// <summary>h_t: the height over the threshold that landing distances are counted from.</summary>
    public static Length ThresholdHeight { get; } = Length.FromFeet(50);

    /// <summary>V_t over the configuration's own stalling speed: the trade's and the regulation's multiple.</summary>
    public static double SpeedMultiple => 1.3;

    /// <summary>γ_p: a little steeper than the usual 3°, as light aeroplanes come down with full flaps. The same without.</summary>
    public static Angle PathAngle { get; } = Angle.FromDegrees(3.5);

    /// <summary>τ: the sink dies away in a few seconds, and the round-out pulls about a tenth of a g.</summary>
    public static Duration FlareTimeConstant { get; } = Duration.FromSeconds(1.5);

    /// <summary>h_h: wheels a foot above the runway, as low as a student holds them.</summary>
    public static Length HoldOffHeight { get; } = Length.FromMeters(0.3);

    /// <summary>f: close to the stall, with 5 % of the speed left.</summary>
    public static double TouchdownLiftFraction => 0.9;

    /// <summary>h_c: the throttle begins to close across the threshold, as is common practice.</summary>
    public static Length PowerCutHeight => ThresholdHeight;

    /// <summary>t_c: slowly enough to reach idle about when the round-out begins.</summary>
    public static Duration PowerCutTime { get; } = Duration.FromSeconds(7);

    /// <summary>
    /// T_i over the maximum weight. An idling fixed-pitch propeller brakes at approach speed, by about twice this or more, and pulls in the
    /// slow half of the roll: one value in place of both.
    /// </summary>
    public static double IdleThrustOverWeight => -0.005;

    /// <summary>Pitch attitude with the nose held off: as high as the tail allows. The flap setting's lift curve makes C_Lg1 of it.</summary>
    public static Angle NoseHighAttitude { get; } = Angle.FromDegrees(8);

    /// <summary>f_n: elevator and patience hold the nose up while the first seventh of the speed goes.</summary>
    public static double NoseLowerSpeedFraction => 0.85;

    /// <summary>μ_r: tyres on dry asphalt, between the textbooks' 0.02 and what grass takes.</summary>
    public static double RollingFriction => 0.03;

    /// <summary>μ_b: firm, not locked; below the 0.4 of textbooks.</summary>
    public static double BrakingFriction => 0.3;

    /// <summary>Trainer H4 at its maximum mass, full flaps.</summary>
    public static LandingSetup TrainerH4FullFlaps => Full(DemoAeroplanes.TrainerH4);

    /// <summary>Trainer H4 at its maximum mass, flaps up.</summary>
    public static LandingSetup TrainerH4FlapsUp => Up(DemoAeroplanes.TrainerH4);

    /// <summary>Trainer L2 at its maximum mass, full flaps.</summary>
    public static LandingSetup TrainerL2FullFlaps => Full(DemoAeroplanes.TrainerL2);

    /// <summary>Trainer L2 at its maximum mass, flaps up.</summary>
    public static LandingSetup TrainerL2FlapsUp => Up(DemoAeroplanes.TrainerL2);

    /// <summary>The canonical landing of a configuration.</summary>
    /// <remarks>
    /// Formula: V_t = 1.3 V_S; C_Lg1, C_Lg2 from the lift curve at α = θ + i_w on the level runway, θ = 8° and 0°; T_i a share of the
    /// aeroplane's maximum weight, whatever it is loaded to. Range: any configuration. Source: [common-practice].
    /// </remarks>
    /// <param name="configuration">Aeroplane, flap and mass.</param>
    /// <param name="air">The air; standard sea level where none is given.</param>
    /// <returns>The landing, calm and level.</returns>
    /// <exception cref="ArgumentNullException">No configuration.</exception>
    /// <exception cref="RefusedInputException">A wing that stalls before the nose-high attitude.</exception>
    /// <example><code>DemoLandings.SetupFor(flapsUp).Technique.ThresholdSpeed.Knots // 69.2</code></example>
    public static LandingSetup SetupFor(Configuration configuration, Air? air = null)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        Air given = air ?? Air.StandardSeaLevel;
        double maximumWeight = configuration.Aeroplane.MaximumMass.Kilograms * Equations.StandardConstants.Gravity;
        return new()
        {
            Aeroplane = LandingAeroplane.FromConfiguration(
                configuration, LiftAt(configuration, NoseHighAttitude), LiftAt(configuration, Angle.Zero),
                Force.FromNewtons(IdleThrustOverWeight * maximumWeight)),
            Technique = new()
            {
                ThresholdHeight = ThresholdHeight,
                ThresholdSpeed = configuration.ReferenceSpeed(given, SpeedMultiple).True,
                PathAngle = PathAngle,
                FlareTimeConstant = FlareTimeConstant,
                HoldOffHeight = HoldOffHeight,
                TouchdownLiftFraction = TouchdownLiftFraction,
                PowerCutHeight = PowerCutHeight,
                PowerCutTime = PowerCutTime,
                NoseLowerSpeedFraction = NoseLowerSpeedFraction,
            },
            Runway = new()
            {
                Air = given,
                Headwind = Speed.Zero,
                RollingFriction = RollingFriction,
                BrakingFriction = BrakingFriction,
                Slope = 0,
            },
        };
    }

    private static LandingSetup Full(Aeroplane aeroplane) => SetupFor(aeroplane.Configure(aeroplane.FullFlaps));

    private static LandingSetup Up(Aeroplane aeroplane) => SetupFor(aeroplane.Configure(aeroplane.FlapsUp));

    // On the runway the path is level: θ = α − i_w.
    private static double LiftAt(Configuration configuration, Angle attitude) =>
        configuration.Flaps.Lift.LiftCoefficient(attitude + configuration.Aeroplane.Wing.Incidence);
}
