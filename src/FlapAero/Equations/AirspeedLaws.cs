using static FlapAero.Equations.StandardConstants;

namespace FlapAero.Equations;

/// <summary>Airspeeds through the compressible pitot relations, subsonic, γ = 1.4. SI doubles. Source: [anderson-itf].</summary>
internal static class AirspeedLaws
{
    private static readonly double SeaLevelSpeedOfSound = AtmosphereLaws.SpeedOfSound(SeaLevelTemperature);

    /// <summary>q_c = p [(1 + M²/5)^{7/2} − 1], Pa.</summary>
    public static double ImpactPressure(double mach, double pressure) =>
        pressure * (Math.Pow(1 + 0.2 * mach * mach, 3.5) - 1);

    /// <summary>M from q_c/p: the inverse of <see cref="ImpactPressure"/>.</summary>
    public static double Mach(double impactPressure, double pressure) =>
        Math.Sqrt(5 * (Math.Pow(impactPressure / pressure + 1, 2.0 / 7) - 1));

    /// <summary>V_CAS: the speed that gives this impact pressure at standard sea level.</summary>
    public static double CalibratedFromTrue(double trueAirspeed, double pressure, double speedOfSound) =>
        SeaLevelSpeedOfSound * Mach(ImpactPressure(trueAirspeed / speedOfSound, pressure), SeaLevelPressure);

    /// <summary>V from V_CAS.</summary>
    public static double TrueFromCalibrated(double calibrated, double pressure, double speedOfSound) =>
        speedOfSound * Mach(ImpactPressure(calibrated / SeaLevelSpeedOfSound, SeaLevelPressure), pressure);

    /// <summary>V_EAS = V √(ρ/ρ₀).</summary>
    public static double EquivalentFromTrue(double trueAirspeed, double density, double seaLevelDensity = SeaLevelDensity) =>
        trueAirspeed * Math.Sqrt(density / seaLevelDensity);

    /// <summary>V = V_EAS √(ρ₀/ρ).</summary>
    public static double TrueFromEquivalent(double equivalent, double density) =>
        equivalent * Math.Sqrt(SeaLevelDensity / density);

    /// <summary>q = ½ ρ V².</summary>
    public static double DynamicPressure(double density, double trueAirspeed) => 0.5 * density * trueAirspeed * trueAirspeed;
}
