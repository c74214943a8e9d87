using UnitsNet;

namespace FlapAero;

/// <summary>What a lifting line needs of an aerofoil section, flap up. Immutable.</summary>
public sealed class WingSection
{
    /// <summary>A section.</summary>
    /// <param name="slopePerRadian">Lift slope a₀ in two-dimensional flow, 1/rad, 4 to 7.5; a thin aerofoil has 2π.</param>
    /// <param name="zeroLiftAngle">α₀, −12° to 5°.</param>
    /// <param name="maximumLiftCoefficient">c_lmax at the wing's Reynolds number, 0.5 to 2.5.</param>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    public WingSection(double slopePerRadian, Angle zeroLiftAngle, double maximumLiftCoefficient)
    {
        SlopePerRadian = Require.Between(slopePerRadian, 4, 7.5, "section lift slope (per radian)", "Measured sections lie near 2π.");
        ZeroLiftAngle = Require.Between(
            zeroLiftAngle, Angle.FromDegrees(-12), Angle.FromDegrees(5), "zero-lift angle", "Camber alone reaches no further.");
        MaximumLiftCoefficient = Require.Between(
            maximumLiftCoefficient, 0.5, 2.5, "maximum section lift coefficient", "No single-element section lies outside it.");
    }

    /// <summary>a₀, 1/rad.</summary>
    public double SlopePerRadian { get; }

    /// <summary>α₀.</summary>
    public Angle ZeroLiftAngle { get; }

    /// <summary>c_lmax.</summary>
    public double MaximumLiftCoefficient { get; }
}
