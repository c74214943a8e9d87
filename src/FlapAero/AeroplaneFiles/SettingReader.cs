using UnitsNet;

namespace FlapAero.AeroplaneFiles;

/// <summary>One flap setting and its calibration table, value by value.</summary>
internal static class SettingReader
{
    private const string Why = "both columns rise from row to row";

    public static SettingValues? Read(JsonItem item, string place, int index, FaultList faults)
    {
        if (ObjectPart.Of(item, place, FileKeys.FlapSetting, faults) is not { } part) return null;
        return new SettingValues(
            index,
            part.Text("name"),
            part.Quantity("deflection", UnitSets.Angles, value => StandIn.Flaps(deflection: value)),
            part.Quantity("zeroLiftAngle", UnitSets.Angles, value => StandIn.Lift(zeroLiftAngle: value)),
            part.Quantity(
                "maximumLiftCoefficient", UnitSets.Coefficients, value => StandIn.Lift(maximumLiftCoefficient: value)),
            part.Quantity(
                "stallRounding", UnitSets.Angles, value => StandIn.Lift(maximumLiftCoefficient: 4, stallRounding: value)),
            part.Quantity("zeroLiftDragIncrement", UnitSets.Coefficients),
            part.Quantity("oswaldFactor", UnitSets.Coefficients, value => StandIn.Drag(oswaldFactor: value)),
            part.Quantity("maximumSpeed", UnitSets.Speeds),
            part.Object("airspeedCalibration", FileKeys.Calibration) is { } table ? ReadCalibration(table, faults) : null);
    }

    /// <summary>A calibration table; a manual's has no origin.</summary>
    public static CalibrationValues? ReadCalibration(ObjectPart part, FaultList faults)
    {
        part.Origin();
        Func<double, Speed>? make = part.Unit(UnitSets.Speeds, out string unit);
        if (part.List("rows", 2, "two rows or more, each { \"indicated\": …, \"calibrated\": … },") is not { } entries) return null;
        ObjectPart?[] rows = [.. entries.Select(entry => ObjectPart.Of(entry.Item, entry.Place, FileKeys.Row, faults))];
        Given<double>?[] indicated = [.. rows.Select(row => Speed(row?.Number("indicated"), faults))];
        Given<double>?[] calibrated = [.. rows.Select(row => Speed(row?.Number("calibrated"), faults))];
        bool rises = Columns.Rise(indicated, Why, faults) & Columns.Rise(calibrated, Why, faults);
        if (make is null || !rises || indicated.Contains(null) || calibrated.Contains(null)) return null;

        AirspeedCalibration Make() =>
            new(indicated.Zip(calibrated, (left, right) => (make(left!.Value), make(right!.Value))));
        if (Refusal.Of(Make) is { } refusal)
        {
            faults.Add(calibrated[0]!.Line, calibrated[0]!.Place, refusal.Problem, refusal.Expected);
            return null;
        }

        Given<double> slowest = calibrated[0]!;
        return new CalibrationValues(
            Make(),
            new Given<Speed>(make(slowest.Value), $"{slowest.Written} {unit}", slowest.Line, slowest.Place),
            unit,
            $"{indicated[0]!.Written} to {indicated[^1]!.Written} {unit}");
    }

    private static Given<double>? Speed(Given<double>? cell, FaultList faults)
    {
        if (cell is null or { Value: >= 0 }) return cell;
        faults.Add(cell.Line, cell.Place, $"{cell.Written} is negative", "an airspeed is zero or more");
        return null;
    }
}
