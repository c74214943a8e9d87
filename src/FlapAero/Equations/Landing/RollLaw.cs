using System.Runtime.CompilerServices;
using MathNet.Numerics.Integration;

namespace FlapAero.Equations;

/// <summary>
/// A deceleration C + B V + E V² and what it does while V falls from V₁ to V₂ of one sign: the time in closed form, the distance in closed
/// form where that does not cancel. Written in differences, so that nothing cancels where E, C or V₁ − V₂ is small and no case is needed
/// for E of either sign. Source: any text on performance has the integrals for B = 0; see the tests for the forms usually printed.
/// </summary>
/// <param name="Constant">C.</param>
/// <param name="Linear">B.</param>
/// <param name="Squared">E.</param>
internal readonly record struct RollLaw(double Constant, double Linear, double Squared)
{
    // Below it, as a share of B V, the closed form of the distance loses digits.
    private const double SmallSquare = 1e-3;
    private const int Nodes = 24;

    private static readonly GaussLegendreRule Rule = new(-1, 1, Nodes);

    /// <summary>The deceleration at an airspeed.</summary>
    public double At(double speed) => Constant + speed * (Linear + Squared * speed);

    /// <summary>Whether it slows at every airspeed between two.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public bool Slows(double from, double to)
    {
        double lowest = -Linear / (2 * Squared);
        return At(from) > 0 && At(to) > 0 && !(Squared > 0 && lowest > to && lowest < from && !(At(lowest) > 0));
    }

    /// <summary>∫ dV/(C + B V + E V²): √(CE − B²/4) turned into one arc tangent of a difference.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Time(double from, double to)
    {
        double fall = from - to, turn = Constant + 0.5 * Linear * (from + to) + Squared * from * to;
        double bend = Constant * Squared - 0.25 * Linear * Linear;
        // Past a quarter turn the tangent changes its sign: so slow in the middle is only a thrust that grows with the airspeed.
        if (!(turn > 0))
            return Math.Atan2(Math.Sqrt(bend) * fall, turn) / Math.Sqrt(bend);
        double linear = fall / turn;
        return linear * ArcTangentRatio(bend * linear * linear);
    }

    /// <summary>∫ V dV/(C + B V + E V²), the distance through the air.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Distance(double from, double to)
    {
        if (Linear == 0 || Math.Abs(Squared) * Math.Max(Math.Abs(from), Math.Abs(to)) > SmallSquare * Math.Abs(Linear))
            return HalfLogarithm(from, to) - (Linear == 0 ? 0 : Linear / (2 * Squared) * Time(from, to));
        // Where the end is slowed ten times less than the beginning, in two parts: the rule sees no pole near by.
        double middle = 0.5 * (from + to);
        return At(to) < 0.1 * At(from) && middle < from && middle > to ? Distance(from, middle) + Distance(middle, to) : ByRule(from, to);
    }

    private double ByRule(double from, double to)
    {
        double sum = 0, half = 0.5 * (from - to), middle = 0.5 * (from + to);
        for (int i = 0; i < Nodes; i++)
        {
            double speed = middle + half * Rule.GetAbscissa(i);
            sum += Rule.GetWeight(i) * speed / At(speed);
        }

        return half * sum;
    }

    /// <summary>ln[(C + B V₁ + E V₁²)/(C + B V₂ + E V₂²)]/2E; the rounding of 1 + p is divided out again.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double HalfLogarithm(double from, double to)
    {
        double least = At(to), rise = (from - to) * (Linear + Squared * (from + to)) / least;
        double sum = 1 + rise;
        double ratio = sum == 1 ? 1 : Math.Log(sum) / (sum - 1);
        // Without B the E of the rise cancels the one below: nothing is divided by a small number.
        return Linear == 0
            ? (from - to) * (from + to) / (2 * least) * ratio
            : rise * ratio / (2 * Squared);
    }

    /// <summary>arctan(√q)/√q, and its continuation artanh(√−q)/√−q.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double ArcTangentRatio(double q)
    {
        if (Math.Abs(q) < 1e-3)
            return 1 - q * (1.0 / 3 - q * (1.0 / 5 - q * (1.0 / 7 - q * (1.0 / 9 - q / 11))));
        double root = Math.Sqrt(Math.Abs(q));
        return (q > 0 ? Math.Atan(root) : Math.Atanh(root)) / root;
    }
}
