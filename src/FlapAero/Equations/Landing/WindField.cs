using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// Headwind by height of the wing and time: a mean that does not change with time, and one 1-cosine gust, the same at every height.
/// Source: [landing-conditions].
/// </summary>
internal readonly struct WindField<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>Highest wing that a profile is asked for, m.</summary>
    public const double Ceiling = 590;

    // Of the step, as a share of the height: the difference of order 4 is then good to about 1e-9 of the shear.
    private const double Share = 1.0 / 256;

    private readonly T _steady;
    private readonly T _change;
    private readonly T _start;
    private readonly T _length;
    private readonly bool _gusts;
    private readonly Func<double, double>? _profile;

    /// <param name="steady">w where there is no profile.</param>
    /// <param name="change">Δw of the gust; zero in lanes where none blows.</param>
    /// <param name="start">When it begins.</param>
    /// <param name="length">How long it lasts.</param>
    /// <param name="profile">w by height of the wing.</param>
    public WindField(T steady, T change, T start, T length, Func<double, double>? profile = null)
    {
        (_steady, _change, _start, _length, _profile) = (steady, change, start, length, profile);
        _gusts = T.Any(T.Less(T.Of(0), T.Abs(change)));
    }

    /// <summary>Whether the wind is the same at every height and time.</summary>
    public bool IsSteady => !_gusts && _profile is null;

    public bool HasProfile => _profile is not null;

    /// <summary>The same wind without its gust.</summary>
    public WindField<T> WithoutGust => new(_steady, T.Of(0), _start, _length, _profile);

    /// <summary>The wind of one lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WindField<ScalarLane> Lane(int lane) => new(_steady[lane], _change[lane], _start[lane], _length[lane], _profile);

    /// <summary>w at a place of the path.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T At(T height, T time) => At(height, T.Of(0), time).Headwind;

    /// <summary>w, and ẇ = (dw/dh) ḣ + ∂w/∂t as the wing meets it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (T Headwind, T Rate) At(T height, T climb, T time) => IsSteady ? (_steady, T.Of(0)) : Changing(height, climb, time);

    /// <summary>When the gust begins or ends next after a time; +∞ where it does neither. No step goes across.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T NextEdge(T time)
    {
        if (!_gusts)
            return T.Of(double.PositiveInfinity);
        T end = _start + _length;
        T blows = T.Less(T.Of(0), T.Abs(_change));
        return T.Select(
            blows & T.Less(time, end), T.Select(T.Less(time, _start), _start, end), T.Of(double.PositiveInfinity));
    }

    /// <summary>When the gust is over; −∞ where none blows.</summary>
    public T Settled => T.Select(T.Less(T.Of(0), T.Abs(_change)), _start + _length, T.Of(double.NegativeInfinity));

    /// <summary>½ Δw (1 − cos 2πx) and ∂w/∂t while it lasts, by way of sin πx: angles of 45° and less, x and 1 − x being alike.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (T Change, T Rate) Gust(T time)
    {
        T place = (time - _start) / _length;
        T fromEdge = T.Max(T.Of(0), T.Min(place, T.Of(1) - place));
        (T sine, T cosine) = LaneAngles.SinCos(0.5 * Math.PI * fromEdge);
        T half = 2 * sine * cosine;
        T slope = 2 * Math.PI * half * (T.Of(1) - 2 * sine * sine) * _change / _length;
        return (half * half * _change, T.Select(T.Less(place, T.Of(0.5)), slope, T.Of(0) - slope));
    }

    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private (T Headwind, T Rate) Changing(T height, T climb, T time)
    {
        (T headwind, T rate) = _profile is null ? (_steady, T.Of(0)) : (Each(height, _profile), Each(height, Shear) * climb);
        if (!_gusts)
            return (headwind, rate);
        (T change, T gustRate) = Gust(time);
        return (headwind + change, rate + gustRate);
    }

    private double Shear(double height)
    {
        double at = Math.Min(height, Ceiling), step = at * Share;
        return (8 * (_profile!(at + step) - _profile(at - step)) - (_profile(at + 2 * step) - _profile(at - 2 * step))) / (12 * step);
    }

    private static T Each(T height, Func<double, double> law)
    {
        Span<double> values = stackalloc double[T.Count];
        for (int i = 0; i < values.Length; i++)
            values[i] = law(Math.Min(height[i], Ceiling));
        return T.Gather(values, 0, 1);
    }
}
