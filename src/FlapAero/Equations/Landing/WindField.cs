using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// Headwind by height of the wing and time: a mean that does not change with time, and one 1-cosine gust, the same at every height.
/// Source: [landing-conditions].
/// </summary>
/// <param name="Steady">w where there is no profile.</param>
/// <param name="Change">Δw of the gust; zero in lanes where none blows.</param>
/// <param name="Start">When it begins.</param>
/// <param name="Length">How long it lasts.</param>
/// <param name="Profile">w by height of the wing.</param>
internal readonly record struct WindField<T>(T Steady, T Change, T Start, T Length, Func<double, double>? Profile = null)
    where T : unmanaged, ILanes<T>
{
    /// <summary>Highest wing that a profile is asked for, m.</summary>
    public const double Ceiling = 590;

    // Of the step, as a share of the height: the difference of order 4 is then good to about 1e-9 of the shear.
    private const double Share = 1.0 / 256;

    private readonly bool _gusts = T.Any(Blows(Change));

    /// <summary>Whether the wind is the same at every height and time.</summary>
    public bool IsSteady => !_gusts && Profile is null;

    /// <summary>The same wind without its gust.</summary>
    public WindField<T> WithoutGust() => new(Steady, 0, Start, Length, Profile);

    /// <summary>The wind of one lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WindField<ScalarLane> Lane(int lane) => new(Steady[lane], Change[lane], Start[lane], Length[lane], Profile);

    /// <summary>w at a place of the path.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T At(T height, T time) => At(height, 0, time).Headwind;

    /// <summary>w, and ẇ = (dw/dh) ḣ + ∂w/∂t as the wing meets it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (T Headwind, T Rate) At(T height, T climb, T time) => IsSteady ? (Steady, 0) : Changing(height, climb, time);

    /// <summary>When the gust begins or ends next after a time; +∞ where it does neither. No step goes across.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T NextEdge(T time)
    {
        if (!_gusts)
            return double.PositiveInfinity;
        T end = Start + Length;
        T next = T.Select(T.Less(time, Start), Start, end);
        return T.Select(Blows(Change) & T.Less(time, end), next, double.PositiveInfinity);
    }

    /// <summary>When the gust is over; −∞ where none blows.</summary>
    public T Settled => T.Select(Blows(Change), Start + Length, double.NegativeInfinity);

    /// <summary>½ Δw (1 − cos 2πx) and ∂w/∂t while it lasts, by way of sin πx: angles of 45° and less, x and 1 − x being alike.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (T Change, T Rate) Gust(T time)
    {
        T place = (time - Start) / Length;
        T fromEdge = T.Max(0, T.Min(place, 1 - place));
        (T sine, T cosine) = LaneAngles.SinCos(0.5 * Math.PI * fromEdge);
        T half = 2 * sine * cosine;
        T slope = 2 * Math.PI * half * (1 - 2 * sine * sine) * Change / Length;
        return (half * half * Change, T.Select(T.Less(place, 0.5), slope, 0 - slope));
    }

    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private (T Headwind, T Rate) Changing(T height, T climb, T time)
    {
        (T headwind, T rate) = Profile is null ? (Steady, 0) : (Each(height, Profile), Each(height, Shear) * climb);
        if (!_gusts)
            return (headwind, rate);
        (T change, T gustRate) = Gust(time);
        return (headwind + change, rate + gustRate);
    }

    private static T Blows(T change) => T.Less(0, T.Abs(change));

    private double Shear(double height)
    {
        double at = Math.Min(height, Ceiling), step = at * Share;
        return (8 * (Profile!(at + step) - Profile(at - step)) - (Profile(at + 2 * step) - Profile(at - 2 * step))) / (12 * step);
    }

    private static T Each(T height, Func<double, double> law)
    {
        Span<double> values = stackalloc double[T.Count];
        for (int i = 0; i < values.Length; i++)
            values[i] = law(Math.Min(height[i], Ceiling));
        return T.Gather(values, 0, 1);
    }
}
