using System.Runtime.InteropServices;

namespace FlapAero.Equations;

/// <summary>One 1-cosine gust in plain numbers, m/s and s: how much of the headwind changes, when it begins, how long it lasts.</summary>
[StructLayout(LayoutKind.Sequential)]
internal readonly record struct GustInput
{
    public const int Count = 3;

    /// <summary>60 kt in m/s.</summary>
    public const double Strongest = 60 * 1852.0 / 3600;
    public const double Farthest = 3600;
    public const double Shortest = 0.2;
    public const double Longest = 3600;

    /// <summary>Δw; negative in a lull.</summary>
    public double Change { get; init; }

    /// <summary>From the threshold.</summary>
    public double Start { get; init; }

    public double Length { get; init; }

    /// <summary>No gust. Were it one, it would begin at the threshold and last five seconds.</summary>
    public static GustInput None => new() { Length = 5 };

    /// <summary>The three numbers, in the order of the fields.</summary>
    public static Span<double> Row(ref GustInput gust) => MemoryMarshal.Cast<GustInput, double>(new Span<GustInput>(ref gust));
}
