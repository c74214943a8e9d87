using UnitsNet;

namespace FlapAero;

/// <summary>A day at <see cref="Quillmere"/>. Immutable.</summary>
public sealed class DemoDay
{
    internal DemoDay(string name, Temperature temperature, BriefingWind wind) =>
        (Name, Temperature, Wind, Air) = (name, temperature, wind, Air.AtTemperature(Quillmere.Elevation, temperature));

    /// <summary>The day's name.</summary>
    public string Name { get; }

    /// <summary>The temperature at the aerodrome.</summary>
    public Temperature Temperature { get; }

    /// <summary>The wind, with its gusts where there are some.</summary>
    public BriefingWind Wind { get; }

    /// <summary>The air over the aerodrome; the pressure is the standard's.</summary>
    public Air Air { get; }
}
