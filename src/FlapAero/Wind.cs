using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>A steady wind: where it comes from and how fast. Immutable.</summary>
public sealed class Wind
{
    /// <summary>A wind.</summary>
    /// <param name="from">Direction it blows from, 0° to 360°, in the same north as the runway's.</param>
    /// <param name="speed">Mean speed, 0 to 100 kt.</param>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    public Wind(Angle from, Speed speed)
    {
        From = Require.Between(from, Angle.Zero, Angle.FromDegrees(360), "wind direction", "Directions run from 0° to 360°.");
        Speed = Require.Between(speed, Speed.Zero, Speed.FromKnots(100), "wind speed", "The direction holds the sign.");
    }

    /// <summary>Direction the wind blows from.</summary>
    public Angle From { get; }

    /// <summary>Mean speed.</summary>
    public Speed Speed { get; }

    /// <summary>Headwind on a heading.</summary>
    /// <remarks>Formula: w cos(from − heading). Range: any heading. Source: [phak].</remarks>
    /// <param name="heading">The runway's or the leg's direction.</param>
    /// <returns>Positive from ahead, negative a tailwind.</returns>
    /// <exception cref="RefusedInputException">A heading outside 0° to 360°.</exception>
    /// <example><code>new Wind(Angle.FromDegrees(60), Speed.FromKnots(20)).Headwind(Angle.Zero).Knots // 10.000</code></example>
    public Speed Headwind(Angle heading) => Component(WindLaws.Headwind, heading);

    /// <summary>Crosswind on a heading.</summary>
    /// <remarks>Formula: w sin(from − heading). Range: any heading. Source: [phak].</remarks>
    /// <param name="heading">The runway's or the leg's direction.</param>
    /// <returns>Positive from the right.</returns>
    /// <exception cref="RefusedInputException">A heading outside 0° to 360°.</exception>
    /// <example><code>new Wind(Angle.FromDegrees(30), Speed.FromKnots(20)).Crosswind(Angle.Zero).Knots // 10.000</code></example>
    public Speed Crosswind(Angle heading) => Component(WindLaws.Crosswind, heading);

    private Speed Component(Func<double, double, double, double> law, Angle heading)
    {
        Require.Between(heading, Angle.Zero, Angle.FromDegrees(360), "heading", "Directions run from 0° to 360°.");
        return Speed.FromMetersPerSecond(law(Speed.MetersPerSecond, From.Radians, heading.Radians)).ToUnit(SpeedUnit.Knot);
    }
}
