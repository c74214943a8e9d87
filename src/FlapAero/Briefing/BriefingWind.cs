using UnitsNet;

namespace FlapAero;

/// <summary>A wind as it is reported: the mean, and the gusts where there are some. Immutable.</summary>
public sealed class BriefingWind
{
    /// <summary>A wind.</summary>
    /// <param name="mean">Direction and mean speed.</param>
    /// <param name="gust">Speed of the gusts, from the mean's to the mean's and 60 kt; none where none is reported.</param>
    /// <exception cref="ArgumentNullException">No mean wind.</exception>
    /// <exception cref="RefusedInputException">Gusts weaker than the mean, or far stronger.</exception>
    public BriefingWind(Wind mean, Speed? gust = null)
    {
        ArgumentNullException.ThrowIfNull(mean);
        Mean = mean;
        GustSpeed = gust is { } given
            ? Require.Between(
                given, mean.Speed, mean.Speed + Speed.FromKnots(60), "gust", "Gusts are stronger than the mean wind; nobody trains in more.", nameof(gust))
            : null;
    }

    /// <summary>The mean wind.</summary>
    public Wind Mean { get; }

    /// <summary>Speed of the gusts; none where none is reported.</summary>
    public Speed? GustSpeed { get; }

    /// <summary>Gust less mean; nought without gusts.</summary>
    public Speed GustFactor => GustSpeed is { } gust ? gust - Mean.Speed : Speed.Zero;

    /// <summary>The wind of the gusts: the mean's direction, the gusts' speed.</summary>
    internal Wind Strongest => GustSpeed is { } gust ? new Wind(Mean.From, gust) : Mean;
}
