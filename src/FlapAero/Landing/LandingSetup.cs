using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// Everything that a canonical landing is made of. Immutable, thread-safe; <c>with</c> makes the pilot fast or slow, high, early or late.
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
        double sink = ApproachPath<ScalarLane>.SinkRate(input);
        return this with { Technique = Technique with { FlareTimeConstant = Duration.FromSeconds(above / sink) } };
    }

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
        LandingVariable.IdleThrust => Aeroplane.IdleThrust,
        LandingVariable.Density => Runway.Air.Density,
        LandingVariable.Headwind => Runway.Headwind,
        LandingVariable.ThresholdHeight => Technique.ThresholdHeight,
        LandingVariable.ThresholdSpeed => Technique.ThresholdSpeed,
        LandingVariable.PathAngle => Technique.PathAngle,
        LandingVariable.FlareTimeConstant => Technique.FlareTimeConstant,
        LandingVariable.HoldOffHeight => Technique.HoldOffHeight,
        LandingVariable.PowerCutHeight => Technique.PowerCutHeight,
        LandingVariable.PowerCutTime => Technique.PowerCutTime,
        _ => null,
    };

    internal LandingInput Input() => new()
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
        TouchdownLiftFraction = Technique.TouchdownLiftFraction,
        PowerCutHeight = Technique.PowerCutHeight.Meters,
        PowerCutTime = Technique.PowerCutTime.Seconds,
        IdleThrust = Aeroplane.IdleThrust.Newtons,
        NoseHighLift = Aeroplane.NoseHighLiftCoefficient,
        NoseLowerSpeedFraction = Technique.NoseLowerSpeedFraction,
        LevelLift = Aeroplane.LevelLiftCoefficient,
        RollingFriction = Runway.RollingFriction,
        BrakingFriction = Runway.BrakingFriction,
        RunwaySlope = Runway.Slope,
    };
}
