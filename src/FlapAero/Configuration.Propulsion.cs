using UnitsNet;

namespace FlapAero;

/// <content>The propeller on a path and in a glide.</content>
public sealed partial class Configuration
{
    // A path that is exactly the idling glide may miss its torque by rounding.
    private const double TorqueRounding = 1e-6;

    /// <summary>The engine speed that a wanted path through the air needs.</summary>
    /// <remarks>
    /// Formula: the highest N whose propeller gives T = D + W sin γ at V. Range: |γ| to 30°, from the stall to the setting's
    /// maximum speed; N from the closed throttle's to the engine's highest; whether full throttle gives that much is <see cref="ClimbAtFullThrottle"/>'s.
    /// Source: [anderson-itf] for the thrust, [uiuc-propellers] for the propeller's coefficients.
    /// </remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <param name="pathAngle">γ through the air, positive up.</param>
    /// <returns>
    /// N, or no answer where no engine speed gives the path: it climbs more than the propeller pulls, or descends more
    /// steeply than with the throttle closed.
    /// </returns>
    /// <exception cref="RefusedInputException">Stalled, too fast, or too steep.</exception>
    /// <example><code>flapsUp.EngineSpeedOnPath(Airspeed.FromCalibrated(Speed.FromKnots(70), Air.StandardSeaLevel), Angle.FromDegrees(-3))!.Value.RevolutionsPerMinute // 1507</code></example>
    public RotationalSpeed? EngineSpeedOnPath(Airspeed airspeed, Angle pathAngle) => EngineSpeed(OnPath(airspeed, pathAngle));

    /// <summary>The engine speed that a wanted path over the ground needs, in a steady wind.</summary>
    /// <remarks>
    /// Formula: the path through the air as <see cref="OnPathOverGround"/>, then as <see cref="EngineSpeedOnPath"/>. Range:
    /// descents of 0° to 30° over the ground, ground speed above zero; N from the closed throttle's to the engine's highest.
    /// Source: [anderson-itf] for triangle and thrust, [uiuc-propellers] for the propeller's coefficients.
    /// </remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <param name="descentAngle">Angle of the path over the ground, positive down.</param>
    /// <param name="headwind">w; a tailwind is negative.</param>
    /// <returns>N, or no answer where no engine speed gives the path.</returns>
    /// <exception cref="RefusedInputException">Stalled, too fast, too steep, or no way over the ground.</exception>
    /// <example><code>flapsUp.EngineSpeedOnPathOverGround(Airspeed.FromCalibrated(Speed.FromKnots(70), Air.StandardSeaLevel), Angle.FromDegrees(3), Speed.FromKnots(10))!.Value.RevolutionsPerMinute // 1560</code></example>
    public RotationalSpeed? EngineSpeedOnPathOverGround(Airspeed airspeed, Angle descentAngle, Speed headwind) =>
        EngineSpeed(OnPathOverGround(airspeed, descentAngle, headwind));

    /// <summary>Thrust with the throttle closed, T_i(V): usually negative on an approach.</summary>
    /// <remarks>
    /// Formula: C_T ρ N² D⁴ at the N of <see cref="Propeller.Idling"/>. Range: the stall plays no part; the propeller's table
    /// to its last J. Source: [uiuc-propellers] for the coefficients; the engine's line is this model's own.
    /// </remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <returns>T_i, or no answer where the balance lies beyond the propeller's table or the engine's highest speed.</returns>
    /// <exception cref="RefusedInputException">Faster than the setting allows.</exception>
    /// <example><code>flapsUp.IdleThrust(Airspeed.FromCalibrated(Speed.FromKnots(70), Air.StandardSeaLevel))!.Value.Newtons // -175</code></example>
    public Force? IdleThrust(Airspeed airspeed)
    {
        NotTooFast(airspeed);
        return Aeroplane.Propeller.Idling(airspeed, Aeroplane.Engine)?.Thrust;
    }

    /// <summary>The glide with the throttle closed and the propeller turning: steeper than without thrust where it brakes.</summary>
    /// <remarks>
    /// Formula: as <see cref="Glide"/> with T = T_i(V) of <see cref="IdleThrust"/>. Range: from the stall to the setting's
    /// maximum speed. Source: [anderson-itf] for the glide, [uiuc-propellers] for the propeller's coefficients.
    /// </remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <returns>The flight, or no answer where <see cref="IdleThrust"/> has none.</returns>
    /// <exception cref="RefusedInputException">Stalled, faster than the setting allows, or no steady path.</exception>
    /// <example><code>flapsUp.GlideIdling(Airspeed.FromCalibrated(Speed.FromKnots(70), Air.StandardSeaLevel))!.GlideAngle.Degrees // 6.1</code></example>
    public SteadyFlight? GlideIdling(Airspeed airspeed) => IdleThrust(airspeed) is { } thrust ? Glide(airspeed, thrust) : null;

    /// <summary>The climb, or what is left of a descent, at full throttle.</summary>
    /// <remarks>
    /// Formula: sin γ = (T − D)/W with the thrust of <see cref="Propeller.AtFullThrottle(Airspeed, FullThrottleEngine)"/>. Range: from the
    /// stall to the setting's maximum speed. Source: [anderson-itf], [gagg-farrar] for the torque.
    /// </remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <returns>The flight, or no answer where the aeroplane's file gives no full throttle.</returns>
    /// <exception cref="RefusedInputException">Stalled, or faster than the setting allows.</exception>
    /// <example><code>flapsUp.ClimbAtFullThrottle(Airspeed.FromCalibrated(Speed.FromKnots(75), Air.StandardSeaLevel))!.SinkRate.FeetPerMinute // -650</code></example>
    public SteadyFlight? ClimbAtFullThrottle(Airspeed airspeed)
    {
        NotTooFast(airspeed);
        return Aeroplane.FullThrottle is { } engine ? Glide(airspeed, Aeroplane.Propeller.AtFullThrottle(airspeed, engine).Thrust) : null;
    }

    private RotationalSpeed? EngineSpeed(SteadyFlight flight) =>
        Aeroplane.Propeller.EngineSpeedFor(flight.Airspeed, flight.Thrust) is { } found && CanThrottleTo(flight.Airspeed, found)
            ? found
            : null;

    // The throttle adds torque and never takes any away from what the engine gives with it closed.
    private bool CanThrottleTo(Airspeed airspeed, RotationalSpeed speed)
    {
        ClosedThrottleEngine engine = Aeroplane.Engine;
        double taken = Aeroplane.Propeller.Running(airspeed, speed).Torque.NewtonMeters;
        double slack = TorqueRounding * engine.TorqueAtStandstill.NewtonMeters;
        return taken >= engine.SiTorque(speed.RevolutionsPerSecond) - slack;
    }
}
