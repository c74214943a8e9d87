using UnitsNet;

namespace FlapAero;

/// <summary>What gusts add to the approach speed. The gust factor is the gust less the mean wind.</summary>
public static class Gust
{
    /// <summary>Addition to the approach speed for a gusty wind.</summary>
    /// <remarks>
    /// Formula: share × gust factor. Range: factor 0 to 60 kt, share 0 to 1. Source: [afh] for one half.
    /// </remarks>
    /// <param name="gustFactor">Gust less mean wind.</param>
    /// <param name="share">Share of it that is added; one half where none is given.</param>
    /// <returns>The addition, in the gust factor's unit.</returns>
    /// <exception cref="RefusedInputException">A factor or share outside the range.</exception>
    /// <example><code>Gust.Additive(Speed.FromKnots(15)).Knots // 7.500</code></example>
    public static Speed Additive(Speed gustFactor, double share = 0.5)
    {
        Require.Between(gustFactor, Speed.Zero, Speed.FromKnots(60), "gust factor", "Nobody trains in more.");
        Require.Between(share, 0, 1, "share of the gust factor", "It is a share.");
        return gustFactor * share;
    }
}
