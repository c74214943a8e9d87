using UnitsNet;

namespace FlapAero;

/// <summary>
/// The torque of an engine whose throttle is closed, straight in its speed: what the idle mixture still gives, less the
/// friction and pumping, which grow. Positive while it idles on the ground; negative when a gliding aeroplane's propeller
/// drives it. Immutable.
/// </summary>
public sealed class ClosedThrottleEngine
{
    private readonly double _standstill;
    private readonly double _loss;

    /// <summary>An engine.</summary>
    /// <param name="torqueAtStandstill">Q₀, the straight line's torque at no speed, above 0 to 2 000 N·m.</param>
    /// <param name="freeSpeed">
    /// The speed N₀ at which the line passes through zero, 100 to 5 000 rpm: the engine alone, without a propeller.
    /// </param>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    public ClosedThrottleEngine(Torque torqueAtStandstill, RotationalSpeed freeSpeed)
    {
        TorqueAtStandstill = Require.Between(
            torqueAtStandstill, Torque.FromNewtonMeters(0.001), Torque.FromNewtonMeters(2000), "torque at standstill",
            "An engine that gives none stops; no light aeroplane's gives more.");
        FreeSpeed = Require.Between(
            freeSpeed, RotationalSpeed.FromRevolutionsPerMinute(100), RotationalSpeed.FromRevolutionsPerMinute(5000),
            "idle speed without a propeller", "Engines of light aeroplanes lie inside it.");
        _standstill = torqueAtStandstill.NewtonMeters;
        double free = freeSpeed.RevolutionsPerSecond;
        _loss = _standstill / free;
    }

    /// <summary>Q₀.</summary>
    public Torque TorqueAtStandstill { get; }

    /// <summary>N₀, at which the closed throttle gives no torque.</summary>
    public RotationalSpeed FreeSpeed { get; }

    /// <summary>Torque at an engine speed.</summary>
    /// <remarks>
    /// Formula: Q = Q₀(1 − N/N₀). Range: 0 to 10 000 rpm. Source: [common-practice]; the line is this model's
    /// own.
    /// </remarks>
    /// <param name="speed">N.</param>
    /// <returns>Q, negative where the engine is driven.</returns>
    /// <exception cref="RefusedInputException">No speed of an engine.</exception>
    /// <example><code>engine.TorqueAt(RotationalSpeed.FromRevolutionsPerMinute(1200)).NewtonMeters // -50.0</code></example>
    public Torque TorqueAt(RotationalSpeed speed)
    {
        Require.Between(
            speed, RotationalSpeed.Zero, RotationalSpeed.FromRevolutionsPerMinute(10000), "engine speed",
            "Engines of light aeroplanes lie inside it.");
        return Torque.FromNewtonMeters(SiTorque(speed.RevolutionsPerSecond));
    }

    internal double SiTorque(double revolutions) => _standstill - _loss * revolutions;
}
