using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// The torque of an unsupercharged engine at full throttle: nearly the same at any speed, and falling with the density of the air.
/// Immutable.
/// </summary>
/// <remarks>Source: [gagg-farrar], second-hand.</remarks>
public sealed class FullThrottleEngine
{
    private readonly double _torque;

    /// <summary>An engine.</summary>
    /// <param name="torqueAtSeaLevel">Q₀ in standard air at sea level, 20 N·m to 3 000 N·m.</param>
    /// <exception cref="RefusedInputException">A torque outside its range.</exception>
    public FullThrottleEngine(Torque torqueAtSeaLevel)
    {
        TorqueAtSeaLevel = Require.Between(
            torqueAtSeaLevel, Torque.FromNewtonMeters(20), Torque.FromNewtonMeters(3000), "full-throttle torque",
            "Engines of light aeroplanes lie inside it.");
        _torque = torqueAtSeaLevel.NewtonMeters;
    }

    /// <summary>Q₀.</summary>
    public Torque TorqueAtSeaLevel { get; }

    /// <summary>Torque in an air.</summary>
    /// <remarks>
    /// Formula: Q = Q₀ (σ − c)/(1 − c), c = 0.12, σ the density over that of the standard at sea level. Range: any air; none is left where
    /// σ = c, far above where light aeroplanes fly. Source: [gagg-farrar], second-hand.
    /// </remarks>
    /// <param name="air">The air.</param>
    /// <returns>Q.</returns>
    /// <exception cref="ArgumentNullException">No air.</exception>
    /// <example><code>new FullThrottleEngine(Torque.FromNewtonMeters(400)).TorqueIn(Air.Standard(Length.FromFeet(8000))).NewtonMeters // 303</code></example>
    public Torque TorqueIn(Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return Torque.FromNewtonMeters(SiTorque(air.SiDensity));
    }

    internal double SiTorque(double density) => _torque * PropellerLaws.FullThrottleShare(density / Air.StandardSeaLevel.SiDensity);
}
