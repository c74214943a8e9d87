using UnitsNet;

namespace FlapAero;

/// <summary>What a flap is estimated to add to a whole wing. Immutable.</summary>
public sealed class FlapIncrements
{
    internal FlapIncrements(Angle zeroLiftAngleChange, double partSpanFactor, double maximumLiftIncrement) =>
        (ZeroLiftAngleChange, PartSpanFactor, MaximumLiftIncrement) = (zeroLiftAngleChange, partSpanFactor, maximumLiftIncrement);

    /// <summary>Δα₀ of the wing, negative.</summary>
    public Angle ZeroLiftAngleChange { get; }

    /// <summary>Δα₀ of the wing over Δα₀ of the flapped section, from the lifting line.</summary>
    public double PartSpanFactor { get; }

    /// <summary>ΔC_Lmax of the wing.</summary>
    public double MaximumLiftIncrement { get; }
}
