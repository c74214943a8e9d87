using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// What a landing does by the clock: the throttle closes along a ramp, and a gust comes and goes. Integrators step to the edges, so that no
/// step sees a kink.
/// </summary>
internal readonly struct Timetable<T>(T cut, T ramp, WindField<T> wind)
    where T : unmanaged, ILanes<T>
{
    /// <summary>When the throttle begins to close; +∞ where it never does.</summary>
    public readonly T Cut = cut;

    /// <summary>When the throttle is closed; +∞ where it never is.</summary>
    public readonly T Settled = cut + ramp;

    /// <summary>The segment that begins at or before a time and ends after it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Segment<T> At(T time)
    {
        T before = T.Less(time, Cut);
        T ramping = T.Less(time, Settled);
        T still = before | ~ramping;
        T slope = T.Select(still, 0, 1 / (Settled - Cut));
        T start = T.Select(before | ramping, 0, 1);
        T end = T.Select(before, Cut, T.Select(ramping, Settled, double.PositiveInfinity));
        return new(start, slope, T.Select(still, 0, Cut), T.Min(end, wind.NextEdge(time)));
    }
}

/// <summary>A stretch of time without a kink: in it the throttle's share of the way to idle is linear.</summary>
internal readonly record struct Segment<T>(T Start, T Slope, T From, T End)
    where T : unmanaged, ILanes<T>
{
    /// <summary>How far the throttle is closed, 0 to 1.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Closed(T time) => T.Fused(Slope, time - From, Start);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Segment<T> Select(T mask, in Segment<T> yes, in Segment<T> no) => new(
        T.Select(mask, yes.Start, no.Start), T.Select(mask, yes.Slope, no.Slope), T.Select(mask, yes.From, no.From),
        T.Select(mask, yes.End, no.End));
}
