using FlapAero.Equations;
using MathNet.Numerics.Integration;

namespace FlapAero.Published.Tests.Landings;

/// <summary>
/// What slows an aeroplane on the runway at one airspeed, as shares of its weight: a second writing of the roll's balance, in
/// calm air on a level runway with the engine idling, for asking who does the work.
/// </summary>
internal readonly record struct RollForces(double Drag, double Friction, double Propeller)
{
    // The integrands are smooth; the order is far above what they need.
    private const int Order = 32;

    /// <summary>Drag, friction and the idling propeller, which brakes where it is positive and pulls where it is negative.</summary>
    public double All => Drag + Friction + Propeller;

    public static RollForces NoseHigh(WholeLanding landing, double speed) =>
        At(landing, speed, landing.Input.NoseHighLift, landing.Input.RollingFriction);

    public static RollForces Level(WholeLanding landing, double speed, double friction) =>
        At(landing, speed, landing.Input.LevelLift, friction);

    /// <summary>The roll as the canonical landing has it: nose held off above its speed, braking below.</summary>
    public static RollForces Canonical(WholeLanding landing, double speed) =>
        speed > landing.Input.NoseLowerSpeedFraction * landing.TouchdownSpeed
            ? NoseHigh(landing, speed)
            : Level(landing, speed, landing.Input.BrakingFriction);

    /// <summary>Level flight close above the runway with the throttle closed: no wheels, and the lift of the weight.</summary>
    public static RollForces Airborne(WholeLanding landing, double speed)
    {
        LandingInput input = landing.Input;
        double lift = landing.Weight / (AirspeedLaws.DynamicPressure(input.Density, speed) * input.WingArea);
        return At(landing, speed, lift, 0);
    }

    /// <summary>Distance from a faster to a slower speed, ∫ V dV/a.</summary>
    public static double Distance(double fast, double slow, Func<double, RollForces> at) =>
        GaussLegendreRule.Integrate(speed => speed / (StandardConstants.Gravity * at(speed).All), slow, fast, Order);

    /// <summary>Share of the energy between two speeds that the drag takes.</summary>
    public static double DragShare(double fast, double slow, Func<double, RollForces> at) =>
        GaussLegendreRule.Integrate(speed => speed * at(speed).Drag / at(speed).All, slow, fast, Order)
        / ((fast * fast - slow * slow) / 2);

    private static RollForces At(WholeLanding landing, double speed, double lift, double friction)
    {
        LandingInput input = landing.Input;
        double pressureForce = AirspeedLaws.DynamicPressure(input.Density, speed) * input.WingArea / landing.Weight;
        double induced = DragLaws.InducedFactor(input.Oswald, input.Span * input.Span / input.WingArea);
        double drag = DragLaws.Coefficient(input.ZeroLiftDrag, induced, lift, DragLaws.GroundEffect(input.WingHeight, input.Span));
        double thrust = input.IdleThrust + speed * (input.IdleThrustSlope + speed * input.IdleThrustCurvature);
        return new(pressureForce * drag, friction * Math.Max(0, 1 - pressureForce * lift), -thrust / landing.Weight);
    }
}
