namespace FlapAero.Equations;

/// <summary>
/// The lifting line's results in the form of handbooks: what planform adds to the elliptic wing's. Source: [glauert].
/// </summary>
internal static class FiniteWingLaws
{
    /// <summary>a = a₀/(1 + (a₀/πA)(1 + τ)).</summary>
    public static double Slope(double sectionSlope, double aspectRatio, double slopeFactor) =>
        sectionSlope / (1 + sectionSlope / (Math.PI * aspectRatio) * (1 + slopeFactor));

    /// <summary>a₀ of a wing's a: the inverse of <see cref="Slope"/>.</summary>
    public static double SectionSlope(double slope, double aspectRatio, double slopeFactor) =>
        slope / (1 - slope / (Math.PI * aspectRatio) * (1 + slopeFactor));

    /// <summary>τ = (πA/a₀)(a₀/a − 1) − 1, of a slope that is known.</summary>
    public static double SlopeFactor(double slope, double sectionSlope, double aspectRatio) =>
        Math.PI * aspectRatio * (1 / slope - 1 / sectionSlope) - 1;

    /// <summary>C_Di = C_L²(1 + δ)/πA.</summary>
    public static double InducedDrag(double lift, double aspectRatio, double dragFactor) =>
        lift * lift * (1 + dragFactor) / (Math.PI * aspectRatio);
}
