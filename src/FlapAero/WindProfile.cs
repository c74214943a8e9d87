using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// Mean wind against height above the surface, from its value at the standard 10 m. Immutable. Evaluate it at the wing,
/// not at the wheels.
/// </summary>
public sealed class WindProfile
{
    private static readonly Length ReferenceHeight = Length.FromMeters(10);

    private readonly Func<double, double> _speed;

    private WindProfile(Func<double, double> speed) => _speed = speed;

    /// <summary>A power-law profile.</summary>
    /// <remarks>Formula: w = w₁₀ (z/10 m)^p. Range: to 100 kt, p from 0 to 0.6. Source: [wind-profile].</remarks>
    /// <param name="atTenMetres">Component at 10 m; a tailwind is negative.</param>
    /// <param name="exponent">p; about 1/7 over open grass in a neutral wind.</param>
    /// <returns>The profile.</returns>
    /// <exception cref="RefusedInputException">A wind above 100 kt, or an exponent outside the range.</exception>
    /// <example><code>WindProfile.PowerLaw(Speed.FromKnots(10), 0.5).At(Length.FromMeters(2.5)).Knots // 5.000</code></example>
    public static WindProfile PowerLaw(Speed atTenMetres, double exponent)
    {
        Require.Between(exponent, 0, 0.6, "wind profile exponent", "From no shear to a city's.");
        double reference = Require.Headwind(atTenMetres, "wind at 10 m");
        return new(height => WindLaws.PowerLaw(reference, ReferenceHeight.Meters, exponent, height));
    }

    /// <summary>A logarithmic profile.</summary>
    /// <remarks>Formula: w = w₁₀ ln(z/z₀)/ln(10 m/z₀). Range: to 100 kt, z₀ from 0.1 mm to 2 m. Source: [wind-profile].</remarks>
    /// <param name="atTenMetres">Component at 10 m; a tailwind is negative.</param>
    /// <param name="roughness">Roughness length z₀; about 3 cm over grass.</param>
    /// <returns>The profile; calm at and below the roughness length.</returns>
    /// <exception cref="RefusedInputException">
    /// A wind above 100 kt, or a roughness length outside the range.
    /// </exception>
    /// <example><code>WindProfile.Logarithmic(Speed.FromKnots(10), Length.FromMeters(0.1)).At(Length.FromMeters(1)).Knots // 5.000</code></example>
    public static WindProfile Logarithmic(Speed atTenMetres, Length roughness)
    {
        Require.Between(
            roughness, Length.FromMeters(0.0001), Length.FromMeters(2), "roughness length", "From still water to a forest's edge.");
        double reference = Require.Headwind(atTenMetres, "wind at 10 m");
        double meters = roughness.Meters;
        return new(height => WindLaws.Logarithmic(reference, ReferenceHeight.Meters, meters, height));
    }

    /// <summary>Mean wind at a height.</summary>
    /// <remarks>Formula: the profile's. Range: above the surface, to 600 m. Source: [wind-profile].</remarks>
    /// <param name="height">Height above the surface.</param>
    /// <returns>The component, of the reference's sign.</returns>
    /// <exception cref="RefusedInputException">A height outside the surface layer's reach.</exception>
    /// <example><code>WindProfile.PowerLaw(Speed.FromKnots(10), 0.25).At(Length.FromMeters(160)).Knots // 20.000</code></example>
    public Speed At(Length height)
    {
        Require.Between(height, Length.Zero, Length.FromMeters(600), "height", "The profiles describe the air next to the ground.");
        return Speed.FromMetersPerSecond(_speed(height.Meters)).ToUnit(SpeedUnit.Knot);
    }
}
