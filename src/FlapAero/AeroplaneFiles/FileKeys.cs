using System.Text.RegularExpressions;

namespace FlapAero.AeroplaneFiles;

/// <summary>A key of the file, what to write behind it, and whether it may be left out.</summary>
internal sealed record FileKey(string Name, string Form, bool Optional = false);

/// <summary>The keys of each kind of object in an aeroplane's file, and how an origin is written. The schema says the same; a test compares them.</summary>
internal static partial class FileKeys
{
    /// <summary>Where a value comes from: one word, then a note if there is something to say.</summary>
    public const string OriginPattern = @"^(invented|estimate|measured|published)(: ?\S.*)?$";

    public static readonly IReadOnlyList<FileKey> Aeroplane =
    [
        new("$schema", "\"aeroplane.schema.json\"", Optional: true),
        new("name", "a text"),
        new("description", "a text"),
        new("wing", "an object { … }"),
        new("zeroLiftDragCoefficient", Quantity("1")),
        new("masses", "an object { … }"),
        new("crosswindLimit", Quantity("kt"), Optional: true),
        new("tailLimitAttitude", Quantity("deg"), Optional: true),
        new("propeller", "an object { … }"),
        new("flapSettings", "a list [ … ], from up to full"),
    ];

    public static readonly IReadOnlyList<FileKey> Wing =
    [
        new("span", Quantity("m")),
        new("area", Quantity("m2")),
        new("incidence", Quantity("deg")),
        new("heightOnWheels", Quantity("m")),
        new("liftCurveSlope", Quantity("1/rad")),
    ];

    public static readonly IReadOnlyList<FileKey> Masses = [new("minimum", Quantity("kg")), new("maximum", Quantity("kg"))];

    public static readonly IReadOnlyList<FileKey> Propeller =
    [
        new("diameter", Quantity("m")),
        new("maximumSpeed", Quantity("rpm")),
        new("closedThrottle", "an object { … }"),
        new("fullThrottleTorque", Quantity("N.m"), Optional: true),
        new("table", "an object { … }"),
    ];

    public static readonly IReadOnlyList<FileKey> ClosedThrottle =
        [new("torqueAtStandstill", Quantity("N.m")), new("freeSpeed", Quantity("rpm"))];

    public static readonly IReadOnlyList<FileKey> PropellerTable =
    [
        new("origin", "a text such as \"invented\""),
        new("rows", "a list [ … ] of rows { \"advanceRatio\": …, \"thrustCoefficient\": …, \"powerCoefficient\": … }"),
    ];

    public static readonly IReadOnlyList<FileKey> PropellerRow =
        [new("advanceRatio", "a number"), new("thrustCoefficient", "a number"), new("powerCoefficient", "a number")];

    public static readonly IReadOnlyList<FileKey> FlapSetting =
    [
        new("name", "a text such as \"up\" or \"20°\""),
        new("deflection", Quantity("deg")),
        new("zeroLiftAngle", Quantity("deg")),
        new("maximumLiftCoefficient", Quantity("1")),
        new("stallRounding", Quantity("deg")),
        new("zeroLiftDragIncrement", Quantity("1")),
        new("oswaldFactor", Quantity("1")),
        new("maximumSpeed", Quantity("kt")),
        new("airspeedCalibration", "an object { … }"),
    ];

    public static readonly IReadOnlyList<FileKey> Calibration =
    [
        new("unit", "a unit of speed such as \"kt\""),
        new("origin", "a text such as \"invented\""),
        new("rows", "a list [ … ] of rows { \"indicated\": …, \"calibrated\": … }"),
    ];

    public static readonly IReadOnlyList<FileKey> Row = [new("indicated", "a number"), new("calibrated", "a number")];

    public static readonly IReadOnlyList<FileKey> Value =
    [
        new("value", "a number"),
        new("unit", "a text such as \"m\""),
        new("origin", "a text such as \"invented\""),
    ];

    [GeneratedRegex(OriginPattern)]
    public static partial Regex Origin();

    private static string Quantity(string unit) => $"{{ \"value\": …, \"unit\": \"{unit}\", \"origin\": \"…\" }}";
}
