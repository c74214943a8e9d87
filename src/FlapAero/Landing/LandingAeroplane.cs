using UnitsNet;

namespace FlapAero;

/// <summary>
/// The aeroplane of a canonical landing: one mass, one flap setting, gear down. Immutable, thread-safe. Values that make no sense
/// are refused when a landing is flown. Two are compared by their quantities as given, unit included.
/// </summary>
public sealed record LandingAeroplane
{
    /// <summary>m.</summary>
    public required Mass Mass { get; init; }

    /// <summary>S.</summary>
    public required Area WingArea { get; init; }

    /// <summary>b.</summary>
    public required Length Span { get; init; }

    /// <summary>Height of the wing above the surface with the wheels on it.</summary>
    public required Length WingHeight { get; init; }

    /// <summary>C_D0 with flap and gear.</summary>
    public required double ZeroLiftDragCoefficient { get; init; }

    /// <summary>e.</summary>
    public required double Oswald { get; init; }

    /// <summary>C_Lmax.</summary>
    public required double MaximumLiftCoefficient { get; init; }

    /// <summary>C_Lg1, on the roll with the nose held off.</summary>
    public required double NoseHighLiftCoefficient { get; init; }

    /// <summary>C_Lg2, on the roll with the nose down.</summary>
    public required double LevelLiftCoefficient { get; init; }

    /// <summary>C_L at the highest attitude that keeps the tail clear, level on the wheels; none where no tail limits the hold-off.</summary>
    public double? TailLimitLiftCoefficient { get; init; }

    /// <summary>T_i(V), thrust of the idling engine.</summary>
    public required IdleThrust IdleThrust { get; init => field = Require.Given(value); }

    /// <summary>The aeroplane of a configuration, held off to a share of its lift, with its own idling propeller.</summary>
    /// <remarks>
    /// Formula: the configuration's own mass, wing, polar and C_Lmax; C_L at the tail's limit from the lift curve at α = θ + i_w, as on
    /// level wheels; C_Lg1 of the attitude in which the hold-off ends, C_Lg2 of θ = 0. Range: any configuration. Source: [canonical-landing].
    /// </remarks>
    /// <param name="configuration">Aeroplane, flap and mass.</param>
    /// <param name="air">The air in which the propeller idles.</param>
    /// <param name="touchdownLiftFraction">f, the share of C_Lmax at which the hold-off ends if the tail does not end it, above 0 and below 1.</param>
    /// <returns>The aeroplane of a landing.</returns>
    /// <exception cref="ArgumentNullException">No configuration or no air.</exception>
    /// <exception cref="RefusedInputException">
    /// A share outside its range; a wing that stalls with the nose level; a propeller that does not idle from rest.
    /// </exception>
    /// <example><code>LandingAeroplane.FromConfiguration(flapsUp, Air.StandardSeaLevel, 0.8).NoseHighLiftCoefficient // 1.10</code></example>
    public static LandingAeroplane FromConfiguration(Configuration configuration, Air air, double touchdownLiftFraction)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        ArgumentNullException.ThrowIfNull(air);
        Require.Between(touchdownLiftFraction, 0, 1, "touchdown share of C_Lmax", "All of it is the stall.");
        Wing wing = configuration.Aeroplane.Wing;
        LiftCurve lift = configuration.Flaps.Lift;
        double held = touchdownLiftFraction * lift.MaximumLiftCoefficient;
        // A tail that is clear at the stall ends no hold-off.
        double? tail = configuration.Aeroplane.TailLimitAttitude is { } limit && limit + wing.Incidence < lift.StallAngle
            ? lift.LiftCoefficient(limit + wing.Incidence) : null;
        return new()
        {
            Mass = configuration.Mass,
            WingArea = wing.Area,
            Span = wing.Span,
            WingHeight = wing.HeightOnWheels,
            ZeroLiftDragCoefficient = configuration.Flaps.Drag.ZeroLiftDragCoefficient,
            Oswald = configuration.Flaps.Drag.OswaldFactor,
            MaximumLiftCoefficient = lift.MaximumLiftCoefficient,
            NoseHighLiftCoefficient = Math.Min(held, tail ?? held),
            LevelLiftCoefficient = lift.LiftCoefficient(wing.Incidence),
            TailLimitLiftCoefficient = tail,
            IdleThrust = IdleThrust.FromConfiguration(configuration, air),
        };
    }

    /// <summary>Mass and flap lift.</summary>
    public override string ToString() =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Mass.Kilograms:0} kg, C_Lmax {MaximumLiftCoefficient:0.00}");
}
