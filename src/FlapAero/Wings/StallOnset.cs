using UnitsNet;

namespace FlapAero;

/// <summary>
/// Where along the span the wing stalls first, and the lift it has then: C_Lmax by the critical-section method. Immutable.
/// The stall spreads from there at a rate that a lifting line does not know, so the whole wing's C_Lmax is a little higher;
/// with a flap the critical section often lies about its outer end, where the estimate hangs on how c_lmax changes there:
/// read it as a place, and as a size to a tenth or two.
/// </summary>
public sealed class StallOnset
{
    internal StallOnset(double liftCoefficient, Angle angleOfAttack, SpanwiseLoad section) =>
        (MaximumLiftCoefficient, AngleOfAttack, Section) = (liftCoefficient, angleOfAttack, section);

    /// <summary>C_L of the wing when its first section reaches its c_lmax.</summary>
    public double MaximumLiftCoefficient { get; }

    /// <summary>Angle of attack of the chord at the centreline then.</summary>
    public Angle AngleOfAttack { get; }

    /// <summary>The section that stalls first.</summary>
    public SpanwiseLoad Section { get; }
}
