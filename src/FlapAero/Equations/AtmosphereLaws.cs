using static FlapAero.Equations.StandardConstants;

namespace FlapAero.Equations;

/// <summary>The standard atmosphere up to 20 km, against geopotential altitude. SI doubles. Source: [icao-7488].</summary>
internal static class AtmosphereLaws
{
    private const double PressureExponent = -Gravity / (TroposphereLapse * GasConstant);
    private const double StratosphereScale = GasConstant * TropopauseTemperature / Gravity;

    private static readonly double TropopausePressureRatio =
        Math.Pow(TropopauseTemperature / SeaLevelTemperature, PressureExponent);

    /// <summary>T(H), K.</summary>
    public static double StandardTemperature(double altitude) =>
        altitude <= TropopauseAltitude
            ? SeaLevelTemperature + TroposphereLapse * altitude
            : TropopauseTemperature;

    /// <summary>p(H), Pa.</summary>
    public static double StandardPressure(double altitude) =>
        SeaLevelPressure * (altitude <= TropopauseAltitude
            ? Math.Pow(1 + TroposphereLapse * altitude / SeaLevelTemperature, PressureExponent)
            : TropopausePressureRatio * Math.Exp(-(altitude - TropopauseAltitude) / StratosphereScale));

    /// <summary>H(p), m: the inverse of <see cref="StandardPressure"/>.</summary>
    public static double PressureAltitude(double pressure)
    {
        double ratio = pressure / SeaLevelPressure;
        return ratio >= TropopausePressureRatio
            ? (Math.Pow(ratio, 1 / PressureExponent) - 1) * SeaLevelTemperature / TroposphereLapse
            : TropopauseAltitude - StratosphereScale * Math.Log(ratio / TropopausePressureRatio);
    }

    /// <summary>The altitude at which the standard atmosphere has this density, m.</summary>
    public static double DensityAltitude(double density)
    {
        double tropopauseDensity = Density(SeaLevelPressure * TropopausePressureRatio, TropopauseTemperature);
        return density >= tropopauseDensity
            ? (Math.Pow(density / SeaLevelDensity, 1 / (PressureExponent - 1)) - 1) * SeaLevelTemperature / TroposphereLapse
            : TropopauseAltitude - StratosphereScale * Math.Log(density / tropopauseDensity);
    }

    /// <summary>Perfect gas: ρ = p/(R T), kg/m³.</summary>
    public static double Density(double pressure, double temperature) => pressure / (GasConstant * temperature);

    /// <summary>a = √(γ R T), m/s.</summary>
    public static double SpeedOfSound(double temperature) => Math.Sqrt(HeatCapacityRatio * GasConstant * temperature);

    /// <summary>H = r Z/(r + Z), m.</summary>
    public static double Geopotential(double geometric) => EarthRadius * geometric / (EarthRadius + geometric);
}
