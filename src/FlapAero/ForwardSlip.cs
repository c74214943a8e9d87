using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// The only drag that an aeroplane without flaps can add: flown sideways, its side force has a part along the path. A band, for the side
/// force is known no better. In a slip the airspeed needle errs, and the manual decides whether slips are allowed. Thread-safe.
/// </summary>
public static class ForwardSlip
{
    // Per radian, light aeroplanes: from memory, see [side-force].
    private const double LeastSideForce = 0.3;
    private const double MostSideForce = 0.6;

    private static readonly Angle Steepest = Angle.FromDegrees(25);

    /// <summary>What a slip adds to C_D.</summary>
    /// <remarks>
    /// Formula: ΔC_D = |C_Yβ| β sin β, |C_Yβ| from 0.3 to 0.6 a radian. Range: sideslip 0° to 25°; beyond it the fin stalls. Source:
    /// [side-force], from memory.
    /// </remarks>
    /// <param name="sideslip">β, the angle between the nose and the path.</param>
    /// <returns>The least and the most.</returns>
    /// <exception cref="RefusedInputException">A sideslip outside its range.</exception>
    /// <example><code>ForwardSlip.DragOf(Angle.FromDegrees(15)).Most // 0.041</code></example>
    public static (double Least, double Most) DragOf(Angle sideslip)
    {
        double beta = Require.Between(sideslip, Angle.Zero, Steepest, "sideslip", "Beyond it the fin stalls.").Radians;
        return (DragLaws.Slip(LeastSideForce, beta), DragLaws.Slip(MostSideForce, beta));
    }

    /// <summary>How much a slip adds to a glide's angle.</summary>
    /// <remarks>
    /// Formula: tan γ grows by ΔC_D/C_L at the same airspeed and lift. Range: as <see cref="DragOf"/>. Source: [anderson-itf] for the glide.
    /// </remarks>
    /// <param name="glide">The glide without slip.</param>
    /// <param name="sideslip">β.</param>
    /// <returns>The least and the most.</returns>
    /// <exception cref="RefusedInputException">A sideslip outside its range.</exception>
    /// <example><code>ForwardSlip.Steepens(flapsUp.Glide(Airspeed.FromCalibrated(Speed.FromKnots(70), Air.StandardSeaLevel)), Angle.FromDegrees(15)).Most.Degrees // 2.8</code></example>
    public static (Angle Least, Angle Most) Steepens(SteadyFlight glide, Angle sideslip)
    {
        ArgumentNullException.ThrowIfNull(glide);
        (double least, double most) = DragOf(sideslip);
        double tangent = Math.Tan(glide.GlideAngle.Radians);
        Angle By(double drag) => Angle.FromRadians(Math.Atan(tangent + drag / glide.LiftCoefficient) - Math.Atan(tangent)).ToUnit(UnitsNet.Units.AngleUnit.Degree);
        return (By(least), By(most));
    }
}
