using System.Text.Json.Nodes;
using UnitsNet;

namespace FlapAero.Published.Tests;

/// <summary>The invented trainer of data/aeroplanes/trainer-h4.json, put together by the domain's own constructors.</summary>
internal static class DemoFixture
{
    public static Aeroplane Trainer { get; } = Read();

    private static Aeroplane Read()
    {
        string path = Path.Combine(AppContext.BaseDirectory, "aeroplanes", "trainer-h4.json");
        JsonNode file = JsonNode.Parse(File.ReadAllText(path))!;
        JsonNode plan = file["wing"]!;
        Wing wing = new(
            Length.FromMeters(Value(plan, "span", "m")),
            Area.FromSquareMeters(Value(plan, "area", "m2")),
            Angle.FromDegrees(Value(plan, "incidence", "deg")),
            Length.FromMeters(Value(plan, "heightOnWheels", "m")));
        double slope = Value(plan, "liftCurveSlope", "1/rad");
        double clean = Value(file, "zeroLiftDragCoefficient", "1");
        return new Aeroplane(
            file["name"]!.GetValue<string>(),
            file["description"]!.GetValue<string>(),
            wing,
            Mass.FromKilograms(Value(file["masses"]!, "minimum", "kg")),
            Mass.FromKilograms(Value(file["masses"]!, "maximum", "kg")),
            file["flapSettings"]!.AsArray().Select(node => Setting(node!, slope, clean, wing.AspectRatio)));
    }

    private static FlapSetting Setting(JsonNode node, double slope, double clean, double aspectRatio) => new(
        node["name"]!.GetValue<string>(),
        Angle.FromDegrees(Value(node, "deflection", "deg")),
        new LiftCurve(
            slope,
            Angle.FromDegrees(Value(node, "zeroLiftAngle", "deg")),
            Value(node, "maximumLiftCoefficient", "1"),
            Angle.FromDegrees(Value(node, "stallRounding", "deg"))),
        new DragPolar(clean + Value(node, "zeroLiftDragIncrement", "1"), Value(node, "oswaldFactor", "1"), aspectRatio),
        new AirspeedCalibration(node["airspeedCalibration"]!["rows"]!.AsArray().Select(row => (
            Speed.FromKnots(row!["indicated"]!.GetValue<double>()), Speed.FromKnots(row["calibrated"]!.GetValue<double>())))),
        Speed.FromKnots(Value(node, "maximumSpeed", "kt")));

    // The fixture converts nothing, so another unit in the file is another file.
    private static double Value(JsonNode parent, string name, string unit)
    {
        JsonNode entry = parent[name]!;
        Assert.Equal(unit, entry["unit"]!.GetValue<string>());
        return entry["value"]!.GetValue<double>();
    }
}
