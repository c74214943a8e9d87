namespace FlapAero;

/// <summary>
/// Induced drag of a wing with its twist and flap, C_Di = k₀ + k₁C_L + k₂C_L². Immutable. It is the lifting line's own, not
/// a fit: the loading is one part in proportion to C_L and one that stays.
/// </summary>
public sealed class InducedDragPolar
{
    internal InducedDragPolar(double constant, double linear, double quadratic, double aspectRatio) =>
        (Constant, Linear, Quadratic, AspectRatio) = (constant, linear, quadratic, aspectRatio);

    /// <summary>k₀: what twist and flap cost at no lift.</summary>
    public double Constant { get; }

    /// <summary>k₁.</summary>
    public double Linear { get; }

    /// <summary>k₂ = (1 + δ)/πA, of the untwisted planform with flaps up.</summary>
    public double Quadratic { get; }

    /// <summary>A.</summary>
    public double AspectRatio { get; }

    /// <summary>Glauert's δ of the planform: how much more than the elliptic wing's least.</summary>
    public double PlanformFactor => Quadratic * Math.PI * AspectRatio - 1;

    /// <summary>Induced drag at a lift coefficient.</summary>
    /// <remarks>Formula: k₀ + k₁C_L + k₂C_L². Range: C_L to ±4. Source: [glauert].</remarks>
    /// <param name="liftCoefficient">C_L.</param>
    /// <returns>C_Di.</returns>
    /// <exception cref="RefusedInputException">No wing has so much lift.</exception>
    /// <example><code>elliptic.InducedDrag.At(1) // 0.0375</code></example>
    public double At(double liftCoefficient) =>
        Constant + (Linear + Quadratic * InRange(liftCoefficient)) * liftCoefficient;

    /// <summary>Span efficiency at one lift coefficient.</summary>
    /// <remarks>Formula: e = C_L²/(πA C_Di). Range: |C_L| from 0.05 to 4. Source: [glauert].</remarks>
    /// <param name="liftCoefficient">C_L.</param>
    /// <returns>e; 1 is the elliptic wing's.</returns>
    /// <exception cref="RefusedInputException">Too near to no lift, where twist and flap are all the induced
    /// drag.</exception>
    /// <example><code>elliptic.InducedDrag.SpanEfficiency(1) // 1.000</code></example>
    public double SpanEfficiency(double liftCoefficient)
    {
        Require.Between(
            Math.Abs(liftCoefficient), 0.05, 4, "lift coefficient", "Near no lift the ratio says nothing.", nameof(liftCoefficient));
        return liftCoefficient * liftCoefficient / (Math.PI * AspectRatio * At(liftCoefficient));
    }

    /// <summary>
    /// The parabola of the model's polar, C_D0 + C_L²/(πAe), that has this induced drag at two lift coefficients: how e(δ) is
    /// taken from the lifting line. What twist and flap cost at any lift goes to C_D0 as the offset, so this e may lie a little
    /// above 1. A polar that has no place for the offset takes <see cref="SpanEfficiency"/> at its approach's C_L instead.
    /// </summary>
    /// <remarks>
    /// Formula: 1/(πAe) = (C_Di2 − C_Di1)/(C_L2² − C_L1²), offset = C_Di1 − C_L1²/(πAe). Range: 0.1 ≤ C_L1, C_L1 + 0.1 ≤
    /// C_L2 ≤ 4. Source: [glauert] for the drag; the fit is this model's own. Viscous drag that grows with lift is not in
    /// it: an aeroplane's e is lower.
    /// </remarks>
    /// <param name="lower">C_L1, for example C_Lmax/1.7² at 1.7 V_S.</param>
    /// <param name="higher">C_L2, for example C_Lmax/1.1² at 1.1 V_S.</param>
    /// <returns>e and the offset.</returns>
    /// <exception cref="RefusedInputException">
    /// The two are no two points, or no parabola with an e above zero goes
    /// through them.
    /// </exception>
    /// <example><code>elliptic.InducedDrag.Parabola(0.5, 1.2).Oswald // 1.000</code></example>
    public (double Oswald, double Offset) Parabola(double lower, double higher)
    {
        Require.Between(lower, 0.1, 3.9, "lower lift coefficient", "Near no lift the parabola has no slope.");
        Require.Between(higher, lower + 0.1, 4, "higher lift coefficient", "Two points that lie together fix no parabola.");
        double slope = (At(higher) - At(lower)) / (higher * higher - lower * lower);
        if (!(slope > 0))
            throw Require.Refused(
                nameof(higher), "higher lift coefficient", FormattableString.Invariant($"{higher:g5}"),
                "values between which the induced drag rises",
                "Twist or flap outweigh the lift there: no parabola with an e above zero fits.");
        return (1 / (Math.PI * AspectRatio * slope), At(lower) - slope * lower * lower);
    }

    private static double InRange(double liftCoefficient) =>
        Require.Between(liftCoefficient, -4, 4, "lift coefficient", "No wing of this model has more.");
}
