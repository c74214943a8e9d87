using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>Height, time and distance, leg by leg. The heights lost add up to the circuit height. Immutable.</summary>
public sealed class CircuitLedger
{
    internal CircuitLedger(IReadOnlyList<CircuitLeg> rows)
    {
        Rows = rows;
        HeightLost = Length.FromMeters(rows.Sum(row => row.HeightLost.Meters)).ToUnit(LengthUnit.Foot);
        Time = Duration.FromSeconds(rows.Sum(row => row.Time.Seconds));
        Distance = Length.FromMeters(rows.Sum(row => row.Distance.Meters));
    }

    /// <summary>A row a leg, in the order of flight.</summary>
    public IReadOnlyList<CircuitLeg> Rows { get; }

    /// <summary>Sum of the heights lost.</summary>
    public Length HeightLost { get; }

    /// <summary>Sum of the times.</summary>
    public Duration Time { get; }

    /// <summary>Sum of the ways over the ground.</summary>
    public Length Distance { get; }
}
