namespace FlapAero.Handouts.Lessons;

/// <summary>The seeds of a lesson's problem sheets: a fixed function of the lesson's seed, the same on every machine and in every version.</summary>
internal static class SheetSeeds
{
    /// <summary>Six digits at most, for a person types them in again.</summary>
    private const int Largest = 999_999;

    /// <summary>
    /// The seeds of the first sheets, no two alike and none the lesson's own: its problems stand on the
    /// lesson's page; more sheets change none of the earlier.
    /// </summary>
    public static IReadOnlyList<int> Of(int seed, int sheets)
    {
        var seeds = new List<int>();
        for (ulong step = 0; seeds.Count < sheets; step++)
        {
            int next = (int)(Mixed((ulong)(uint)seed << 32 | step) % Largest) + 1;
            if (next != seed && !seeds.Contains(next))
                seeds.Add(next);
        }
        return seeds;
    }

    /// <summary>The finalizer of SplitMix64 (Steele, Lea and Flood 2014; constants from memory): neighbouring seeds give unlike sheets.</summary>
    private static ulong Mixed(ulong x)
    {
        x += 0x9E3779B97F4A7C15;
        x = (x ^ x >> 30) * 0xBF58476D1CE4E5B9;
        x = (x ^ x >> 27) * 0x94D049BB133111EB;
        return x ^ x >> 31;
    }
}
