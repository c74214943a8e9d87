using System.Text.Json.Nodes;

namespace FlapAero.Tests.Aeroplanes;

/// <summary>One way to spoil a good file, and what the reader has to say to it.</summary>
/// <param name="Edit">Spoils it.</param>
/// <param name="Place">Where the fault is.</param>
/// <param name="Piece">Text that stands on the fault's line only.</param>
/// <param name="Says">What the fault says.</param>
/// <param name="Above">How many lines above that piece the fault is.</param>
internal sealed partial record BadFile(Action<JsonNode> Edit, string Place, string Piece, string Says, int Above = 0)
{
    /// <summary>A scalar replaced by another, which nothing else in the file looks like.</summary>
    public static BadFile Value(string place, string json, string says, string? reported = null) =>
        new(root => root.Set(place, json), reported ?? place, Line(place, json), says);

    /// <summary>Faults of form, which the schema refuses too.</summary>
    public static IReadOnlyDictionary<string, BadFile> OfForm { get; } = new Dictionary<string, BadFile>(PropellerOfForm)
    {
        ["name missing"] = new(root => root.Remove("name"), "name", "\"$schema\"", "the key is missing; write \"name\": a text", 1),
        ["masses missing"] = new(root => root.Remove("masses"), "masses", "\"$schema\"", "the key is missing", 1),
        ["span missing"] = new(
            root => root.Remove("wing.span"), "wing.span", "\"wing\"",
            "the key is missing; write \"span\": { \"value\": …, \"unit\": \"m\", \"origin\": \"…\" }"),
        ["flap key missing"] = new(
            root => root.Remove("flapSettings[2].oswaldFactor"), "flapSettings[2].oswaldFactor", "\"name\": \"20°\"", "the key is missing", 1),
        ["value missing"] = new(root => root.Remove("wing.area.value"), "wing.area.value", "\"area\"", "the key is missing; write \"value\": a number"),
        ["unit missing"] = new(root => root.Remove("wing.area.unit"), "wing.area.unit", "\"area\"", "the key is missing"),
        ["origin missing"] = new(root => root.Remove("wing.area.origin"), "wing.area.origin", "\"area\"", "the key is missing"),
        ["calibration unit missing"] = new(
            root => root.Remove("flapSettings[0].airspeedCalibration.unit"), "flapSettings[0].airspeedCalibration.unit",
            "\"value\": 150", "the key is missing", -4),
        ["key misspelt"] = new(root => root.Rename("wing.span", "spann"), "wing.spann", "\"spann\"", "no such key is known here; did you mean \"span\"?"),
        ["key in capitals"] = new(root => root.Rename("wing.span", "Span"), "wing.Span", "\"Span\"", "did you mean \"span\"?"),
        ["key too many"] = new(
            root => root["wing"]!["dihedral"] = 5, "wing.dihedral", "\"dihedral\"",
            "no such key is known here; the keys here are \"span\", \"area\", \"incidence\", \"heightOnWheels\" and \"liftCurveSlope\""),
        ["key with odd letters"] = new(root => root["a \"key\"\n"] = 5, "[\"a \\\"key\\\"\\n\"]", "key", "no such key is known here"),
        ["row key too many"] = new(
            root => root.At("flapSettings[1].airspeedCalibration.rows[2]")["true"] = 5,
            "flapSettings[1].airspeedCalibration.rows[2].true", "\"true\"", "the keys here are \"indicated\" and \"calibrated\""),
        ["text for a number"] = Value("wing.span.value", "\"10.9\"", "the text \"10.9\" stands here; a number is wanted, without quotes"),
        ["word for a number"] = Value("wing.span.value", "true", "true stands here; a number is wanted"),
        ["null for a number"] = Value("wing.span.value", "null", "null stands here; a number is wanted"),
        ["null for a quantity"] = Value("masses.maximum", "null", "null stands here; an object with \"value\", \"unit\" and \"origin\" is wanted"),
        ["number for a quantity"] = Value("masses.maximum", "1091", "the number 1091 stands here; an object with"),
        ["number for a part"] = Value("wing", "1091", "the number 1091 stands here; an object with"),
        ["number for a text"] = Value("description", "1091", "the number 1091 stands here; a text in double quotes is wanted"),
        ["empty name"] = Value("name", "\"  \"", "the text is empty"),
        ["no flap setting"] = Value("flapSettings", "[]", "a list of nothing stands here; a list [ … ] of flap settings from up to full is wanted"),
        ["text for flap settings"] = Value("flapSettings", "\"none\"", "the text \"none\" stands here; a list"),
        ["number for a flap setting"] = Value("flapSettings[1]", "1091", "the number 1091 stands here; an object with"),
        ["one calibration row"] = new(
            root => root.Set("flapSettings[3].airspeedCalibration.rows", "[{ \"indicated\": 21, \"calibrated\": 34.5 }]"),
            "flapSettings[3].airspeedCalibration.rows", "\"indicated\": 21", "a list of 1 stands here; a list [ … ] of two rows or more", 2),
        ["text for a speed"] = Value("flapSettings[0].airspeedCalibration.rows[3].calibrated", "\"fast\"", "the text \"fast\" stands here; a number"),
        ["negative speed"] = Value("flapSettings[0].airspeedCalibration.rows[0].indicated", "-25", "-25 is negative; an airspeed is zero or more"),
        ["speed for a length"] = Value("wing.span.unit", "\"mph\"", "\"mph\" is no unit of a length; use m, cm, ft or in"),
        ["length for a coefficient"] = Value("zeroLiftDragCoefficient.unit", "\"ft\"", "\"ft\" is no unit of a coefficient; use \"1\""),
        ["number for a unit"] = Value("zeroLiftDragCoefficient.unit", "1091", "the number 1091 stands here; a unit in double quotes is wanted: \"1\""),
        ["unit in capitals"] = Value("flapSettings[0].maximumSpeed.unit", "\"KT\"", "\"KT\" is no unit of a speed; use kt, m/s, km/h or mph"),
        ["mass for a calibration"] = Value("flapSettings[0].airspeedCalibration.unit", "\"lb\"", "\"lb\" is no unit of a speed"),
        ["slope without length"] = Value("wing.liftCurveSlope.unit", "\"rad\"", "\"rad\" is no unit of a lift-curve slope; use 1/rad or 1/deg"),
        ["origin empty"] = Value("wing.span.origin", "\"\"", "the origin is empty; write invented, estimate, measured or published"),
        ["origin of no kind"] = Value("wing.span.origin", "\"a guess\"", "\"a guess\" does not say where the value comes from; write invented"),
        ["origin without a colon"] = Value("wing.span.origin", "\"estimated\"", "\"estimated\" does not say where"),
        ["origin a number"] = Value("wing.span.origin", "1091", "the number 1091 stands here; write invented"),
        ["calibration of no origin"] = Value("flapSettings[0].airspeedCalibration.origin", "\"?\"", "does not say where the value comes from"),
        ["list for the file"] = new(
            root => root.Set("wing", "[]"), "wing", "\"wing\"", "a list [ … ] stands here; an object with"),
    };

    /// <summary>Values that make no aeroplane: the schema knows nothing of them.</summary>
    public static IReadOnlyDictionary<string, BadFile> OfSense { get; } = new Dictionary<string, BadFile>(PropellerOfSense)
    {
        ["span"] = Value("wing.span.value", "3.01", "span 3.01 m is refused; allowed is 5 m to 25 m. Light aeroplanes lie inside it."),
        ["area"] = Value("wing.area.value", "100.5", "wing area 100.5 m² is refused; allowed is 5 m² to 60 m²"),
        ["incidence"] = Value("wing.incidence.value", "15.5", "incidence 15.5° is refused; allowed is -2° to 8°"),
        ["height on wheels"] = Value("wing.heightOnWheels.value", "5.01", "height of the wing on its wheels 5.01 m is refused"),
        ["slope"] = Value("wing.liftCurveSlope.value", "6.5", "lift-curve slope (per radian) 6.5 is refused; allowed is 2 to 6.2832"),
        ["aspect ratio"] = Value(
            "wing.span.value", "24.5", "with an area of 16.6 m2, aspect ratio b²/S 36.16 is refused; allowed is 3 to 25", "wing.span"),
        ["zero-lift drag"] = Value("zeroLiftDragCoefficient.value", "0.001", "zero-lift drag coefficient 0.001 is refused; allowed is 0.005 to 0.4"),
        ["pounds typed as kilograms"] = Value(
            "masses.maximum.value", "2150",
            "2150 kg makes it stall at 62.6 kt with \"35°\", each square metre of wing carrying 130 kg; a light aeroplane with one engine stalls at 61 kt "
            + "or less in its landing configuration (CS 23.49); did you mean 2150 lb, 975 kg?", "masses.maximum"),
        ["heavy whatever the unit"] = Value(
            "masses.maximum.value", "5600", "in its landing configuration (CS 23.49); are mass, area and C_Lmax right?", "masses.maximum"),
        ["tail limit"] = Value("tailLimitAttitude.value", "2.71", "tail-limit attitude 2.71° is refused; allowed is 3° to 25°"),
        ["crosswind limit"] = Value("crosswindLimit.value", "0.71", "crosswind limit 0.71 kt is refused; allowed is 1 kt to 60 kt"),
        ["maximum mass"] = Value("masses.maximum.value", "150.5", "maximum mass 150.5 kg is refused; allowed is 200 kg to 5"),
        ["minimum mass"] = Value("masses.minimum.value", "99", "minimum mass 99 kg is refused; allowed is 100 kg to 5"),
        ["masses the wrong way round"] = Value("masses.maximum.value", "650", "650 kg is not more than the minimum, 700 kg", "masses.maximum"),
        ["masses alike"] = Value("masses.minimum.value", "1.09e3", "1090 kg is not more than the minimum, 1.09e3 kg", "masses.maximum") with { Above = -5 },
        ["too large a number"] = Value("wing.span.value", "1e999", "1e999 is too large to compute with; a number is wanted"),
        ["huge number"] = Value("wing.span.value", "1e300", "span 1e+300 m is refused"),
        ["deflection"] = Value("flapSettings[3].deflection.value", "61.5", "flap deflection 61.5° is refused; allowed is 0° to 60°"),
        ["zero-lift angle"] = Value("flapSettings[3].zeroLiftAngle.value", "-26", "zero-lift angle -26° is refused"),
        ["maximum lift"] = Value("flapSettings[3].maximumLiftCoefficient.value", "4.55", "maximum lift coefficient 4.55 is refused; allowed is 0.5 to 4"),
        ["rounding"] = Value("flapSettings[3].stallRounding.value", "10.5", "stall rounding 10.5° is refused; allowed is 0.5° to 10°"),
        ["Oswald"] = Value("flapSettings[3].oswaldFactor.value", "1.05", "Oswald factor 1.05 is refused; allowed is 0.3 to 1"),
        ["first setting extended"] = Value(
            "flapSettings[0].deflection.value", "12", "12 deg is not flaps up; the first setting is flaps up, 0 deg", "flapSettings[0].deflection"),
        ["first setting with drag"] = Value(
            "flapSettings[0].zeroLiftDragIncrement.value", "0.0091", "0.0091 is not 0; flaps up add no drag", "flapSettings[0].zeroLiftDragIncrement"),
        ["deflection falls"] = Value(
            "flapSettings[2].deflection.value", "9.5", "9.5 deg does not extend further than 10 deg of \"10°\"", "flapSettings[2].deflection"),
        ["deflection stays"] = Value(
            "flapSettings[2].deflection.value", "10.0", "10.0 deg does not extend further than 10 deg of \"10°\"", "flapSettings[2].deflection"),
        ["lift falls"] = Value(
            "flapSettings[2].maximumLiftCoefficient.value", "1.59",
            "1.59 is less than 1.6 of \"10°\"; flaps add lift, so it does not fall as they extend", "flapSettings[2].maximumLiftCoefficient"),
        ["zero-lift angle rises"] = Value(
            "flapSettings[2].zeroLiftAngle.value", "-4.9", "-4.9 deg is more than -5.0 deg of \"10°\"", "flapSettings[2].zeroLiftAngle"),
        ["drag falls"] = Value(
            "flapSettings[2].zeroLiftDragIncrement.value", "0.007", "0.007 is less than 0.008 of \"10°\"", "flapSettings[2].zeroLiftDragIncrement"),
        ["drag negative"] = Value(
            "flapSettings[1].zeroLiftDragIncrement.value", "-0.01", "-0.01 is negative; flaps add drag", "flapSettings[1].zeroLiftDragIncrement"),
        ["drag too large in all"] = Value(
            "flapSettings[3].zeroLiftDragIncrement.value", "0.39", "0.39 on top of 0.034: zero-lift drag coefficient 0.424 is refused",
            "flapSettings[3].zeroLiftDragIncrement"),
        ["name taken"] = new(
            root => root.Set("flapSettings[3].name", "\" UP\""), "flapSettings[3].name", "\" UP\"", "\" UP\" is the name of flapSettings[0] too"),
        ["indicated falls"] = Value(
            "flapSettings[1].airspeedCalibration.rows[3].indicated", "39.9", "39.9 is not more than 40 of the row before"),
        ["calibrated stays"] = Value(
            "flapSettings[1].airspeedCalibration.rows[3].calibrated", "48.0", "48.0 is not more than 48 of the row before"),
        ["maximum speed past the table"] = Value(
            "flapSettings[0].maximumSpeed.value", "151", "151 kt lies outside the calibration table, 25 to 150 kt indicated", "flapSettings[0].maximumSpeed"),
        ["maximum speed rises"] = Value(
            "flapSettings[2].maximumSpeed.value", "94.9", "95.5 kt is more than 94.9 kt of \"20°\"", "flapSettings[3].maximumSpeed") with
        {
            Edit = root =>
            {
                root.Set("flapSettings[2].maximumSpeed.value", "94.9");
                root.Set("flapSettings[3].maximumSpeed.value", "95.5");
                root.Set("flapSettings[3].airspeedCalibration.rows[7].indicated", "99.5");
            },
            Piece = "\"value\": 95.5",
        },
        ["table ends above the stall"] = Value(
            "flapSettings[0].airspeedCalibration.rows[0].calibrated", "43.1",
            "43.1 kt is more than the calibrated stalling speed at 700 kg, 42.69 kt; the table must reach down"),
        ["maximum speed below the stall"] = Value(
            "flapSettings[3].maximumSpeed.value", "34.4",
            "34.4 kt indicated is not faster than the stall at 1090 kg, 44.57 kt calibrated", "flapSettings[3].maximumSpeed"),
        ["line bends below zero lift"] = new(
            root =>
            {
                root.Set("flapSettings[0].maximumLiftCoefficient.value", "0.5");
                root.Set("flapSettings[0].stallRounding.value", "9.99");
                root.Set("wing.liftCurveSlope.value", "6.2");
                root.Set("flapSettings[0].airspeedCalibration.rows[9].calibrated", "117");
            },
            "flapSettings[0].stallRounding", "9.99", "with C_Lmax 0.5 and a slope of 6.2 1/rad, stall rounding 9.99° is refused; allowed is less than 2 C_Lmax/a"),
    };

    private static string Line(string place, string json)
    {
        string last = place.Split('.')[^1];
        return last.EndsWith(']') ? json : $"\"{last}\": {json}";
    }
}
