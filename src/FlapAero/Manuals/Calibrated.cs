using FlapAero.AeroplaneFiles;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>A manual's airspeeds through its own tables, and its stalling speeds as it gives them, for rules that compare.</summary>
internal sealed class Calibrated
{
    private const double Typical = 1.4;

    private readonly ManualContent _manual;
    private readonly PrintedCalibration[] _tables;

    public Calibrated(ManualContent manual)
    {
        _manual = manual;
        _tables = [.. manual.Settings.Select(setting => new PrintedCalibration(setting))];
    }

    /// <summary>Calibrated knots.</summary>
    public double Knots(Printed<PrintedAirspeed> speed, int flaps, Air? air = null) =>
        _tables[flaps].Of(speed, air ?? Air.StandardSeaLevel).Calibrated.Knots;

    /// <summary>C_Lmax that a stalling speed stands for.</summary>
    public double Lift(PrintedStall row)
    {
        double speed = Speed.FromKnots(Knots(row.Speed, row.Flaps)).MetersPerSecond;
        double load = 1 / Math.Cos(row.Bank?.Value.Radians ?? 0);
        double mass = (row.Mass?.Value ?? _manual.MaximumMass.Value).Kilograms;
        return load * mass * StandardConstants.Gravity
            / (AirspeedLaws.DynamicPressure(StandardConstants.SeaLevelDensity, speed) * _manual.Area.Value.SquareMeters);
    }

    /// <summary>C_Lmax of a setting as the manual's stalls have it; a typical clean wing's where it gives none.</summary>
    public (double Lift, bool IsGiven) LiftOf(int flaps)
    {
        double[] lifts = [.. _manual.Stalls.Where(row => row.Flaps == flaps).Select(Lift).Order()];
        return lifts.Length > 0 ? (lifts[lifts.Length / 2], true) : (Typical, false);
    }

    /// <summary>Calibrated stalling speed in knots; none where the manual gives no stall with this setting.</summary>
    public double? Stall(int flaps, Printed<Mass>? mass)
    {
        (double lift, bool isGiven) = LiftOf(flaps);
        if (!isGiven) return null;
        double weight = (mass?.Value ?? _manual.MaximumMass.Value).Kilograms * StandardConstants.Gravity;
        return Speed.FromMetersPerSecond(
            StallLaws.Speed(weight, 1, StandardConstants.SeaLevelDensity, _manual.Area.Value.SquareMeters, lift)).Knots;
    }

    /// <summary>A speed that must lie above the stall of its setting, and not above the highest speed.</summary>
    public void AboveStall(Printed<PrintedAirspeed> speed, int flaps, Printed<Mass>? mass, double multiple, string why, FaultList faults, Air? air = null)
    {
        double knots = Knots(speed, flaps, air);
        PrintedSetting setting = _manual.Settings[flaps];
        if (Stall(flaps, mass) is { } stall && knots < multiple * stall - 0.5)
            ManualRules.Fault(
                speed, ManualRules.Text($"is {knots:0.0} kt calibrated, below {multiple:0.00} times the stall with flaps {setting.Name}, {stall:0.0} kt"),
                why + (knots * 1.1508 > multiple * stall || speed.Unit.StartsWith("mph", StringComparison.Ordinal) ? "; is the unit right?" : ""), faults);
        if (setting.MaximumSpeed is { } fastest && knots > Knots(fastest, flaps) + 0.5)
            ManualRules.Fault(
                speed, $"is faster than the highest speed with flaps {setting.Name}, {fastest.Written}", "nothing is flown faster; is the flap setting right?", faults);
    }
}
