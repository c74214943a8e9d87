using UnitsNet;

namespace FlapAero;

/// <summary>The invented aerodrome of the lessons, its runways and a week of its weather. All values are invented.</summary>
public static class Quillmere
{
    /// <summary>Height of the aerodrome above the sea.</summary>
    public static Length Elevation { get; } = Length.FromFeet(600);

    /// <summary>Runway 24: asphalt, level. Its other end is <see cref="Runway06"/>.</summary>
    public static Runway Runway24 { get; } = new()
    {
        Name = "24",
        Direction = Angle.FromDegrees(240),
        LengthAvailable = Length.FromMeters(780),
        Elevation = Elevation,
    };

    /// <summary>Runway 06: the same asphalt from the other end.</summary>
    public static Runway Runway06 { get; } = Runway24 with { Name = "06", Direction = Angle.FromDegrees(60) };

    /// <summary>Runway 33: grass, uphill.</summary>
    public static Runway Runway33 { get; } = new()
    {
        Name = "33",
        Direction = Angle.FromDegrees(330),
        LengthAvailable = Length.FromMeters(620),
        Surface = RunwaySurface.FirmGrass,
        Slope = 0.015,
        Elevation = Elevation,
    };

    /// <summary>Monday: calm and cool.</summary>
    public static DemoDay Monday { get; } = new("Monday", Degrees(9), Blowing(240, 0));

    /// <summary>Tuesday: a steady wind down the runway.</summary>
    public static DemoDay Tuesday { get; } = new("Tuesday", Degrees(14), Blowing(240, 8));

    /// <summary>Wednesday: bright and gusty.</summary>
    public static DemoDay Wednesday { get; } = new("Wednesday", Degrees(20), Blowing(210, 14, 24));

    /// <summary>Thursday: hardly a wind.</summary>
    public static DemoDay Thursday { get; } = new("Thursday", Degrees(17), Blowing(260, 3));

    /// <summary>Friday: hot, with a breath of tailwind on runway 24.</summary>
    public static DemoDay Friday { get; } = new("Friday", Degrees(31), Blowing(60, 4));

    /// <summary>Saturday: wind across the runway.</summary>
    public static DemoDay Saturday { get; } = new("Saturday", Degrees(12), Blowing(300, 14));

    /// <summary>Sunday: a calm evening.</summary>
    public static DemoDay Sunday { get; } = new("Sunday", Degrees(15), Blowing(240, 0));

    /// <summary>The week, day by day.</summary>
    public static IReadOnlyList<DemoDay> Week => [Monday, Tuesday, Wednesday, Thursday, Friday, Saturday, Sunday];

    private static Temperature Degrees(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static BriefingWind Blowing(double from, double knots, double? gust = null) => new(
        new Wind(Angle.FromDegrees(from), Speed.FromKnots(knots)), gust is { } strong ? Speed.FromKnots(strong) : null);
}
