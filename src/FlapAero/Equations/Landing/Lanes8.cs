using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace FlapAero.Equations;

/// <summary>Eight landings side by side in a vector of 512 bits.</summary>
internal readonly struct Lanes8(Vector512<double> value) : ILanes<Lanes8>
{
    public readonly Vector512<double> Value = value;

    public static int Count => Vector512<double>.Count;

    public double this[int lane] => Value[lane];

    public static implicit operator Lanes8(Vector512<double> value) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Of(double value) => Vector512.Create(value);

    public static Lanes8 Gather(ReadOnlySpan<double> rows, int column, int rowLength) =>
        Vector512.Create(
            rows[column], rows[column + rowLength], rows[column + 2 * rowLength], rows[column + 3 * rowLength],
            rows[column + 4 * rowLength], rows[column + 5 * rowLength], rows[column + 6 * rowLength], rows[column + 7 * rowLength]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 operator +(Lanes8 a, Lanes8 b) => a.Value + b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 operator -(Lanes8 a, Lanes8 b) => a.Value - b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 operator *(Lanes8 a, Lanes8 b) => a.Value * b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 operator /(Lanes8 a, Lanes8 b) => a.Value / b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 operator *(double a, Lanes8 b) => Vector512.Create(a) * b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 operator &(Lanes8 a, Lanes8 b) => a.Value & b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 operator |(Lanes8 a, Lanes8 b) => a.Value | b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 operator ~(Lanes8 mask) => ~mask.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Fused(Lanes8 a, Lanes8 b, Lanes8 c) => Vector512.FusedMultiplyAdd(a.Value, b.Value, c.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Sqrt(Lanes8 a) => Vector512.Sqrt(a.Value);

    public static Lanes8 Exp(Lanes8 a) => Vector512.Exp(a.Value);

    public static Lanes8 Log(Lanes8 a) => Vector512.Log(a.Value);

    public static Lanes8 Sin(Lanes8 a) => Vector512.Sin(a.Value);

    public static Lanes8 Cos(Lanes8 a) => Vector512.Cos(a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Abs(Lanes8 a) => Vector512.Abs(a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Min(Lanes8 a, Lanes8 b) => Select(Less(a, b), a, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Max(Lanes8 a, Lanes8 b) => Select(Less(b, a), a, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Less(Lanes8 a, Lanes8 b) => Vector512.LessThan(a.Value, b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Select(Lanes8 mask, Lanes8 yes, Lanes8 no) =>
        Vector512.ConditionalSelect(mask.Value, yes.Value, no.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(Lanes8 mask) => mask.Value.AsInt64() != Vector512<long>.Zero;
}
