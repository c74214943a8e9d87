using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>Steady turns through the air at constant bank and speed.</summary>
public static class Turn
{
    internal static readonly Angle LeastBank = Angle.FromDegrees(1);
    internal static readonly Angle SteepestBank = Angle.FromDegrees(80);

    private static readonly Angle SteepestPath = Angle.FromDegrees(30);

    /// <summary>Radius of a steady turn through the air.</summary>
    /// <remarks>Formula: R = V² cos γ/(g tan φ). Range: bank from 1° to 80°, |γ| to 30°. Source: [phak].</remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <param name="bank">Angle of bank φ.</param>
    /// <param name="pathAngle">Flight-path angle γ, positive up; level where none is given.</param>
    /// <returns>The radius.</returns>
    /// <exception cref="RefusedInputException">A bank or path outside the range.</exception>
    /// <example><code>Turn.Radius(Airspeed.FromTrue(Speed.FromKnots(75), Air.StandardSeaLevel), Angle.FromDegrees(20)).Meters // 417</code></example>
    public static Length Radius(Airspeed airspeed, Angle bank, Angle? pathAngle = null)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        Angle path = pathAngle ?? Angle.Zero;
        Require.Between(path, -SteepestPath, SteepestPath, "flight-path angle", "Light aeroplanes neither climb nor approach steeper.");
        return Length.FromMeters(TurnLaws.Radius(airspeed.SiTrue, path.Radians, Banked(bank).Radians));
    }

    /// <summary>How fast the heading changes in a steady turn.</summary>
    /// <remarks>Formula: ψ̇ = g tan φ/V, level or descending. Range: bank from 1° to 80°. Source: [phak].</remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <param name="bank">Angle of bank φ.</param>
    /// <returns>The rate of turn.</returns>
    /// <exception cref="RefusedInputException">A bank outside the range.</exception>
    /// <example><code>Turn.Rate(Airspeed.FromTrue(Speed.FromKnots(75), Air.StandardSeaLevel), Angle.FromDegrees(20)).DegreesPerSecond // 5.30</code></example>
    public static RotationalSpeed Rate(Airspeed airspeed, Angle bank)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        return RotationalSpeed.FromRadiansPerSecond(TurnLaws.Rate(airspeed.SiTrue, Banked(bank).Radians))
            .ToUnit(RotationalSpeedUnit.DegreePerSecond);
    }

    private static Angle Banked(Angle bank) =>
        Require.Between(bank, LeastBank, SteepestBank, "bank", "Less is straight flight; more is no turn of a light aeroplane.");
}
