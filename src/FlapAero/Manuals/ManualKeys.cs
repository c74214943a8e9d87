using FlapAero.AeroplaneFiles;

namespace FlapAero.Manuals;

/// <summary>The keys of each kind of object in a manual's file. The schema says the same; a test compares them.</summary>
internal static class ManualKeys
{
    private const string Airspeed = "\"48 KIAS\"";
    private const string Mass = "\"2300 lb\"";

    public static readonly IReadOnlyList<FileKey> Manual =
    [
        new("$schema", "\"manual.schema.json\"", Optional: true),
        new("name", "a text"),
        new("description", "a text", Optional: true),
        new("masses", "an object { … }"),
        new("wing", "an object { … }"),
        new("engine", "an object { … }", Optional: true),
        new("crosswindLimit", "\"15 kt\"", Optional: true),
        new("tailLimitAttitude", "\"9 deg\"", Optional: true),
        new("flapSettings", "a list [ … ], from up to full"),
        new("stallSpeeds", "a list [ … ]", Optional: true),
        new("glides", "a list [ … ]", Optional: true),
        new("approachSpeeds", "a list [ … ]", Optional: true),
        new("landings", "a list [ … ]", Optional: true),
        new("flapsUpLanding", "an object { … }", Optional: true),
        new("levelFlights", "a list [ … ]", Optional: true),
        new("climbs", "a list [ … ]", Optional: true),
    ];

    public static readonly IReadOnlyList<FileKey> Masses = [new("minimum", Mass, Optional: true), new("maximum", Mass)];

    public static readonly IReadOnlyList<FileKey> Wing =
        [new("span", "\"35.8 ft\""), new("area", "\"179 ft2\""), new("position", "\"high\" or \"low\"", Optional: true)];

    public static readonly IReadOnlyList<FileKey> Engine =
    [
        new("power", "\"170 hp\"", Optional: true),
        new("speed", "\"2700 rpm\"", Optional: true),
        new("propellerDiameter", "\"76 in\"", Optional: true),
    ];

    public static readonly IReadOnlyList<FileKey> Setting =
    [
        new("name", "a text such as \"up\" or \"20°\""),
        new("deflection", "\"20 deg\""),
        new("maximumSpeed", Airspeed, Optional: true),
        new("airspeedCalibration", "an object { … }", Optional: true),
    ];

    public static readonly IReadOnlyList<FileKey> Calibration =
    [
        new("unit", "a unit of speed such as \"kt\""),
        new("rows", "a list [ … ] of rows { \"indicated\": …, \"calibrated\": … }"),
    ];

    public static readonly IReadOnlyList<FileKey> Stall =
    [
        new("flaps", "a text: a flap setting's name"),
        new("mass", Mass, Optional: true),
        new("bank", "\"30 deg\"", Optional: true),
        new("speed", Airspeed),
    ];

    public static readonly IReadOnlyList<FileKey> Glide =
    [
        new("is", "\"best\" or \"at this speed\""),
        new("flaps", "a text: a flap setting's name", Optional: true),
        new("propeller", "\"idling\", \"stopped\" or \"none\""),
        new("mass", Mass, Optional: true),
        new("speed", Airspeed, Optional: true),
        new("ratio", "a number such as 9.1", Optional: true),
    ];

    public static readonly IReadOnlyList<FileKey> Approach =
        [new("flaps", "a text: a flap setting's name"), new("mass", Mass, Optional: true), new("speed", Airspeed)];

    public static readonly IReadOnlyList<FileKey> Landing =
    [
        new("flaps", "a text: a flap setting's name", Optional: true),
        new("mass", Mass, Optional: true),
        new("approachSpeed", Airspeed, Optional: true),
        new("pressureAltitude", "\"2000 ft\"", Optional: true),
        new("temperature", "\"20 C\"", Optional: true),
        new("headwind", "\"9 kt\"", Optional: true),
        new("surface", "\"paved\" or \"grass\"", Optional: true),
        new("groundRoll", "\"550 ft\"", Optional: true),
        new("from50ft", "\"1340 ft\"", Optional: true),
    ];

    public static readonly IReadOnlyList<FileKey> FlapsUpLanding =
        [new("distanceFactor", "a number such as 1.5", Optional: true), new("speed", Airspeed, Optional: true)];

    public static readonly IReadOnlyList<FileKey> LevelFlight =
    [
        new("pressureAltitude", "\"2000 ft\"", Optional: true),
        new("temperature", "\"20 C\"", Optional: true),
        new("mass", Mass, Optional: true),
        new("engineSpeed", "\"2300 rpm\""),
        new("speed", "\"105 KTAS\""),
    ];

    public static readonly IReadOnlyList<FileKey> Climb =
    [
        new("pressureAltitude", "\"2000 ft\"", Optional: true),
        new("temperature", "\"20 C\"", Optional: true),
        new("flaps", "a text: a flap setting's name", Optional: true),
        new("mass", Mass, Optional: true),
        new("speed", Airspeed),
        new("rate", "\"700 ft/min\""),
    ];
}
