using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>
/// A wing to calculate: span and area are the aeroplane's, taper, washout and a slotted flap over the inner part are
/// invented, since no file holds them. Immutable.
/// </summary>
public sealed class InventedWing
{
    private readonly WingPlanform _planform;
    private readonly WingSection _section;

    /// <summary>Makes the wing.</summary>
    /// <param name="up">The aeroplane whose span, area and lift it takes, flaps up.</param>
    /// <param name="flapPart">The flap's share of the chord.</param>
    public InventedWing(Configuration up, double flapPart)
    {
        ArgumentNullException.ThrowIfNull(up);
        LiftCurve lift = up.Flaps.Lift;
        _planform = WingPlanform.Like(up.Aeroplane.Wing, taper: 0.7, tipTwist: Angle.FromDegrees(-2));
        _section = new WingSection(2 * Math.PI, lift.ZeroLiftAngle, lift.MaximumLiftCoefficient + 0.1);
        Flap = new FlapGeometry(FlapKind.Slotted, flapPart, from: 0, to: 0.45);
        FullDegrees = up.Aeroplane.FlapSettings.Count == 1
            ? 35 : Math.Min(40, 5 * Math.Ceiling(up.Aeroplane.FullFlaps.Deflection.Degrees / 5));
    }

    /// <summary>The flap.</summary>
    public FlapGeometry Flap { get; }

    /// <summary>How far down full flap is, in degrees: as in the aeroplane's file, to the next five; 35 where it has no flap to lower.</summary>
    public double FullDegrees { get; }

    /// <summary>By how much the flap moves the wing's angle of no lift.</summary>
    /// <param name="degrees">How far it is down, in degrees.</param>
    /// <returns>The change of the angle; negative down.</returns>
    public Angle NoLiftMovedBy(double degrees) => With(degrees).ZeroLiftAngle - With(0).ZeroLiftAngle;

    /// <summary>The wing with its flap down.</summary>
    /// <param name="degrees">How far, in degrees.</param>
    /// <returns>The wing.</returns>
    public LiftingLine With(double degrees) => new(_planform, _section, flap: Flap.At(Angle.FromDegrees(degrees)));
}
