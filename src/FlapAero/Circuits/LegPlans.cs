using UnitsNet;

namespace FlapAero;

/// <summary>How a straight leg is to be flown. Immutable.</summary>
public sealed class StraightLeg
{
    /// <summary>A straight leg.</summary>
    /// <param name="configuration">Aeroplane, flap and mass.</param>
    /// <param name="airspeed">Its speed, in the air of this leg.</param>
    /// <param name="descent">Level, or how it descends.</param>
    /// <exception cref="RefusedInputException">Faster than the flap allows.</exception>
    public StraightLeg(Configuration configuration, Airspeed airspeed, Descent descent)
    {
        ArgumentNullException.ThrowIfNull(descent);
        LegSpeed.NotTooFast(configuration, airspeed);
        Configuration = configuration;
        Airspeed = airspeed;
        Descent = descent;
    }

    /// <summary>Aeroplane, flap and mass.</summary>
    public Configuration Configuration { get; }

    /// <summary>The speed.</summary>
    public Airspeed Airspeed { get; }

    /// <summary>How it descends.</summary>
    public Descent Descent { get; }
}

/// <summary>How a turn is to be flown. Immutable.</summary>
public sealed class TurnLeg
{
    /// <summary>A turn at constant bank.</summary>
    /// <param name="configuration">Aeroplane, flap and mass.</param>
    /// <param name="airspeed">Its speed, in the air of this leg.</param>
    /// <param name="descent">Level, or how it descends; a stated thrust sinks faster than in straight flight.</param>
    /// <param name="bank">Angle of bank φ, 1° to 80°; the plan's limit may refuse it.</param>
    /// <exception cref="RefusedInputException">Faster than the flap allows, or no bank to turn with.</exception>
    public TurnLeg(Configuration configuration, Airspeed airspeed, Descent descent, Angle bank)
    {
        ArgumentNullException.ThrowIfNull(descent);
        LegSpeed.NotTooFast(configuration, airspeed);
        Configuration = configuration;
        Airspeed = airspeed;
        Descent = descent;
        Bank = Require.Between(
            bank, Turn.LeastBank, Turn.SteepestBank, "bank", "Less is straight flight; more is no turn of a light aeroplane.");
    }

    /// <summary>Aeroplane, flap and mass.</summary>
    public Configuration Configuration { get; }

    /// <summary>The speed.</summary>
    public Airspeed Airspeed { get; }

    /// <summary>How it descends.</summary>
    public Descent Descent { get; }

    /// <summary>Angle of bank φ.</summary>
    public Angle Bank { get; }
}

/// <summary>How the final approach is to be flown. Immutable.</summary>
public sealed class FinalLeg
{
    /// <summary>A final approach.</summary>
    /// <param name="configuration">Aeroplane, flap and mass.</param>
    /// <param name="airspeed">Its speed, in the air of this leg.</param>
    /// <param name="pathAngle">γ_p, the path's angle over the ground, positive down, 1° to 15°.</param>
    /// <exception cref="RefusedInputException">Faster than the flap allows, or no approach path.</exception>
    public FinalLeg(Configuration configuration, Airspeed airspeed, Angle pathAngle)
    {
        LegSpeed.NotTooFast(configuration, airspeed);
        Configuration = configuration;
        Airspeed = airspeed;
        PathAngle = FinalPath.Approach(pathAngle);
    }

    /// <summary>Aeroplane, flap and mass.</summary>
    public Configuration Configuration { get; }

    /// <summary>The speed.</summary>
    public Airspeed Airspeed { get; }

    /// <summary>γ_p over the ground, positive down.</summary>
    public Angle PathAngle { get; }
}

internal static class LegSpeed
{
    // A speed that is exactly the limit may miss it by rounding.
    private const double Rounding = 1e-9;

    public static void NotTooFast(Configuration configuration, Airspeed airspeed)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        ArgumentNullException.ThrowIfNull(airspeed);
        Airspeed highest = configuration.MaximumSpeed(airspeed.Air);
        if (airspeed.SiTrue > highest.SiTrue * (1 + Rounding))
            throw Require.Refused(
                nameof(airspeed), "airspeed", Require.Text(airspeed.Calibrated) + " CAS",
                $"up to {Require.Text(highest.Calibrated)} CAS ({Require.Text(configuration.Flaps.MaximumSpeed)} indicated)",
                $"It is the highest speed of {configuration.Aeroplane.Name} with flaps {configuration.Flaps}.");
    }
}
