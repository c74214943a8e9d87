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

    /// <summary>T_i, thrust of the idling engine; usually negative at approach speed with a fixed-pitch propeller.</summary>
    public required Force IdleThrust { get; init; }

    /// <summary>The aeroplane of a configuration, with what a configuration does not know of the ground.</summary>
    /// <remarks>Formula: none; the configuration's own mass, wing, polar and C_Lmax. Range: any. Source: [canonical-landing].</remarks>
    /// <param name="configuration">Aeroplane, flap and mass.</param>
    /// <param name="noseHighLift">C_Lg1.</param>
    /// <param name="levelLift">C_Lg2.</param>
    /// <param name="idleThrust">T_i.</param>
    /// <returns>The aeroplane of a landing.</returns>
    /// <exception cref="ArgumentNullException">No configuration.</exception>
    /// <example><code>LandingAeroplane.FromConfiguration(flapsUp, 1.0, 0.4, Force.Zero).MaximumLiftCoefficient - flapsUp.Flaps.Lift.MaximumLiftCoefficient // 0.0</code></example>
    public static LandingAeroplane FromConfiguration(Configuration configuration, double noseHighLift, double levelLift, Force idleThrust)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        Wing wing = configuration.Aeroplane.Wing;
        return new()
        {
            Mass = configuration.Mass,
            WingArea = wing.Area,
            Span = wing.Span,
            WingHeight = wing.HeightOnWheels,
            ZeroLiftDragCoefficient = configuration.Flaps.Drag.ZeroLiftDragCoefficient,
            Oswald = configuration.Flaps.Drag.OswaldFactor,
            MaximumLiftCoefficient = configuration.Flaps.Lift.MaximumLiftCoefficient,
            NoseHighLiftCoefficient = noseHighLift,
            LevelLiftCoefficient = levelLift,
            IdleThrust = idleThrust,
        };
    }

    /// <summary>Mass and flap lift.</summary>
    public override string ToString() =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Mass.Kilograms:0} kg, C_Lmax {MaximumLiftCoefficient:0.00}");
}
