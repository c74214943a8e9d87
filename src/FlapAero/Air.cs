using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// The still air at one place: pressure from the pressure altitude, temperature as measured or as standard.
/// Immutable. Altitudes are geopotential, from −1 000 m to 20 000 m; dry air, a perfect gas.
/// </summary>
public sealed class Air
{
    private static readonly Length Lowest = Length.FromMeters(-1000);
    private static readonly Length Highest = Length.FromMeters(20000);
    private static readonly Temperature Coldest = Temperature.FromDegreesCelsius(-90);
    private static readonly Temperature Hottest = Temperature.FromDegreesCelsius(60);

    // Any more leaves the range of temperatures at every altitude.
    private static readonly TemperatureDelta MostOffset = TemperatureDelta.FromKelvins(200);

    private readonly double _speedOfSound;

    private Air(Length pressureAltitude, double temperature)
    {
        PressureAltitude = pressureAltitude;
        PascalPressure = AtmosphereLaws.StandardPressure(pressureAltitude.Meters);
        SiDensity = AtmosphereLaws.Density(PascalPressure, temperature);
        _speedOfSound = AtmosphereLaws.SpeedOfSound(temperature);
        Temperature = Temperature.FromKelvins(temperature);
    }

    /// <summary>The standard atmosphere at sea level: 15 °C, 1013.25 hPa, 1.225 kg/m³.</summary>
    public static Air StandardSeaLevel { get; } = Standard(Length.Zero);

    /// <summary>Altitude in the standard atmosphere that has this pressure.</summary>
    public Length PressureAltitude { get; }

    /// <summary>Outside air temperature.</summary>
    public Temperature Temperature { get; }

    /// <summary>Static pressure.</summary>
    public Pressure Pressure => Pressure.FromPascals(PascalPressure);

    /// <summary>Density ρ = p/(R T).</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(SiDensity);

    /// <summary>Altitude in the standard atmosphere that has this density.</summary>
    public Length DensityAltitude => Length.FromMeters(AtmosphereLaws.DensityAltitude(SiDensity));

    /// <summary>Speed of sound √(γ R T).</summary>
    public Speed SpeedOfSound => Speed.FromMetersPerSecond(_speedOfSound);

    internal double SiDensity { get; }

    internal double PascalPressure { get; }

    internal double SiSpeedOfSound => _speedOfSound;

    /// <summary>Air of the standard atmosphere.</summary>
    /// <remarks>
    /// Formula: T = 288.15 K − 6.5 K/km · H to 11 km, constant above; p by hydrostatic balance.
    /// Range: −1 000 m to 20 000 m. Source: [icao-7488].
    /// </remarks>
    /// <param name="pressureAltitude">Pressure altitude H, geopotential.</param>
    /// <returns>The air there.</returns>
    /// <exception cref="RefusedInputException">The altitude is outside the range.</exception>
    /// <example><code>Air.Standard(Length.FromMeters(1000)).Density.KilogramsPerCubicMeter // 1.1116</code></example>
    public static Air Standard(Length pressureAltitude) =>
        new(InRange(pressureAltitude), AtmosphereLaws.StandardTemperature(pressureAltitude.Meters));

    /// <summary>Air with a measured outside temperature.</summary>
    /// <remarks>
    /// Formula: p of the standard atmosphere at the pressure altitude, ρ = p/(R T).
    /// Range: −1 000 m to 20 000 m; −90 °C to 60 °C. Source: [icao-7488].
    /// </remarks>
    /// <param name="pressureAltitude">Pressure altitude, geopotential.</param>
    /// <param name="outsideAirTemperature">Static temperature.</param>
    /// <returns>The air there.</returns>
    /// <exception cref="RefusedInputException">Altitude or temperature is outside the range.</exception>
    /// <example><code>Air.AtTemperature(Length.FromFeet(5718), Temperature.FromDegreesFahrenheit(70)).DensityAltitude.Feet // 7709</code></example>
    public static Air AtTemperature(Length pressureAltitude, Temperature outsideAirTemperature)
    {
        InRange(pressureAltitude);
        Require.Between(
            outsideAirTemperature, Coldest, Hottest, "outside air temperature", "No aerodrome's air lies outside it.");
        return new Air(pressureAltitude, outsideAirTemperature.Kelvins);
    }

    /// <summary>Air warmer or colder than the standard atmosphere by a stated amount.</summary>
    /// <remarks>
    /// Formula: T = T_ISA(H) + ΔT. Range: as <see cref="AtTemperature"/> for the sum. Source: [icao-7488].
    /// </remarks>
    /// <param name="pressureAltitude">Pressure altitude, geopotential.</param>
    /// <param name="offset">Temperature less the standard temperature there.</param>
    /// <returns>The air there.</returns>
    /// <exception cref="RefusedInputException">Altitude or resulting temperature is outside the range.</exception>
    /// <example><code>Air.OffStandard(Length.Zero, TemperatureDelta.FromDegreesCelsius(15)).Temperature.DegreesCelsius // 30.000</code></example>
    public static Air OffStandard(Length pressureAltitude, TemperatureDelta offset)
    {
        double standard = AtmosphereLaws.StandardTemperature(InRange(pressureAltitude).Meters);
        Require.Between(
            offset, -MostOffset, MostOffset, "offset from the standard temperature", "No aerodrome's air differs by more.");
        return AtTemperature(pressureAltitude, Temperature.FromDegreesCelsius(standard - 273.15 + offset.Kelvins));
    }

    /// <summary>Air of the standard atmosphere that has a density, for what depends on nothing else, as a landing in true airspeeds.</summary>
    /// <remarks>
    /// Formula: the altitude at which the standard atmosphere has ρ. Range: from its density at 20 000 m to that at −1 000 m.
    /// Source: [icao-7488].
    /// </remarks>
    /// <param name="density">ρ.</param>
    /// <returns>The air there; another temperature would have another pressure.</returns>
    /// <exception cref="RefusedInputException">The density is outside the range.</exception>
    /// <example><code>Air.OfDensity(Density.FromKilogramsPerCubicMeter(1.1116)).PressureAltitude.Meters // 1000</code></example>
    public static Air OfDensity(Density density)
    {
        Require.Between(
            density, Standard(Highest).Density, Standard(Lowest).Density, "density", "The standard atmosphere has it between them.");
        double altitude = AtmosphereLaws.DensityAltitude(density.KilogramsPerCubicMeter);
        return new(Length.FromMeters(altitude), AtmosphereLaws.StandardTemperature(altitude));
    }

    /// <summary>Pressure altitude of an elevation under an altimeter setting (QNH).</summary>
    /// <remarks>
    /// Formula: H_p = elevation + H(setting), H the standard atmosphere's altitude of that pressure.
    /// Range: settings from 850 hPa to 1 080 hPa. Source: [icao-7488].
    /// </remarks>
    /// <param name="elevation">Height above mean sea level.</param>
    /// <param name="altimeterSetting">QNH.</param>
    /// <returns>Pressure altitude.</returns>
    /// <exception cref="RefusedInputException">The setting is no atmospheric pressure at sea level.</exception>
    /// <example><code>Air.PressureAltitudeOf(Length.FromFeet(5883), Pressure.FromInchesOfMercury(30.10)).Feet // 5718</code></example>
    public static Length PressureAltitudeOf(Length elevation, Pressure altimeterSetting)
    {
        Require.Between(
            altimeterSetting, Pressure.FromHectopascals(850), Pressure.FromHectopascals(1080),
            "altimeter setting", "Sea-level pressure stays inside it in any weather.");
        Require.Between(
            elevation, Lowest - Length.FromMeters(2000), Highest + Length.FromMeters(2000), "elevation",
            "Beyond them the pressure altitude leaves the standard atmosphere in any weather.");
        double correction = AtmosphereLaws.PressureAltitude(altimeterSetting.Pascals);
        return InRange(Length.FromMeters(elevation.Meters + correction).ToUnit(elevation.Unit));
    }

    /// <summary>Geopotential altitude, which the standard atmosphere is built on, of a geometric one.</summary>
    /// <remarks>Formula: H = r Z/(r + Z), r = 6 356 766 m. Range: as the atmosphere's. Source: [icao-7488].</remarks>
    /// <param name="geometric">Geometric altitude Z.</param>
    /// <returns>Geopotential altitude H.</returns>
    /// <exception cref="RefusedInputException">The altitude is outside the range.</exception>
    /// <example><code>Air.GeopotentialOf(Length.FromMeters(11000)).Meters // 10981</code></example>
    public static Length GeopotentialOf(Length geometric) =>
        Length.FromMeters(AtmosphereLaws.Geopotential(InRange(geometric).Meters));

    private static Length InRange(Length altitude) =>
        Require.Between(altitude, Lowest, Highest, "altitude", "The standard atmosphere is modelled between them.");
}
