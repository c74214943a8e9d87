using System.Globalization;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// One gust along the runway, the same at every height: the headwind rises and falls back as 1 − cos. A lull has a negative change.
/// Immutable, thread-safe.
/// </summary>
public sealed class OneCosineGust
{
    private static readonly Speed Strongest = Speed.FromMetersPerSecond(LandingColumn.StrongestGust);
    private static readonly Duration Farthest = Duration.FromSeconds(LandingColumn.FarthestGust);

    /// <summary>A gust.</summary>
    /// <param name="change">Δw, the largest change of the headwind, to 60 kt either way; negative in a lull.</param>
    /// <param name="start">When it begins, counted from the threshold, to an hour before or after: its phase.</param>
    /// <param name="length">How long it lasts, 0.2 s to an hour.</param>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    public OneCosineGust(Speed change, Duration start, Duration length)
    {
        Change = Require.Between(change, -Strongest, Strongest, "change of the headwind", "Nobody trains in more.");
        Start = Require.Between(
            start, -Farthest, Farthest, "start of the gust", "A landing is over in minutes.");
        Length = Require.Between(
            length, Duration.FromSeconds(LandingColumn.ShortestGust), Farthest, "length of the gust", "A shorter one is smaller than the wing.");
    }

    /// <summary>Δw.</summary>
    public Speed Change { get; }

    /// <summary>When it begins, from the threshold.</summary>
    public Duration Start { get; }

    /// <summary>How long it lasts.</summary>
    public Duration Length { get; }

    /// <summary>What the gust adds to the headwind at a moment.</summary>
    /// <remarks>Formula: ½ Δw (1 − cos 2π(t − t_g)/λ) while it lasts, zero before and after. Range: any finite time. Source: [landing-conditions].</remarks>
    /// <param name="time">t, from the threshold.</param>
    /// <returns>The addition.</returns>
    /// <exception cref="RefusedInputException">A time that is not finite.</exception>
    /// <example><code>new OneCosineGust(Speed.FromKnots(-8), Duration.FromSeconds(2), Duration.FromSeconds(4)).At(Duration.FromSeconds(3)).Knots // -4.000</code></example>
    public Speed At(Duration time)
    {
        Require.Between(time, Duration.FromHours(-1000), Duration.FromHours(1000), "time", "A landing is over in minutes.");
        WindField<ScalarLane> field = new(0, Change.MetersPerSecond, Start.Seconds, Length.Seconds);
        return Speed.FromMetersPerSecond(field.Gust(time.Seconds).Change.Value).ToUnit(Change.Unit);
    }

    /// <summary>Change, start and length.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Change.Knots:+0.#;-0.#;0} kt from {Start.Seconds:0.#} s for {Length.Seconds:0.#} s");
}
