using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// One airspeed under its names: true, equivalent and calibrated, in the air it is flown in. Immutable, subsonic.
/// What the needle shows is the aeroplane's affair: <see cref="AirspeedCalibration"/>.
/// </summary>
public sealed class Airspeed
{
    private static readonly Speed Slowest = Speed.FromKnots(0.1);

    internal Airspeed(double trueAirspeed, Air air, SpeedUnit spoken = SpeedUnit.Knot)
    {
        if (!(trueAirspeed < air.SiSpeedOfSound))
            throw RefusedInputException.Of(
                nameof(trueAirspeed), "true airspeed", Text(trueAirspeed, spoken),
                $"below the speed of sound, {Text(air.SiSpeedOfSound, spoken)}",
                "The relations used here are the subsonic ones.");
        SiTrue = trueAirspeed;
        Air = air;
    }

    /// <summary>The air that this speed is flown in.</summary>
    public Air Air { get; }

    /// <summary>True airspeed (TAS), the speed through the air.</summary>
    public Speed True => Knots(SiTrue);

    /// <summary>Equivalent airspeed (EAS), V √(ρ/ρ₀): the sea-level speed with the same dynamic pressure.</summary>
    public Speed Equivalent => Knots(AirspeedLaws.EquivalentFromTrue(SiTrue, Air.SiDensity));

    /// <summary>Calibrated airspeed (CAS): what a faultless indicator shows.</summary>
    public Speed Calibrated =>
        Knots(AirspeedLaws.CalibratedFromTrue(SiTrue, Air.PascalPressure, Air.SiSpeedOfSound));

    /// <summary>Mach number.</summary>
    public double Mach => SiTrue / Air.SiSpeedOfSound;

    /// <summary>Dynamic pressure q = ½ρV².</summary>
    public Pressure DynamicPressure => Pressure.FromPascals(SiDynamicPressure);

    internal double SiTrue { get; }

    internal double SiDynamicPressure => AirspeedLaws.DynamicPressure(Air.SiDensity, SiTrue);

    /// <summary>The airspeed whose true airspeed is given.</summary>
    /// <remarks>Formula: none, it is the definition. Range: from 0.1 kt, below the speed of sound. Source: [anderson-itf].</remarks>
    /// <param name="trueAirspeed">True airspeed.</param>
    /// <param name="air">The air it is flown in.</param>
    /// <returns>The airspeed.</returns>
    /// <exception cref="RefusedInputException">The speed is below 0.1 kt or not subsonic.</exception>
    /// <example><code>Airspeed.FromTrue(Speed.FromKnots(70), Air.StandardSeaLevel).Calibrated.Knots // 70.000</code></example>
    public static Airspeed FromTrue(Speed trueAirspeed, Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return new(Moving(trueAirspeed), air, trueAirspeed.Unit);
    }

    /// <summary>The airspeed whose calibrated airspeed is given.</summary>
    /// <remarks>
    /// Formula: q_c = p₀[(1 + (V_C/a₀)²/5)^3.5 − 1] = p[(1 + M²/5)^3.5 − 1], V = M a.
    /// Range: from 0.1 kt, subsonic. Source: [anderson-itf].
    /// </remarks>
    /// <param name="calibrated">Calibrated airspeed.</param>
    /// <param name="air">The air it is flown in.</param>
    /// <returns>The airspeed.</returns>
    /// <exception cref="RefusedInputException">The speed is below 0.1 kt or not subsonic.</exception>
    /// <example><code>Airspeed.FromCalibrated(Speed.FromKnots(70), Air.Standard(Length.FromFeet(5000))).True.Knots // 75.4</code></example>
    public static Airspeed FromCalibrated(Speed calibrated, Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return new(
            AirspeedLaws.TrueFromCalibrated(Moving(calibrated), air.PascalPressure, air.SiSpeedOfSound),
            air, calibrated.Unit);
    }

    /// <summary>The airspeed whose equivalent airspeed is given.</summary>
    /// <remarks>Formula: V = V_E √(ρ₀/ρ). Range: from 0.1 kt, subsonic. Source: [anderson-itf].</remarks>
    /// <param name="equivalent">Equivalent airspeed.</param>
    /// <param name="air">The air it is flown in.</param>
    /// <returns>The airspeed.</returns>
    /// <exception cref="RefusedInputException">The speed is below 0.1 kt or not subsonic.</exception>
    /// <example><code>Airspeed.FromEquivalent(Speed.FromKnots(70), Air.Standard(Length.FromFeet(5000))).True.Knots // 75.4</code></example>
    public static Airspeed FromEquivalent(Speed equivalent, Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return new(AirspeedLaws.TrueFromEquivalent(Moving(equivalent), air.SiDensity), air, equivalent.Unit);
    }

    private static Speed Knots(double si) => Speed.FromMetersPerSecond(si).ToUnit(SpeedUnit.Knot);

    private static string Text(double si, SpeedUnit unit) =>
        Require.Text(si * Speed.FromMetersPerSecond(1).As(unit), unit);

    private static double Moving(Speed given) =>
        given >= Slowest
            ? Require.In(given, SpeedUnit.MeterPerSecond, "airspeed")
            : throw Require.Refused(
                nameof(given), "airspeed", given, $"from {Require.Text(Slowest, given)}",
                "An aeroplane at rest in the air has no lift to speak of.");
}
