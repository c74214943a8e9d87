using MathNet.Numerics.Distributions;

namespace FlapAero.Equations;

/// <summary>Intervals that do not ask how the values are distributed.</summary>
internal static class Intervals
{
    /// <summary>
    /// E. B. Wilson's interval for a share, J. Am. Stat. Assoc. 22 (1927): those shares from which the observed one lies no
    /// further than z standard deviations.
    /// </summary>
    public static (double Low, double High) Wilson(int hits, int count, double confidence)
    {
        double z = StandardNormal.Quantile(0.5 + 0.5 * confidence);
        double share = (double)hits / count;
        double squared = z * z / count;
        double middle = share + 0.5 * squared;
        double half = Math.Sqrt(squared * (share * (1 - share) + 0.25 * squared));
        // At the ends the two terms are equal, but not to the last digit.
        double low = hits == 0 ? 0 : (middle - half) / (1 + squared);
        double high = hits == count ? 1 : (middle + half) / (1 + squared);
        return (low, high);
    }

    /// <summary>
    /// The order statistics between which a quantile lies with at least the given confidence: how many of n values lie below it
    /// is binomial. Ranks count from 1; 0 and n + 1 mean that n values are too few for an end of that side.
    /// </summary>
    public static (int Low, int High) Ranks(double p, int count, double confidence)
    {
        double tail = 0.5 * (1 - confidence);
        int low = FirstRankPast(p, count, tail);
        int high = FirstRankPast(p, count, 1 - tail) + 1;
        return (low, high);
    }

    /// <summary>The least k with P(B ≤ k) &gt; tail, B binomial.</summary>
    private static int FirstRankPast(double p, int count, double tail)
    {
        int least = 0;
        int most = count;
        while (least < most)
        {
            int middle = least + (most - least) / 2;
            if (Binomial.CDF(p, count, middle) > tail)
                most = middle;
            else
                least = middle + 1;
        }

        return least;
    }
}
