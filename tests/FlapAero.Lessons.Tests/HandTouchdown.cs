using System.Text.Json.Nodes;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// Where the wheels touch on Quillmere's Monday, stepped by 2 ms from the aeroplane's file without the library: a calm path of 3.5°
/// from 50 ft, an exponential round-out with which the throttle closes over 4 s, and a hold-off that ends at 0.8 of the wing's most lift
/// or where the tail must go no lower. At maximum weight; SI throughout.
/// </summary>
internal sealed class HandTouchdown
{
    private const double Gravity = 9.80665, Knot = 1852 / 3600.0, Foot = 0.3048;

    // 600 ft in the standard atmosphere's pressure, at 9 °C.
    private static readonly double Density = 101325 * Math.Pow(1 - 0.0065 * 182.88 / 288.15, 5.2559) / (287.05 * 282.15);

    private readonly JsonNode _file;
    private readonly double _mass, _area, _span, _wingHeight;

    public HandTouchdown(string path)
    {
        _file = JsonNode.Parse(File.ReadAllText(path))!;
        JsonNode wing = _file["wing"]!;
        (_mass, _area, _span, _wingHeight) = (Value(_file["masses"]!["maximum"]!), Value(wing["area"]!), Value(wing["span"]!), Value(wing["heightOnWheels"]!));
    }

    /// <summary>By how many feet the touchdown moves when the threshold is crossed so many knots too fast, so many feet too high.</summary>
    public double Later(string flaps, double knots = 0, double feet = 0) => Feet(flaps, knots, feet) - Feet(flaps, 0, 0);

    /// <summary>Feet from the threshold to the touch.</summary>
    public double Feet(string flaps, double knots, double feet)
    {
        JsonNode setting = _file["flapSettings"]!.AsArray().Single(s => s!["name"]!.GetValue<string>() == flaps)!;
        double weight = _mass * Gravity, most = Value(setting["maximumLiftCoefficient"]!), least = Value(_file["zeroLiftDragCoefficient"]!) + Value(setting["zeroLiftDragIncrement"]!);
        double perSquare = 1 / (Math.PI * _span * _span / _area * Value(setting["oswaldFactor"]!));
        double stall = Math.Sqrt(2 * weight / (Density * _area * most)), speed = 1.3 * stall + knots * Knot, height = (50 + feet) * Foot;
        double sink = speed * Math.Sin(3.5 * Math.PI / 180), angle = -3.5 * Math.PI / 180, x = 0, time = 0, closes = double.NaN;
        const double Constant = 1.5, Low = 0.3, Step = 0.002;
        var idle = new HandIdle(_file, Density, stall);
        double held = Math.Min(0.8 * most, TailLimit(setting));
        double Drag(double lift, double h)
        {
            double q = 0.5 * Density * speed * speed * _area, ground = 1 - Math.Exp(-2.48 * Math.Pow(2 * (Math.Max(h, 0) + _wingHeight) / _span, 0.768));
            return q * (least + ground * perSquare * (lift / q) * (lift / q));
        }

        double approach = Drag(weight * Math.Cos(angle), height) + weight * Math.Sin(angle);
        for (bool round = false, settles = false; height > 0; time += Step)
        {
            if (!round && height <= Low + sink * Constant)
                (round, closes) = (true, time);
            double thrust = double.IsNaN(closes) ? approach : approach + (idle.Thrust(speed) - approach) * Math.Min(1, (time - closes) / 4);
            double pull = round ? _mass * (height - Low) / (Constant * Constant) : 0, enough = held * 0.5 * Density * speed * speed * _area;
            if (!settles)
                angle = Math.Asin(-(round ? (height - Low) / Constant : sink) / speed);
            settles |= round && weight * Math.Cos(angle) + pull >= enough;
            double lift = settles ? enough : weight * Math.Cos(angle) + pull, slows = (thrust - Drag(lift, height)) / _mass - Gravity * Math.Sin(angle);
            (x, height) = (x + speed * Math.Cos(angle) * Step, height + speed * Math.Sin(angle) * Step);
            if (settles)
                angle += (lift - weight * Math.Cos(angle)) / (_mass * speed) * Step;
            speed += slows * Step;
        }

        return x / Foot;
    }

    /// <summary>C_L on level wheels at the attitude that keeps the tail clear, on the straight part of the lift curve.</summary>
    private double TailLimit(JsonNode setting) => Value(_file["wing"]!["liftCurveSlope"]!) * Math.PI / 180
        * (Value(_file["tailLimitAttitude"]!) + Value(_file["wing"]!["incidence"]!) - Value(setting["zeroLiftAngle"]!));

    private static double Value(JsonNode node) => node["value"]!.GetValue<double>();
}
