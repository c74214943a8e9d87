using System.Numerics;

namespace FlapAero.Equations;

/// <summary>
/// One number, or several landings' numbers side by side in a hardware vector. The landing is written once over this, so that
/// one landing and a scatter of thousands run the same equations. Comparisons give masks: all bits set is true.
/// </summary>
internal interface ILanes<T>
    : IAdditionOperators<T, T, T>, ISubtractionOperators<T, T, T>,
        IMultiplyOperators<T, T, T>, IDivisionOperators<T, T, T>
    where T : unmanaged, ILanes<T>
{
    static abstract int Count { get; }

    double this[int lane] { get; }

    /// <summary>The same number in every lane.</summary>
    static abstract implicit operator T(double value);

    /// <summary>Column <paramref name="column"/> of <see cref="Count"/> rows.</summary>
    static abstract T Gather(ReadOnlySpan<double> rows, int column, int rowLength);

    static abstract T operator &(T a, T b);

    static abstract T operator |(T a, T b);

    static abstract T operator ~(T mask);

    /// <summary>a b + c, rounded once.</summary>
    static abstract T Fused(T a, T b, T c);

    static abstract T Sqrt(T a);

    static abstract T Exp(T a);

    static abstract T Log(T a);

    static abstract T Abs(T a);

    static abstract T Min(T a, T b);

    static abstract T Max(T a, T b);

    static abstract T Less(T a, T b);

    static abstract T Select(T mask, T yes, T no);

    static abstract bool Any(T mask);
}
