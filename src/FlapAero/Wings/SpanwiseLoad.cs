using UnitsNet;

namespace FlapAero;

/// <summary>The load at one station of the half span. Immutable.</summary>
public sealed class SpanwiseLoad
{
    internal SpanwiseLoad(double station, Length distance, double lift, double maximum, double circulation, bool isFlapped)
    {
        Station = station;
        Distance = distance;
        SectionLiftCoefficient = lift;
        SectionMaximum = maximum;
        CirculationRatio = circulation;
        IsFlapped = isFlapped;
    }

    /// <summary>Share of the half span.</summary>
    public double Station { get; }

    /// <summary>Distance from the centreline.</summary>
    public Length Distance { get; }

    /// <summary>c_l of the section.</summary>
    public double SectionLiftCoefficient { get; }

    /// <summary>c_lmax of the section, with the flap's part where it has one.</summary>
    public double SectionMaximum { get; }

    /// <summary>Γ/(bV).</summary>
    public double CirculationRatio { get; }

    /// <summary>The section carries the flap; at its very ends it does not.</summary>
    public bool IsFlapped { get; }
}
