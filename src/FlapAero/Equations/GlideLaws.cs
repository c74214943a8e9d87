namespace FlapAero.Equations;

/// <summary>
/// Steady straight flight in uniform air, exact in the path angle: L = W cos γ, D − T = −W sin γ.
/// SI doubles, radians, γ positive up. Source: [anderson-itf].
/// </summary>
internal static class GlideLaws
{
    /// <summary>V at which this C_L and C_D carry the weight without thrust: q S √(C_L² + C_D²) = W.</summary>
    public static double Speed(double lift, double drag, double weight, double density, double area) =>
        Math.Sqrt(2 * weight / (density * area * Math.Sqrt(lift * lift + drag * drag)));

    /// <summary>
    /// sin γ at a speed and thrust. With s = −sin γ, the polar in W s = D − T gives k s² + s − (d + k) = 0,
    /// where d = (q S C_D0 − T)/W and k = K W/(q S).
    /// </summary>
    public static double SinPathAngle(
        double dynamicPressure, double area, double zeroLiftDrag, double inducedFactor, double weight, double thrust)
    {
        double pressureForce = dynamicPressure * area;
        double parasite = (pressureForce * zeroLiftDrag - thrust) / weight;
        double induced = inducedFactor * weight / pressureForce;
        // The form without cancellation: k is small at high speed.
        return -2 * (parasite + induced) / (1 + Math.Sqrt(1 + 4 * induced * (parasite + induced)));
    }

    /// <summary>
    /// C_L of the least sink without thrust. d/dC_L of C_D/(C_L² + C_D²)^{3/4} = 0 is K C_D² − C_D/2 + 2 C_D0 = 0;
    /// for shallow glides C_D → 4 C_D0, the textbook's C_L = √(3 C_D0/K). No answer where 32 K C_D0 &gt; 1 (L/D below 2.8).
    /// </summary>
    public static double? MinimumSinkLift(double zeroLiftDrag, double inducedFactor)
    {
        double discriminant = 1 - 32 * inducedFactor * zeroLiftDrag;
        if (discriminant < 0) return null;
        double drag = 8 * zeroLiftDrag / (1 + Math.Sqrt(discriminant));
        return Math.Sqrt((drag - zeroLiftDrag) / inducedFactor);
    }

    /// <summary>
    /// A positive multiple of d/dC_L of the way over the ground per height lost. With R = √(C_L² + C_D²) the glide's speed is
    /// c/√R, c = √(2W/ρS), and that way per height is (C_L − (w/c) R^{3/2})/C_D.
    /// </summary>
    public static double WayPerHeightSlope(double lift, double zeroLiftDrag, double inducedFactor, double scaledWind)
    {
        double drag = DragLaws.Coefficient(zeroLiftDrag, inducedFactor, lift);
        double dragSlope = 2 * inducedFactor * lift;
        double root = Math.Sqrt(Math.Sqrt(lift * lift + drag * drag));
        double way = lift - scaledWind * root * root * root;
        double waySlope = 1 - 1.5 * scaledWind * (lift + drag * dragSlope) / root;
        return waySlope * drag - way * dragSlope;
    }

    /// <summary>Thrust that holds a path: T = D + W sin γ, with L = W cos γ.</summary>
    public static double Thrust(double dynamicPressure, double area, double zeroLiftDrag, double inducedFactor, double weight, double pathAngle)
    {
        double lift = LiftCoefficient(dynamicPressure, area, weight, pathAngle);
        return dynamicPressure * area * DragLaws.Coefficient(zeroLiftDrag, inducedFactor, lift) + weight * Math.Sin(pathAngle);
    }

    /// <summary>C_L = W cos γ/(q S).</summary>
    public static double LiftCoefficient(double dynamicPressure, double area, double weight, double pathAngle) =>
        weight * Math.Cos(pathAngle) / (dynamicPressure * area);
}
