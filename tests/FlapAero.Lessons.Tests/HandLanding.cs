using System.Text.Json.Nodes;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// A landing without flaps at maximum weight, on asphalt at Quillmere, worked from the aeroplane's file without the library: Newton's law stepped by
/// 5 ms from 50 ft to the stop. SI throughout; the pilot's habits are written out as the lessons tell them.
/// </summary>
internal sealed class HandLanding
{
    private const double Gravity = 9.80665, Step = 0.005, HoldOff = 0.3, FlareTime = 1.5, ClosingTime = 4;

    private readonly JsonNode _file;
    private readonly double _mass, _area, _span, _wheels, _zeroLift, _oswald, _most, _held, _level;

    public HandLanding(string path)
    {
        JsonNode file = _file = JsonNode.Parse(File.ReadAllText(path))!;
        JsonNode wing = file["wing"]!, up = file["flapSettings"]![0]!;
        (_mass, _area, _span, _wheels) = (Value(file["masses"]!["maximum"]!), Value(wing["area"]!), Value(wing["span"]!), Value(wing["heightOnWheels"]!));
        _zeroLift = Value(file["zeroLiftDragCoefficient"]!) + Value(up["zeroLiftDragIncrement"]!);
        (_oswald, _most) = (Value(up["oswaldFactor"]!), Value(up["maximumLiftCoefficient"]!));
        // At the tail's limit, and level: both on the straight part of the lift curve.
        double Lift(double attitude) => Value(wing["liftCurveSlope"]!) * (attitude + Value(wing["incidence"]!) - Value(up["zeroLiftAngle"]!)) * Math.PI / 180;
        // The hold-off ends at 0.8 of the most lift, or where the tail ends it; so high the nose stays on the roll.
        (_held, _level) = (Math.Min(0.8 * _most, Lift(Value(file["tailLimitAttitude"]!))), Lift(0));
    }

    /// <summary>Touchdown, where the nose comes down, and the stop, in metres from the threshold.</summary>
    /// <param name="celsius">Temperature, 600 ft above the sea.</param>
    /// <param name="headwind">Knots.</param>
    /// <param name="faster">Calibrated knots on top of 1.3 stalls.</param>
    public (double Touchdown, double NoseDown, double Stop) Land(double celsius, double headwind, double faster = 0)
    {
        double density = 101325 * Math.Pow(1 - 0.0065 * 182.88 / 288.15, 5.2559) / (287.05 * (celsius + 273.15)), knot = 1852 / 3600.0;
        double weight = _mass * Gravity, wind = headwind * knot, pressure = 0.5 * density * _area;
        double stall = Math.Sqrt(weight / (pressure * _most)), closed = double.PositiveInfinity;
        double speed = 1.3 * stall + faster * knot * Math.Sqrt(1.225 / density), height = 50 * 0.3048, time = 0, distance = 0;
        var idle = new HandIdle(_file, density, stall);
        double Drag(double v, double lift, double h) => pressure * v * Math.Abs(v)
            * (_zeroLift + (1 - Math.Exp(-2.48 * Math.Pow(2 * (h + _wheels) / _span, 0.768))) * lift * lift * _area / (Math.PI * _span * _span * _oswald));
        // 3.5° over the ground: the sink rate of a speed through the air whose horizontal part less the wind is sink over slope.
        double slope = Math.Tan(3.5 * Math.PI / 180);
        double sink = slope * (speed * Math.Cos(Math.Asin(slope * (speed - wind) / speed)) - wind);
        double first = Drag(speed, weight / (pressure * speed * speed), height) - weight * sink / speed;
        double Thrust() => first + (idle.Thrust(speed) - first) * Math.Clamp((time - closed) / ClosingTime, 0, 1);

        void Move(double climb, double lift)
        {
            double slowing = (Drag(speed, lift, height) - Thrust()) / _mass + Gravity * climb / speed;
            distance += (Math.Sqrt(speed * speed - climb * climb) - wind - slowing * Step / 2) * Step;
            (speed, height, time) = (speed - slowing * Step, height + climb * Step, time + Step);
        }
        while (height > HoldOff + sink * FlareTime)
            Move(-sink, weight / (pressure * speed * speed));
        // Now the throttle begins to close.
        closed = time;
        double rate = -sink, needed;
        while ((needed = (weight + _mass * (height - HoldOff) / (FlareTime * FlareTime)) / (pressure * speed * speed)) < _held)
            Move(rate = -(height - HoldOff) / FlareTime, needed);
        while (height > 0)
        {
            rate += (pressure * speed * speed * _held - weight) / _mass * Step;
            Move(rate, _held);
        }

        double touchdown = distance, lowered = 0.85 * speed;
        void Roll(double lift, double friction, double until)
        {
            while (speed > until)
            {
                double slowing = (Drag(speed, lift, 0) + friction * Math.Max(0, weight - pressure * speed * speed * lift) - Thrust()) / _mass;
                distance += (speed - wind - slowing * Step / 2) * Step;
                (speed, time) = (speed - slowing * Step, time + Step);
            }
        }
        Roll(_held, 0.02, lowered);
        double down = distance;
        Roll(_level, 0.3, wind);
        return (touchdown, down, distance);
    }

    private static double Value(JsonNode node) => node["value"]!.GetValue<double>();
}
