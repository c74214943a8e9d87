using System.Globalization;

namespace FlapAero;

/// <summary>
/// What a runway's surface gives the wheels: one coefficient for wheels that roll and one, effective on the whole normal force, for firm
/// braking. The values of textbooks are single numbers for what scatters widely with tyre, tread, water and grass: they teach the order of
/// surfaces and are no data for a flight. Immutable, thread-safe.
/// </summary>
/// <remarks>
/// Source: [anderson-itf] for dry asphalt, both values read in a transcription; [raymer-ground] for the others, all from memory and not
/// looked up: middles of the ranges that it gives where it gives a range.
/// </remarks>
public sealed class RunwaySurface
{
    private RunwaySurface(string name, double rolling, double braking, bool fromMemory) =>
        (Name, RollingFriction, BrakingFriction, FromMemory) = (name, rolling, braking, fromMemory);

    /// <summary>Dry asphalt or concrete.</summary>
    public static RunwaySurface DryPaved { get; } = new("dry asphalt or concrete", 0.02, 0.4, fromMemory: false);

    /// <summary>Wet asphalt or concrete, no standing water.</summary>
    public static RunwaySurface WetPaved { get; } = new("wet asphalt or concrete", 0.05, 0.225, fromMemory: true);

    /// <summary>Short dry grass on firm ground.</summary>
    public static RunwaySurface FirmGrass { get; } = new("short dry grass on firm ground", 0.05, 0.4, fromMemory: true);

    /// <summary>Grass on soft ground.</summary>
    public static RunwaySurface SoftGrass { get; } = new("grass on soft ground", 0.07, 0.2, fromMemory: true);

    /// <summary>Wet grass.</summary>
    public static RunwaySurface WetGrass { get; } = new("wet grass", 0.08, 0.2, fromMemory: true);

    /// <summary>Ice: the braking value that is lower than any other.</summary>
    public static RunwaySurface Icy { get; } = new("ice", 0.02, 0.08, fromMemory: true);

    /// <summary>The surfaces, in no order of merit.</summary>
    public static IReadOnlyList<RunwaySurface> All { get; } = [DryPaved, WetPaved, FirmGrass, SoftGrass, WetGrass, Icy];

    /// <summary>The surface in words.</summary>
    public string Name { get; }

    /// <summary>μ_r.</summary>
    public double RollingFriction { get; }

    /// <summary>μ_b.</summary>
    public double BrakingFriction { get; }

    /// <summary>Whether the values are from memory and were not looked up.</summary>
    public bool FromMemory { get; }

    /// <summary>The same surface for a pilot who does not brake: μ_r to the stop.</summary>
    public RunwaySurface Unbraked => new(Name + ", not braking", RollingFriction, RollingFriction, FromMemory);

    /// <summary>Name and coefficients.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Name}: rolling {RollingFriction:0.00}, braking {BrakingFriction:0.00}");
}
