using UnitsNet;

namespace FlapAero;

/// <summary>
/// A flap that is down, as the lifting line sees it: where it lies, and what it does to the sections that carry it. Both
/// wings have it. Immutable. Its chord extension, gaps at its ends and the fuselage between are not modelled.
/// </summary>
public sealed class PartSpanFlap
{
    /// <summary>A flap.</summary>
    /// <param name="from">Inboard end as a share of the half span; 0 is the centreline.</param>
    /// <param name="to">Outboard end as a share of the half span, at least 0.02 further out; 1 is the tip.</param>
    /// <param name="zeroLiftAngleChange">Δα₀ of the flapped section, −30° to 0°.</param>
    /// <param name="maximumLiftIncrement">Δc_lmax of the flapped section, 0 to 2.5.</param>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    public PartSpanFlap(double from, double to, Angle zeroLiftAngleChange, double maximumLiftIncrement)
    {
        To = Require.Between(to, 0.02, 1, "outboard end of the flap", "It is a share of the half span.");
        From = Require.Between(
            from, 0, to - 0.02, "inboard end of the flap", "It is a share of the half span, inboard of the other end.");
        ZeroLiftAngleChange = Require.Between(
            zeroLiftAngleChange, Angle.FromDegrees(-30), Angle.Zero, "change of the zero-lift angle",
            "A flap down makes it more negative.");
        MaximumLiftIncrement = Require.Between(
            maximumLiftIncrement, 0, 2.5, "maximum-lift increment of the section", "A flap adds lift; no single one adds more.");
    }

    /// <summary>Inboard end as a share of the half span.</summary>
    public double From { get; }

    /// <summary>Outboard end as a share of the half span.</summary>
    public double To { get; }

    /// <summary>Δα₀ of the flapped section.</summary>
    public Angle ZeroLiftAngleChange { get; }

    /// <summary>Δc_lmax of the flapped section.</summary>
    public double MaximumLiftIncrement { get; }

    internal bool Covers(double share) => (share > From || From == 0) && (share < To || To == 1);

    /// <summary>
    /// How much of Δc_lmax a section has: all of it inside, none outside, and in proportion across a band about each end,
    /// over which the flow of the one part carries the other. A jump there would make the section just outside the end stall
    /// before the flap is of any use.
    /// </summary>
    internal double ShareOfMaximum(double share, double halfBand)
    {
        double inner = From == 0 ? 1 : 0.5 + (share - From) / (2 * halfBand);
        double outer = To == 1 ? 1 : 0.5 + (To - share) / (2 * halfBand);
        return Math.Clamp(Math.Min(inner, outer), 0, 1);
    }
}
