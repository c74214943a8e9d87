using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// A trailing-edge flap as it is built, and what it is estimated to do. Immutable. Estimates for design and teaching:
/// measured flaps differ from them by a tenth to a fifth.
/// </summary>
public sealed class FlapGeometry
{
    private readonly FlapLaws.ViscousTable _table;

    /// <summary>A flap.</summary>
    /// <param name="kind">How it is made.</param>
    /// <param name="chordShare">Flap chord over wing chord, 0.1 to 0.4.</param>
    /// <param name="from">Inboard end as a share of the half span.</param>
    /// <param name="to">Outboard end as a share of the half span, at least 0.02 further out.</param>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    public FlapGeometry(FlapKind kind, double chordShare, double from, double to)
    {
        Kind = Enum.IsDefined(kind)
            ? kind
            : throw Require.Refused(
                nameof(kind), "kind of flap", kind.ToString(), "plain or slotted", "Others have no estimate here.");
        ChordShare = Require.Between(chordShare, 0.1, 0.4, "flap chord over wing chord", "The correlations were made inside it.");
        To = Require.Between(to, 0.02, 1, "outboard end of the flap", "It is a share of the half span.");
        From = Require.Between(
            from, 0, to - 0.02, "inboard end of the flap", "It is a share of the half span, inboard of the other end.");
        _table = kind == FlapKind.Plain ? FlapLaws.Plain : FlapLaws.Slotted;
    }

    /// <summary>How it is made.</summary>
    public FlapKind Kind { get; }

    /// <summary>Flap chord over wing chord.</summary>
    public double ChordShare { get; }

    /// <summary>Inboard end as a share of the half span.</summary>
    public double From { get; }

    /// <summary>Outboard end as a share of the half span.</summary>
    public double To { get; }

    /// <summary>The largest deflection that the estimate reaches.</summary>
    public Angle LargestDeflection => Angle.FromDegrees(_table.LargestDegrees);

    /// <summary>Effectiveness of this flap on a thin aerofoil.</summary>
    /// <remarks>
    /// Formula: τ = (π − φ + sin φ)/π, cos φ = 2c_f/c − 1. Range: c_f/c from 0.1 to 0.4. Source:
    /// [houghton-carpenter].
    /// </remarks>
    /// <returns>τ: degrees of angle of attack that a degree of flap is worth without a boundary layer.</returns>
    /// <exception cref="RefusedInputException">Never for a flap that was made.</exception>
    /// <example><code>new FlapGeometry(FlapKind.Slotted, 0.25, 0.1, 0.6).ThinAerofoilEffectiveness() // 0.6090</code></example>
    public double ThinAerofoilEffectiveness() => FlapLaws.Effectiveness(ChordShare);

    /// <summary>What the boundary layer leaves of the thin aerofoil's effectiveness.</summary>
    /// <remarks>
    /// Formula: a table of η(δ), piecewise cubic. Range: plain to 60°, slotted to 40°. Source: [mccormick], the curves as
    /// remembered, good to about ±15 %.
    /// </remarks>
    /// <param name="deflection">δ, positive down.</param>
    /// <returns>η.</returns>
    /// <exception cref="RefusedInputException">A deflection beyond the table.</exception>
    /// <example><code>new FlapGeometry(FlapKind.Slotted, 0.25, 0.1, 0.6).ViscousEfficiency(Angle.FromDegrees(20)) // 0.83</code></example>
    public double ViscousEfficiency(Angle deflection) => FlapLaws.ViscousEfficiency(_table, InRange(deflection));

    /// <summary>The flap down, as the lifting line sees it.</summary>
    /// <remarks>
    /// Formula: Δα₀ = −τ η δ; Δc_lmax = the correlation's 0.9 (plain, at 60°) or 1.3 (slotted, at 40°) in proportion to Δα₀,
    /// and no more for a flap wider than a quarter of the chord (that proportion is this model's own). Range: as <see
    /// cref="ViscousEfficiency"/>. Source: [houghton-carpenter], [mccormick], [raymer], [naca-flaps].
    /// </remarks>
    /// <param name="deflection">δ, positive down.</param>
    /// <returns>The flap with the increments of its section.</returns>
    /// <exception cref="RefusedInputException">A deflection beyond the estimate.</exception>
    /// <example><code>new FlapGeometry(FlapKind.Slotted, 0.25, 0.1, 0.6).At(Angle.FromDegrees(20)).ZeroLiftAngleChange.Degrees // -10.11</code></example>
    public PartSpanFlap At(Angle deflection)
    {
        double radians = InRange(deflection);
        double change = FlapLaws.ZeroLiftAngleChange(_table, ChordShare, radians);
        return new PartSpanFlap(
            From, To, Angle.FromRadians(change).ToUnit(AngleUnit.Degree),
            FlapLaws.SectionMaximumLiftIncrement(_table, ChordShare, radians));
    }

    /// <summary>What the flap is estimated to do to a whole wing.</summary>
    /// <remarks>
    /// Formula: Δα₀ of the section times the part-span factor, which is the lifting line's own; ΔC_Lmax = 0.9 Δc_lmax
    /// S_flapped/S. Range: as <see cref="ViscousEfficiency"/>; unswept hinge lines. Source: [glauert], [raymer].
    /// </remarks>
    /// <param name="planform">The wing from above.</param>
    /// <param name="root">Its section at the centreline.</param>
    /// <param name="deflection">δ, positive down.</param>
    /// <param name="tip">Its section at the tip; the root's where none is given.</param>
    /// <returns>The increments.</returns>
    /// <exception cref="RefusedInputException">A deflection beyond the estimate.</exception>
    /// <example><code>new FlapGeometry(FlapKind.Slotted, 0.25, 0.1, 0.6).OnWing(WingPlanform.Tapered(Length.FromMeters(11), Length.FromMeters(1.5), 1), new WingSection(6.2832, Angle.Zero, 1.5), Angle.FromDegrees(35)).MaximumLiftIncrement // 0.543</code></example>
    public FlapIncrements OnWing(WingPlanform planform, WingSection root, Angle deflection, WingSection? tip = null)
    {
        ArgumentNullException.ThrowIfNull(planform);
        ArgumentNullException.ThrowIfNull(root);
        PartSpanFlap flap = At(deflection);
        // The factor is the same for any deflection: the lifting line is linear in it.
        var unit = new PartSpanFlap(From, To, Angle.FromDegrees(-1), 0);
        Angle up = new LiftingLine(planform, root, tip).ZeroLiftAngle;
        double factor = (up - new LiftingLine(planform, root, tip, unit).ZeroLiftAngle).Degrees;
        double maximum = FlapLaws.MaximumLiftIncrement(flap.MaximumLiftIncrement, planform.AreaShare(From, To));
        return new FlapIncrements(flap.ZeroLiftAngleChange * factor, factor, maximum);
    }

    private double InRange(Angle deflection) => Require.Between(
        deflection, Angle.Zero, LargestDeflection, "flap deflection", "The measurements behind the estimate end there.").Radians;
}
