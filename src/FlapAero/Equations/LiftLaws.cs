namespace FlapAero.Equations;

/// <summary>The lift curve: a line that a parabola rounds off into the stall. Angles in radians. Sources: [anderson-fund], [helmbold].</summary>
internal static class LiftLaws
{
    /// <summary>Elliptic wing, Prandtl: a = a₀/(1 + a₀/πA).</summary>
    public static double EllipticSlope(double sectionSlope, double aspectRatio) =>
        sectionSlope / (1 + sectionSlope / (Math.PI * aspectRatio));

    /// <summary>Helmbold: a = a₀/(√(1 + (a₀/πA)²) + a₀/πA).</summary>
    public static double HelmboldSlope(double sectionSlope, double aspectRatio)
    {
        double ratio = sectionSlope / (Math.PI * aspectRatio);
        return sectionSlope / (Math.Sqrt(1 + ratio * ratio) + ratio);
    }

    /// <summary>α_s = α₀ + C_Lmax/a + Δα_r/2.</summary>
    public static double StallAngle(double slope, double zeroLiftAngle, double maximum, double rounding) =>
        zeroLiftAngle + maximum / slope + rounding / 2;

    /// <summary>C_L(α), the line up to α_s − Δα_r and the parabola from there to α_s + Δα_r.</summary>
    public static double Coefficient(double angle, double slope, double zeroLiftAngle, double maximum, double rounding)
    {
        double beyondPeak = angle - StallAngle(slope, zeroLiftAngle, maximum, rounding);
        return beyondPeak <= -rounding
            ? slope * (angle - zeroLiftAngle)
            : maximum - slope * beyondPeak * beyondPeak / (2 * rounding);
    }

    /// <summary>α(C_L) below the stall: the inverse of <see cref="Coefficient"/> on its rising side.</summary>
    public static double Angle(double coefficient, double slope, double zeroLiftAngle, double maximum, double rounding) =>
        coefficient <= maximum - slope * rounding / 2
            ? zeroLiftAngle + coefficient / slope
            : StallAngle(slope, zeroLiftAngle, maximum, rounding)
                - Math.Sqrt(2 * rounding * (maximum - coefficient) / slope);

    /// <summary>θ = γ + α − i_w.</summary>
    public static double PitchAttitude(double pathAngle, double angleOfAttack, double incidence) =>
        pathAngle + angleOfAttack - incidence;
}
