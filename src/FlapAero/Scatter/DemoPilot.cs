using System.Numerics;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// An invented pilot for the lessons: holds ±5 kt and ±10 ft at the threshold, and is no machine in the round-out and with the
/// brakes either. No number here was measured on anybody. Safe for any thread.
/// </summary>
public static class DemoPilot
{
    private static readonly Speed HeldSpeed = Speed.FromKnots(5);
    private static readonly Length HeldHeight = Length.FromFeet(10);
    private static readonly Speed HeldWind = Speed.FromKnots(5);
    private static readonly Speed MeanWind = Speed.FromKnots(12);
    private static readonly Speed UsualGustFactor = Speed.FromKnots(10);

    /// <summary>The landing that this pilot means to fly: the usual one, into 5 kt of wind on a dry, level, paved runway.</summary>
    /// <remarks>Formula: <see cref="LandingSetup.For"/>. Range: any aeroplane of this library. Source: [common-practice].</remarks>
    /// <param name="configuration">Aeroplane, flaps and mass.</param>
    /// <param name="air">The air.</param>
    /// <returns>The landing.</returns>
    /// <exception cref="ArgumentNullException">No configuration or no air.</exception>
    /// <example><code>Landing.Fly(DemoPilot.Setup(flapsUp, Air.StandardSeaLevel)).Value.StopDistance.Meters // 716</code></example>
    public static LandingSetup Setup(Configuration configuration, Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return LandingSetup.For(configuration, air: air, headwind: HeldWind);
    }

    /// <summary>The landings that this pilot gets.</summary>
    /// <remarks>
    /// Formula: threshold speed V_REF ± 5 kt, height 50 ft ± 10 ft, headwind 5 kt ± 5 kt: normals whose standard deviation is half of
    /// that, cut off there. Power, round-out, touchdown lift, nose and brakes: triangular round those of <see cref="Setup"/>.
    /// Range: any aeroplane of this library. Source: [common-practice].
    /// </remarks>
    /// <param name="configuration">Aeroplane, flaps and mass.</param>
    /// <param name="air">The air.</param>
    /// <param name="speedHeightCorrelation">Correlation of threshold speed and height; none where none is given.</param>
    /// <returns>The scatter.</returns>
    /// <exception cref="RefusedInputException">A correlation outside −1 to 1.</exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Inputs.ThresholdSpeed!.Mean.Knots // 69.2</code></example>
    public static LandingScatter Scatter(Configuration configuration, Air air, double speedHeightCorrelation = 0)
    {
        LandingSetup meant = Setup(configuration, air);
        return LandingScatter.Around(meant, Spread(meant), speedHeightCorrelation);
    }

    /// <summary>The landings that this pilot gets on a gusty day.</summary>
    /// <remarks>
    /// Formula: as <see cref="Scatter"/> with 12 kt ± 5 kt of mean headwind and V_REF plus half the gust factor at the threshold; one
    /// gust or lull a landing, as deep as the gust factor or less, of 2 s to 6 s, that begins between 2 s before the threshold and 16 s
    /// after it: every value between as likely. Range: gust factors to 30 kt. Source: [afh] for the half; the rest is invented.
    /// </remarks>
    /// <param name="configuration">Aeroplane, flaps and mass.</param>
    /// <param name="air">The air.</param>
    /// <param name="gustFactor">Gust less mean wind; 10 kt where none is given.</param>
    /// <param name="speedHeightCorrelation">Correlation of threshold speed and height; none where none is given.</param>
    /// <returns>The scatter.</returns>
    /// <exception cref="RefusedInputException">
    /// A gust factor outside 0 to 30 kt, or a correlation outside −1 to 1.
    /// </exception>
    /// <example><code>DemoPilot.GustyDay(flapsUp, Air.StandardSeaLevel).Inputs.ThresholdSpeed!.Mean.Knots // 74.2</code></example>
    public static LandingScatter GustyDay(
        Configuration configuration, Air air, Speed? gustFactor = null, double speedHeightCorrelation = 0)
    {
        Speed factor = Require.Between(
            gustFactor ?? UsualGustFactor, Speed.Zero, Speed.FromKnots(30), "gust factor", "This pilot stays at home in more.", nameof(gustFactor));
        LandingSetup calm = Setup(configuration, air);
        LandingSetup meant = calm with
        {
            Technique = calm.Technique with { ThresholdSpeed = calm.Technique.ThresholdSpeed + Gust.Additive(factor) },
            Headwind = MeanWind,
        };
        LandingSpread spread = Spread(meant) with
        {
            GustChange = Distribution.Uniform(-factor, factor),
            GustStart = Distribution.Uniform(Duration.FromSeconds(-2), Duration.FromSeconds(16)),
            GustLength = Distribution.Uniform(Duration.FromSeconds(2), Duration.FromSeconds(6)),
        };
        return LandingScatter.Around(meant, spread, speedHeightCorrelation);
    }

    private static LandingSpread Spread(LandingSetup meant)
    {
        LandingTechnique technique = meant.Technique;
        // Where the tail ends the hold-off, nobody holds off longer.
        double held = meant.Checked().TouchdownLiftFraction, most = meant.TailEndsHoldOff ? held : held + 0.05;
        Length flare = meant.FlareHeight;
        return new()
        {
            Headwind = Held(meant.Headwind.ToUnit(SpeedUnit.Knot), HeldWind),
            ThresholdSpeed = Held(technique.ThresholdSpeed.ToUnit(SpeedUnit.Knot), HeldSpeed),
            ThresholdHeight = Held(technique.ThresholdHeight.ToUnit(LengthUnit.Foot), HeldHeight),
            FlareTimeConstant = Around(technique.FlareTimeConstant, 0.9, 1.6),
            HoldOffHeight = Around(technique.HoldOffHeight, 0.5, 3),
            TouchdownLiftFraction = Distribution.Triangular(held - 0.03, held, most),
            PowerCutHeight = Around(flare, 0.5, 1),
            PowerCutTime = Around(technique.PowerCutTime, 0.5, 1.5),
            NoseLowerSpeedFraction = Distribution.Triangular(0.7, technique.NoseLowerSpeedFraction, 0.95),
            BrakingFriction = Distribution.Triangular(0.2, meant.BrakingFriction, 0.4),
        };
    }

    private static Distribution<T> Around<T>(T meant, double least, double most)
        where T : struct, IMultiplyOperators<T, double, T> => Distribution.Triangular(meant * least, meant, meant * most);

    // What the pilot holds is two deviations of the whole normal, and nothing outside it is flown.
    private static Distribution<T> Held<T>(T meant, T held)
        where T : struct, IAdditionOperators<T, T, T>, ISubtractionOperators<T, T, T>, IDivisionOperators<T, double, T> =>
        Distribution.TruncatedNormal(meant, held / 2, meant - held, meant + held);
}
