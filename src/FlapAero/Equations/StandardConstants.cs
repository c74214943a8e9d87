namespace FlapAero.Equations;

/// <summary>The defining constants of the International Standard Atmosphere, SI. Source: [icao-7488].</summary>
internal static class StandardConstants
{
    public const double Gravity = 9.80665;
    public const double GasConstant = 287.05287;
    public const double HeatCapacityRatio = 1.4;
    public const double SeaLevelTemperature = 288.15;
    public const double SeaLevelPressure = 101325;
    public const double SeaLevelDensity = SeaLevelPressure / (GasConstant * SeaLevelTemperature);
    public const double TroposphereLapse = -0.0065;
    public const double TropopauseAltitude = 11000;
    public const double TropopauseTemperature = SeaLevelTemperature + TroposphereLapse * TropopauseAltitude;

    /// <summary>Radius of the nominal earth in the definition of geopotential altitude, m.</summary>
    public const double EarthRadius = 6356766;
}
