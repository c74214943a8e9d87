using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>Something that draws current: what it is called, how much it draws while it is on, and for what share of the time. Immutable.</summary>
public sealed class ElectricalLoad
{
    /// <summary>A load known by its current.</summary>
    /// <param name="name">What the switch or the breaker says.</param>
    /// <param name="current">Current while it is on, 0 to 200 A.</param>
    /// <param name="shareOn">For what share of the time it is on, 0 to 1.</param>
    /// <exception cref="RefusedInputException">No name; a value outside its range.</exception>
    public ElectricalLoad(string name, ElectricCurrent current, double shareOn = 1)
    {
        Name = Require.Words(name, "name of the load");
        Current = Require.Between(
            current, ElectricCurrent.Zero, ElectricCurrent.FromAmperes(200), "current of a load", "Light aeroplanes have none that draws more.");
        ShareOn = Require.Between(shareOn, 0, 1, "share of the time", "It is a share.");
    }

    /// <summary>A load known by its power, as lamps and heaters are.</summary>
    /// <param name="name">What the switch or the breaker says.</param>
    /// <param name="power">Power while it is on, at this voltage.</param>
    /// <param name="voltage">The voltage that the power is stated for, 6 to 60 V.</param>
    /// <param name="shareOn">For what share of the time it is on, 0 to 1.</param>
    /// <exception cref="RefusedInputException">
    /// No name; a value outside its range; the current, P/U, outside its own.
    /// </exception>
    public ElectricalLoad(string name, Power power, ElectricPotential voltage, double shareOn = 1)
        : this(
            Require.Words(name, "name of the load"),
            ElectricCurrent.FromAmperes(Require.In(power, PowerUnit.Watt, "power") / Volts(voltage)), shareOn)
    {
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>I while it is on.</summary>
    public ElectricCurrent Current { get; }

    /// <summary>For what share of the time it is on.</summary>
    public double ShareOn { get; }

    /// <summary>What it draws on average.</summary>
    public ElectricCurrent MeanCurrent => Current * ShareOn;

    /// <summary>The same load, on for another share of the time.</summary>
    /// <remarks>Formula: none, a copy. Range: 0 to 1. Source: [common-practice].</remarks>
    /// <param name="shareOn">The share.</param>
    /// <returns>The load.</returns>
    /// <exception cref="RefusedInputException">A share outside the range.</exception>
    /// <example><code>new ElectricalLoad("radio, transmitting", ElectricCurrent.FromAmperes(5)).OnFor(0.2).MeanCurrent.Amperes // 1.0</code></example>
    public ElectricalLoad OnFor(double shareOn) => new(Name, Current, shareOn);

    /// <summary>What loads draw together on average.</summary>
    /// <remarks>Formula: Σ I s, s the share of the time. Range: any number of loads. Source: [common-practice].</remarks>
    /// <param name="loads">The loads that are on.</param>
    /// <returns>The mean current.</returns>
    /// <exception cref="ArgumentNullException">No list.</exception>
    /// <example><code>ElectricalLoad.Together([new("lamp", Power.FromWatts(108), ElectricPotential.FromVolts(12)), new("radio", ElectricCurrent.FromAmperes(5), 0.2)]).Amperes // 10.0</code></example>
    public static ElectricCurrent Together(IEnumerable<ElectricalLoad> loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        return ElectricCurrent.FromAmperes(loads.Sum(load => load.MeanCurrent.Amperes));
    }

    /// <summary>Name and current.</summary>
    public override string ToString() => $"{Name}, {QuantityText.Of(MeanCurrent)}";

    private static double Volts(ElectricPotential voltage) => Require.Between(
        voltage, ElectricPotential.FromVolts(6), ElectricPotential.FromVolts(60), "voltage", "Light aeroplanes run on 12 V or 24 V.").Volts;
}
