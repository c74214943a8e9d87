using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>The cubic through two values and two slopes.</summary>
internal static class Hermite
{
    /// <summary>
    /// Where, between 0 and <paramref name="size"/>, the cubic rises through zero. Regula falsi with the Illinois rule: it keeps its
    /// bracket. A result of moderate accuracy is enough, for the caller steps there and looks again.
    /// </summary>
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static T Root<T>(T size, T startValue, T startSlope, T endValue, T endSlope)
        where T : unmanaged, ILanes<T>
    {
        (T linear, T square, T cubic) = Coefficients(size, startValue, startSlope, endValue, endSlope);
        T low = 0, high = 1, lowValue = startValue, highValue = endValue;
        for (int i = 0; i < 6; i++)
        {
            T middle = low - lowValue * (high - low) / (highValue - lowValue);
            T value = Value(middle, startValue, linear, square, cubic);
            T below = T.Less(value, 0);
            lowValue = T.Select(below, value, 0.5 * lowValue);
            highValue = T.Select(below, 0.5 * highValue, value);
            low = T.Select(below, middle, low);
            high = T.Select(below, high, middle);
        }

        T root = low - lowValue * (high - low) / (highValue - lowValue);
        return size * T.Max(0.02, T.Min(root, 0.98));
    }

    /// <summary>The mask of lanes whose cubic is above zero somewhere on the way, both ends being below.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static T Above<T>(T size, T startValue, T startSlope, T endValue, T endSlope)
        where T : unmanaged, ILanes<T>
    {
        (T linear, T square, T cubic) = Coefficients(size, startValue, startSlope, endValue, endSlope);
        T above = 0;
        for (int i = 1; i < 16; i++)
            above |= T.Less(0, Value(i / 16.0, startValue, linear, square, cubic));
        return above;
    }

    private static (T Linear, T Square, T Cubic) Coefficients<T>(T size, T startValue, T startSlope, T endValue, T endSlope)
        where T : unmanaged, ILanes<T>
    {
        T rise = endValue - startValue;
        T cubic = size * (startSlope + endSlope) - 2 * rise;
        T square = 3 * rise - size * (2 * startSlope + endSlope);
        return (size * startSlope, square, cubic);
    }

    private static T Value<T>(T at, T startValue, T linear, T square, T cubic)
        where T : unmanaged, ILanes<T> =>
        T.Fused(T.Fused(T.Fused(cubic, at, square), at, linear), at, startValue);
}
