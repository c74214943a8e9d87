using System.Collections.ObjectModel;
using System.Globalization;

namespace FlapAero;

/// <summary>
/// What a runway's surface gives the wheels: one coefficient for wheels that roll and one, effective on the whole normal force, for firm
/// braking. The values of textbooks are single numbers for what scatters widely with tyre, tread, water and grass: they teach the order of
/// surfaces and are no data for a flight. Immutable, thread-safe.
/// </summary>
/// <remarks>
/// Source: [anderson-itf] for dry asphalt, both values read in a transcription; [raymer-ground] for the others, all from memory and not
/// looked up: middles of the ranges that it gives where it gives a range. The factors are the rules' own: [eu-965-2012] and, for dry
/// grass, [cat-pol-a-330-guidance].
/// </remarks>
public sealed class RunwaySurface
{
    private const string NoSuchFriction = "Friction does not push, and no tyre holds more than the load on it.";

    private RunwaySurface(string name, double rolling, double braking, bool fromMemory, SurfaceRule? rule = null, RunwaySurface? better = null)
    {
        (Name, RollingFriction, BrakingFriction, FromMemory) = (name, rolling, braking, fromMemory);
        (Rule, Better) = (rule, better);
    }

    /// <summary>Dry asphalt or concrete.</summary>
    public static RunwaySurface DryPaved { get; } = new("dry asphalt or concrete", 0.02, 0.4, fromMemory: false);

    /// <summary>Wet asphalt or concrete, no standing water.</summary>
    public static RunwaySurface WetPaved { get; } = new("wet asphalt or concrete", 0.05, 0.225, fromMemory: true, SurfaceRule.WetPaved, DryPaved);

    /// <summary>
    /// Short dry grass on firm ground. It brakes as the same table's firm dirt: the value for firm turf is dry asphalt's 0.4, from memory,
    /// and on it an aeroplane would stop shorter than on asphalt, which the rules deny.
    /// </summary>
    public static RunwaySurface FirmGrass { get; } = new("short dry grass on firm ground", 0.05, 0.3, fromMemory: true, SurfaceRule.DryGrass, DryPaved);

    /// <summary>Grass on soft ground. No rule that we have read gives it a factor; it is never counted shorter than firm dry grass.</summary>
    public static RunwaySurface SoftGrass { get; } = new("grass on soft ground", 0.07, 0.2, fromMemory: true, better: FirmGrass);

    /// <summary>Wet grass.</summary>
    public static RunwaySurface WetGrass { get; } = new("wet grass", 0.08, 0.2, fromMemory: true, SurfaceRule.WetGrass, FirmGrass);

    /// <summary>Ice: the braking value that is lower than any other. No factor; it is never counted shorter than wet asphalt.</summary>
    public static RunwaySurface Icy { get; } = new("ice", 0.02, 0.08, fromMemory: true, better: WetPaved);

    /// <summary>The surfaces, in no order of merit.</summary>
    public static IReadOnlyList<RunwaySurface> All { get; } = [DryPaved, WetPaved, FirmGrass, SoftGrass, WetGrass, Icy];

    /// <summary>A surface by its coefficients, as measured or as another book has them; no rule is known for it.</summary>
    /// <remarks>Formula: none, both are kept. Range: each 0 to 1. Source: [canonical-landing].</remarks>
    /// <param name="name">What it is called.</param>
    /// <param name="rollingFriction">μ_r.</param>
    /// <param name="brakingFriction">μ_b, effective under the firmest braking on the whole normal force.</param>
    /// <returns>The surface.</returns>
    /// <exception cref="RefusedInputException">No name; a coefficient outside its range.</exception>
    /// <example><code>RunwaySurface.Of("gravel", 0.04, 0.3).BrakingFriction // 0.3</code></example>
    public static RunwaySurface Of(string name, double rollingFriction, double brakingFriction) => new(
        Require.Words(name, "name of the surface"),
        Require.Between(rollingFriction, 0, 1, "rolling friction", NoSuchFriction),
        Require.Between(brakingFriction, 0, 1, "braking friction", NoSuchFriction), fromMemory: false);

    /// <summary>
    /// The surfaces by short names, upper or lower case: <c>paved</c>, <c>asphalt</c>, <c>tarmac</c> and <c>concrete</c> are one, and
    /// one again with <c>wet-</c> before.
    /// </summary>
    public static IReadOnlyDictionary<string, RunwaySurface> ByName { get; } = Table(
        (DryPaved, ["paved", "asphalt", "tarmac", "concrete"]),
        (WetPaved, ["wet-paved", "wet-asphalt", "wet-tarmac", "wet-concrete"]),
        (FirmGrass, ["grass"]),
        (WetGrass, ["wet-grass"]),
        (SoftGrass, ["soft-grass"]),
        (Icy, ["ice"]));

    /// <summary>The surface in words.</summary>
    public string Name { get; }

    /// <summary>μ_r.</summary>
    public double RollingFriction { get; }

    /// <summary>μ_b.</summary>
    public double BrakingFriction { get; }

    /// <summary>Whether the two coefficients are from memory and were not looked up.</summary>
    public bool FromMemory { get; }

    /// <summary>What the rules make of the distance on dry asphalt; none where we know of no rule.</summary>
    public SurfaceRule? Rule { get; }

    /// <summary>The surface on which a planned landing is never longer than on this one; none for dry asphalt.</summary>
    public RunwaySurface? Better { get; }

    /// <summary>μ_b for a pilot who takes a share of it: no less than of wheels that roll, and never more than the surface's own.</summary>
    internal double Braking(double share) => Math.Max(Math.Min(RollingFriction, BrakingFriction), BrakingFriction * Require.Between(
        share, 0, 1, "share of the surface's braking", "More than all of it there is not.", nameof(LandingTechnique.BrakingShare)));

    private static ReadOnlyDictionary<string, RunwaySurface> Table(params (RunwaySurface Surface, string[] Names)[] rows) =>
        rows.SelectMany(row => row.Names.Select(name => (name, row.Surface)))
            .ToDictionary(row => row.name, row => row.Surface, StringComparer.OrdinalIgnoreCase).AsReadOnly();

    /// <summary>Name and coefficients.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Name}: rolling {RollingFriction:0.00}, braking {BrakingFriction:0.00}");
}
