using System.Globalization;
using FlapAero.Equations;

namespace FlapAero;

/// <summary>How many of how many. Immutable.</summary>
public sealed class Share
{
    internal Share(int hits, int count)
    {
        Hits = hits;
        Count = count;
    }

    /// <summary>How many.</summary>
    public int Hits { get; }

    /// <summary>Of how many.</summary>
    public int Count { get; }

    /// <summary>The share, 0 to 1.</summary>
    public double Value => (double)Hits / Count;

    /// <summary>Between which values the share of endlessly many landings lies: Wilson's interval.</summary>
    /// <remarks>
    /// Formula: [p + z²/2n ± z√(p(1 − p)/n + z²/4n²)]/(1 + z²/n), z the normal quantile of the confidence. It says how far the number
    /// of landings goes, not how true the distributions are. Range: confidence 0.5 to 0.9999. Source: [wilson].
    /// </remarks>
    /// <param name="confidence">In how many of all such intervals the share lies; 95 % where none is given.</param>
    /// <returns>The two ends, 0 to 1.</returns>
    /// <exception cref="RefusedInputException">A confidence outside the range.</exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Fly(1000).StoppedWithin(Length.FromMeters(750)).Interval().Low // 0.6</code></example>
    public (double Low, double High) Interval(double confidence = 0.95) =>
        Intervals.Wilson(Hits, Count, Confidence.InRange(confidence));

    /// <summary>Per cent, and how many of how many.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{100 * Value:0.##} % ({Hits} of {Count})");
}
