using FlapAero.AeroplaneFiles;
using UnitsNet;

namespace FlapAero.Schools;

/// <summary>The units of a school's file, where an aeroplane's file has none for the kind.</summary>
internal static class SchoolUnits
{
    /// <summary>Made where it is probed: a range of a speed is the model's.</summary>
    public static readonly UnitSet<Func<CircuitSpeed>> CircuitSpeeds = new(
        "a speed of the circuit",
        ("KIAS", value => () => CircuitSpeed.OnTheNeedle(Speed.FromKnots(value))),
        ("mph IAS", value => () => CircuitSpeed.OnTheNeedle(Speed.FromMilesPerHour(value))),
        ("km/h IAS", value => () => CircuitSpeed.OnTheNeedle(Speed.FromKilometersPerHour(value))),
        ("VS", value => () => CircuitSpeed.OfStall(value)));

    public static readonly UnitSet<double> Slopes = new("a slope", ("% up", value => value / 100), ("% down", value => -value / 100));

    public static readonly UnitSet<Length> Distances = new(
        "a distance",
        ("nmi", value => Length.FromNauticalMiles(value)), ("km", value => Length.FromKilometers(value)),
        ("m", value => Length.FromMeters(value)), ("ft", value => Length.FromFeet(value)));

    public static readonly UnitSet<Pressure> Pressures = new(
        "a pressure", ("hPa", value => Pressure.FromHectopascals(value)), ("inHg", value => Pressure.FromInchesOfMercury(value)));
}
