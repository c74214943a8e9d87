using FlapAero.Equations;
using MathNet.Numerics.RootFinding;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <content>Glides and powered paths.</content>
public sealed partial class Configuration
{
    // A speed that is exactly the stalling speed may miss C_Lmax by rounding.
    private const double LiftRounding = 1e-9;

    private static readonly Angle SteepestPath = Angle.FromDegrees(30);

    /// <summary>Steady flight at a speed and thrust: without thrust, the glide.</summary>
    /// <remarks>
    /// Formula: L = W cos γ, D − T = −W sin γ, solved exactly for γ. Range: from the stall to the setting's maximum speed,
    /// thrust that gives a path. Source: [anderson-itf].
    /// </remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <param name="thrust">T along the path; none where none is given, negative for a propeller that brakes.</param>
    /// <returns>The flight.</returns>
    /// <exception cref="RefusedInputException">Stalled, faster than the setting allows, or no steady path.</exception>
    /// <example><code>flapsUp.Glide(Airspeed.FromCalibrated(Speed.FromKnots(70), Air.StandardSeaLevel)).GlideAngle.Degrees // 5.2</code></example>
    public SteadyFlight Glide(Airspeed airspeed, Force? thrust = null)
    {
        NotTooFast(airspeed);
        double along = thrust is { } given ? Require.In(given, ForceUnit.Newton, "thrust", nameof(thrust)) : 0;
        double sine = GlideLaws.SinPathAngle(
            airspeed.SiDynamicPressure, _area, ZeroLiftDrag, InducedFactor, _weight, along);
        if (!(Math.Abs(sine) < 1))
            throw Require.Refused(
                nameof(thrust), "thrust", thrust ?? Force.Zero, "less than weight and drag together, and more than their negative",
                "No steady path has this thrust at this speed.");
        return Flight(airspeed, Math.Asin(sine), along);
    }

    /// <summary>Steady flight at a speed on a wanted path: the thrust and power that it takes.</summary>
    /// <remarks>
    /// Formula: T = D + W sin γ with L = W cos γ. Range: |γ| to 30°, from the stall to the setting's maximum speed.
    /// Source: [anderson-itf].
    /// </remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <param name="pathAngle">γ through the air, positive up.</param>
    /// <returns>The flight; its thrust is negative where the path is steeper than the glide.</returns>
    /// <exception cref="RefusedInputException">Stalled, too fast, or too steep.</exception>
    /// <example><code>flapsUp.OnPath(Airspeed.FromCalibrated(Speed.FromKnots(70), Air.StandardSeaLevel), Angle.FromDegrees(-3)).Thrust.Newtons // 408</code></example>
    public SteadyFlight OnPath(Airspeed airspeed, Angle pathAngle)
    {
        NotTooFast(airspeed);
        Require.Between(pathAngle, -SteepestPath, SteepestPath, "flight-path angle", "Light aeroplanes neither climb nor approach steeper.");
        double path = pathAngle.Radians;
        double thrust = GlideLaws.Thrust(airspeed.SiDynamicPressure, _area, ZeroLiftDrag, InducedFactor, _weight, path);
        return Flight(airspeed, path, thrust);
    }

    /// <summary>Steady flight at a speed down a wanted path over the ground, in a steady wind.</summary>
    /// <remarks>
    /// Formula: sink s = k[√(V²(1 + k²) − w²k²) − w]/(1 + k²), k = tan of the angle over the ground; sin γ = −s/V.
    /// Range: descents of 0° to 30° over the ground, ground speed above zero. Source: [anderson-itf] for the triangle of speeds.
    /// </remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <param name="descentAngle">Angle of the path over the ground, positive down.</param>
    /// <param name="headwind">w; a tailwind is negative.</param>
    /// <returns>The flight.</returns>
    /// <exception cref="RefusedInputException">Stalled, too fast, too steep, or no way over the ground.</exception>
    /// <example><code>flapsUp.OnPathOverGround(Airspeed.FromCalibrated(Speed.FromKnots(70), Air.StandardSeaLevel), Angle.FromDegrees(3), Speed.FromKnots(10)).GlideAngle.Degrees // 2.57</code></example>
    public SteadyFlight OnPathOverGround(Airspeed airspeed, Angle descentAngle, Speed headwind)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        Require.Between(descentAngle, Angle.Zero, SteepestPath, "descent angle", "An approach path leads down.");
        double wind = Require.Headwind(headwind);
        if (!(wind < airspeed.SiTrue))
            throw Require.Refused(
                nameof(headwind), "headwind", headwind, $"less than the airspeed, {Require.Text(airspeed.True, headwind)}",
                "The aeroplane would make no way over the ground.");
        double sink = WindLaws.SinkOnPath(airspeed.SiTrue, descentAngle.Radians, wind);
        Angle path = Angle.FromRadians(-Math.Asin(sink / airspeed.SiTrue));
        if (path < -SteepestPath)
            throw Require.Refused(
                nameof(descentAngle), "descent angle", descentAngle, "a flatter one in this wind",
                $"The path through the air would be steeper than {Require.Text(SteepestPath)}.");
        return OnPath(airspeed, path);
    }

    /// <summary>The flattest glide through the air.</summary>
    /// <remarks>
    /// Formula: C_L = √(C_D0/K), tan γ = −2√(K C_D0). Range: the stall or the setting's maximum speed, where that comes first. Source: [anderson-itf].
    /// </remarks>
    /// <param name="air">The air.</param>
    /// <returns>The glide.</returns>
    /// <exception cref="RefusedInputException">
    /// The maximum speed is no subsonic speed in this air; an optimum past a limit is the limit, and says so.
    /// </exception>
    /// <example><code>flapsUp.BestGlide(Air.StandardSeaLevel).LiftToDrag // 11.1</code></example>
    public SteadyFlight BestGlide(Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return GlideAtLift(DragLaws.BestGlideLift(ZeroLiftDrag, InducedFactor), air);
    }

    /// <summary>The glide that loses height slowest.</summary>
    /// <remarks>
    /// Formula: the smaller root C_D of K C_D² − C_D/2 + 2C_D0 = 0, exact in γ; for shallow glides C_L = √(3C_D0/K).
    /// Range: the stall or the setting's maximum speed, where that comes first. Source: [anderson-itf] for the shallow form.
    /// </remarks>
    /// <param name="air">The air.</param>
    /// <returns>The glide.</returns>
    /// <exception cref="RefusedInputException">
    /// The maximum speed is no subsonic speed in this air; an optimum past a limit is the limit, and says so.
    /// </exception>
    /// <example><code>flapsUp.MinimumSink(Air.StandardSeaLevel).SinkRate.FeetPerMinute // 579</code></example>
    public SteadyFlight MinimumSink(Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return GlideAtLift(GlideLaws.MinimumSinkLift(ZeroLiftDrag, InducedFactor) ?? double.PositiveInfinity, air);
    }

    /// <summary>The flattest glide over the ground in a steady wind.</summary>
    /// <remarks>
    /// Formula: greatest (V cos γ − w)/(−V sin γ), where its slope against C_L is zero, found by Brent's method. Range: from the stall to the setting's maximum
    /// speed; a headwind that the aeroplane can make way against. Source: [afh] for the rule, [anderson-itf] for the glide.
    /// </remarks>
    /// <param name="air">The air.</param>
    /// <param name="headwind">w; a tailwind is negative.</param>
    /// <returns>The glide.</returns>
    /// <exception cref="RefusedInputException">No speed makes way over the ground.</exception>
    /// <example><code>flapsUp.BestGlideOverGround(Air.StandardSeaLevel, Speed.FromKnots(20)).Airspeed.Calibrated.Knots // 79</code></example>
    public SteadyFlight BestGlideOverGround(Air air, Speed headwind)
    {
        ArgumentNullException.ThrowIfNull(air);
        double scaledWind = Require.Headwind(headwind) / GlideLaws.Speed(1, 0, _weight, air.SiDensity, _area);
        double Slope(double lift) => GlideLaws.WayPerHeightSlope(lift, ZeroLiftDrag, InducedFactor, scaledWind);

        double least = LeastLift(air);
        double best = Slope(least) <= 0 ? 0
            : Slope(MaximumLift) >= 0 ? double.PositiveInfinity
            : Brent.FindRoot(Slope, least, MaximumLift, 1e-12, 100);
        SteadyFlight glide = GlideAtLift(best, air);
        glide.GroundSpeed(headwind);
        return glide;
    }

    /// <summary>The speed of least drag in level flight, below which speed is no longer stable on a path.</summary>
    /// <remarks>Formula: C_L = √(C_D0/K) with L = W. Range: from the stall to the setting's maximum speed. Source: [anderson-itf].</remarks>
    /// <param name="air">The air.</param>
    /// <returns>The airspeed, or no answer where the stall or the setting's maximum speed comes first.</returns>
    /// <exception cref="RefusedInputException">The maximum speed is no subsonic speed in this air.</exception>
    /// <example><code>flapsUp.MinimumDragSpeed(Air.StandardSeaLevel)!.Calibrated.Knots // 72.7</code></example>
    public Airspeed? MinimumDragSpeed(Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return LevelAtLift(DragLaws.BestGlideLift(ZeroLiftDrag, InducedFactor), air);
    }

    /// <summary>The speed of least power in level flight.</summary>
    /// <remarks>Formula: C_L = √(3C_D0/K) with L = W. Range: from the stall to the setting's maximum speed. Source: [anderson-itf].</remarks>
    /// <param name="air">The air.</param>
    /// <returns>The airspeed, or no answer where the stall or the setting's maximum speed comes first.</returns>
    /// <exception cref="RefusedInputException">The maximum speed is no subsonic speed in this air.</exception>
    /// <example><code>flapsUp.MinimumPowerSpeed(Air.StandardSeaLevel)!.Calibrated.Knots // 55.2</code></example>
    public Airspeed? MinimumPowerSpeed(Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return LevelAtLift(DragLaws.MinimumPowerLift(ZeroLiftDrag, InducedFactor), air);
    }

    /// <summary>The highest airspeed that the flap setting allows, V_FE or V_NE.</summary>
    /// <remarks>Formula: the file's indicated speed through the calibration table. Range: subsonic. Source: [common-practice].</remarks>
    /// <param name="air">The air.</param>
    /// <returns>The airspeed.</returns>
    /// <exception cref="RefusedInputException">The maximum speed is no subsonic speed in this air.</exception>
    /// <example><code>flapsUp.Indicated(flapsUp.MaximumSpeed(Air.StandardSeaLevel)).Knots // 150.0</code></example>
    public Airspeed MaximumSpeed(Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return AtIndicated(Flaps.MaximumSpeed, air);
    }

    private Airspeed? LevelAtLift(double lift, Air air)
    {
        if (lift > MaximumLift) return null;
        var level = new Airspeed(StallLaws.Speed(_weight, 1, air.SiDensity, _area, lift), air);
        return level.SiTrue > MaximumSpeed(air).SiTrue ? null : level;
    }

    /// <summary>C_L of the glide at the setting's maximum speed; none where that is faster than a dive can be.</summary>
    private double LeastLift(Air air)
    {
        double pressure = MaximumSpeed(air).SiDynamicPressure;
        double sine = GlideLaws.SinPathAngle(pressure, _area, ZeroLiftDrag, InducedFactor, _weight, thrust: 0);
        return sine <= -1 ? 0 : Math.Min(MaximumLift, GlideLaws.LiftCoefficient(pressure, _area, _weight, Math.Asin(sine)));
    }

    private SteadyFlight GlideAtLift(double wanted, Air air)
    {
        double least = LeastLift(air);
        double lift = Math.Clamp(wanted, least, MaximumLift);
        double drag = DragLaws.Coefficient(ZeroLiftDrag, InducedFactor, lift);
        double speed = GlideLaws.Speed(lift, drag, _weight, air.SiDensity, _area);
        return new SteadyFlight(
            this, new Airspeed(speed, air), -Math.Atan2(drag, lift), 0, lift, drag,
            limitedByStall: wanted > MaximumLift, limitedByMaximumSpeed: wanted < least);
    }

    private SteadyFlight Flight(Airspeed airspeed, double path, double thrust)
    {
        double lift = GlideLaws.LiftCoefficient(airspeed.SiDynamicPressure, _area, _weight, path);
        if (!(lift <= MaximumLift * (1 + LiftRounding)))
            throw Require.Refused(
                nameof(airspeed), "airspeed", Require.Text(airspeed.Calibrated) + " CAS",
                $"from the stall, {Require.Text(StallSpeed(airspeed.Air).Calibrated)} CAS", $"{this} has stalled below it.");
        lift = Math.Min(lift, MaximumLift);
        double drag = DragLaws.Coefficient(ZeroLiftDrag, InducedFactor, lift);
        return new SteadyFlight(this, airspeed, path, thrust, lift, drag);
    }

    private void NotTooFast(Airspeed airspeed)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        Airspeed highest = MaximumSpeed(airspeed.Air);
        if (airspeed.SiTrue > highest.SiTrue * (1 + LiftRounding))
            throw Require.Refused(
                nameof(airspeed), "airspeed", Require.Text(airspeed.Calibrated) + " CAS",
                $"up to {Require.Text(highest.Calibrated)} CAS ({Require.Text(Flaps.MaximumSpeed)} indicated)",
                $"It is the highest speed of {Aeroplane.Name} with flaps {Flaps}.");
    }
}
