using System.Globalization;
using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// Everything that a landing is made of. Immutable, thread-safe; <c>with</c> makes the pilot fast or slow, high, early or late.
/// </summary>
public sealed record LandingSetup
{
    /// <summary>The aeroplane.</summary>
    public required LandingAeroplane Aeroplane { get; init => field = Require.Given(value); }

    /// <summary>The pilot.</summary>
    public required LandingTechnique Technique { get; init => field = Require.Given(value); }

    /// <summary>The runway; dry, paved and level where none is given.</summary>
    public Runway Runway { get; init => field = Require.Given(value); } = new();

    /// <summary>The air; standard sea level where none is given.</summary>
    public Air Air { get; init => field = Require.Given(value); } = Air.StandardSeaLevel;

    /// <summary>w, steady and the same at every height, negative from behind; a calm where none is given.</summary>
    public Speed Headwind { get; init; } = Speed.Zero;

    /// <summary>The landing of a configuration on a runway, as a pilot flies it.</summary>
    /// <remarks>
    /// Formula: V_t = multiple × V_S, in calibrated airspeed, and the additive; the aeroplane as
    /// <see cref="LandingAeroplane.FromConfiguration"/> has it. Range: any configuration. Source: [cfr-23] for 1.3, [common-practice] for
    /// the rest.
    /// </remarks>
    /// <param name="configuration">Aeroplane, flap and mass.</param>
    /// <param name="runway">The runway; dry, paved and level where none is given.</param>
    /// <param name="pilot">The pilot; <see cref="Configuration.UsualPilot"/> where none is given.</param>
    /// <param name="air">The air; standard sea level where none is given.</param>
    /// <param name="headwind">w along the runway, negative from behind; a calm where none is given.</param>
    /// <returns>The landing, to be flown.</returns>
    /// <exception cref="ArgumentNullException">No configuration.</exception>
    /// <exception cref="RefusedInputException">
    /// A multiple or an additive that makes no speed; a wind that nobody lands in; otherwise as <see cref="LandingAeroplane.FromConfiguration"/>.
    /// </exception>
    /// <example><code>LandingSetup.For(flapsUp).Technique.ThresholdSpeed.Knots // 69.2</code></example>
    public static LandingSetup For(
        Configuration configuration, Runway? runway = null, LandingPilot? pilot = null, Air? air = null, Speed? headwind = null)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        Air day = air ?? Air.StandardSeaLevel;
        Speed wind = headwind ?? Speed.Zero;
        Require.Headwind(wind, argument: nameof(headwind));
        LandingPilot who = pilot ?? configuration.UsualPilot;
        Speed reference = configuration.ReferenceSpeed(day, who.SpeedMultiple).Calibrated;
        return new()
        {
            Aeroplane = LandingAeroplane.FromConfiguration(configuration, day, who.TouchdownLiftFraction),
            Technique = new()
            {
                ThresholdHeight = who.ThresholdHeight,
                ThresholdSpeed = FlapAero.Airspeed.FromCalibrated(reference + who.SpeedAdditive, day).True,
                PathAngle = who.PathAngle,
                FlareTimeConstant = who.FlareTimeConstant,
                HoldOffHeight = who.HoldOffHeight,
                TouchdownLiftFraction = who.TouchdownLiftFraction,
                PowerCutHeight = who.PowerCutHeight,
                PowerCutTime = who.PowerCutTime,
                NoseLowerSpeedFraction = who.NoseLowerSpeedFraction,
                BrakingShare = who.BrakingShare,
            },
            Runway = runway ?? new(),
            Air = day,
            Headwind = wind,
        };
    }

    /// <summary>The same landing rounded out from another height: early where it is higher, late where it is lower.</summary>
    /// <remarks>
    /// Formula: τ = (h_f − h_h)/s, so that the sink rate does not jump. Range: h_f above h_h; whether the landing can happen is found
    /// when it is flown. Source: [canonical-landing].
    /// </remarks>
    /// <param name="flareHeight">h_f, wheel height at which the round-out begins.</param>
    /// <returns>The landing with that round-out.</returns>
    /// <exception cref="RefusedInputException">
    /// A height at or below the hold-off height, or a landing that makes no sense.
    /// </exception>
    /// <example><code>landing.RoundingOutFrom(Length.FromMeters(6)).Technique.FlareTimeConstant.Seconds // 2.74</code></example>
    public LandingSetup RoundingOutFrom(Length flareHeight)
    {
        LandingInput input = Checked();
        double above = Require.In(flareHeight, LengthUnit.Meter, "flare height") - input.HoldOffHeight;
        if (!(above > 0))
            throw Require.Refused(
                nameof(flareHeight), "flare height", flareHeight,
                $"above the hold-off height, {Require.Text(Technique.HoldOffHeight, flareHeight)}", "The round-out leads down to it.");
        double sink = SinkRate(input);
        return this with { Technique = Technique with { FlareTimeConstant = Duration.FromSeconds(above / sink) } };
    }

    /// <summary>h_f, the wheel height at which the round-out begins.</summary>
    /// <remarks>Formula: h_h + s τ, s the sink rate of the approach. Range: a landing that makes sense. Source: [canonical-landing].</remarks>
    /// <exception cref="RefusedInputException">An input that makes no sense; the message names it.</exception>
    public Length FlareHeight => FlareHeightOf(Checked());

    /// <summary>Whether the tail ends the hold-off before the touchdown's share of C_Lmax is reached.</summary>
    public bool TailEndsHoldOff =>
        Aeroplane.TailLimitLiftCoefficient < Technique.TouchdownLiftFraction * Aeroplane.MaximumLiftCoefficient;

    /// <summary>μ_b that this pilot gets on this surface: a share of the surface's, and not less than of wheels that roll.</summary>
    public double BrakingFriction => Runway.Surface.Braking(Technique.BrakingShare);

    /// <summary>What makes no sense of it, by the input; nothing where it can be flown. A flight refuses the first of them.</summary>
    /// <exception cref="RefusedInputException">A quantity too large to compute with, or a braking share outside 0 to 1.</exception>
    public IReadOnlyDictionary<LandingVariable, RefusedInputException> Faults => LandingCheck.Faults(Numbers(), Voice);

    /// <summary>Pilot, aeroplane, runway and wind.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Technique}; {Aeroplane}; {Runway}; headwind {Headwind.Knots:0.0} kt");

    /// <summary>Speaks of this landing in the units that its quantities were given in.</summary>
    internal LandingVoice Voice => new QuantityVoice(variable => Given(variable)?.Unit);

    /// <summary>The landing in plain numbers, or a refusal in the caller's units.</summary>
    internal LandingInput Checked()
    {
        LandingInput input = Numbers();
        LandingCheck.Input(input, voice: Voice);
        return Technique.PowerCutHeight is null ? input with { PowerCutHeight = FlareHeightOf(input).Meters } : input;
    }

    /// <summary>The landing in plain numbers, not looked at yet, and without the height at which a round-out closes the throttle.</summary>
    private LandingInput Numbers()
    {
        try
        {
            return InSi();
        }
        catch (ArgumentException)
        {
            // A quantity so large that SI has no number for it: which one is found only now.
            foreach (LandingVariable variable in LandingVariables.All)
            {
                if (Given(variable) is { } given)
                {
                    Enum si = LandingVariables.Kind(variable)!.BaseUnitInfo.Value;
                    Require.In(given, si, LandingVariables.Words(variable), variable.ToString());
                }
            }

            throw;
        }
    }

    /// <summary>An input as it was given; none for a plain number.</summary>
    internal IQuantity? Given(LandingVariable variable) => variable switch
    {
        LandingVariable.Mass => Aeroplane.Mass,
        LandingVariable.WingArea => Aeroplane.WingArea,
        LandingVariable.Span => Aeroplane.Span,
        LandingVariable.WingHeight => Aeroplane.WingHeight,
        LandingVariable.IdleThrust => Aeroplane.IdleThrust.AtRest,
        LandingVariable.Density => Air.Density,
        LandingVariable.Headwind => Headwind,
        LandingVariable.ThresholdHeight => Technique.ThresholdHeight,
        LandingVariable.ThresholdSpeed => Technique.ThresholdSpeed,
        LandingVariable.PathAngle => Technique.PathAngle,
        LandingVariable.FlareTimeConstant => Technique.FlareTimeConstant,
        LandingVariable.HoldOffHeight => Technique.HoldOffHeight,
        // Where none is given it is spoken of as the other heights are.
        LandingVariable.PowerCutHeight => Technique.PowerCutHeight ?? Technique.ThresholdHeight,
        LandingVariable.PowerCutTime => Technique.PowerCutTime,
        _ => null,
    };

    private static Length FlareHeightOf(in LandingInput input) =>
        Length.FromMeters(input.HoldOffHeight + SinkRate(input) * input.FlareTimeConstant);

    private static double SinkRate(in LandingInput input) =>
        new ApproachPath<ScalarLane>(new ReadOnlySpan<LandingInput>(in input)).Sink.Value;

    private LandingInput InSi() => new()
    {
        Mass = Aeroplane.Mass.Kilograms,
        WingArea = Aeroplane.WingArea.SquareMeters,
        Span = Aeroplane.Span.Meters,
        WingHeight = Aeroplane.WingHeight.Meters,
        ZeroLiftDrag = Aeroplane.ZeroLiftDragCoefficient,
        Oswald = Aeroplane.Oswald,
        MaximumLift = Aeroplane.MaximumLiftCoefficient,
        Density = Air.SiDensity,
        Headwind = Headwind.MetersPerSecond,
        ThresholdHeight = Technique.ThresholdHeight.Meters,
        ThresholdSpeed = Technique.ThresholdSpeed.MetersPerSecond,
        PathAngleDegrees = Technique.PathAngle.Degrees,
        FlareTimeConstant = Technique.FlareTimeConstant.Seconds,
        HoldOffHeight = Technique.HoldOffHeight.Meters,
        TouchdownLiftFraction = Math.Min(
            Technique.TouchdownLiftFraction, Aeroplane.TailLimitLiftCoefficient / Aeroplane.MaximumLiftCoefficient ?? double.PositiveInfinity),
        PowerCutHeight = Technique.PowerCutHeight?.Meters ?? 0,
        PowerCutTime = Technique.PowerCutTime.Seconds,
        IdleThrust = Aeroplane.IdleThrust.AtRest.Newtons,
        SlipDrag = Technique.SlipDragCoefficient,
        IdleThrustSlope = Aeroplane.IdleThrust.Slope,
        IdleThrustCurvature = Aeroplane.IdleThrust.Curvature,
        NoseHighLift = Aeroplane.NoseHighLiftCoefficient,
        NoseLowerSpeedFraction = Technique.NoseLowerSpeedFraction,
        LevelLift = Aeroplane.LevelLiftCoefficient,
        RollingFriction = Runway.Surface.RollingFriction,
        BrakingFriction = BrakingFriction,
        RunwaySlope = Runway.Slope,
    };
}
