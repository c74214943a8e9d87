using UnitsNet;

namespace FlapAero;

/// <summary>One point of a circuit. Immutable.</summary>
public sealed class CircuitPoint
{
    internal CircuitPoint(Length x, Length y, Length height, Duration time, Angle heading, string leg)
    {
        X = x;
        Y = y;
        Height = height;
        Time = time;
        Heading = heading;
        Leg = leg;
    }

    /// <summary>Along the landing, from the threshold; negative before it.</summary>
    public Length X { get; }

    /// <summary>Across, positive to the right of the landing: a left-hand circuit has its downwind leg at negative values.</summary>
    public Length Y { get; }

    /// <summary>Height of the wheels above the runway.</summary>
    public Length Height { get; }

    /// <summary>Since the circuit's first point.</summary>
    public Duration Time { get; }

    /// <summary>Where the nose points, 0° to 360°.</summary>
    public Angle Heading { get; }

    /// <summary>The leg's name.</summary>
    public string Leg { get; }
}
