using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>A moment of a straight descent through still air. Immutable.</summary>
public sealed class DescentPoint
{
    internal DescentPoint(double distance, double height, Airspeed airspeed)
    {
        Distance = Length.FromMeters(distance).ToUnit(LengthUnit.Foot);
        Height = Length.FromMeters(height).ToUnit(LengthUnit.Foot);
        Airspeed = airspeed;
    }

    /// <summary>Distance over the ground from where the descent began.</summary>
    public Length Distance { get; }

    /// <summary>Height, counted as the descent's heights are.</summary>
    public Length Height { get; }

    /// <summary>The airspeed, in the air of the descent's beginning.</summary>
    public Airspeed Airspeed { get; }

    /// <summary>Energy height h + V²/2g.</summary>
    public Length EnergyHeight => FlapAero.EnergyHeight.Of(Height, Airspeed.True).ToUnit(LengthUnit.Foot);
}
