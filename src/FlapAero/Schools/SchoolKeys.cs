using FlapAero.AeroplaneFiles;

namespace FlapAero.Schools;

/// <summary>The keys of each kind of object in a school's file. The schema says the same; a test compares them.</summary>
internal static class SchoolKeys
{
    private const string Object = "an object { … }";
    private const string List = "a list [ … ]";

    public static readonly IReadOnlyList<FileKey> School =
    [
        new("$schema", "\"school.schema.json\"", Optional: true),
        new("name", "a text"),
        new("footLine", "a text", Optional: true),
        new("logo", "a text such as \"logo.svg\"", Optional: true),
        new("caution", "a text", Optional: true),
        new("units", "\"aviation\", \"aviation-kg\" or \"si\"", Optional: true),
        new("paper", "\"a4\" or \"letter\"", Optional: true),
        new("lessons", List, Optional: true),
        new("aerodromes", List, Optional: true),
        new("weather", List, Optional: true),
        new("rules", Object, Optional: true),
        new("circuit", Object, Optional: true),
    ];

    public static readonly IReadOnlyList<FileKey> Aerodrome =
    [
        new("name", "a text"),
        new("station", "the four letters of its METAR, such as \"XQAA\"", Optional: true),
        new("elevation", "\"450 ft\"", Optional: true),
        new("runways", List),
    ];

    public static readonly IReadOnlyList<FileKey> Runway =
    [
        new("name", "a text such as \"27\""),
        new("heading", "the true direction of landing, such as \"268 deg\""),
        new("length", "\"900 m\""),
        new("width", "\"23 m\"", Optional: true),
        new("thresholdDisplaced", "\"80 m\"", Optional: true),
        new("slope", "\"1.5 % up\"", Optional: true),
        new("surface", "\"grass\"", Optional: true),
        new("elevation", "\"450 ft\"", Optional: true),
        new("circuit", "\"left\" or \"right\"", Optional: true),
        new("landmarks", List, Optional: true),
    ];

    public static readonly IReadOnlyList<FileKey> Landmark = [new("at", "\"200 m\""), new("is", "a text such as \"the white gate\"")];

    public static readonly IReadOnlyList<FileKey> Day =
    [
        new("name", "a text such as \"Monday\""),
        new("metar", "a METAR, without temperature and wind beside it", Optional: true),
        new("wind", "\"210/12G20\"", Optional: true),
        new("temperature", "\"20 C\"", Optional: true),
        new("qnh", "\"1013 hPa\"", Optional: true),
    ];

    public static readonly IReadOnlyList<FileKey> Rules =
    [
        new("referenceMultiples", Object, Optional: true),
        new("bankLimit", "\"30 deg\"", Optional: true),
        new("stableHeight", "\"300 ft\"", Optional: true),
        new("thresholdHeight", "\"50 ft\"", Optional: true),
        new("lowestThresholdHeight", "\"30 ft\"", Optional: true),
        new("gusts", Object, Optional: true),
        new("margin", Object, Optional: true),
        new("surfaceFactors", List, Optional: true),
        new("headwindShare", "a number such as 0.5", Optional: true),
        new("tailwindShare", "a number such as 1.5", Optional: true),
        new("minimumCircuitHeight", "\"800 ft\"", Optional: true),
        new("crosswindLimit", "\"12 kt\"", Optional: true),
        new("tolerances", Object, Optional: true),
    ];

    public static readonly IReadOnlyList<FileKey> Multiples =
    [
        new("flapsUp", "a number such as 1.3", Optional: true),
        new("partFlaps", "a number such as 1.3", Optional: true),
        new("fullFlaps", "a number such as 1.3", Optional: true),
    ];

    public static readonly IReadOnlyList<FileKey> Gusts =
        [new("share", "a number such as 0.5", Optional: true), new("most", "\"10 kt\"", Optional: true)];

    public static readonly IReadOnlyList<FileKey> Margin = [new("factor", "a number such as 1.43"), new("origin", "a text", Optional: true)];

    public static readonly IReadOnlyList<FileKey> SurfaceFactor = [new("surface", "\"grass\""), new("factor", "a number such as 1.2")];

    public static readonly IReadOnlyList<FileKey> Tolerances =
        [new("fast", "\"10 kt\"", Optional: true), new("slow", "\"5 kt\"", Optional: true)];

    public static readonly IReadOnlyList<FileKey> Circuit =
    [
        new("height", "\"1000 ft\"", Optional: true),
        new("spacing", "\"0.9 nmi\"", Optional: true),
        new("downwind", "\"85 KIAS\" or \"1.6 VS\"", Optional: true),
        new("descending", "\"75 KIAS\" or \"1.4 VS\"", Optional: true),
    ];
}
