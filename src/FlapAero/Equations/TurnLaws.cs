using MathNet.Numerics.Integration;

namespace FlapAero.Equations;

/// <summary>
/// Steady turns at constant bank φ and airspeed V, level or descending: L cos φ = W cos γ, D − T = −W sin γ. SI doubles,
/// radians; headings turn to the right, x is along heading 0 and y to the right of it. φ = 0 is straight flight, and gives
/// what <see cref="GlideLaws"/> gives. Source: [phak]; the forces as in [anderson-itf].
/// </summary>
internal static class TurnLaws
{
    // Smooth over less than one circle: this order leaves rounding only, unless the wind is as fast as the aeroplane.
    private const int DistanceOrder = 64;

    /// <summary>ψ̇ = g tan φ/V.</summary>
    public static double Rate(double speed, double bank) => StandardConstants.Gravity * Math.Tan(bank) / speed;

    /// <summary>R = V² cos γ/(g tan φ), through the air.</summary>
    public static double Radius(double speed, double pathAngle, double bank) =>
        speed * Math.Cos(pathAngle) / Rate(speed, bank);

    /// <summary>
    /// sin γ at a speed, thrust and bank. n = cos γ/cos φ in the polar is straight flight with K/cos² φ in the place of K.
    /// </summary>
    public static double SinPathAngle(
        double dynamicPressure, double area, double zeroLiftDrag, double inducedFactor, double weight, double thrust, double bank) =>
        GlideLaws.SinPathAngle(dynamicPressure, area, zeroLiftDrag, Banked(inducedFactor, bank), weight, thrust);

    /// <summary>T = D + W sin γ with L = W cos γ/cos φ.</summary>
    public static double Thrust(
        double dynamicPressure, double area, double zeroLiftDrag, double inducedFactor, double weight, double pathAngle, double bank) =>
        GlideLaws.Thrust(dynamicPressure, area, zeroLiftDrag, Banked(inducedFactor, bank), weight, pathAngle);

    /// <summary>C_L = n W/(q S), n = cos γ/cos φ.</summary>
    public static double LiftCoefficient(double dynamicPressure, double area, double weight, double pathAngle, double bank) =>
        StallLaws.LoadFactor(bank, pathAngle) * weight / (dynamicPressure * area);

    /// <summary>Δx = R (sin ψ₂ − sin ψ₁) + w_x t, Δy = R (cos ψ₁ − cos ψ₂) + w_y t: the arc through the air, and the drift.</summary>
    public static (double X, double Y) Displacement(
        double radius, double heading, double rate, double time, double windX, double windY)
    {
        // Sines of half the turn: no cancellation in a short one.
        double half = rate * time / 2;
        double chord = 2 * radius * Math.Sin(half);
        return (
            chord * Math.Cos(heading + half) + windX * time,
            chord * Math.Sin(heading + half) + windY * time);
    }

    /// <summary>Way over the ground, ∫ |v + w| dt: in wind the arc is no circle.</summary>
    public static double Distance(
        double horizontalSpeed, double heading, double rate, double time, double windX, double windY) =>
        GaussLegendreRule.Integrate(
            at =>
            {
                double x = horizontalSpeed * Math.Cos(heading + rate * at) + windX;
                double y = horizontalSpeed * Math.Sin(heading + rate * at) + windY;
                return Math.Sqrt(x * x + y * y);
            },
            0, time, DistanceOrder);

    private static double Banked(double inducedFactor, double bank)
    {
        double cosine = Math.Cos(bank);
        return inducedFactor / (cosine * cosine);
    }
}
