using System.Text.Json.Nodes;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The idling propeller of an aeroplane's file without the library: the balance of the propeller's torque and the closed throttle's, its table
/// read along straight lines, at 25 airspeeds from rest to one and a half stalls, and the quadratic nearest to them. SI throughout.
/// </summary>
internal sealed class HandIdle
{
    private const int Airspeeds = 25;

    private readonly (double Ratio, double Thrust, double Power)[] _rows;
    private readonly double _diameter, _standstill, _free, _density;
    private readonly double[] _fit;

    public HandIdle(JsonNode file, double density, double stall)
    {
        JsonNode propeller = file["propeller"]!, engine = propeller["closedThrottle"]!;
        _rows = [.. propeller["table"]!["rows"]!.AsArray().Select(r => (Number(r!, "advanceRatio"), Number(r!, "thrustCoefficient"), Number(r!, "powerCoefficient")))];
        (_diameter, _standstill, _free) = (Number(propeller["diameter"]!, "value"), Number(engine["torqueAtStandstill"]!, "value"), Number(engine["freeSpeed"]!, "value") / 60);
        _density = density;
        double[] speeds = [.. Enumerable.Range(0, Airspeeds).Select(i => 1.5 * stall * i / (Airspeeds - 1))];
        _fit = Nearest(speeds, [.. speeds.Select(Balanced)]);
    }

    /// <summary>Thrust in newtons at a true airspeed in metres per second.</summary>
    public double Thrust(double speed) => _fit[0] + speed * (_fit[1] + speed * _fit[2]);

    private double Balanced(double speed)
    {
        // The torque wanted less the torque given rises with the revolutions near the balance: from above it, down to it.
        double Excess(double n) => Read(speed / (n * _diameter), r => r.Power) * _density * n * n * Math.Pow(_diameter, 5) / (2 * Math.PI) - _standstill * (1 - n / _free);
        double high = 3 * _free, low = high;
        while (Excess(low) >= 0)
            (low, high) = (low - 0.05, low);
        for (int i = 0; i < 60; i++)
            (low, high) = Excess((low + high) / 2) < 0 ? ((low + high) / 2, high) : (low, (low + high) / 2);
        return Read(speed / (low * _diameter), r => r.Thrust) * _density * low * low * Math.Pow(_diameter, 4);
    }

    private double Read(double ratio, Func<(double Ratio, double Thrust, double Power), double> column)
    {
        int i = Math.Max(1, Array.FindIndex(_rows, row => row.Ratio >= ratio));
        double share = (ratio - _rows[i - 1].Ratio) / (_rows[i].Ratio - _rows[i - 1].Ratio);
        return column(_rows[i - 1]) + share * (column(_rows[i]) - column(_rows[i - 1]));
    }

    /// <summary>Least squares by the three normal equations.</summary>
    private static double[] Nearest(double[] x, double[] y)
    {
        double[,] a = new double[3, 4];
        for (int row = 0; row < 3; row++)
        {
            for (int column = 0; column < 3; column++)
                a[row, column] = x.Sum(value => Math.Pow(value, row + column));
            a[row, 3] = x.Zip(y).Sum(pair => Math.Pow(pair.First, row) * pair.Second);
        }

        for (int pivot = 0; pivot < 2; pivot++)
        {
            for (int row = pivot + 1; row < 3; row++)
            {
                double times = a[row, pivot] / a[pivot, pivot];
                for (int column = pivot; column < 4; column++)
                    a[row, column] -= times * a[pivot, column];
            }
        }

        double second = a[2, 3] / a[2, 2], first = (a[1, 3] - a[1, 2] * second) / a[1, 1];
        return [(a[0, 3] - a[0, 1] * first - a[0, 2] * second) / a[0, 0], first, second];
    }

    private static double Number(JsonNode node, string key) => node[key]!.GetValue<double>();
}
