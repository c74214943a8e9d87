using FlapAero.Equations;

namespace FlapAero.Published.Tests.Landings;

/// <summary>The simplifications with which textbooks work their landings by hand, in whatever consistent units.</summary>
internal static class WorkedFormulas
{
    /// <summary>R of a pull-up at 1.2 g: V²/(0.2 g).</summary>
    public static double FlareRadius(double speed, double gravity) => speed * speed / (0.2 * gravity);

    /// <summary>Height at which an arc that ends level meets the path: R (1 − cos γ).</summary>
    public static double FlareHeight(double radius, double path) => radius * (1 - Math.Cos(path));

    /// <summary>Way along the ground on that arc: R sin γ.</summary>
    public static double FlareDistance(double radius, double path) => radius * Math.Sin(path);

    /// <summary>Way along the ground down a straight path to the arc.</summary>
    public static double ApproachDistance(double screen, double flareHeight, double path) => (screen - flareHeight) / Math.Tan(path);

    /// <summary>
    /// V²/(2g) over the mean slowing in g, taken as constant at its value at 0.7 of the speed. With V = 1.3 V_S this is the
    /// textbook's 1.69 W²/(g ρ S C_Lmax [D + μ(W − L)]).
    /// </summary>
    public static double GroundRoll(double speed, double weight, double drag, double friction, double gravity) =>
        speed * speed / (2 * gravity) * weight / (drag + friction * weight);

    /// <summary>1.44 W²/(g ρ S C_Lmax [T − D − μ(W − L)]), the brackets at 0.7 of the lift-off speed 1.2 V_S.</summary>
    public static double LiftOffDistance(
        double weight, double area, double aspectRatio, double maximumLift, double rollingLift, double zeroLiftDrag, double oswald,
        double groundEffect, double thrust, double friction, double density, double gravity)
    {
        double pressure = AirspeedLaws.DynamicPressure(density, 0.7 * 1.2 * StallLaws.Speed(weight, 1, density, area, maximumLift));
        double drag = pressure * area * DragLaws.Coefficient(
            zeroLiftDrag, DragLaws.InducedFactor(oswald, aspectRatio), rollingLift, groundEffect);
        double lift = pressure * area * rollingLift;
        return 1.44 * weight * weight / (gravity * density * area * maximumLift * (thrust - drag - friction * (weight - lift)));
    }

    /// <summary>η P/W less the least sink, √((2/ρ) √(K/3C_D0) W/S) · 2/√3/(L/D)_max, the factor unrounded.</summary>
    public static double RateOfClimb(double powerOverWeight, double density, double wingLoading, DragPolar polar) =>
        powerOverWeight - Math.Sqrt(2 / density * Math.Sqrt(polar.InducedFactor / (3 * polar.ZeroLiftDragCoefficient)) * wingLoading)
            * 2 / Math.Sqrt(3) / polar.MaximumLiftToDrag;
}
