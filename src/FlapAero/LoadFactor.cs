using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>Load factor n = L/W in steady turns.</summary>
public static class LoadFactor
{
    private static readonly Angle SteepestBank = Angle.FromDegrees(85);

    /// <summary>Load factor of a steady turn.</summary>
    /// <remarks>Formula: n = cos γ/cos φ, from L cos φ = W cos γ. Range: bank to 85° either way. Source: [phak].</remarks>
    /// <param name="bank">Angle of bank φ, either way.</param>
    /// <param name="pathAngle">Flight-path angle γ, positive up; level where none is given.</param>
    /// <returns>n.</returns>
    /// <exception cref="RefusedInputException">A bank or path steeper than the range.</exception>
    /// <example><code>LoadFactor.InTurn(Angle.FromDegrees(60)) // 2.000</code></example>
    public static double InTurn(Angle bank, Angle? pathAngle = null)
    {
        Require.Between(bank, -SteepestBank, SteepestBank, "bank", "At 90° no lift is left to carry the weight.");
        Angle path = pathAngle ?? Angle.Zero;
        Require.Between(path, -SteepestBank, SteepestBank, "flight-path angle", "Steeper is a dive or a climb on the propeller.");
        return StallLaws.LoadFactor(bank.Radians, path.Radians);
    }
}
