using UnitsNet;
using UnitsNet.Units;

namespace FlapAero.Manuals;

/// <summary>
/// A flap setting's airspeed calibration as the fitted aeroplane has it: the manual's rows, and beyond them the error of the row at the
/// end, as far down and up as the aeroplane flies. Without a table the needle is taken to show calibrated airspeed. Immutable.
/// </summary>
internal sealed class PrintedCalibration
{
    // What a needle without a table may be wrong by near the stall: the demo aeroplanes' err by 2 kt to 9 kt there.
    private const double WithoutTable = 4;
    private const double LowestKnots = 12;
    private const double HighestKnots = 260;

    private readonly double _error;

    public PrintedCalibration(PrintedSetting setting)
    {
        IsGiven = setting.Calibration is not null;
        if (setting.Calibration is not { } given)
        {
            Table = new([(At(LowestKnots), At(LowestKnots)), (At(HighestKnots), At(HighestKnots))]);
            _error = WithoutTable;
            return;
        }

        IReadOnlyList<(Speed Indicated, Speed Calibrated)> rows = given.Table.Rows;
        bool isWhole = rows.All(row => IsWhole(row.Indicated) && IsWhole(row.Calibrated));
        double unit = given.Slowest.Value.ToUnit(SpeedUnit.Knot).Value / Math.Max(given.Slowest.Value.Value, 1e-9);
        _error = (isWhole ? 1 : 0.1) * unit / Math.Sqrt(12);
        Table = new(Extended(rows));
    }

    public AirspeedCalibration Table { get; }

    public bool IsGiven { get; }

    /// <summary>Calibrated airspeed of a printed one, and the standard error of it in knots by the rounding of both.</summary>
    public (Speed Calibrated, double Knots) Of(Printed<PrintedAirspeed> printed, Air air)
    {
        double own = printed.StepKnots() / Math.Sqrt(12);
        return printed.Value.Kind switch
        {
            AirspeedKind.Calibrated => (printed.Value.Value, own),
            AirspeedKind.True => (FlapAero.Airspeed.FromTrue(printed.Value.Value, air).Calibrated, own),
            _ => (Table.Calibrated(printed.Value.Value), Math.Sqrt(Slope(printed.Value.Value) * Slope(printed.Value.Value) * own * own + _error * _error)),
        };
    }

    private double Slope(Speed indicated)
    {
        Speed half = At(0.5);
        Speed low = indicated - half, high = indicated + half;
        if (low < Table.Rows[0].Indicated || high > Table.Rows[^1].Indicated) return 1;
        return (Table.Calibrated(high) - Table.Calibrated(low)).Knots;
    }

    private static List<(Speed, Speed)> Extended(IReadOnlyList<(Speed Indicated, Speed Calibrated)> rows)
    {
        List<(Speed, Speed)> all = [.. rows];
        (Speed indicated, Speed calibrated) = rows[0];
        Speed down = Smaller(indicated, calibrated - At(LowestKnots));
        if (down > At(1)) all.Insert(0, (indicated - down, calibrated - down));
        (indicated, calibrated) = rows[^1];
        Speed up = At(HighestKnots) - indicated;
        if (up > At(1)) all.Add((At(HighestKnots), calibrated + up));
        return all;
    }

    private static Speed Smaller(Speed first, Speed second) => first < second ? first : second;

    private static bool IsWhole(Speed speed) => speed.Value == Math.Round(speed.Value);

    private static Speed At(double knots) => Speed.FromKnots(knots);
}
