using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// A wing's lift, induced drag and loading by Prandtl's lifting line, solved as a Fourier series: arbitrary taper and twist,
/// a part-span flap, and the ground. Immutable. Linear: it knows no stall but the critical section's. Slender unswept wings
/// in steady flight, without fuselage and propeller. The flap's jump is taken out of the series and summed exactly, so the
/// loading has no Gibbs ripple.
/// </summary>
public sealed class LiftingLine
{
    private const double FineStep = 1e-4;
    private const double Outermost = 0.999;

    // Half the band across which c_lmax changes at a flap's end, in mean chords: this model's own assumption.
    private const double FlapEndBand = 0.5;

    private static readonly Angle SteepestAngle = Angle.FromDegrees(45);

    private readonly LiftingLineSystem _system;
    private readonly WingSection _root;
    private readonly WingSection _tip;
    private readonly double _zeroLift;

    // Over the half span, as stations are.
    private readonly double _meanChord;

    /// <summary>Solves a wing.</summary>
    /// <param name="planform">The wing from above.</param>
    /// <param name="root">Its section at the centreline.</param>
    /// <param name="tip">
    /// Its section at the tip, with everything in proportion between; the root's where none is given.
    /// </param>
    /// <param name="flap">The flap; up where none is given.</param>
    /// <param name="height">
    /// Height z of the wing above the ground, at least 5 % of the span; far from it where none is given.
    /// </param>
    /// <param name="terms">Odd terms of the series, 4 to 400.</param>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    public LiftingLine(
        WingPlanform planform, WingSection root, WingSection? tip = null, PartSpanFlap? flap = null, Length? height = null,
        int terms = 64)
    {
        ArgumentNullException.ThrowIfNull(planform);
        ArgumentNullException.ThrowIfNull(root);
        Require.Between(terms, 4, 400, "terms of the series", "Fewer do not draw a wing; more add nothing.");
        if (height is { } low)
            Require.Between(
                low, planform.Span * 0.05, planform.Span * 1e6, "height of the wing",
                "Lower than a twentieth of the span the chord itself feels the ground, which a line does not.", nameof(height));
        (Planform, Flap, Height, _root, _tip) = (planform, flap, height, root, tip ?? root);
        double span = planform.Span.Meters;
        _meanChord = 2 / planform.AspectRatio;
        double rootZero = root.ZeroLiftAngle.Radians;
        double tipZero = _tip.ZeroLiftAngle.Radians;
        var shape = new SpanShape(
            planform.AspectRatio,
            share => planform.SiChord(share) / span,
            share => Along(share, root.SlopePerRadian, _tip.SlopePerRadian),
            share => planform.SiTwist(share) - Along(share, rootZero, tipZero));
        _system = new LiftingLineSystem(
            shape,
            flap is null ? null : new FlapJump(flap.From, flap.To),
            flap is null ? 0 : -flap.ZeroLiftAngleChange.Radians,
            height is { } z ? new GroundImage(z.Meters / span) : null,
            terms);
        _zeroLift = -_system.LiftAtZero / _system.Slope;
        InducedDrag = Polar();
    }

    /// <summary>The wing from above.</summary>
    public WingPlanform Planform { get; }

    /// <summary>The flap, or none where it is up.</summary>
    public PartSpanFlap? Flap { get; }

    /// <summary>Height above the ground, or none far from it.</summary>
    public Length? Height { get; }

    /// <summary>Lift slope a, 1/rad.</summary>
    public double SlopePerRadian => _system.Slope;

    /// <summary>Angle of attack without lift, α₀, of the chord at the centreline.</summary>
    public Angle ZeroLiftAngle => Angle.FromRadians(_zeroLift).ToUnit(AngleUnit.Degree);

    /// <summary>Induced drag against lift.</summary>
    public InducedDragPolar InducedDrag { get; }

    /// <summary>Lift coefficient at an angle of attack.</summary>
    /// <remarks>
    /// Formula: C_L = a(α − α₀), a and α₀ from the series. Range: ±45°; linear, also past the stall. Source:
    /// [glauert].
    /// </remarks>
    /// <param name="angleOfAttack">α of the chord at the centreline.</param>
    /// <returns>C_L.</returns>
    /// <exception cref="RefusedInputException">No angle at which a wing flies.</exception>
    /// <example><code>elliptic.LiftCoefficient(Angle.FromDegrees(4)) // 0.5325</code></example>
    public double LiftCoefficient(Angle angleOfAttack)
    {
        Require.Between(
            angleOfAttack, -SteepestAngle, SteepestAngle, "angle of attack", "No wing flies there, and the theory is linear.");
        return _system.Slope * (angleOfAttack.Radians - _zeroLift);
    }

    /// <summary>Angle of attack that gives a lift coefficient.</summary>
    /// <remarks>Formula: the inverse of <see cref="LiftCoefficient"/>. Range: C_L to ±4. Source: [glauert].</remarks>
    /// <param name="liftCoefficient">C_L.</param>
    /// <returns>α of the chord at the centreline.</returns>
    /// <exception cref="RefusedInputException">No wing has so much lift.</exception>
    /// <example><code>elliptic.AngleOfAttack(0.5325).Degrees // 4.000</code></example>
    public Angle AngleOfAttack(double liftCoefficient) =>
        Angle.FromRadians(_zeroLift + InRange(liftCoefficient) / _system.Slope).ToUnit(AngleUnit.Degree);

    /// <summary>The load at one station.</summary>
    /// <remarks>
    /// Formula: c_l = 2Γ/(Vc), Γ = 2bV Σ A_n sin nθ, cos θ the share of the half span. Range: stations to 0.999, C_L to ±4.
    /// Source: [glauert].
    /// </remarks>
    /// <param name="station">Share of the half span; at the very tip a lifting line has no chord to speak of.</param>
    /// <param name="liftCoefficient">C_L of the wing.</param>
    /// <returns>The load.</returns>
    /// <exception cref="RefusedInputException">Beyond the tip, or more lift than a wing has.</exception>
    /// <example><code>elliptic.LoadAt(0.6, 0.8).SectionLiftCoefficient // 0.800</code></example>
    public SpanwiseLoad LoadAt(double station, double liftCoefficient)
    {
        Require.Between(station, 0, Outermost, "station", "It is a share of the half span, short of the tip.");
        InRange(liftCoefficient);
        (double additional, double basic) = Split(station);
        double circulation = basic + liftCoefficient * additional;
        double lift = 4 * circulation * Planform.Span.Meters / Planform.SiChord(station);
        return new SpanwiseLoad(
            station, Planform.Span * station / 2, lift, SectionMaximum(station), 2 * circulation, Flap?.Covers(station) ?? false);
    }

    /// <summary>The load along the half span, from the centreline outwards.</summary>
    /// <remarks>
    /// Formula: as <see cref="LoadAt"/>, at stations that crowd towards the tip: cosines of equal angles. Range: 2 to 10 000
    /// stations. Source: [glauert].
    /// </remarks>
    /// <param name="liftCoefficient">C_L of the wing.</param>
    /// <param name="stations">How many.</param>
    /// <returns>The loads.</returns>
    /// <exception cref="RefusedInputException">More lift than a wing has, or no number of stations.</exception>
    /// <example><code>elliptic.Loading(0.8, 50)[0].SectionLiftCoefficient // 0.800</code></example>
    public IReadOnlyList<SpanwiseLoad> Loading(double liftCoefficient, int stations = 100)
    {
        Require.Between(stations, 2, 10000, "number of stations", "Two are the least that make a line.");
        // sin and asin: exact at the centreline.
        double step = Math.Asin(Outermost) / (stations - 1);
        return [.. Enumerable.Range(0, stations).Select(i => LoadAt(Math.Min(Math.Sin(i * step), Outermost), liftCoefficient))];
    }

    /// <summary>The section that stalls first, and the wing's lift then.</summary>
    /// <remarks>
    /// Formula: C_Lmax = min over the span of (c_lmax − c_l at C_L = 0)/(dc_l/dC_L). Range: the inner 98 % of the half span,
    /// as a rounded tip is no section. At a flap's ends c_lmax changes in proportion over one mean chord: an assumption of
    /// this model's own, for with a jump the flap's end would always stall first. Source: [glauert] for the loading; the
    /// critical-section method is the textbooks', from memory.
    /// </remarks>
    /// <returns>The onset.</returns>
    /// <exception cref="RefusedInputException">Never for a wing that was made.</exception>
    /// <example><code>new LiftingLine(WingPlanform.Tapered(Length.FromMeters(10), Length.FromMeters(1.5), 1), new WingSection(6.2832, Angle.Zero, 1.5)).FirstStall().Section.Station // 0.00</code></example>
    public StallOnset FirstStall()
    {
        const double Last = 0.98;
        const int Cells = 196;
        double[] ends = Flap is null ? [] : [.. new[] { Flap.From, Flap.To }.Where(end => end <= Last)];
        double[] coarse = [.. Enumerable.Range(0, Cells + 1).Select(i => Last * i / Cells), .. ends];
        double near = coarse.MinBy(LiftAtStall);
        double[] fine = [.. Enumerable.Range(-50, 101).Select(i => Math.Clamp(near + i * FineStep, 0, Last)), near];
        double station = fine.MinBy(LiftAtStall);
        double most = LiftAtStall(station);
        double lift = Math.Clamp(most, -4, 4);
        return new StallOnset(most, AngleOfAttack(lift), LoadAt(station, lift));
    }

    private double LiftAtStall(double station)
    {
        (double additional, double basic) = Split(station);
        double scale = 4 * Planform.Span.Meters / Planform.SiChord(station);
        return (SectionMaximum(station) - scale * basic) / (scale * additional);
    }

    private double SectionMaximum(double station) =>
        Along(station, _root.MaximumLiftCoefficient, _tip.MaximumLiftCoefficient)
        + (Flap is null ? 0 : Flap.MaximumLiftIncrement * Flap.ShareOfMaximum(station, FlapEndBand * _meanChord));

    // Γ/2bV per unit of C_L, and what stays where C_L is zero.
    private (double Additional, double Basic) Split(double share)
    {
        double station = Math.Acos(share);
        double perAngle = _system.CirculationPerAngle(station);
        return (perAngle / _system.Slope, _system.CirculationFixed(station) + _zeroLift * perAngle);
    }

    private InducedDragPolar Polar()
    {
        double slope = _system.Slope;
        double mixed = _system.DragMixed + _zeroLift * _system.DragPerAngle;
        double stays = _system.DragFixed + _zeroLift * (2 * _system.DragMixed + _zeroLift * _system.DragPerAngle);
        return new InducedDragPolar(stays, 2 * mixed / slope, _system.DragPerAngle / (slope * slope), Planform.AspectRatio);
    }

    private static double Along(double share, double root, double tip) => root + share * (tip - root);

    private static double InRange(double liftCoefficient) =>
        Require.Between(liftCoefficient, -4, 4, "lift coefficient", "No wing of this model has more.");
}
