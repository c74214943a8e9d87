using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>One landing: the lane of a single number. A mask is NaN (all bits set) for true and zero for false.</summary>
internal readonly struct ScalarLane(double value) : ILanes<ScalarLane>
{
    public readonly double Value = value;

    public static int Count => 1;

    public double this[int lane] => Value;

    public static implicit operator ScalarLane(double value) => new(value);

    public static ScalarLane Gather(ReadOnlySpan<double> rows, int column, int rowLength) => rows[column];

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane operator +(ScalarLane a, ScalarLane b) => a.Value + b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane operator -(ScalarLane a, ScalarLane b) => a.Value - b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane operator *(ScalarLane a, ScalarLane b) => a.Value * b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane operator /(ScalarLane a, ScalarLane b) => a.Value / b.Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane operator &(ScalarLane a, ScalarLane b) => Mask(IsTrue(a) & IsTrue(b));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane operator |(ScalarLane a, ScalarLane b) => Mask(IsTrue(a) | IsTrue(b));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane operator ~(ScalarLane mask) => Mask(!IsTrue(mask));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane Fused(ScalarLane a, ScalarLane b, ScalarLane c) =>
        Math.FusedMultiplyAdd(a.Value, b.Value, c.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane Sqrt(ScalarLane a) => Math.Sqrt(a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane Exp(ScalarLane a) => Math.Exp(a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane Log(ScalarLane a) => Math.Log(a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane Abs(ScalarLane a) => Math.Abs(a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane Min(ScalarLane a, ScalarLane b) => a.Value < b.Value ? a : b;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane Max(ScalarLane a, ScalarLane b) => a.Value > b.Value ? a : b;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane Less(ScalarLane a, ScalarLane b) => Mask(a.Value < b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ScalarLane Select(ScalarLane mask, ScalarLane yes, ScalarLane no) => IsTrue(mask) ? yes : no;

    /// <summary>The mask that lets its lane pass.</summary>
    public static ScalarLane True => Mask(true);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(ScalarLane mask) => IsTrue(mask);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static bool IsTrue(ScalarLane mask) => double.IsNaN(mask.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static ScalarLane Mask(bool value) => value ? BitConverter.Int64BitsToDouble(-1) : 0;
}
