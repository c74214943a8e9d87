using UnitsNet;

namespace FlapAero;

/// <summary>A wing's plan and how it sits on the aeroplane. Immutable.</summary>
public sealed class Wing
{
    /// <summary>A wing.</summary>
    /// <param name="span">b, 5 m to 25 m.</param>
    /// <param name="area">S, 5 m² to 60 m².</param>
    /// <param name="incidence">i_w, reference chord against the fuselage's level line, −2° to 8°.</param>
    /// <param name="heightOnWheels">Height of the wing above the surface with the wheels on it, 0.2 m to 4 m.</param>
    /// <exception cref="RefusedInputException">
    /// A value outside its range, or an aspect ratio b²/S outside 3 to 25.
    /// </exception>
    public Wing(Length span, Area area, Angle incidence, Length heightOnWheels)
    {
        Span = Require.Between(span, Length.FromMeters(5), Length.FromMeters(25), "span", "Light aeroplanes lie inside it.");
        Area = Require.Between(
            area, Area.FromSquareMeters(5), Area.FromSquareMeters(60), "wing area", "Light aeroplanes lie inside it.");
        Incidence = Require.Between(
            incidence, Angle.FromDegrees(-2), Angle.FromDegrees(8), "incidence", "The fuselage would fly nose-high or nose-low.");
        HeightOnWheels = Require.Between(
            heightOnWheels, Length.FromMeters(0.2), Length.FromMeters(4), "height of the wing on its wheels", "Low wing to high wing.");
        double meters = span.Meters;
        double squareMeters = area.SquareMeters;
        AspectRatio = Require.Between(
            meters * meters / squareMeters, 3, 25, "aspect ratio b²/S", "Span and area together make no light aeroplane's wing.");
    }

    /// <summary>Span b.</summary>
    public Length Span { get; }

    /// <summary>Reference area S.</summary>
    public Area Area { get; }

    /// <summary>Incidence i_w of the reference chord on the fuselage.</summary>
    public Angle Incidence { get; }

    /// <summary>Height of the wing above the surface with the wheels on it.</summary>
    public Length HeightOnWheels { get; }

    /// <summary>Aspect ratio A = b²/S.</summary>
    public double AspectRatio { get; }
}
