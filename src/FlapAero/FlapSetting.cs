using UnitsNet;

namespace FlapAero;

/// <summary>
/// One detent of the flap lever and everything that changes with it: lift curve, polar, airspeed calibration and the
/// highest speed. Flaps change these inputs, never a formula. Immutable.
/// </summary>
public sealed class FlapSetting
{
    /// <summary>A flap setting.</summary>
    /// <param name="name">How the trade says it: "up", "20°".</param>
    /// <param name="deflection">δ, 0° to 60°.</param>
    /// <param name="lift">Lift curve with this flap.</param>
    /// <param name="drag">Polar with this flap and the gear.</param>
    /// <param name="calibration">Indicated against calibrated airspeed with this flap.</param>
    /// <param name="maximumSpeed">Highest indicated airspeed with this flap: V_FE, or V_NE with flaps up.</param>
    /// <exception cref="RefusedInputException">
    /// No name, or a maximum speed outside the calibration table; the deflection is no flap's.
    /// </exception>
    public FlapSetting(
        string name, Angle deflection, LiftCurve lift, DragPolar drag, AirspeedCalibration calibration, Speed maximumSpeed)
    {
        ArgumentNullException.ThrowIfNull(lift);
        ArgumentNullException.ThrowIfNull(drag);
        ArgumentNullException.ThrowIfNull(calibration);
        Require.Words(name, "name of the flap setting");
        Name = name;
        Deflection = Require.Between(
            deflection, Angle.Zero, Angle.FromDegrees(60), "flap deflection", "Flaps extend downwards.");
        Lift = lift;
        Drag = drag;
        Calibration = calibration;
        MaximumSpeed = Require.Between(
            maximumSpeed, calibration.Rows[0].Indicated, calibration.Rows[^1].Indicated,
            "maximum speed", "The calibration table must reach it.");
    }

    /// <summary>How the trade says it.</summary>
    public string Name { get; }

    /// <summary>Flap deflection δ.</summary>
    public Angle Deflection { get; }

    /// <summary>Lift curve.</summary>
    public LiftCurve Lift { get; }

    /// <summary>Drag polar.</summary>
    public DragPolar Drag { get; }

    /// <summary>Indicated against calibrated airspeed.</summary>
    public AirspeedCalibration Calibration { get; }

    /// <summary>Highest indicated airspeed with this setting.</summary>
    public Speed MaximumSpeed { get; }

    /// <summary>The setting's name.</summary>
    public override string ToString() => Name;
}
