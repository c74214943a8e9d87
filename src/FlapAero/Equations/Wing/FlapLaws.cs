using MathNet.Numerics.Interpolation;

namespace FlapAero.Equations;

/// <summary>
/// What a trailing-edge flap does to its section and to the wing. Sources: [houghton-carpenter] for the thin aerofoil,
/// [mccormick] for the viscous efficiency, [raymer] for the maximum lift.
/// </summary>
internal static class FlapLaws
{
    private const double CorrelationChord = 0.25;

    /// <summary>
    /// τ = (π − φ + sin φ)/π, cos φ = 2F − 1: how far a degree of flap goes as angle of attack, on a thin aerofoil.
    /// </summary>
    public static double Effectiveness(double chordShare)
    {
        double hinge = Math.Acos(2 * chordShare - 1);
        return (Math.PI - hinge + Math.Sin(hinge)) / Math.PI;
    }

    /// <summary>Thin aerofoil with a flap: c_l = 2πα + 2(π − φ + sin φ)δ.</summary>
    public static double ThinAerofoilLift(double angleOfAttack, double chordShare, double deflection) =>
        2 * Math.PI * (angleOfAttack + Effectiveness(chordShare) * deflection);

    /// <summary>
    /// η(δ): what boundary layer and separation leave of the thin aerofoil's effectiveness. The tables are in degrees.
    /// </summary>
    public static double ViscousEfficiency(ViscousTable table, double deflection) =>
        table.Curve.Interpolate(deflection * 180 / Math.PI);

    /// <summary>Δα₀ = −τ η δ of the flapped section.</summary>
    public static double ZeroLiftAngleChange(ViscousTable table, double chordShare, double deflection) =>
        -Effectiveness(chordShare) * ViscousEfficiency(table, deflection) * deflection;

    /// <summary>
    /// Δc_lmax of the flapped section: the correlation's value for a quarter-chord flap at its reference deflection, in
    /// proportion to how far this flap turns the zero-lift line. The proportion is this model's own; it ends at a quarter of
    /// the chord, as [naca-flaps] found a wider flap only slightly superior.
    /// </summary>
    public static double SectionMaximumLiftIncrement(ViscousTable table, double chordShare, double deflection) =>
        table.MaximumLift
        * ZeroLiftAngleChange(table, Math.Min(chordShare, CorrelationChord), deflection)
        / ZeroLiftAngleChange(table, CorrelationChord, table.ReferenceDegrees * Math.PI / 180);

    /// <summary>ΔC_Lmax = 0.9 Δc_lmax (S_flapped/S) of an unswept hinge line.</summary>
    public static double MaximumLiftIncrement(double sectionIncrement, double flappedAreaShare) =>
        0.9 * sectionIncrement * flappedAreaShare;

    /// <summary>
    /// A kind of flap: its efficiency by deflection, and its maximum lift at the deflection that the correlation speaks of.
    /// </summary>
    internal sealed class ViscousTable(double maximumLift, double referenceDegrees, double[] degrees, double[] efficiency)
    {
        public double MaximumLift { get; } = maximumLift;

        public double ReferenceDegrees { get; } = referenceDegrees;

        public double LargestDegrees { get; } = degrees[^1];

        // Piecewise cubic through the values, without a maximum between them that they do not have.
        public CubicSpline Curve { get; } = CubicSpline.InterpolatePchipSorted(degrees, efficiency);
    }

    /// <summary>Plain flap.</summary>
    public static ViscousTable Plain { get; } =
        new(0.9, 60, [0, 10, 20, 30, 40, 50, 60], [0.85, 0.80, 0.68, 0.57, 0.50, 0.44, 0.40]);

    /// <summary>Flap with a slot.</summary>
    public static ViscousTable Slotted { get; } =
        new(1.3, 40, [0, 10, 20, 30, 40], [0.90, 0.87, 0.83, 0.76, 0.68]);
}
