using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// What the ground takes off the induced drag. Named assumption: it acts on drag only, not on lift slope or C_Lmax.
/// Published forms differ by a factor of two near the ground; this is the exponential fit to Prandtl's theory.
/// </summary>
public static class GroundEffect
{
    /// <summary>Share of the induced drag that remains near the ground.</summary>
    /// <remarks>
    /// Formula: k_g = 1 − exp(−2.48 (2z/b)^0.768). Range: z above zero; tends to 1 far up. Source: [torenbeek].
    /// </remarks>
    /// <param name="wingHeight">z, height of the wing above the surface: wheel height and the wing's height on its wheels.</param>
    /// <param name="span">b.</param>
    /// <returns>k_g, between 0 and 1.</returns>
    /// <exception cref="RefusedInputException">Height or span is not above zero.</exception>
    /// <example><code>GroundEffect.InducedDragFactor(Length.FromMeters(1), Length.FromMeters(10)) // 0.5135</code></example>
    public static double InducedDragFactor(Length wingHeight, Length span)
    {
        Require.Positive(wingHeight, "height of the wing", "The wing is above the ground.");
        Require.Positive(span, "span", "A wing has one.");
        return DragLaws.GroundEffect(wingHeight.Meters, span.Meters);
    }
}
