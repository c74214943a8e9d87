using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// Thrust per mass as a function of time alone: the approach's, then a ramp from the cut to idle, then idle. It is linear in each of
/// three segments; integrators step to the edges, so that no step sees a kink.
/// </summary>
internal readonly struct PowerSchedule<T>(T approach, T idle, T cut, T ramp)
    where T : unmanaged, ILanes<T>
{
    private readonly T _approach = approach;
    private readonly T _idle = idle;
    private readonly T _cut = cut;
    private readonly T _settled = cut + ramp;

    /// <summary>When the ramp is over and the thrust stays what it is; +∞ where it is never cut.</summary>
    public T Settled => _settled;

    /// <summary>The segment that begins at or before a time and ends after it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Thrust<T> At(T time)
    {
        T before = T.Less(time, _cut);
        T ramping = T.Less(time, _settled);
        T slope = T.Select(before | ~ramping, T.Of(0), (_idle - _approach) / (_settled - _cut));
        T start = T.Select(before | ramping, _approach, _idle);
        T end = T.Select(before, _cut, T.Select(ramping, _settled, T.Of(double.PositiveInfinity)));
        return new(start, slope, T.Select(before | ~ramping, T.Of(0), _cut), end);
    }
}

/// <summary>Thrust per mass, linear in time until <see cref="End"/>.</summary>
internal readonly struct Thrust<T>(T start, T slope, T from, T end)
    where T : unmanaged, ILanes<T>
{
    private readonly T _start = start;
    private readonly T _slope = slope;
    private readonly T _from = from;

    public readonly T End = end;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T At(T time) => T.Fused(_slope, time - _from, _start);

    public static Thrust<T> Select(T mask, in Thrust<T> yes, in Thrust<T> no) => new(
        T.Select(mask, yes._start, no._start), T.Select(mask, yes._slope, no._slope), T.Select(mask, yes._from, no._from),
        T.Select(mask, yes.End, no.End));
}
