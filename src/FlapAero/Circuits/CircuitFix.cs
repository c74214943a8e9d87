using UnitsNet;

namespace FlapAero;

/// <summary>
/// What pins a circuit down that descends on downwind. Speeds, thrusts and spacing leave one thing open: a longer final
/// goes with power reduced earlier. The pilot's rule closes it. Immutable.
/// </summary>
public sealed class CircuitFix
{
    private CircuitFix(Angle? angle, Length? power, Length? rollOut)
    {
        AngleBehindWing = angle;
        PowerPastAbeam = power;
        RollOutHeight = rollOut;
    }

    /// <summary>Where the touchdown point lies behind the wing when the base turn begins, if that is the rule.</summary>
    public Angle? AngleBehindWing { get; }

    /// <summary>How far past abeam the touchdown point power is reduced, if that is the rule.</summary>
    public Length? PowerPastAbeam { get; }

    /// <summary>Height at which the turn to final ends, if that is the rule.</summary>
    public Length? RollOutHeight { get; }

    /// <summary>The base turn begins with the touchdown point this angle behind the wing, 45° in common practice.</summary>
    /// <remarks>Formula: d = s tan(ξ + κ), κ the crab towards the tail. Range: −60° to 80°. Source: [common-practice].</remarks>
    /// <param name="angle">ξ, from the wing backwards.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="RefusedInputException">An angle outside the range.</exception>
    /// <example><code>CircuitFix.BaseTurnAt(Angle.FromDegrees(45)).AngleBehindWing!.Value.Degrees // 45</code></example>
    public static CircuitFix BaseTurnAt(Angle angle) => new(
        Require.Between(
            angle, Angle.FromDegrees(-60), Angle.FromDegrees(80), "angle behind the wing", "Further round the point is ahead or astern."),
        null, null);

    /// <summary>Power is reduced this far past abeam the touchdown point; at nought, abeam it.</summary>
    /// <remarks>Formula: L = [H − h_c − g (x_p + c)]/(g + tan γ_p), g the slope of the downwind descent. Range: −20 km to 20 km. Source: [common-practice].</remarks>
    /// <param name="pastAbeam">Along downwind; negative before abeam.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="RefusedInputException">A distance outside the range.</exception>
    /// <example><code>CircuitFix.PowerReducedAt(Length.Zero).PowerPastAbeam!.Value.Meters // 0</code></example>
    public static CircuitFix PowerReducedAt(Length pastAbeam) => new(
        null,
        Require.Between(pastAbeam, Length.FromKilometers(-20), Length.FromKilometers(20), "distance past abeam", "Further is no circuit."),
        null);

    /// <summary>The turn to final ends at this height on the path.</summary>
    /// <remarks>Formula: L = (h − h_t)/tan γ_p. Range: 1 m to 3 000 m. Source: [common-practice].</remarks>
    /// <param name="height">Height of the wheels above the runway.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="RefusedInputException">A height outside the range.</exception>
    /// <example><code>CircuitFix.RollOutAt(Length.FromFeet(400)).RollOutHeight!.Value.Feet // 400</code></example>
    public static CircuitFix RollOutAt(Length height) => new(
        null, null,
        Require.Between(height, Length.FromMeters(1), Length.FromMeters(3000), "height rolling out", "It is above the runway and below the clouds."));
}
