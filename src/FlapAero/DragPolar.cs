using FlapAero.Equations;

namespace FlapAero;

/// <summary>
/// Drag against lift for one flap setting: C_D = C_D0 + k_g C_L²/(π A e). Immutable. The parabola is used up to the
/// stall, although separation adds drag there; ground effect takes its share of the whole second term.
/// </summary>
public sealed class DragPolar
{
    /// <summary>A drag polar.</summary>
    /// <param name="zeroLiftDragCoefficient">C_D0 with this flap and the gear, 0.005 to 0.4.</param>
    /// <param name="oswaldFactor">e, 0.3 to 1.</param>
    /// <param name="aspectRatio">A = b²/S, 3 to 25.</param>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    public DragPolar(double zeroLiftDragCoefficient, double oswaldFactor, double aspectRatio)
    {
        ZeroLiftDragCoefficient = Require.Between(
            zeroLiftDragCoefficient, 0.005, 0.4, "zero-lift drag coefficient", "No aeroplane with a gear lies outside it.");
        OswaldFactor = Require.Between(oswaldFactor, 0.3, 1, "Oswald factor", "1 is the elliptic wing's least drag.");
        AspectRatio = Require.Between(aspectRatio, 3, 25, "aspect ratio", "Light aeroplanes have wings of this kind.");
        InducedFactor = DragLaws.InducedFactor(oswaldFactor, aspectRatio);
    }

    /// <summary>C_D0.</summary>
    public double ZeroLiftDragCoefficient { get; }

    /// <summary>Oswald factor e.</summary>
    public double OswaldFactor { get; }

    /// <summary>Aspect ratio A.</summary>
    public double AspectRatio { get; }

    /// <summary>K = 1/(π e A).</summary>
    public double InducedFactor { get; }

    /// <summary>The largest ratio of lift to drag, 1/(2√(K C_D0)).</summary>
    public double MaximumLiftToDrag => DragLaws.MaximumLiftToDrag(ZeroLiftDragCoefficient, InducedFactor);

    /// <summary>Drag coefficient at a lift coefficient.</summary>
    /// <remarks>
    /// Formula: C_D = C_D0 + k_g C_L²/(πAe). Range: |C_L| to 4, k_g from 0 to 1. Source: [anderson-itf].
    /// </remarks>
    /// <param name="liftCoefficient">C_L.</param>
    /// <param name="groundEffect">k_g of <see cref="GroundEffect.InducedDragFactor"/>; 1 away from the ground.</param>
    /// <returns>C_D.</returns>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    /// <example><code>new DragPolar(0.025, 0.8, 7.366).DragCoefficient(0.68) // 0.05</code></example>
    public double DragCoefficient(double liftCoefficient, double groundEffect = 1)
    {
        Require.Between(liftCoefficient, -4, 4, "lift coefficient", "No wing of this model has more.");
        Require.Between(groundEffect, 0, 1, "ground-effect factor", "It is the share of the induced drag that remains.");
        return DragLaws.Coefficient(ZeroLiftDragCoefficient, InducedFactor, liftCoefficient, groundEffect);
    }
}
