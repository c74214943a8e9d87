using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>
/// The hand of a pilot who holds speed, height and moments well, but none of them exactly: the landing that is meant, and the landings
/// that come of it. The tolerances are invented. Immutable.
/// </summary>
public sealed class GoodHand
{
    private GoodHand(Configuration configuration, LandingSetup meant, LandingSpread spread) => (Configuration, Meant, Spread) = (configuration, meant, spread);

    /// <summary>The aeroplane as it lands.</summary>
    public Configuration Configuration { get; }

    /// <summary>The landing that is meant: the usual one, in a calm.</summary>
    public LandingSetup Meant { get; }

    /// <summary>What the hand does not hold exactly, and how far each input is spread.</summary>
    public LandingSpread Spread { get; }

    /// <summary>The hand with a configuration: height, throttle, round-out, hold-off and brakes are <see cref="DemoPilot"/>'s.</summary>
    /// <param name="configuration">The aeroplane as it lands.</param>
    /// <param name="air">The air.</param>
    /// <param name="speedWithin">The tolerance of the speed at the threshold: twice its standard deviation, and never exceeded.</param>
    /// <param name="windWithin">The same of the wind along the runway, round a calm.</param>
    /// <returns>The hand.</returns>
    public static GoodHand Of(Configuration configuration, Air air, Speed speedWithin, Speed windWithin)
    {
        var meant = LandingSetup.For(configuration, air: air);
        LandingSpread spread = DemoPilot.Scatter(configuration, air).Inputs with { Headwind = Speed.Zero.HeldWithin(windWithin) };
        return new GoodHand(configuration, meant, spread).WithSpeedWithin(speedWithin);
    }

    /// <summary>The same hand with another tolerance of the speed at the threshold.</summary>
    /// <param name="speedWithin">The tolerance.</param>
    /// <returns>The hand.</returns>
    public GoodHand WithSpeedWithin(Speed speedWithin) =>
        new(Configuration, Meant, Spread with { ThresholdSpeed = Meant.Technique.ThresholdSpeed.HeldWithin(speedWithin) });

    /// <summary>A hand that varies some inputs alone and has the others as meant.</summary>
    /// <param name="inputs">What varies.</param>
    /// <returns>The hand.</returns>
    public GoodHand Only(params IReadOnlyCollection<LandingVariable> inputs) => new(Configuration, Meant, Spread.Only(inputs));

    /// <summary>A hand that has some inputs as meant in every landing.</summary>
    /// <param name="inputs">What does not vary.</param>
    /// <returns>The hand.</returns>
    public GoodHand Without(params IReadOnlyCollection<LandingVariable> inputs) => new(Configuration, Meant, Spread.Without(inputs));

    /// <summary>The scatter of this hand's landings.</summary>
    /// <returns>The scatter round the landing that is meant.</returns>
    public LandingScatter Landings() => LandingScatter.Around(Meant, Spread);

    /// <summary>Flies landings with this hand.</summary>
    /// <param name="landings">How many.</param>
    /// <param name="seed">The seed of the draws.</param>
    /// <returns>What came of them.</returns>
    public LandingScatterResult Fly(int landings, long seed = 1) => Landings().Fly(landings, seed);
}
