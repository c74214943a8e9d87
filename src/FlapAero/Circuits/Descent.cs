using UnitsNet;

namespace FlapAero;

/// <summary>How a leg of the circuit is flown up and down: level, or with a stated thrust, power or rate of descent. Immutable.</summary>
public sealed class Descent
{
    private static readonly Force MostThrust = Force.FromNewtons(50000);
    private static readonly Power MostPower = Power.FromKilowatts(2000);

    private Descent(Force? thrust, Power? power, Speed? sinkRate)
    {
        Thrust = thrust;
        ThrustPower = power;
        SinkRate = sinkRate;
    }

    /// <summary>No descent: the thrust is what level flight, or a level turn, takes.</summary>
    public static Descent Level { get; } = new(null, null, null);

    /// <summary>Thrust along the path, where that is stated.</summary>
    public Force? Thrust { get; }

    /// <summary>Thrust power T V, where that is stated.</summary>
    public Power? ThrustPower { get; }

    /// <summary>Rate of descent, where that is stated.</summary>
    public Speed? SinkRate { get; }

    /// <summary>Whether height is held.</summary>
    public bool IsLevel => Thrust is null && ThrustPower is null && SinkRate is null;

    /// <summary>A descent with a stated thrust: the path follows from speed, flap and bank.</summary>
    /// <remarks>Formula: none, it is a statement. Range: −50 kN to 50 kN. Source: [common-practice].</remarks>
    /// <param name="thrust">Thrust along the path; negative for a propeller that brakes.</param>
    /// <returns>The descent.</returns>
    /// <exception cref="RefusedInputException">No light aeroplane's thrust.</exception>
    /// <example><code>Descent.AtThrust(Force.FromNewtons(400)).Thrust!.Value.Newtons // 400</code></example>
    public static Descent AtThrust(Force thrust) => new(
        Require.Between(thrust, -MostThrust, MostThrust, "thrust", "No light aeroplane's propeller gives more."), null, null);

    /// <summary>A descent with a stated thrust power: the thrust is that power through the true airspeed.</summary>
    /// <remarks>Formula: T = P/V. Range: −2 MW to 2 MW. Source: [anderson-itf].</remarks>
    /// <param name="thrustPower">Thrust power T V: the shaft's power times the propeller's efficiency.</param>
    /// <returns>The descent.</returns>
    /// <exception cref="RefusedInputException">No light aeroplane's power.</exception>
    /// <example><code>(double)Descent.AtPower(Power.FromKilowatts(20)).ThrustPower!.Value.Kilowatts // 20</code></example>
    public static Descent AtPower(Power thrustPower) => new(
        null, Require.Between(thrustPower, -MostPower, MostPower, "thrust power", "No light aeroplane has more."), null);

    /// <summary>A descent with a stated rate: the thrust follows from speed, flap and bank.</summary>
    /// <remarks>Formula: none, it is a statement. Range: above zero, to 3 000 ft/min. Source: [common-practice].</remarks>
    /// <param name="sinkRate">Rate of descent, positive down.</param>
    /// <returns>The descent.</returns>
    /// <exception cref="RefusedInputException">No descent, or a dive.</exception>
    /// <example><code>Descent.AtSinkRate(Speed.FromFeetPerMinute(500)).SinkRate!.Value.FeetPerMinute // 500</code></example>
    public static Descent AtSinkRate(Speed sinkRate)
    {
        Require.Positive(sinkRate, "rate of descent", "A leg without descent is Descent.Level.");
        return new(null, null, Require.Between(
            sinkRate, Speed.Zero, Speed.FromFeetPerMinute(3000), "rate of descent", "Faster is a dive, not a circuit."));
    }
}
