using MathNet.Numerics.RootFinding;

namespace FlapAero.Equations;

/// <summary>
/// The highest engine speed that satisfies a balance between two limits, found by stepping down from the top and closing in
/// by Brent's method: the balance may have more than one root, and a throttle is closed from above.
/// </summary>
internal static class PropellerSpeedSolver
{
    private const int Steps = 400;
    private const double Accuracy = 1e-12;

    /// <param name="balance">Positive above the highest root, in the caller's own units.</param>
    /// <param name="low">Lowest revolutions per second.</param>
    /// <param name="high">Highest revolutions per second.</param>
    /// <param name="share">The share of an engine's whole range that lies between the limits: the steps are as long in any part of it.</param>
    /// <returns>The highest root, or no answer where there is none.</returns>
    public static double? Highest(Func<double, double> balance, double low, double high, double share = 1)
    {
        if (!(high > low)) return null;
        int steps = Math.Clamp((int)Math.Ceiling(Steps * share), 8, Steps);
        double upper = high;
        double above = balance(upper);
        if (above == 0) return upper;
        for (int i = 1; i <= steps; i++)
        {
            double lower = high + (low - high) * i / steps;
            double below = balance(lower);
            if (below == 0) return lower;
            if (above > 0 != below > 0)
                return Brent.TryFindRoot(balance, lower, upper, Accuracy * high, 200, out double root) ? root : null;
            (upper, above) = (lower, below);
        }

        return null;
    }
}
