using UnitsNet;

namespace FlapAero;

/// <summary>The invented neighbour of <see cref="Quillmere"/>: further away, and longer. All values are invented; its weather is Quillmere's.</summary>
public static class Brackmere
{
    /// <summary>Runway 30: asphalt, level, at Quillmere's elevation.</summary>
    public static BriefingRunway Runway30 { get; } = new("30", Angle.FromDegrees(300), Length.FromMeters(1400), RunwaySurface.DryPaved, 0, Quillmere.Elevation);

    /// <summary>From overhead Quillmere to standing on the taxiway: the way, a circuit, the roll.</summary>
    public static Duration TimeAway { get; } = Duration.FromMinutes(40);
}
