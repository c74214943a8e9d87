using FlapAero.Files;
using UnitsNet;

namespace FlapAero.AeroplaneFiles;

/// <summary>The units that one kind of value may be written in. Immutable.</summary>
internal sealed class UnitSet<T>(string kind, params (string Name, Func<double, T> Make)[] units)
{
    private readonly (string Name, Func<double, T> Make)[] _units = units;

    public string Kind { get; } = kind;

    public IEnumerable<string> Names => _units.Select(unit => unit.Name);

    /// <summary>"m, cm, ft or in".</summary>
    public string Choice
    {
        get
        {
            string[] names = [.. Names];
            return names.Length == 1 ? PlainText.Quoted(names[0]) : $"{string.Join(", ", names[..^1])} or {names[^1]}";
        }
    }

    public Func<double, T>? Find(string name) => _units.FirstOrDefault(unit => unit.Name == name).Make;
}

/// <summary>The units of every kind of value in an aeroplane's file.</summary>
internal static class UnitSets
{
    public static readonly UnitSet<Length> Lengths = new(
        "a length",
        ("m", value => Length.FromMeters(value)), ("cm", value => Length.FromCentimeters(value)),
        ("ft", value => Length.FromFeet(value)), ("in", value => Length.FromInches(value)));

    public static readonly UnitSet<Area> Areas = new(
        "an area", ("m2", value => Area.FromSquareMeters(value)), ("ft2", value => Area.FromSquareFeet(value)));

    public static readonly UnitSet<Angle> Angles = new(
        "an angle", ("deg", value => Angle.FromDegrees(value)), ("rad", value => Angle.FromRadians(value)));

    public static readonly UnitSet<Mass> Masses = new(
        "a mass", ("kg", value => Mass.FromKilograms(value)), ("lb", value => Mass.FromPounds(value)));

    public static readonly UnitSet<Speed> Speeds = new(
        "a speed",
        ("kt", value => Speed.FromKnots(value)), ("m/s", value => Speed.FromMetersPerSecond(value)),
        ("km/h", value => Speed.FromKilometersPerHour(value)), ("mph", value => Speed.FromMilesPerHour(value)));

    public static readonly UnitSet<RotationalSpeed> RotationalSpeeds = new(
        "an engine speed",
        ("rpm", value => RotationalSpeed.FromRevolutionsPerMinute(value)), ("rev/s", value => RotationalSpeed.FromRevolutionsPerSecond(value)));

    public static readonly UnitSet<Torque> Torques = new(
        "a torque", ("N.m", value => Torque.FromNewtonMeters(value)), ("lbf.ft", value => Torque.FromPoundForceFeet(value)));

    /// <summary>Per radian, whatever the file says.</summary>
    public static readonly UnitSet<double> Slopes = new(
        "a lift-curve slope", ("1/rad", value => value), ("1/deg", value => value * 180 / Math.PI));

    public static readonly UnitSet<double> Coefficients = new("a coefficient", ("1", value => value));
}
