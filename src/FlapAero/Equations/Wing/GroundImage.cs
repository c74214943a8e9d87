using System.Numerics;

namespace FlapAero.Equations;

/// <summary>
/// The mirrored wing below the ground: its trailing vortices, straight back and level, at 2z below the wing. The bound
/// vortex of the image changes the speed along the path only, and that is left out, as in Prandtl's theory. Source:
/// [prandtl].
/// </summary>
/// <param name="heightOverSpan">z/b.</param>
internal sealed class GroundImage(double heightOverSpan)
{
    private readonly double _distance = 4 * heightOverSpan;

    /// <summary>
    /// J_n(θ) = (1/π) ∫₀^π cos nφ (cos φ − cos θ)/((cos φ − cos θ)² + κ²) dφ, κ = 4z/b, for the odd n from 1 while they
    /// count: the image's induced angle is −Σ n A_n J_n. With ζ = cos θ + iκ it is the real part of −tⁿ/√(ζ² − 1), t = ζ −
    /// √(ζ² − 1).
    /// </summary>
    public double[] Influence(double station, int terms)
    {
        var zeta = new Complex(Math.Cos(station), _distance);
        Complex root = Complex.Sqrt(zeta * zeta - 1);
        Complex ratio = zeta - root;
        if (ratio.Magnitude > 1)
        {
            root = -root;
            ratio = zeta - root;
        }

        var influence = new double[terms];
        Complex power = -ratio / root;
        Complex step = ratio * ratio;
        for (int i = 0; i < terms; i++, power *= step) influence[i] = power.Real;
        return influence;
    }
}
