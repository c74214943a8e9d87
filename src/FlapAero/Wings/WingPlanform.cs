using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// A wing seen from above, left and right alike: chord and twist along the half span. Immutable. Stations are shares of the
/// half span, 0 at the centreline and 1 at the tip; the wing goes through the fuselage. Unswept: a lifting line is straight.
/// </summary>
public sealed class WingPlanform
{
    private static readonly Length Shortest = Length.FromMeters(0.1);
    private static readonly Length Longest = Length.FromMeters(60);
    private static readonly Angle MostTwist = Angle.FromDegrees(15);

    private readonly double _span;
    private readonly double[] _shares;
    private readonly double[] _chords;
    private readonly double[] _twists;
    private readonly bool _isElliptic;

    /// <summary>A planform by stations, straight between them.</summary>
    /// <param name="span">b, 0.1 m to 60 m.</param>
    /// <param name="stations">
    /// Share of the half span, chord, and twist against the chord at the centreline, positive nose up, ±15°. From 0 to 1,
    /// rising; chords above zero, also at the tip.
    /// </param>
    /// <exception cref="RefusedInputException">
    /// Stations that do not run from the centreline to the tip; a value outside its range, or an aspect ratio outside 4 to 40.
    /// </exception>
    public WingPlanform(Length span, IEnumerable<(double Share, Length Chord, Angle Twist)> stations)
        : this(span, [.. stations ?? throw new ArgumentNullException(nameof(stations))], isElliptic: false)
    {
    }

    private WingPlanform(Length span, (double Share, Length Chord, Angle Twist)[] stations, bool isElliptic)
    {
        Span = Require.Between(span, Shortest, Longest, "span", "Models to large aeroplanes lie inside it.");
        if (stations.Length < 2 || stations[0].Share != 0 || stations[^1].Share != 1)
            throw Require.RefusedWhole(
                nameof(stations), "stations: a planform needs at least two, the first at 0 (the centreline) and the last at 1 (the tip).");
        foreach ((double share, Length chord, Angle twist) in stations)
        {
            Require.Between(share, 0, 1, "station", "It is a share of the half span.", nameof(stations));
            Require.Positive(chord, "chord", "A lifting line needs a chord everywhere.", nameof(stations));
            Require.Between(twist, -MostTwist, MostTwist, "twist", "Wings are built with a few degrees.", nameof(stations));
        }

        if (stations.Zip(stations.Skip(1)).Any(pair => !(pair.Second.Share > pair.First.Share)))
            throw Require.RefusedWhole(
                nameof(stations), "stations: they run from the centreline to the tip, each further out than the one before.");
        _isElliptic = isElliptic;
        _span = span.Meters;
        _shares = [.. stations.Select(station => station.Share)];
        _chords = [.. stations.Select(station => station.Chord.Meters)];
        _twists = [.. stations.Select(station => station.Twist.Radians)];
        SiArea = AreaBetween(0, 1);
        AspectRatio = Require.Between(
            _span * _span / SiArea, 4, 40, "aspect ratio b²/S", "A lifting line describes slender wings.", nameof(stations));
    }

    /// <summary>Span b.</summary>
    public Length Span { get; }

    /// <summary>Area S, with the part inside the fuselage.</summary>
    public Area Area => Area.FromSquareMeters(SiArea);

    /// <summary>Aspect ratio A = b²/S.</summary>
    public double AspectRatio { get; }

    internal double SiArea { get; }

    /// <summary>A straight-tapered wing with twist that grows in proportion to the distance from the centreline.</summary>
    /// <remarks>
    /// Formula: c(y) = c_r (1 − (1 − λ) 2|y|/b). Range: λ from 0.1 to 2, aspect ratio 4 to 40. Source:
    /// [glauert].
    /// </remarks>
    /// <param name="span">b.</param>
    /// <param name="rootChord">c_r, at the centreline.</param>
    /// <param name="taper">λ, tip chord over root chord.</param>
    /// <param name="tipTwist">Twist of the tip, positive nose up; washout is negative. None where none is given.</param>
    /// <returns>The planform.</returns>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    /// <example><code>WingPlanform.Tapered(Length.FromMeters(10), Length.FromMeters(1.5), 0.6).AspectRatio // 8.33</code></example>
    public static WingPlanform Tapered(Length span, Length rootChord, double taper, Angle? tipTwist = null)
    {
        Require.Between(taper, 0.1, 2, "taper", "A pointed tip has no lift coefficient; no wing is twice as wide at its tip.");
        return new WingPlanform(span, [(0, rootChord, Angle.Zero), (1, rootChord * taper, tipTwist ?? Angle.Zero)]);
    }

    /// <summary>The straight-tapered planform that has an aeroplane's span and area.</summary>
    /// <remarks>Formula: c_r = 2S/(b(1 + λ)). Range: λ from 0.1 to 2, aspect ratio 4 to 40. Source: [glauert].</remarks>
    /// <param name="wing">The aeroplane's wing.</param>
    /// <param name="taper">λ, tip chord over root chord; the aeroplane's file does not say it.</param>
    /// <param name="tipTwist">Twist of the tip, positive nose up; washout is negative. None where none is given.</param>
    /// <returns>The planform.</returns>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    /// <example><code>WingPlanform.Like(DemoAeroplanes.TrainerH4.Wing, 0.7).AspectRatio // 7.16</code></example>
    public static WingPlanform Like(Wing wing, double taper, Angle? tipTwist = null)
    {
        ArgumentNullException.ThrowIfNull(wing);
        double root = 2 * wing.Area.SquareMeters / (wing.Span.Meters * (1 + taper));
        Require.Between(taper, 0.1, 2, "taper", "A pointed tip has no lift coefficient; no wing is twice as wide at its tip.");
        return Tapered(wing.Span, Length.FromMeters(root), taper, tipTwist);
    }

    /// <summary>An untwisted elliptic wing.</summary>
    /// <remarks>Formula: c(y) = c_r √(1 − (2y/b)²). Range: aspect ratio 4 to 40. Source: [glauert].</remarks>
    /// <param name="span">b.</param>
    /// <param name="rootChord">c_r, at the centreline.</param>
    /// <returns>The planform.</returns>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    /// <example><code>WingPlanform.Elliptic(Length.FromMeters(10), Length.FromMeters(1.5)).AspectRatio // 8.488</code></example>
    public static WingPlanform Elliptic(Length span, Length rootChord) =>
        new(span, [(0, rootChord, Angle.Zero), (1, rootChord, Angle.Zero)], isElliptic: true);

    /// <summary>Chord at a station.</summary>
    /// <remarks>Formula: straight between stations, or the ellipse. Range: 0 to 1. Source: [glauert].</remarks>
    /// <param name="station">Share of the half span.</param>
    /// <returns>The chord.</returns>
    /// <exception cref="RefusedInputException">Beyond the tip.</exception>
    /// <example><code>WingPlanform.Tapered(Length.FromMeters(10), Length.FromMeters(1.5), 0.6).Chord(0.5).Meters // 1.2</code></example>
    public Length Chord(double station) => Length.FromMeters(SiChord(OnTheWing(station)));

    /// <summary>Geometric twist at a station against the chord at the centreline.</summary>
    /// <remarks>Formula: straight between stations. Range: 0 to 1. Source: [glauert].</remarks>
    /// <param name="station">Share of the half span.</param>
    /// <returns>The twist, positive nose up.</returns>
    /// <exception cref="RefusedInputException">Beyond the tip.</exception>
    /// <example><code>WingPlanform.Tapered(Length.FromMeters(10), Length.FromMeters(1.5), 0.6, Angle.FromDegrees(-3)).Twist(0.5).Degrees // -1.5</code></example>
    public Angle Twist(double station) => Angle.FromRadians(SiTwist(OnTheWing(station))).ToUnit(AngleUnit.Degree);

    /// <summary>The share of the area that lies between two stations, on both sides: a flap's S_flapped/S.</summary>
    /// <remarks>Formula: 2∫c dy/S. Range: 0 to 1, the second further out. Source: [raymer].</remarks>
    /// <param name="from">Inboard end as a share of the half span.</param>
    /// <param name="to">Outboard end as a share of the half span.</param>
    /// <returns>The share.</returns>
    /// <exception cref="RefusedInputException">Stations that bound no part of the wing.</exception>
    /// <example><code>WingPlanform.Tapered(Length.FromMeters(10), Length.FromMeters(1.5), 0.6).AreaShare(0.1, 0.6) // 0.5375</code></example>
    public double AreaShare(double from, double to)
    {
        Require.Between(to, 0, 1, "outboard end", "It is a share of the half span.");
        Require.Between(from, 0, to, "inboard end", "It is a share of the half span, inboard of the other end.");
        return AreaBetween(from, to) / SiArea;
    }

    internal double SiChord(double share) =>
        _isElliptic ? _chords[0] * Math.Sqrt(1 - share * share) : Between(_chords, share);

    internal double SiTwist(double share) => Between(_twists, share);

    internal static double OnTheWing(double station) =>
        Require.Between(station, 0, 1, "station", "It is a share of the half span: 0 at the centreline, 1 at the tip.");

    private double AreaBetween(double from, double to)
    {
        if (_isElliptic) return _chords[0] * _span / 2 * (EllipseTo(to) - EllipseTo(from));
        double[] ends = [from, .. _shares.Where(share => share > from && share < to), to];
        // Straight pieces: the trapezium is exact.
        return _span * ends.Zip(ends.Skip(1), (a, b) => (b - a) * (SiChord(a) + SiChord(b)) / 2).Sum();
    }

    // 2 ∫ √(1 − s²) ds.
    private static double EllipseTo(double share) => share * Math.Sqrt(1 - share * share) + Math.Asin(share);

    private double Between(double[] values, double share)
    {
        int next = Math.Max(1, Array.FindIndex(_shares, station => station >= share));
        double part = (share - _shares[next - 1]) / (_shares[next] - _shares[next - 1]);
        return values[next - 1] + part * (values[next] - values[next - 1]);
    }
}
