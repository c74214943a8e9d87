using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>What lessons ask of many landings again and again, each in one call.</summary>
public static class LessonScatters
{
    /// <summary>The landing's inputs that a hand does not hold exactly, with the names that a lesson gives to them.</summary>
    public static IReadOnlyDictionary<LandingVariable, string> InputNames { get; } = new Dictionary<LandingVariable, string>
    {
        [LandingVariable.ThresholdSpeed] = "speed",
        [LandingVariable.ThresholdHeight] = "height",
        [LandingVariable.Headwind] = "headwind",
        [LandingVariable.PowerCutHeight] = "throttle",
        [LandingVariable.TouchdownLiftFraction] = "end of hold-off",
        [LandingVariable.HoldOffHeight] = "hold-off height",
        [LandingVariable.FlareTimeConstant] = "round-out",
    };

    /// <summary>A speed that is held within a tolerance, more often near its middle than at the edge.</summary>
    /// <param name="middle">The middle.</param>
    /// <param name="most">The tolerance: twice the standard deviation, and never exceeded.</param>
    /// <returns>The distribution.</returns>
    public static Distribution<Speed> HeldWithin(this Speed middle, Speed most) => Distribution.TruncatedNormal(middle, most / 2, middle - most, middle + most);

    /// <summary>How far the touchdowns of a hand are spread.</summary>
    /// <param name="hand">The hand.</param>
    /// <returns>The standard deviation of a thousand touchdowns.</returns>
    public static Length TouchdownDeviation(this GoodHand hand)
    {
        ArgumentNullException.ThrowIfNull(hand);
        return hand.Fly(1000).TouchdownDistance.StandardDeviation;
    }

    /// <summary>The stretch on which nineteen of twenty landings touch.</summary>
    /// <param name="landings">The landings.</param>
    /// <returns>From the touchdown that one in forty is short of to the one that one in forty passes.</returns>
    public static Length NineteenOfTwenty(this LandingScatterResult landings)
    {
        ArgumentNullException.ThrowIfNull(landings);
        return Length.FromFeet((landings.TouchdownDistance.Quantile(0.975) - landings.TouchdownDistance.Quantile(0.025)).Feet);
    }

    /// <summary>The share of the landings that touch within so much beyond a named point, for the best such point.</summary>
    /// <param name="landings">The landings.</param>
    /// <param name="beyond">How far beyond the point counts.</param>
    /// <returns>The share.</returns>
    public static double ShareCaughtWithin(this LandingScatterResult landings, Length beyond)
    {
        double[] at = landings.TouchdownsInFeet();
        return at.Max(point => at.Count(x => x >= point && x <= point + beyond.Feet)) / (double)landings.Count;
    }

    /// <summary>Where the wheels touched, in feet from the threshold, in the order flown.</summary>
    internal static double[] TouchdownsInFeet(this LandingScatterResult landings) =>
        [.. Enumerable.Range(0, landings.Count).Select(i => landings.Touchdown(i)).OfType<Length>().Select(x => x.Feet)];
}
