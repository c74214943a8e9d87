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
    public required LandingAeroplane Aeroplane
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            field = value;
        }
    }

    /// <summary>The pilot.</summary>
    public required LandingTechnique Technique
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            field = value;
        }
    }

    /// <summary>Runway, air and wind.</summary>
    public required LandingRunway Runway
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            field = value;
        }
    }

    /// <summary>The landing of a configuration on a runway, as a pilot flies it.</summary>
    /// <remarks>
    /// Formula: V_t = multiple × V_S, in calibrated airspeed, and the additive; the aeroplane as
    /// <see cref="LandingAeroplane.FromConfiguration"/> has it. Range: any configuration. Source: [cfr-23] for 1.3, [common-practice] for
    /// the rest.
    /// </remarks>
    /// <param name="configuration">Aeroplane, flap and mass.</param>
    /// <param name="runway">Runway, air and wind; dry, paved and level, at standard sea level in a calm where none is given.</param>
    /// <param name="pilot">The pilot; <see cref="LandingPilot.Usual"/> where none is given.</param>
    /// <returns>The landing, to be flown.</returns>
    /// <exception cref="ArgumentNullException">No configuration.</exception>
    /// <exception cref="RefusedInputException">
    /// A multiple or an additive that makes no speed; otherwise as <see cref="LandingAeroplane.FromConfiguration"/>.
    /// </exception>
    /// <example><code>LandingSetup.For(flapsUp).Technique.ThresholdSpeed.Knots // 69.2</code></example>
    public static LandingSetup For(Configuration configuration, LandingRunway? runway = null, LandingPilot? pilot = null)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        LandingRunway on = runway ?? LandingRunway.On(RunwaySurface.DryPaved);
        LandingPilot who = pilot ?? LandingPilot.Usual;
        Speed reference = configuration.ReferenceSpeed(on.Air, who.SpeedMultiple).Calibrated;
        return new()
        {
            Aeroplane = LandingAeroplane.FromConfiguration(configuration, on.Air, who.TouchdownLiftFraction),
            Technique = new()
            {
                ThresholdHeight = who.ThresholdHeight,
                ThresholdSpeed = FlapAero.Airspeed.FromCalibrated(reference + who.SpeedAdditive, on.Air).True,
                PathAngle = who.PathAngle,
                FlareTimeConstant = who.FlareTimeConstant,
                HoldOffHeight = who.HoldOffHeight,
                TouchdownLiftFraction = who.TouchdownLiftFraction,
                PowerCutHeight = who.PowerCutHeight,
                PowerCutTime = who.PowerCutTime,
                NoseLowerSpeedFraction = who.NoseLowerSpeedFraction,
            },
            Runway = on,
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

    /// <summary>Pilot, aeroplane and runway.</summary>
    public override string ToString() => $"{Technique}; {Aeroplane}; {Runway}";

    /// <summary>Speaks of this landing in the units that its quantities were given in.</summary>
    internal LandingVoice Voice => new QuantityVoice(variable => Given(variable)?.Unit);

    /// <summary>The landing in plain numbers, or a refusal in the caller's units.</summary>
    internal LandingInput Checked()
    {
        LandingInput input;
        try
        {
            input = Input();
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

        LandingCheck.Input(input, voice: Voice);
        return input;
    }

    /// <summary>An input as it was given; none for a plain number.</summary>
    internal IQuantity? Given(LandingVariable variable) => variable switch
    {
        LandingVariable.Mass => Aeroplane.Mass,
        LandingVariable.WingArea => Aeroplane.WingArea,
        LandingVariable.Span => Aeroplane.Span,
        LandingVariable.WingHeight => Aeroplane.WingHeight,
        LandingVariable.IdleThrust => Aeroplane.IdleThrust.AtRest,
        LandingVariable.Density => Runway.Air.Density,
        LandingVariable.Headwind => Runway.Headwind,
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

    internal LandingInput Input()
    {
        LandingInput input = Numbers();
        if (Technique.PowerCutHeight is not null) return input;
        // A landing that makes no sense has no round-out to close the throttle at.
        LandingCheck.Input(input, voice: Voice);
        return input with { PowerCutHeight = FlareHeightOf(input).Meters };
    }

    private LandingInput Numbers() => new()
    {
        Mass = Aeroplane.Mass.Kilograms,
        WingArea = Aeroplane.WingArea.SquareMeters,
        Span = Aeroplane.Span.Meters,
        WingHeight = Aeroplane.WingHeight.Meters,
        ZeroLiftDrag = Aeroplane.ZeroLiftDragCoefficient,
        Oswald = Aeroplane.Oswald,
        MaximumLift = Aeroplane.MaximumLiftCoefficient,
        Density = Runway.Air.SiDensity,
        Headwind = Runway.Headwind.MetersPerSecond,
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
        RollingFriction = Runway.RollingFriction,
        BrakingFriction = Runway.BrakingFriction,
        RunwaySlope = Runway.Slope,
    };
}
