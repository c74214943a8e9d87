using System.Globalization;
using UnitsNet;

namespace FlapAero.AeroplaneFiles;

/// <summary>What one flap setting's values must make together, and with the wing and the masses.</summary>
internal static class RulesInOneSetting
{
    public static void Check(SettingValues setting, WingValues? wing, Given<double>? zeroLiftDrag, Masses? masses, FaultList faults)
    {
        CheckBend(setting, wing?.Slope, faults);
        CheckDrag(setting, zeroLiftDrag, faults);
        bool reachesMaximum = CheckMaximumSpeed(setting, faults);
        if (wing?.Wing is not { } plan || setting.MaximumLiftCoefficient is not { } lift || setting.Calibration is not { } table) return;
        if (masses?.Minimum is { } minimum) CheckSlowest(table, StandIn.StallSpeed(plan, minimum.Value, lift.Value), minimum, faults);
        if (reachesMaximum && masses?.Maximum is { } maximum)
            CheckFlies(setting.MaximumSpeed!, table, StandIn.StallSpeed(plan, maximum.Value, lift.Value), maximum, faults);
    }

    private static void CheckBend(SettingValues setting, Given<double>? slope, FaultList faults)
    {
        if (slope is null || setting.MaximumLiftCoefficient is not { } lift || setting.StallRounding is not { } rounding) return;
        // Each value is in its own range by now: what is left to refuse is the three together.
        if (Refusal.Of(() => StandIn.Lift(slope.Value, null, lift.Value, rounding.Value)) is { } refusal)
            faults.Add(
                rounding.Line, rounding.Place, $"with C_Lmax {lift.Written} and a slope of {slope.Written}, {refusal.Problem}",
                refusal.Expected);
    }

    private static void CheckDrag(SettingValues setting, Given<double>? zeroLiftDrag, FaultList faults)
    {
        if (setting.ZeroLiftDragIncrement is not { } increment) return;
        if (increment.Value < 0)
            faults.Add(increment.Line, increment.Place, $"{increment.Written} is negative", "flaps add drag: zero or more");
        else if (zeroLiftDrag is not null
            && Refusal.Of(() => StandIn.Drag(zeroLiftDrag.Value + increment.Value)) is { } refusal)
            faults.Add(
                increment.Line, increment.Place, $"{increment.Written} on top of {zeroLiftDrag.Written}: {refusal.Problem}",
                refusal.Expected);
    }

    private static bool CheckMaximumSpeed(SettingValues setting, FaultList faults)
    {
        if (setting.MaximumSpeed is not { } speed || setting.Calibration is not { } table) return false;
        if (Refusal.Of(() => StandIn.Flaps(calibration: table.Table, maximumSpeed: speed.Value)) is null) return true;
        faults.Add(
            speed.Line, speed.Place, $"{speed.Written} lies outside the calibration table, {table.Reach} indicated",
            "the table must reach the highest speed");
        return false;
    }

    private static void CheckSlowest(CalibrationValues table, Speed stall, Given<Mass> mass, FaultList faults)
    {
        if (table.Slowest.Value <= stall) return;
        faults.Add(
            table.Slowest.Line, table.Slowest.Place,
            $"{table.Slowest.Written} is more than the calibrated stalling speed at {mass.Written}, {Text(stall, table)}",
            "the table must reach down to the stall at the minimum mass: add a slower row");
    }

    private static void CheckFlies(
        Given<Speed> speed, CalibrationValues table, Speed stall, Given<Mass> mass, FaultList faults)
    {
        if (table.Table.Calibrated(speed.Value) > stall) return;
        faults.Add(
            speed.Line, speed.Place,
            $"{speed.Written} indicated is not faster than the stall at {mass.Written}, {Text(stall, table)} calibrated",
            "the highest speed lies above the stall at the maximum mass");
    }

    private static string Text(Speed speed, CalibrationValues table)
    {
        double value = speed.As(table.Slowest.Value.Unit);
        return string.Create(CultureInfo.InvariantCulture, $"{value:0.00} {table.Unit}");
    }
}
