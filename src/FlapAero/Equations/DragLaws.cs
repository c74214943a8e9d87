namespace FlapAero.Equations;

/// <summary>The parabolic polar and what the ground does to it. Sources: [anderson-itf], [torenbeek].</summary>
internal static class DragLaws
{
    /// <summary>K = 1/(π e A).</summary>
    public static double InducedFactor(double oswald, double aspectRatio) => 1 / (Math.PI * oswald * aspectRatio);

    /// <summary>C_D = C_D0 + k_g K C_L².</summary>
    public static double Coefficient(double zeroLift, double inducedFactor, double lift, double groundEffect = 1) =>
        zeroLift + groundEffect * inducedFactor * lift * lift;

    /// <summary>k_g(z) = 1 − exp(−2.48 (2z/b)^0.768): the share of the induced drag that remains at height z of the wing.</summary>
    public static double GroundEffect(double wingHeight, double span) =>
        1 - Math.Exp(-2.48 * Math.Pow(2 * wingHeight / span, 0.768));

    /// <summary>C_L of the largest L/D, √(C_D0/K).</summary>
    public static double BestGlideLift(double zeroLift, double inducedFactor) => Math.Sqrt(zeroLift / inducedFactor);

    /// <summary>Largest L/D, 1/(2 √(K C_D0)).</summary>
    public static double MaximumLiftToDrag(double zeroLift, double inducedFactor) =>
        1 / (2 * Math.Sqrt(inducedFactor * zeroLift));

    /// <summary>C_L of the least power in level flight, √(3 C_D0/K).</summary>
    public static double MinimumPowerLift(double zeroLift, double inducedFactor) =>
        Math.Sqrt(3 * zeroLift / inducedFactor);

    /// <summary>ΔC_D = |C_Yβ| β sin β: the part along the path of the side force in a sideslip. Source: [side-force].</summary>
    public static double Slip(double sideForcePerRadian, double sideslip) => sideForcePerRadian * sideslip * Math.Sin(sideslip);
}
