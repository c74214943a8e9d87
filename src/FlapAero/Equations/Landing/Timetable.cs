using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// What a landing does by the clock: the throttle closes along a ramp, and a gust comes and goes. Integrators step to the edges, so that no
/// step sees a kink.
/// </summary>
internal readonly struct Timetable<T>(T cut, T ramp, WindField<T> wind)
    where T : unmanaged, ILanes<T>
{
    private readonly T _cut = cut;
    private readonly T _settled = cut + ramp;
    private readonly WindField<T> _wind = wind;

    /// <summary>When the throttle begins to close; +∞ where it never does.</summary>
    public T Cut => _cut;

    /// <summary>When the throttle is closed; +∞ where it never is.</summary>
    public T Settled => _settled;

    /// <summary>The segment that begins at or before a time and ends after it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Segment<T> At(T time)
    {
        T before = T.Less(time, _cut);
        T ramping = T.Less(time, _settled);
        T still = before | ~ramping;
        T slope = T.Select(still, T.Of(0), T.Of(1) / (_settled - _cut));
        T start = T.Select(before | ramping, T.Of(0), T.Of(1));
        T end = T.Select(before, _cut, T.Select(ramping, _settled, T.Of(double.PositiveInfinity)));
        return new(start, slope, T.Select(still, T.Of(0), _cut), T.Min(end, _wind.NextEdge(time)));
    }
}

/// <summary>A stretch of time without a kink: in it the throttle's share of the way to idle is linear.</summary>
internal readonly struct Segment<T>(T start, T slope, T from, T end)
    where T : unmanaged, ILanes<T>
{
    private readonly T _start = start;
    private readonly T _slope = slope;
    private readonly T _from = from;

    public readonly T End = end;

    /// <summary>How far the throttle is closed, 0 to 1.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Closed(T time) => T.Fused(_slope, time - _from, _start);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Segment<T> Select(T mask, in Segment<T> yes, in Segment<T> no) => new(
        T.Select(mask, yes._start, no._start), T.Select(mask, yes._slope, no._slope), T.Select(mask, yes._from, no._from),
        T.Select(mask, yes.End, no.End));
}
