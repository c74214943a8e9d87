using UnitsNet;

namespace FlapAero;

/// <summary>One bar of a histogram. Immutable.</summary>
public sealed class HistogramBin
{
    internal HistogramBin(Length low, Length high, int count)
    {
        Low = low;
        High = high;
        Count = count;
    }

    /// <summary>Where it begins.</summary>
    public Length Low { get; }

    /// <summary>Where it ends.</summary>
    public Length High { get; }

    /// <summary>How many landings are in it.</summary>
    public int Count { get; }
}
