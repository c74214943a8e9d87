using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// A battery that carries the loads by itself: its charge, which holds at one rate only, and the share of it that age, cold and
/// what was drawn have left. Immutable. A training aid: one exponent stands for a whole discharge, and neither the falling voltage at which
/// a radio goes silent nor a cell that fails is in it.
/// </summary>
public sealed class Battery
{
    private static readonly Duration Shortest = Duration.FromMinutes(6), Longest = Duration.FromHours(100);

    /// <summary>A battery.</summary>
    /// <param name="ratedCharge">C, what it gives at its rated current, 1 Ah to 200 Ah.</param>
    /// <param name="ratedTime">H, the time over which that charge was measured, 6 min to 100 h: one hour for an aeroplane's battery.</param>
    /// <param name="exponent">k, Peukert's exponent, 1 to 2: 1 is a battery that does not mind the current.</param>
    /// <param name="shareLeft">s, what is left of the time at the rated current, above 0 to 1: 1 is new, warm and full.</param>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    public Battery(ElectricCharge ratedCharge, Duration ratedTime, double exponent, double shareLeft = 1)
    {
        RatedCharge = Require.Between(
            ratedCharge, ElectricCharge.FromAmpereHours(1), ElectricCharge.FromAmpereHours(200), "rated charge", "Batteries of light aeroplanes lie between them.");
        RatedTime = Require.Between(ratedTime, Shortest, Longest, "rated time", "Nobody rates a battery outside it.");
        Exponent = Require.Between(exponent, 1, 2, "Peukert's exponent", "Below 1 a heavy load would lengthen the charge; above 2 no battery is in use.");
        ShareLeft = Require.Between(shareLeft, 1e-6, 1, "share left", "An empty battery carries nothing; there is no more than all of it.");
    }

    /// <summary>C.</summary>
    public ElectricCharge RatedCharge { get; }

    /// <summary>H, the time over which C was measured.</summary>
    public Duration RatedTime { get; }

    /// <summary>k.</summary>
    public double Exponent { get; }

    /// <summary>s, the share of the time at the rated current that age, cold and what was drawn have left.</summary>
    public double ShareLeft { get; }

    /// <summary>I_r = C/H.</summary>
    public ElectricCurrent RatedCurrent => ElectricCurrent.FromAmperes(RatedCharge.AmpereHours / RatedTime.Hours);

    /// <summary>The same battery with another share left.</summary>
    /// <param name="shareLeft">s, above 0 to 1.</param>
    /// <returns>The battery.</returns>
    /// <remarks>Formula: none, a copy. Range: above 0 to 1. Source: [peukert].</remarks>
    /// <exception cref="RefusedInputException">A share outside the range.</exception>
    /// <example><code>DemoElectrics.Battery.Left(0.5).ShareLeft // 0.5</code></example>
    public Battery Left(double shareLeft) => new(RatedCharge, RatedTime, Exponent, shareLeft);

    /// <summary>How long the battery carries a steady current.</summary>
    /// <remarks>Formula: t = s H (I_r/I)^k. Range: from a hundredth of the rated current to fifty times it. Source: [peukert].</remarks>
    /// <param name="current">I.</param>
    /// <returns>t, to where the rating's discharge ends.</returns>
    /// <exception cref="RefusedInputException">A current outside the range.</exception>
    /// <example><code>new Battery(ElectricCharge.FromAmpereHours(100), Duration.FromHours(100), 1.2).Endurance(ElectricCurrent.FromAmperes(5)).Hours // 14.5</code></example>
    public Duration Endurance(ElectricCurrent current) => Duration.FromSeconds(BatteryLaws.Endurance(
        ShareLeft, RatedTime.Seconds, RatedCurrent.Amperes, Amperes(current), Exponent));

    /// <summary>How long the battery carries loads.</summary>
    /// <remarks>
    /// Formula: t = s H (I_r/Σ I)^k with each load's mean current. Range: a sum from a hundredth of the rated current to fifty times it; for
    /// loads that come and go the mean makes t a little long. Source: [peukert].
    /// </remarks>
    /// <param name="loads">The loads that stay on.</param>
    /// <returns>t.</returns>
    /// <exception cref="ArgumentNullException">No list.</exception>
    /// <exception cref="RefusedInputException">A sum outside the range: without a load the time has no end.</exception>
    /// <example><code>DemoElectrics.Battery.Endurance(DemoElectrics.Loads).Minutes // 37.6</code></example>
    public Duration Endurance(IEnumerable<ElectricalLoad> loads) => Endurance(ElectricalLoad.Together(loads));

    /// <summary>What share of the battery, new and full, a current takes in a time.</summary>
    /// <remarks>Formula: s = (t/H)(I/I_r)^k. Range: the current as in <see cref="Endurance(ElectricCurrent)"/>, the time 0 to 1 000 h. Source: [peukert].</remarks>
    /// <param name="current">I.</param>
    /// <param name="time">t.</param>
    /// <returns>s; above <see cref="ShareLeft"/> the battery does not carry it.</returns>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    /// <example><code>DemoElectrics.Battery.ShareTaken(ElectricCurrent.FromAmperes(30), Duration.FromMinutes(9)) // 0.239</code></example>
    public double ShareTaken(ElectricCurrent current, Duration time)
    {
        Require.Between(time, Duration.Zero, Duration.FromHours(1000), "time on the battery", "It is over long before.");
        return BatteryLaws.ShareTaken(time.Seconds, RatedTime.Seconds, RatedCurrent.Amperes, Amperes(current), Exponent);
    }

    /// <summary>The greatest steady current that the battery carries for a time.</summary>
    /// <remarks>Formula: I = I_r (s H/t)^(1/k). Range: a time that gives a current from a hundredth of the rated one to fifty times it. Source: [peukert].</remarks>
    /// <param name="time">t.</param>
    /// <returns>I.</returns>
    /// <exception cref="RefusedInputException">A time that is too short or too long for the range.</exception>
    /// <example><code>DemoElectrics.Battery.CurrentFor(Duration.FromHours(2)).Amperes // 10.95</code></example>
    public ElectricCurrent CurrentFor(Duration time)
    {
        ElectricCurrent most = RatedCurrent * 50, least = RatedCurrent / 100;
        Require.Between(time, Endurance(most).ToUnit(time.Unit), Endurance(least).ToUnit(time.Unit), "time on the battery", Law);
        return ElectricCurrent.FromAmperes(BatteryLaws.CurrentFor(
            ShareLeft, RatedTime.Seconds, RatedCurrent.Amperes, time.Seconds, Exponent));
    }

    /// <summary>Rating and share left.</summary>
    public override string ToString() =>
        $"{QuantityText.Of(RatedCharge)} over {QuantityText.Of(RatedTime, "h 0.#")}, {QuantityText.Of(ShareLeft, "% 0")} left";

    private const string Law = "Peukert's law is a fit to discharges between these currents.";

    private double Amperes(ElectricCurrent current)
    {
        ElectricCurrent rated = RatedCurrent.ToUnit(current.Unit);
        return Require.Between(current, rated / 100 * (1 - 1e-9), rated * 50 * (1 + 1e-9), "current", Law).Amperes;
    }
}
