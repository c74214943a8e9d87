using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// Energy height: height and speed as one store, and what too fast or too high costs. In steady wind, with the airspeed: kinetic
/// energy is counted against the air.
/// </summary>
public static class EnergyHeight
{
    private const string Flown = "Light aeroplanes fly slower.";
    private static readonly Speed Fastest = Speed.FromMetersPerSecond(200);
    private static readonly Length Highest = Length.FromMeters(20000);

    /// <summary>Energy height of a state of flight.</summary>
    /// <remarks>Formula: h_e = h + V²/2g. Range: V to 200 m/s, h from −1 000 m to 20 000 m. Source: [anderson-itf].</remarks>
    /// <param name="height">h.</param>
    /// <param name="airspeed">V, true airspeed.</param>
    /// <returns>h_e.</returns>
    /// <exception cref="RefusedInputException">A value outside the range.</exception>
    /// <example><code>EnergyHeight.Of(Length.FromFeet(50), Speed.FromKnots(70)).Feet // 266.9</code></example>
    public static Length Of(Length height, Speed airspeed)
    {
        Require.Between(height, Length.FromMeters(-1000), Highest, "height", "The air of the model ends there.");
        RequireAirspeed(airspeed);
        return Length.FromMeters(EnergyLaws.Height(height.Meters, airspeed.MetersPerSecond));
    }

    /// <summary>How fast energy height is gained, or lost where the result is negative.</summary>
    /// <remarks>Formula: dh_e/dt = (T − D) V/W. Range: V to 200 m/s, W above zero, T and D to 100 kN. Source: [anderson-itf].</remarks>
    /// <param name="thrust">T.</param>
    /// <param name="drag">D.</param>
    /// <param name="airspeed">V, true airspeed.</param>
    /// <param name="weight">W.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="RefusedInputException">A value outside the range.</exception>
    /// <example><code>EnergyHeight.Rate(Force.Zero, Force.FromNewtons(1000), Speed.FromMetersPerSecond(35), Force.FromNewtons(10000)).MetersPerSecond // -3.5</code></example>
    public static Speed Rate(Force thrust, Force drag, Speed airspeed, Force weight)
    {
        var most = Force.FromKilonewtons(100);
        Require.Between(thrust, -most, most, "thrust", "No light aeroplane has more.");
        Require.Between(drag, Force.Zero, most, "drag", "It opposes the motion, and no light aeroplane has more.");
        Require.Between(weight, Force.FromNewtons(1), most, "weight", "Light aeroplanes weigh less.");
        RequireAirspeed(airspeed);
        return Speed.FromMetersPerSecond(
            EnergyLaws.Rate(thrust.Newtons, drag.Newtons, airspeed.MetersPerSecond, weight.Newtons));
    }

    /// <summary>What being too fast is worth in height; negative where too slow.</summary>
    /// <remarks>Formula: Δh = (V ΔV + ½ΔV²)/g. Range: V and V + ΔV from 0 to 200 m/s. Source: [anderson-itf].</remarks>
    /// <param name="airspeed">V, the true airspeed that was meant.</param>
    /// <param name="excess">ΔV.</param>
    /// <returns>The height.</returns>
    /// <exception cref="RefusedInputException">A value outside the range.</exception>
    /// <example><code>EnergyHeight.OfExcessSpeed(Speed.FromKnots(70), Speed.FromKnots(1)).Feet // 6.24</code></example>
    public static Length OfExcessSpeed(Speed airspeed, Speed excess)
    {
        RequireAirspeed(airspeed);
        Require.Between(excess, -airspeed, Fastest, "excess of airspeed", Flown);
        RequireAirspeed(airspeed + excess);
        return Length.FromMeters(EnergyLaws.OfSpeed(airspeed.MetersPerSecond, excess.MetersPerSecond));
    }

    /// <summary>What being too high is worth in speed, if all of it is turned into speed; negative where too low.</summary>
    /// <remarks>Formula: ΔV = √(V² + 2gΔh) − V. Range: V above zero to 200 m/s, V² + 2gΔh not negative, Δh to 20 000 m. Source: [anderson-itf].</remarks>
    /// <param name="airspeed">V, true airspeed.</param>
    /// <param name="excess">Δh.</param>
    /// <returns>The speed.</returns>
    /// <exception cref="RefusedInputException">A value outside the range.</exception>
    /// <example><code>EnergyHeight.OfExcessHeight(Speed.FromKnots(70), Length.FromFeet(10)).Knots // 1.60</code></example>
    public static Speed OfExcessHeight(Speed airspeed, Length excess)
    {
        RequireAirspeed(airspeed);
        Require.Positive(airspeed, "airspeed", "At rest there is no speed to add to.");
        double speed = airspeed.MetersPerSecond;
        var lowest = Length.FromMeters(EnergyLaws.OfSpeed(speed, -speed));
        Require.Between(excess, lowest, Highest, "excess of height", "There is no more energy in the speed than that.");
        return Speed.FromMetersPerSecond(EnergyLaws.InSpeed(speed, excess.Meters));
    }

    /// <summary>How long it takes to lose an excess of energy height.</summary>
    /// <remarks>Formula: t = Δh_e/(−dh_e/dt). Range: an excess of 0 to 20 000 m, a rate below zero, to −1000 m/s. Source: [anderson-itf].</remarks>
    /// <param name="excess">Δh_e.</param>
    /// <param name="rate">dh_e/dt beyond that of the flight that was meant, from <see cref="Rate"/>: negative.</param>
    /// <returns>The time.</returns>
    /// <exception cref="RefusedInputException">
    /// A value outside the range: a rate that is not negative loses nothing.
    /// </exception>
    /// <example><code>EnergyHeight.TimeToLose(Length.FromMeters(7), Speed.FromMetersPerSecond(-3.5)).Seconds // 2.0</code></example>
    public static Duration TimeToLose(Length excess, Speed rate)
    {
        Require.Between(excess, Length.Zero, Highest, "excess of energy height", "Only an excess has to be lost.");
        Require.Between(
            rate, Speed.FromMetersPerSecond(-1000), Speed.FromMetersPerSecond(-1e-3), "rate of energy height", "Nothing is lost unless it falls.");
        return Duration.FromSeconds(excess.Meters / -rate.MetersPerSecond);
    }

    private static void RequireAirspeed(Speed airspeed) => Require.Between(airspeed, Speed.Zero, Fastest, "airspeed", Flown);
}
