using FlapAero.Equations;
using UnitsNet;

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
    /// <exception cref="ArgumentException">A height at or below the hold-off height, or a landing that makes no sense.</exception>
    /// <example><code>landing.RoundingOutFrom(Length.FromMeters(6)).Technique.FlareTimeConstant.Seconds // 2.74</code></example>
    public LandingSetup RoundingOutFrom(Length flareHeight)
    {
        LandingInput input = Input();
        LandingCheck.Input(input);
        double above = flareHeight.Meters - input.HoldOffHeight;
        if (!(above > 0 && double.IsFinite(above)))
            throw Require.Refused(
                nameof(flareHeight), "flare height", Require.Text(flareHeight),
                $"above the hold-off height, {Require.Text(Technique.HoldOffHeight, flareHeight)}", "The round-out leads down to it.");
        double sink = ApproachPath<ScalarLane>.SinkRate(input);
        return this with { Technique = Technique with { FlareTimeConstant = Duration.FromSeconds(above / sink) } };
    }

    /// <summary>Pilot, aeroplane and runway.</summary>
    public override string ToString() => $"{Technique}; {Aeroplane}; {Runway}";

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
