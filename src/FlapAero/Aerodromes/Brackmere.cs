using UnitsNet;

namespace FlapAero;

/// <summary>The invented neighbour of <see cref="Quillmere"/>: further away, and longer. All values are invented; its weather is Quillmere's.</summary>
public static class Brackmere
{
    /// <summary>Runway 30: asphalt, level, at Quillmere's elevation.</summary>
    public static Runway Runway30 { get; } = new()
    {
        Name = "30",
        Direction = Angle.FromDegrees(300),
        LengthAvailable = Length.FromMeters(1400),
        Elevation = Quillmere.Elevation,
    };

    /// <summary>From overhead Quillmere to standing on the taxiway: the way, a circuit, the roll.</summary>
    public static Duration TimeAway { get; } = Duration.FromMinutes(40);
}
