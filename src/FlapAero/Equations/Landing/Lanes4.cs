using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace FlapAero.Equations;

/// <summary>Four landings side by side in a vector of 256 bits.</summary>
internal readonly struct Lanes4(Vector256<double> value) : ILanes<Lanes4>
{
    public readonly Vector256<double> Value = value;

    public static int Count => Vector256<double>.Count;

    public double this[int lane] => Value[lane];

    public static implicit operator Lanes4(Vector256<double> value) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator Lanes4(double value) => Vector256.Create(value);

    public static Lanes4 Gather(ReadOnlySpan<double> rows, int column, int rowLength) =>
        Vector256.Create(
            rows[column], rows[column + rowLength], rows[column + 2 * rowLength], rows[column + 3 * rowLength]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 operator +(Lanes4 a, Lanes4 b) => a.Value + b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 operator -(Lanes4 a, Lanes4 b) => a.Value - b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 operator *(Lanes4 a, Lanes4 b) => a.Value * b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 operator /(Lanes4 a, Lanes4 b) => a.Value / b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 operator &(Lanes4 a, Lanes4 b) => a.Value & b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 operator |(Lanes4 a, Lanes4 b) => a.Value | b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 operator ~(Lanes4 mask) => ~mask.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Fused(Lanes4 a, Lanes4 b, Lanes4 c) => Vector256.FusedMultiplyAdd(a.Value, b.Value, c.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Sqrt(Lanes4 a) => Vector256.Sqrt(a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Exp(Lanes4 a) => LaneExponentials.Exp(a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Log(Lanes4 a) => LaneExponentials.Log(a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Abs(Lanes4 a) => Vector256.Abs(a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Min(Lanes4 a, Lanes4 b) => Vector256.MinNative(a.Value, b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Max(Lanes4 a, Lanes4 b) => Vector256.MaxNative(a.Value, b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Less(Lanes4 a, Lanes4 b) => Vector256.LessThan(a.Value, b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Select(Lanes4 mask, Lanes4 yes, Lanes4 no) =>
        Vector256.ConditionalSelect(mask.Value, yes.Value, no.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(Lanes4 mask) => mask.Value.AsInt64() != Vector256<long>.Zero;
}
