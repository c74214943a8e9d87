using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// A fixed-pitch propeller on its engine's crankshaft: what it gives at an airspeed and engine speed, what engine speed an
/// approach needs, and how it idles. Immutable. Free stream: the slipstream's work on the fuselage and the body's on the
/// propeller are in the table or nowhere.
/// </summary>
public sealed class Propeller
{
    // A propeller slower than this has no advance ratio worth the name.
    private const double SlowestRevolutions = 0.1;

    private readonly double _diameter;
    private readonly double _fastest;

    /// <summary>A propeller.</summary>
    /// <param name="diameter">D, 0.1 m to 4 m.</param>
    /// <param name="table">C_T and C_P against J.</param>
    /// <param name="maximumSpeed">The engine's highest speed, 500 to 20 000 rpm.</param>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    public Propeller(Length diameter, PropellerTable table, RotationalSpeed maximumSpeed)
    {
        ArgumentNullException.ThrowIfNull(table);
        Diameter = Require.Between(
            diameter, Length.FromMeters(0.1), Length.FromMeters(4), "propeller diameter", "Models to light aeroplanes lie inside it.");
        MaximumSpeed = Require.Between(
            maximumSpeed, RotationalSpeed.FromRevolutionsPerMinute(500), RotationalSpeed.FromRevolutionsPerMinute(20000),
            "highest engine speed", "Models to light aeroplanes lie inside it.");
        Table = table;
        _diameter = diameter.Meters;
        _fastest = maximumSpeed.RevolutionsPerSecond;
    }

    /// <summary>D.</summary>
    public Length Diameter { get; }

    /// <summary>C_T and C_P against J.</summary>
    public PropellerTable Table { get; }

    /// <summary>The engine's highest speed.</summary>
    public RotationalSpeed MaximumSpeed { get; }

    /// <summary>Thrust, power and torque at an engine speed, at rest.</summary>
    /// <remarks>
    /// Formula: as <see cref="Running(Airspeed, RotationalSpeed)"/> with J = 0. Range: N to the highest. Source:
    /// [uiuc-propellers].
    /// </remarks>
    /// <param name="air">The air.</param>
    /// <param name="engineSpeed">N.</param>
    /// <returns>The propeller's state.</returns>
    /// <exception cref="RefusedInputException">An engine speed outside the range.</exception>
    /// <example><code>propeller.AtRest(Air.StandardSeaLevel, RotationalSpeed.FromRevolutionsPerMinute(1200)).Thrust.Newtons // 784</code></example>
    public PropellerState AtRest(Air air, RotationalSpeed engineSpeed)
    {
        ArgumentNullException.ThrowIfNull(air);
        return State(0, air.SiDensity, Turning(engineSpeed));
    }

    /// <summary>Thrust, power and torque at an airspeed and engine speed.</summary>
    /// <remarks>
    /// Formula: J = V/(N D), T = C_T ρ N² D⁴, P = C_P ρ N³ D⁵, Q = P/2πN. Range: J to the table's last, N to the highest.
    /// Source: [uiuc-propellers].
    /// </remarks>
    /// <param name="airspeed">The airspeed, V its true value, along the propeller's axis.</param>
    /// <param name="engineSpeed">N.</param>
    /// <returns>The propeller's state.</returns>
    /// <exception cref="RefusedInputException">An engine speed outside the range, or a J beyond the table.</exception>
    /// <example><code>propeller.Running(Airspeed.FromTrue(Speed.FromMetersPerSecond(32), Air.StandardSeaLevel), RotationalSpeed.FromRevolutionsPerMinute(1200)).Thrust.Newtons // 235</code></example>
    public PropellerState Running(Airspeed airspeed, RotationalSpeed engineSpeed)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        return State(airspeed.SiTrue, airspeed.Air.SiDensity, Turning(engineSpeed));
    }

    /// <summary>The engine speed that an approach needs: the highest that gives a thrust at an airspeed.</summary>
    /// <remarks>
    /// Formula: the highest root N of C_T(V/(N D)) ρ N² D⁴ = T. Range: N between the table's last J and the engine's highest
    /// speed. Source: [uiuc-propellers] for the coefficients.
    /// </remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <param name="thrust">T along the path; negative brakes.</param>
    /// <returns>
    /// N, or no answer where no engine speed gives this thrust: more than there is, or more braking than the table reaches.
    /// </returns>
    /// <exception cref="RefusedInputException">A thrust that is not finite.</exception>
    /// <example><code>propeller.EngineSpeedFor(Airspeed.FromTrue(Speed.FromMetersPerSecond(32), Air.StandardSeaLevel), Force.FromNewtons(235.2))!.Value.RevolutionsPerMinute // 1200</code></example>
    public RotationalSpeed? EngineSpeedFor(Airspeed airspeed, Force thrust)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        Require.Between(
            thrust, Force.FromKilonewtons(-1000), Force.FromKilonewtons(1000), "thrust",
            "No propeller of a light aeroplane comes near.");
        double wanted = thrust.Newtons;
        (double speed, double density) = (airspeed.SiTrue, airspeed.Air.SiDensity);
        double Excess(double revolutions) =>
            PropellerLaws.Thrust(Table.SiThrust(Ratio(speed, revolutions)), density, revolutions, _diameter) - wanted;
        return PropellerSpeedSolver.Highest(Excess, Slowest(speed), _fastest) is { } found
            ? RotationalSpeed.FromRevolutionsPerMinute(Math.Min(found * 60, MaximumSpeed.RevolutionsPerMinute))
            : null;
    }

    /// <summary>The propeller with its engine's throttle closed, on an aeroplane that stands still.</summary>
    /// <remarks>
    /// Formula: as <see cref="Idling"/> with J = 0: C_P ρ N² D⁵/2π = Q₀(1 − N/N₀). Range: N to the engine's highest speed.
    /// Source: [uiuc-propellers] for the coefficients; the engine's line is this model's own.
    /// </remarks>
    /// <param name="air">The air.</param>
    /// <param name="engine">The engine.</param>
    /// <returns>The state; its thrust is positive.</returns>
    /// <exception cref="RefusedInputException">Never for valid air.</exception>
    /// <example><code>propeller.IdlingAtRest(Air.StandardSeaLevel, engine)!.EngineSpeed.RevolutionsPerMinute // 573</code></example>
    public PropellerState? IdlingAtRest(Air air, ClosedThrottleEngine engine)
    {
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(engine);
        return IdlingAt(0, air.SiDensity, engine);
    }

    /// <summary>The propeller with its engine's throttle closed: idle thrust by airspeed, T_i(V).</summary>
    /// <remarks>
    /// Formula: the highest root N of C_P(V/(N D)) ρ N² D⁵/2π = Q(N), the closed-throttle engine's torque. Range: the
    /// table's last J. Source: [uiuc-propellers] for the coefficients; the engine's line is this model's own.
    /// </remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <param name="engine">The engine.</param>
    /// <returns>The state, or no answer where the balance lies beyond the table or the engine's highest speed.</returns>
    /// <exception cref="RefusedInputException">Never for an <see cref="Airspeed"/>.</exception>
    /// <example><code>propeller.Idling(Airspeed.FromTrue(Speed.FromMetersPerSecond(32), Air.StandardSeaLevel), engine)!.EngineSpeed.RevolutionsPerMinute // 861</code></example>
    public PropellerState? Idling(Airspeed airspeed, ClosedThrottleEngine engine)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        ArgumentNullException.ThrowIfNull(engine);
        return IdlingAt(airspeed.SiTrue, airspeed.Air.SiDensity, engine);
    }

    /// <summary>The propeller with its engine's throttle wide open.</summary>
    /// <remarks>
    /// Formula: N where C_P(V/(N D)) ρ N² D⁵/2π = Q(σ), and not above the engine's highest speed: past it the pilot takes the throttle back.
    /// Range: from rest to the table's last J. Source: [uiuc-propellers] for the coefficients, [gagg-farrar] for the torque.
    /// </remarks>
    /// <param name="airspeed">The airspeed; for an aeroplane that stands still see <see cref="FullThrottleAtRest"/>.</param>
    /// <param name="engine">The engine.</param>
    /// <returns>The state.</returns>
    /// <exception cref="RefusedInputException">An airspeed so high that the highest engine speed lies beyond the table.</exception>
    /// <example><code>propeller.AtFullThrottle(Airspeed.FromTrue(Speed.FromMetersPerSecond(32), Air.StandardSeaLevel), new FullThrottleEngine(Torque.FromNewtonMeters(300))).Thrust.Newtons // 1378</code></example>
    public PropellerState AtFullThrottle(Airspeed airspeed, FullThrottleEngine engine)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        ArgumentNullException.ThrowIfNull(engine);
        return AtFullThrottle(airspeed.SiTrue, airspeed.Air.SiDensity, engine);
    }

    /// <summary>The same on an aeroplane that stands still.</summary>
    /// <remarks>Formula: as <see cref="AtFullThrottle(Airspeed, FullThrottleEngine)"/> with J = 0. Range: any air. Source: [uiuc-propellers], [gagg-farrar].</remarks>
    /// <param name="air">The air.</param>
    /// <param name="engine">The engine.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentNullException">No air or no engine.</exception>
    /// <example><code>propeller.FullThrottleAtRest(Air.StandardSeaLevel, new FullThrottleEngine(Torque.FromNewtonMeters(300))).EngineSpeed.RevolutionsPerMinute // 1861</code></example>
    public PropellerState FullThrottleAtRest(Air air, FullThrottleEngine engine)
    {
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(engine);
        return AtFullThrottle(0, air.SiDensity, engine);
    }

    private PropellerState AtFullThrottle(double speed, double density, FullThrottleEngine engine)
    {
        double torque = engine.SiTorque(density);
        double Excess(double revolutions) =>
            PropellerLaws.Torque(Table.SiPower(Ratio(speed, revolutions)), density, revolutions, _diameter) - torque;
        return State(speed, density, Excess(_fastest) <= 0 ? _fastest : PropellerSpeedSolver.Highest(Excess, Slowest(speed), _fastest) ?? _fastest);
    }

    private PropellerState? IdlingAt(double speed, double density, ClosedThrottleEngine engine)
    {
        double Excess(double revolutions) =>
            PropellerLaws.Torque(Table.SiPower(Ratio(speed, revolutions)), density, revolutions, _diameter)
            - engine.SiTorque(revolutions);
        // Above its free speed the engine brakes, and above the speed of no power the propeller does: there is no balance.
        double none = speed / (Table.ZeroPowerAdvanceRatio * _diameter);
        double highest = Math.Min(_fastest, Math.Max(engine.FreeSpeed.RevolutionsPerSecond, none) * (1 + 1e-12));
        double slowest = Slowest(speed);
        double share = (highest - slowest) / (_fastest - slowest);
        return PropellerSpeedSolver.Highest(Excess, slowest, highest, share) is { } found ? State(speed, density, found) : null;
    }

    private PropellerState State(double speed, double density, double revolutions)
    {
        double ratio = Table.InTable(PropellerLaws.AdvanceRatio(speed, revolutions, _diameter));
        (double thrust, double power) = (Table.SiThrust(ratio), Table.SiPower(ratio));
        return new PropellerState(
            ratio, revolutions,
            PropellerLaws.Thrust(thrust, density, revolutions, _diameter),
            PropellerLaws.Power(power, density, revolutions, _diameter),
            PropellerLaws.Torque(power, density, revolutions, _diameter),
            thrust > 0 && power > 0 ? PropellerLaws.Efficiency(ratio, thrust, power) : null);
    }

    // Rounding must not push the last J of the table out of it.
    private double Ratio(double speed, double revolutions) =>
        Math.Min(PropellerLaws.AdvanceRatio(speed, revolutions, _diameter), Table.LargestAdvanceRatio);

    private double Slowest(double speed) =>
        Math.Max(SlowestRevolutions, speed / (Table.LargestAdvanceRatio * _diameter) * (1 + 1e-12));

    private double Turning(RotationalSpeed engineSpeed)
    {
        Require.Between(
            engineSpeed, RotationalSpeed.FromRevolutionsPerMinute(SlowestRevolutions * 60), MaximumSpeed, "engine speed",
            "A propeller that stands still has no advance ratio, and the engine has its highest speed.");
        return engineSpeed.RevolutionsPerSecond;
    }
}
