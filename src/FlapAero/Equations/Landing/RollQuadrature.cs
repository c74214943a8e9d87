namespace FlapAero.Equations;

/// <summary>
/// Time and distance while V falls under a deceleration C + E V² &gt; 0, from V₁ to V₂ of one sign, in closed form. Written in
/// differences, so that nothing cancels where E, C or V₁ − V₂ is small and no case is needed for E of either sign.
/// Source: any text on performance has the two integrals; see the tests for the forms usually printed.
/// </summary>
internal static class RollQuadrature
{
    /// <summary>∫ dV/(C + E V²): √(E/C) V turned into one arc tangent of a difference.</summary>
    public static double Time(double constant, double squared, double from, double to)
    {
        double linear = (from - to) / (constant + squared * from * to);
        return linear * ArcTangentRatio(constant * squared * linear * linear);
    }

    /// <summary>∫ V dV/(C + E V²), the distance through the air: ln[(C + E V₁²)/(C + E V₂²)]/2E.</summary>
    public static double Distance(double constant, double squared, double from, double to)
    {
        double squares = (from - to) * (from + to);
        double least = constant + squared * to * to;
        return squares / (2 * least) * LogarithmRatio(squared * squares / least);
    }

    /// <summary>arctan(√q)/√q, and its continuation artanh(√−q)/√−q.</summary>
    private static double ArcTangentRatio(double q)
    {
        if (Math.Abs(q) < 1e-3)
            return 1 - q * (1.0 / 3 - q * (1.0 / 5 - q * (1.0 / 7 - q * (1.0 / 9 - q / 11))));
        double root = Math.Sqrt(Math.Abs(q));
        return (q > 0 ? Math.Atan(root) : Math.Atanh(root)) / root;
    }

    /// <summary>ln(1 + p)/p. The rounding of 1 + p is divided out again.</summary>
    private static double LogarithmRatio(double p)
    {
        double sum = 1 + p;
        return sum == 1 ? 1 : Math.Log(sum) / (sum - 1);
    }
}
