using FlapAero.Equations;

namespace FlapAero;

/// <summary>The inputs of a landing as tables have them: SI units, the path angle in degrees.</summary>
public static class LandingColumns
{
    /// <summary>The inputs in the order of a table's columns.</summary>
    public static IReadOnlyList<LandingVariable> All => LandingVariables.All;

    /// <summary>What a table calls an input.</summary>
    /// <remarks>Formula: none. Range: every input. Source: this library's tables of landings.</remarks>
    /// <param name="variable">The input.</param>
    /// <returns>Lower-case words joined by underscores.</returns>
    /// <exception cref="RefusedInputException">A value that is no input.</exception>
    /// <example><code>LandingVariable.MaximumLiftCoefficient.Column() // cl_max</code></example>
    public static string Column(this LandingVariable variable) => Known(variable).Name;

    /// <summary>What an input is where a table leaves its column out.</summary>
    /// <remarks>Formula: none. Range: every input. Source: [canonical-landing], which has none of them.</remarks>
    /// <param name="variable">The input.</param>
    /// <returns>Its value; none where the column must stand in the table.</returns>
    /// <exception cref="RefusedInputException">A value that is no input.</exception>
    /// <example><code>LandingVariable.IdleThrustSlope.WhereLeftOut() // 0.0</code></example>
    public static double? WhereLeftOut(this LandingVariable variable) => Known(variable).LeftOut;

    private static LandingColumn Known(LandingVariable variable) => Enum.IsDefined(variable)
        ? LandingColumn.Of(variable)
        : throw Require.Refused(
            nameof(variable), "input of a landing", (int)variable, $"0 to {LandingInput.Count - 1}", "A landing has no others.");
}
