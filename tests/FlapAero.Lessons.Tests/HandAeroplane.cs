using System.Text.Json.Nodes;

namespace FlapAero.Lessons.Tests;

/// <summary>An aeroplane's file read without the library, and two formulas of a textbook: what a student works with by hand.</summary>
internal sealed class HandAeroplane
{
    private readonly JsonNode _file;

    public HandAeroplane(string path) => _file = JsonNode.Parse(File.ReadAllText(path))!;

    /// <summary>Stall at maximum weight in knots: √(2 W/(ρ₀ S C_Lmax)), equivalent airspeed, as near calibrated as matters here.</summary>
    public double Stall(string flaps)
    {
        double mass = Value(_file["masses"]!["maximum"]!, "kg"), area = Value(_file["wing"]!["area"]!, "m2");
        double lift = Value(Setting(flaps)["maximumLiftCoefficient"]!, "1");
        return Math.Sqrt(2 * mass * 9.80665 / (1.225 * area * lift)) * 3600 / 1852;
    }

    /// <summary>Lift over drag at a multiple of the stall: C_L = C_Lmax/m², C_D = C_D0 + ΔC_D + C_L²/(πAe); L = W, as near as matters here.</summary>
    public double LiftToDrag(string flaps, double multiple)
    {
        double span = Value(_file["wing"]!["span"]!, "m"), area = Value(_file["wing"]!["area"]!, "m2");
        double lift = Value(Setting(flaps)["maximumLiftCoefficient"]!, "1") / (multiple * multiple);
        double induced = lift * lift / (Math.PI * span * span / area * Value(Setting(flaps)["oswaldFactor"]!, "1"));
        return lift / (Value(_file["zeroLiftDragCoefficient"]!, "1") + Value(Setting(flaps)["zeroLiftDragIncrement"]!, "1") + induced);
    }

    /// <summary>What the needle shows at a calibrated airspeed with flaps up, along straight lines of the table.</summary>
    public double Needle(double calibrated)
    {
        JsonNode table = Setting("up")["airspeedCalibration"]!;
        Assert.Equal("kt", table["unit"]!.GetValue<string>());
        (double Needle, double True)[] rows = [.. table["rows"]!.AsArray().Select(r => (r!["indicated"]!.GetValue<double>(), r["calibrated"]!.GetValue<double>()))];
        int i = Array.FindIndex(rows, r => r.True >= calibrated);
        return rows[i - 1].Needle + (calibrated - rows[i - 1].True) / (rows[i].True - rows[i - 1].True) * (rows[i].Needle - rows[i - 1].Needle);
    }

    /// <summary>A value of the file, such as the maximum of the masses in kg.</summary>
    public double Of(string group, string name, string unit) => Value(_file[group]![name]!, unit);

    /// <summary>Stalling angle in degrees: α₀ + C_Lmax/a, and half the rounding on top.</summary>
    public double StallAngle(string flaps) => Value(Setting(flaps)["zeroLiftAngle"]!, "deg") + Value(Setting(flaps)["stallRounding"]!, "deg") / 2
        + Value(Setting(flaps)["maximumLiftCoefficient"]!, "1") / Of("wing", "liftCurveSlope", "1/rad") * 180 / Math.PI;

    private JsonNode Setting(string flaps) => _file["flapSettings"]!.AsArray().Single(s => s!["name"]!.GetValue<string>() == flaps)!;

    private static double Value(JsonNode node, string unit)
    {
        Assert.Equal(unit, node["unit"]!.GetValue<string>());
        return node["value"]!.GetValue<double>();
    }
}
