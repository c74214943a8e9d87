namespace FlapAero;

/// <summary>
/// A rule's factor for a surface: what the distance from 50 ft to the stop on dry asphalt is multiplied by. Immutable, thread-safe.
/// </summary>
/// <remarks>Source: [eu-965-2012]; [cat-pol-a-330-guidance] for dry grass.</remarks>
public sealed class SurfaceRule
{
    private SurfaceRule(double factor, string origin, string source) => (Factor, Origin, Source) = (factor, origin, source);

    /// <summary>Wet runway, where the manual has no distance of its own.</summary>
    internal static SurfaceRule WetPaved { get; } = new(1.15, "GM1 CAT.POL.A.430 and .435", "eu-965-2012");

    /// <summary>Dry grass up to 20 cm on firm soil.</summary>
    internal static SurfaceRule DryGrass { get; } = new(1.15, "guidance to CAT.POL.A.330, second-hand", "cat-pol-a-330-guidance");

    /// <summary>Very short wet grass on firm subsoil: the most that the guidance names.</summary>
    internal static SurfaceRule WetGrass { get; } = new(1.60, "GM1 CAT.POL.A.335", "eu-965-2012");

    /// <summary>A school's own factor, 1 to 3.</summary>
    internal static SurfaceRule OfSchool(double factor) => new(
        Require.Between(factor, 1, 3, "surface factor", "Below 1 it is no factor; past 3 it is another runway."), "the school's own rule", "");

    /// <summary>The factor, 1 or more.</summary>
    public double Factor { get; }

    /// <summary>Which rule, in words.</summary>
    public string Origin { get; }

    /// <summary>The key of its source in <c>docs/references.md</c>; empty for a school's own.</summary>
    public string Source { get; }
}
