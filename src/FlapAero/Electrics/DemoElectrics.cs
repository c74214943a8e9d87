using UnitsNet;

namespace FlapAero;

/// <summary>
/// The electrical system of an invented trainer, 12 V of battery under a 14 V generator: what it carries when the generator has stopped. All
/// values are invented, in round numbers; the reason stands with each.
/// </summary>
public static class DemoElectrics
{
    /// <summary>The battery's voltage without a generator.</summary>
    public static ElectricPotential Voltage { get; } = ElectricPotential.FromVolts(12);

    /// <summary>The battery, new, warm and full: 20 Ah over one hour, as aeroplanes' batteries are rated; the exponent between those of sealed and flooded cells.</summary>
    public static Battery Battery { get; } = new(ElectricCharge.FromAmpereHours(20), Duration.FromHours(1), 1.15);

    /// <summary>The landing light: a filament lamp.</summary>
    public static ElectricalLoad LandingLight { get; } = new("landing light", Power.FromWatts(108), Voltage);

    /// <summary>The heater of the pitot tube.</summary>
    public static ElectricalLoad PitotHeat { get; } = new("pitot heat", Power.FromWatts(72), Voltage);

    /// <summary>Three filament lamps.</summary>
    public static ElectricalLoad PositionLights { get; } = new("position lights", Power.FromWatts(60), Voltage);

    /// <summary>The flashes on the wing tips.</summary>
    public static ElectricalLoad Strobes { get; } = new("strobes", ElectricCurrent.FromAmperes(3));

    /// <summary>A navigation display.</summary>
    public static ElectricalLoad Display { get; } = new("display", ElectricCurrent.FromAmperes(2));

    /// <summary>The second radio, receiving.</summary>
    public static ElectricalLoad SecondRadio { get; } = new("second radio", ElectricCurrent.FromAmperes(1));

    /// <summary>The transponder.</summary>
    public static ElectricalLoad Transponder { get; } = new("transponder", ElectricCurrent.FromAmperes(1));

    /// <summary>The first radio, receiving.</summary>
    public static ElectricalLoad Radio { get; } = new("radio", ElectricCurrent.FromAmperes(1));

    /// <summary>What transmitting adds, a fifth of the time in a busy circuit.</summary>
    public static ElectricalLoad Transmitting { get; } = new("transmitting", ElectricCurrent.FromAmperes(5), 0.2);

    /// <summary>Gauges, warning lamps and the battery's relay: what no switch but the master takes off.</summary>
    public static ElectricalLoad Gauges { get; } = new("gauges and relay", ElectricCurrent.FromAmperes(1));

    /// <summary>All of them, 30 A together, in the order in which a day in sight of the ground can do without them.</summary>
    public static IReadOnlyList<ElectricalLoad> Loads =>
        [LandingLight, PitotHeat, PositionLights, Strobes, Display, SecondRadio, Transponder, Transmitting, Radio, Gauges];

    /// <summary>The flap motor while it runs.</summary>
    public static ElectricalLoad FlapMotor { get; } = new("flap motor", ElectricCurrent.FromAmperes(20));

    /// <summary>How long it runs from up to full.</summary>
    public static Duration FlapTravel { get; } = Duration.FromSeconds(8);
}
