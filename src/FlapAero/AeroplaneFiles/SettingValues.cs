using UnitsNet;

namespace FlapAero.AeroplaneFiles;

/// <summary>What the file says of one flap setting: none where it could not be read. Immutable.</summary>
internal sealed record SettingValues(
    int Index,
    Given<string>? Name,
    Given<Angle>? Deflection,
    Given<Angle>? ZeroLiftAngle,
    Given<double>? MaximumLiftCoefficient,
    Given<Angle>? StallRounding,
    Given<double>? ZeroLiftDragIncrement,
    Given<double>? OswaldFactor,
    Given<Speed>? MaximumSpeed,
    CalibrationValues? Calibration)
{
    /// <summary>How a message about another setting speaks of this one.</summary>
    public string Label => Name?.Written ?? FormattableString.Invariant($"flapSettings[{Index}]");

    /// <summary>The setting; only where nothing is missing.</summary>
    public FlapSetting Build(Wing wing, double slopePerRadian, double zeroLiftDragCoefficient) => new(
        Name!.Value,
        Deflection!.Value,
        new LiftCurve(slopePerRadian, ZeroLiftAngle!.Value, MaximumLiftCoefficient!.Value, StallRounding!.Value),
        new DragPolar(zeroLiftDragCoefficient + ZeroLiftDragIncrement!.Value, OswaldFactor!.Value, wing.AspectRatio),
        Calibration!.Table,
        MaximumSpeed!.Value);
}

/// <summary>A calibration table with the words of its ends. Immutable.</summary>
/// <param name="Table">The table.</param>
/// <param name="Slowest">Calibrated airspeed of the first row.</param>
/// <param name="Unit">The unit of its speeds.</param>
/// <param name="Reach">Its indicated airspeeds: "25 to 150 kt".</param>
internal sealed record CalibrationValues(AirspeedCalibration Table, Given<Speed> Slowest, string Unit, string Reach);
