using UnitsNet;

namespace FlapAero;

/// <summary>The wind of a METAR. Immutable, thread-safe.</summary>
public sealed class MetarWind
{
    internal MetarWind(Angle? from, Speed mean, Speed? gust) => (From, Mean, Gust) = (from, mean, gust);

    /// <summary>True direction it blows from; none where it is variable and light.</summary>
    public Angle? From { get; }

    /// <summary>Mean speed.</summary>
    public Speed Mean { get; }

    /// <summary>Speed of the gusts, if some are reported.</summary>
    public Speed? Gust { get; }

    /// <summary>The first of the two directions between which it varies, clockwise; none where none are reported.</summary>
    public Angle? VariesFrom { get; internal init; }

    /// <summary>The second of them.</summary>
    public Angle? VariesTo { get; internal init; }

    /// <summary>The wind that a landing in a direction is briefed with.</summary>
    /// <remarks>
    /// Formula: as reported; a variable wind straight from behind, which lengthens the landing most. Range: 0° to 360°. Source: [wmo-fm-15].
    /// </remarks>
    /// <param name="landing">True direction of the landing.</param>
    /// <returns>The wind.</returns>
    /// <exception cref="RefusedInputException">A direction outside its range.</exception>
    /// <example><code>Metar.Decode("XQAA 291450Z VRB03KT 9999 18/09 Q1013").Value.Wind.Value.For(Angle.FromDegrees(270)).Mean.From.Degrees // 90.0</code></example>
    public BriefingWind For(Angle landing)
    {
        Require.Between(landing, Angle.Zero, Angle.FromDegrees(360), "heading", "Directions run from 0° to 360°.");
        double degrees = landing.Degrees;
        return new(new Wind(From ?? Angle.FromDegrees(degrees >= 180 ? degrees - 180 : degrees + 180), Mean), Gust);
    }
}
