using System.Text.Json.Nodes;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// An approach at Quillmere, on its Thursday unless another temperature is given, worked from the aeroplane's file without the library:
/// a parabolic polar, the weight's part along the path, and a propeller's table read along straight lines. At maximum weight; SI throughout.
/// </summary>
internal sealed class HandApproach
{
    private readonly JsonNode _file;
    private readonly (double Ratio, double Thrust, double Power)[] _rows;
    private readonly double _weight, _area, _diameter, _density;

    public HandApproach(string path, double celsius = 17)
    {
        // 600 ft in the standard atmosphere's pressure.
        _density = 101325 * Math.Pow(1 - 0.0065 * 182.88 / 288.15, 5.2559) / (287.05 * (celsius + 273.15));
        _file = JsonNode.Parse(File.ReadAllText(path))!;
        _rows = [.. _file["propeller"]!["table"]!["rows"]!.AsArray().Select(r => (Number(r!, "advanceRatio"), Number(r!, "thrustCoefficient"), Number(r!, "powerCoefficient")))];
        (_weight, _area, _diameter) = (9.80665 * Value(_file["masses"]!["maximum"]!), Value(_file["wing"]!["area"]!), Value(_file["propeller"]!["diameter"]!));
    }

    /// <summary>Thrust in newtons at a multiple of the stall on a descent: T = D − W sin γ.</summary>
    public double Thrust(string flaps, double multiple, double degrees) =>
        Drag(flaps, multiple, Math.Cos(degrees * Math.PI / 180)) - _weight * Math.Sin(degrees * Math.PI / 180);

    /// <summary>Engine speed in revolutions per minute that gives this thrust.</summary>
    public double Turns(string flaps, double multiple, double degrees)
    {
        double thrust = Thrust(flaps, multiple, degrees);
        return 60 * Bisect(n => Read(Speed(flaps, multiple) / (n * _diameter), r => r.Thrust) * _density * n * n * Math.Pow(_diameter, 4) - thrust, 18, 45);
    }

    /// <summary>The descent in degrees with the throttle closed, at a multiple of the stall.</summary>
    public double ClosedThrottle(string flaps, double multiple = 1.3)
    {
        JsonNode engine = _file["propeller"]!["closedThrottle"]!;
        double speed = Speed(flaps, multiple), torque = Value(engine["torqueAtStandstill"]!), free = Value(engine["freeSpeed"]!) / 60;
        double turns = Bisect(n => Read(speed / (n * _diameter), r => r.Power) * _density * n * n * Math.Pow(_diameter, 5) / (2 * Math.PI) - torque * (1 - n / free), Math.Max(13, 1.0001 * speed / (_rows[^1].Ratio * _diameter)), 25);
        double thrust = Read(speed / (turns * _diameter), r => r.Thrust) * _density * turns * turns * Math.Pow(_diameter, 4);
        return Math.Asin((Drag(flaps, multiple, 0.993) - thrust) / _weight) * 180 / Math.PI;
    }

    /// <summary>D = q S (C_D0 + C_L²/(π A e)): at a multiple k of the stall C_L = C_Lmax/k².</summary>
    private double Drag(string flaps, double multiple, double cosine)
    {
        double most = Value(Setting(flaps)["maximumLiftCoefficient"]!), lift = most * cosine / (multiple * multiple), span = Value(_file["wing"]!["span"]!);
        double zero = Value(_file["zeroLiftDragCoefficient"]!) + Value(Setting(flaps)["zeroLiftDragIncrement"]!);
        double drag = zero + lift * lift / (Math.PI * span * span / _area * Value(Setting(flaps)["oswaldFactor"]!));
        return _weight * multiple * multiple / most * drag;
    }

    /// <summary>True airspeed in metres per second at a multiple of the stall.</summary>
    public double Speed(string flaps, double multiple) =>
        multiple * Math.Sqrt(2 * _weight / (_density * _area * Value(Setting(flaps)["maximumLiftCoefficient"]!)));

    private double Read(double ratio, Func<(double Ratio, double Thrust, double Power), double> column)
    {
        int i = Array.FindIndex(_rows, row => row.Ratio >= ratio);
        double share = (ratio - _rows[i - 1].Ratio) / (_rows[i].Ratio - _rows[i - 1].Ratio);
        return column(_rows[i - 1]) + share * (column(_rows[i]) - column(_rows[i - 1]));
    }

    /// <summary>The root of a function that rises from below zero to above it.</summary>
    private static double Bisect(Func<double, double> rising, double low, double high)
    {
        Assert.True(rising(low) < 0 && rising(high) > 0);
        for (int i = 0; i < 60; i++)
            (low, high) = rising((low + high) / 2) < 0 ? ((low + high) / 2, high) : (low, (low + high) / 2);
        return low;
    }

    private JsonNode Setting(string flaps) => _file["flapSettings"]!.AsArray().Single(s => s!["name"]!.GetValue<string>() == flaps)!;

    private static double Value(JsonNode node) => Number(node, "value");

    private static double Number(JsonNode node, string key) => node[key]!.GetValue<double>();
}
