namespace FlapAero.Equations;

/// <summary>
/// Headwind by height of the wing and time: a mean that does not change with time, and one 1-cosine gust, the same at every height.
/// Source: [landing-conditions].
/// </summary>
internal sealed class WindField(Func<double, double>? profile, double steady, double gust, double gustStart, double gustLength)
{
    // Of the step, as a share of the height: the difference of order 4 is then good to about 1e-9 of the shear.
    private const double Share = 1.0 / 256;

    /// <summary>Highest wing that a profile is asked for, m.</summary>
    public const double Ceiling = 590;

    public WindField(double steady, in GustInput gust)
        : this(null, steady, gust.Change, gust.Start, gust.Length)
    {
    }

    public bool HasProfile { get; } = profile is not null;

    /// <summary>w without the gust.</summary>
    public double Mean(double height) => profile is null ? steady : profile(Math.Min(height, Ceiling));

    /// <summary>w.</summary>
    public double At(double height, double time) => Mean(height) + Gust(time);

    /// <summary>dw/dh.</summary>
    public double Shear(double height)
    {
        if (profile is null)
            return 0;
        double at = Math.Min(height, Ceiling), step = at * Share;
        return (8 * (profile(at + step) - profile(at - step)) - (profile(at + 2 * step) - profile(at - 2 * step))) / (12 * step);
    }

    /// <summary>½ Δw (1 − cos 2π(t − t_g)/λ) while it lasts.</summary>
    public double Gust(double time) => Blows(time) ? 0.5 * gust * (1 - Math.Cos(Phase(time))) : 0;

    /// <summary>∂w/∂t.</summary>
    public double TimeRate(double time) => Blows(time) ? gust * Math.PI / gustLength * Math.Sin(Phase(time)) : 0;

    /// <summary>When the gust begins or ends next after a time; +∞ where it does neither. No step goes across.</summary>
    public double NextEdge(double time)
    {
        if (gust == 0)
            return double.PositiveInfinity;
        double end = gustStart + gustLength;
        return time < gustStart ? gustStart : time < end ? end : double.PositiveInfinity;
    }

    private bool Blows(double time) => gust != 0 && time > gustStart && time < gustStart + gustLength;

    private double Phase(double time) => 2 * Math.PI * (time - gustStart) / gustLength;
}
